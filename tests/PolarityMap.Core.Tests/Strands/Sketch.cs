using CsCheck;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Tests.Oracles;

namespace PolarityMap.Core.Tests.Strands;

/// <summary>A mating of a sketch; ports are given by part name and port index.</summary>
internal sealed record SketchMating((string Part, int Port) A, (string Part, int Port) B, Keying Keys, int PositionOfA, int PositionOfB, (string Part, int Port)? Through)
{
    /// <summary>The same mating told from its other side.</summary>
    public SketchMating Turned => new(B, A, Keys, PositionOfB, PositionOfA, Through);
}

/// <summary>A random plant that is legal and otherwise senseless: loops, open ends, simplex plugs in duplex ports, adapters.</summary>
internal sealed record Sketch(IReadOnlyList<(string Name, string Kind, Shape Shape)> Parts, IReadOnlyList<SketchMating> Matings)
{
    private static readonly (string Kind, Shape Shape)[] Stock =
    [
        Item("duplex interface", v => v.Set("ports", 2)),
        Item("parallel interface"),
        Item("duplex cord", v => v.Set("type", "A-to-B")),
        Item("duplex cord", v => v.Set("type", "A-to-B")),
        Item("duplex cord", v => v.Set("type", "A-to-A")),
        Item("simplex cord"),
        Item("simplex cord"),
        Item("array cord", v => v.Set("type", "Type-A")),
        Item("array cord", v => v.Set("type", "Type-B").Set("base", 8)),
        Item("array cord", v => v.Set("type", "Type-C")),
        Item("trunk", v => v.Set("type", "Type-B").Set("legs", 2).Set("base", 8)),
        Item("trunk", v => v.Set("type", "Type-C").Set("legs", 3)),
        Item("harness"),
        Item("harness", v => v.Set("wiring", "straight").Set("base", 12)),
        Item("cassette", v => v.Set("wiring", "straight")),
        Item("cassette", v => v.Set("wiring", "straight-reversed").Set("base", 8)),
        Item("cassette", v => v.Set("wiring", "U1").Set("keys", "aligned")),
        Item("outlet", v => v.Set("wiring", "U2").Set("base", 8)),
        Item("outlet", v => v.Set("rear", "duplex")),
        Item("duplex panel", v => v.Set("ports", 3)),
        Item("array panel", v => v.Set("ports", 2)),
        Item("array panel", v => v.Set("ports", 2).Set("keys", "aligned")),
    ];

    /// <summary>Up to 14 parts and 40 attempts at a mating, of which the legal ones are made.</summary>
    public static readonly Gen<Sketch> Random =
        Gen.Select(
            Gen.Int[0, Stock.Length - 1].Array[0, 14],
            Gen.Select(Gen.Int[0, 9_999], Gen.Int[0, 9_999], Gen.Int[0, 7]).Array[0, 40],
            Draw);

    /// <summary>Builds the plant with its parts added in the given order, and its matings as they are or all told backwards.</summary>
    public Plant Build(IEnumerable<int>? order = null, bool backwards = false, Func<string, string>? rename = null)
    {
        var builder = new PlantBuilder();
        var index = new Dictionary<string, int>();
        foreach (int i in order ?? Enumerable.Range(0, Parts.Count))
        {
            (string name, string kind, Shape shape) = Parts[i];
            index[name] = builder.AddPart(new Part(rename?.Invoke(name) ?? name, kind, shape, default));
        }

        PortRef Port((string Part, int Port) port) => new(index[port.Part], port.Port);
        foreach (SketchMating m in backwards ? Matings.Reverse().Select(m => m.Turned) : Matings)
        {
            builder.AddMating(new Mating(Port(m.A), Port(m.B), m.Keys, default)
            {
                PositionOfA = m.PositionOfA,
                PositionOfB = m.PositionOfB,
                Through = m.Through is { } t ? Port(t) : null,
            });
        }

        return builder.Build();
    }

    /// <summary>
    /// All positions and everything that joins two of them, read from the shapes and, for matings, from the coordinates of
    /// the reference model.
    /// </summary>
    public (List<string> Positions, List<(string A, string B)> Joins) Graph()
    {
        var positions = new List<string>();
        var joins = new List<(string, string)>();
        foreach ((string name, _, Shape shape) in Parts)
        {
            int first = positions.Count;
            for (int port = 0; port < shape.Ports.Count; port++)
            {
                for (int position = 1; position <= shape.Ports[port].PositionCount; position++)
                    positions.Add(Key(name, port, position));
            }

            for (int i = 0; i < shape.Inside.Count; i++)
            {
                if (shape.Inside[i] > i)
                    joins.Add((positions[first + i], positions[first + shape.Inside[i]]));
            }
        }

        foreach (SketchMating m in Matings)
        {
            Face face = Parts.First(p => p.Name == m.A.Part).Shape.Ports[m.A.Port].Face;
            if (m.PositionOfA > 0 || m.PositionOfB > 0)
            {
                joins.Add((Key(m.A.Part, m.A.Port, Math.Max(1, m.PositionOfA)), Key(m.B.Part, m.B.Port, Math.Max(1, m.PositionOfB))));
                continue;
            }

            foreach ((int here, int there) in SlowModel.Mating(face.Rows, face.Columns, m.Keys == Keying.Opposed))
                joins.Add((Key(m.A.Part, m.A.Port, here), Key(m.B.Part, m.B.Port, there)));
        }

        return (positions, joins);
    }

    /// <summary>One position as the tests write it.</summary>
    public static string Key(string part, int port, int position) => $"{part}/{port}:{position}";

    private static (string, Shape) Item(string kind, Action<AttributeValues>? set = null) => (kind, Bench.ShapeOf(kind, set));

    private static Sketch Draw(int[] kinds, (int A, int B, int Mode)[] attempts)
    {
        (string Name, string Kind, Shape Shape)[] parts = [.. kinds.Select((k, i) => ($"N{i}", Stock[k].Kind, Stock[k].Shape))];
        (string Part, int Port, PortShape Shape)[] all = [.. parts.SelectMany(p => p.Shape.Ports.Select((s, i) => (p.Name, i, s)))];
        (string Part, int Port, PortShape Shape)[] plugs = [.. all.Where(p => !p.Shape.IsAdapter)];
        (string Part, int Port, PortShape Shape)[] adapters = [.. all.Where(p => p.Shape.IsAdapter)];
        var used = new HashSet<string>();
        bool Free((string Part, int Port, PortShape Shape) p) =>
            Enumerable.Range(1, p.Shape.Face.Count).All(i => !used.Contains(Key(p.Part, p.Port, i)));

        var matings = new List<SketchMating>();
        foreach ((int a, int b, int mode) in attempts)
        {
            int position = 1 + (mode & 1);
            (string Part, int Port, PortShape Shape)[] free = [.. plugs.Where(Free)];
            if (free.Length == 0)
                break;
            (string Part, int Port, PortShape Shape) here = free[a % free.Length];
            bool simplex = here.Shape.Face == Face.Simplex;
            (string Part, int Port, PortShape Shape)[] fitting =
            [
                .. plugs.Where(p => (p.Part, p.Port) != (here.Part, here.Port)
                    && ((p.Shape.Face == here.Shape.Face && Free(p))
                        || (simplex && p.Shape.Face == Face.Duplex && !used.Contains(Key(p.Part, p.Port, position))))),
            ];
            if (fitting.Length == 0)
                continue;
            (string Part, int Port, PortShape Shape) there = fitting[b % fitting.Length];
            bool single = here.Shape.Face != there.Shape.Face;
            (string Part, int Port, PortShape Shape)[] through = [.. adapters.Where(x => !single && x.Shape.Face == here.Shape.Face)];
            (string Part, int Port, PortShape Shape)? adapter = through.Length > 0 && (mode & 4) != 0 ? through[(a + b) % through.Length] : null;
            Keying keys = here.Shape.Face.Family != ConnectorFamily.Array || (mode & 2) != 0 ? Keying.Aligned : Keying.Opposed;
            var mating = new SketchMating(
                (here.Part, here.Port),
                (there.Part, there.Port),
                keys,
                0,
                single ? position : 0,
                adapter is { } at ? (at.Part, at.Port) : null);
            matings.Add((a & 1) == 0 ? mating : mating.Turned);
            foreach ((string Part, int Port, PortShape Shape) end in ((string, int, PortShape)[])[here, there])
            {
                for (int i = 1; i <= end.Shape.Face.Count; i++)
                {
                    if (!single || end.Shape.Face == Face.Simplex || i == position)
                        used.Add(Key(end.Part, end.Port, i));
                }
            }
        }

        return new Sketch(parts, matings);
    }
}
