using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;

namespace PolarityMap.Documents.Observations;

/// <summary>Finds the parts, ports and positions that observations name.</summary>
internal sealed class PlaceReader
{
    private readonly TracedPlant _traced;
    private readonly NodeReader _reader;
    private readonly Dictionary<string, int> _parts;

    public PlaceReader(TracedPlant traced, ProblemList problems)
    {
        _traced = traced;
        _reader = new NodeReader(problems);
        Problems = problems;
        _parts = new Dictionary<string, int>(traced.Plant.Parts.Count);
        for (int i = 0; i < traced.Plant.Parts.Count; i++)
            _parts[traced.Plant.Parts[i].Name] = i;
    }

    private ProblemList Problems { get; }

    private Plant Plant => _traced.Plant;

    /// <summary>The part of a name, or of a port's address; null after a report.</summary>
    /// <param name="cell">What is written.</param>
    /// <param name="expected">What is expected where there is no such part.</param>
    public int? Part(SeenCell cell, string expected)
    {
        if (_parts.TryGetValue(cell.Text, out int part))
            return part;
        int stroke = cell.Text.LastIndexOf('/');
        return stroke > 0 && _parts.ContainsKey(cell.Text[..stroke]) ? Port(cell, expected)?.Part : NoPart(cell, expected, []);
    }

    /// <summary>A port, without a position; null after a report.</summary>
    public PortRef? Port(SeenCell cell, string expected) => Split(cell, expected, []) is not var (port, position) ? null
        : position is null ? port
        : Refused(position, $"'{cell.Text}' names a position", $"the port, {Plant.Address(port)}");

    /// <summary>One position that has a fibre; -1 after a report.</summary>
    /// <param name="cell">What is written.</param>
    /// <param name="expected">What is expected where there is no such part.</param>
    /// <param name="alsoPossible">Words that may stand here besides.</param>
    public int Position(SeenCell cell, string expected, params IReadOnlyList<string> alsoPossible)
    {
        if (_parts.TryGetValue(cell.Text, out int whole))
        {
            Problems.Add(cell.Place, $"'{cell.Text}' is a part", $"a port and a position of it, such as {Example(whole)}");
            return -1;
        }

        if (Split(cell, expected, alsoPossible) is not var (port, position))
            return -1;
        PortShape shape = Plant.Port(port);
        if (shape.IsAdapter)
            return Adapter(cell, port);
        int number = 1;
        if (position is null && shape.Face.Count > 1)
        {
            Problems.Add(cell.Place, $"{Plant.Address(port)} has {shape.Face.Count} positions", shape.Face.Count == 2
                ? $"{Plant.Address(port, 1)} or {Plant.Address(port, 2)}"
                : $"one of {Plant.Address(port, 1)} to {Plant.Address(port, shape.Face.Count)}");
            return -1;
        }

        if (position is not null && !(shape.Face.Count == 1 && position.Text == "1") && !shape.Face.TryParsePosition(position.Text, out number))
        {
            Problems.Add(position.Place, $"{Plant.Address(port)} has no position '{PartNames.Shorten(position.Text)}'", shape.Face.Family == ConnectorFamily.Duplex ? "A or B" : $"1 to {shape.Face.Count}");
            return -1;
        }

        return WithFibre(cell, _traced.Graph.PositionOf(port, number));
    }

    private int WithFibre(SeenCell cell, int position)
    {
        if (_traced.Graph.HasLane(position) || _traced.Graph.Inside[position] >= 0)
            return position;
        bool isInterface = Plant.Parts[_traced.Graph.PartOf(position)].Shape.IsInterface;
        Problems.Add(cell.Place, $"{_traced.Address(position)} {(isInterface ? "neither sends nor listens" : "has no fibre")}",
            isInterface && _traced.Graph.Outside[position] is >= 0 and int plug ? $"the plug there, {_traced.Address(plug)}" : "a position with a fibre");
        return -1;
    }

    /// <summary>An adapter has no fibre, and which of its two plugs is meant cannot be known.</summary>
    private int Adapter(SeenCell cell, PortRef adapter)
    {
        var plugs = new List<string>();
        foreach (Mating mating in Plant.Matings)
        {
            if (mating.Through == adapter)
                plugs.AddRange([Plant.Address(mating.A), Plant.Address(mating.B)]);
        }

        plugs.AddRange(Plant.OpenPlugs.Where(o => o.Adapter == adapter).Select(o => Plant.Address(o.Plug)));
        Problems.Add(cell.Place, $"{Plant.Address(adapter)} is an adapter and has no fibre of its own",
            plugs.Count == 0 ? "a plug; none sits in it" : $"a position of the plug that is meant: {string.Join(" or ", plugs)}");
        return -1;
    }

    private (PortRef Port, SeenCell? Position)? Split(SeenCell cell, string expected, IReadOnlyList<string> alsoPossible)
    {
        // The name of a cord has strokes of its own, so the last one parts the port from it.
        int stroke = cell.Text.LastIndexOf('/');
        if (stroke < 0 || !_parts.TryGetValue(cell.Text[..stroke], out int part))
        {
            NoPart(stroke < 0 ? cell : new SeenCell(cell.Text[..stroke], cell.PlaceAt), expected, alsoPossible);
            return null;
        }

        SeenCell rest = cell.From(stroke + 1);
        int colon = rest.Text.IndexOf(':', StringComparison.Ordinal);
        string name = colon < 0 ? rest.Text : rest.Text[..colon];
        Shape shape = Plant.Parts[part].Shape;
        int port = PortIndex.Find(shape, name);
        if (port < 0)
        {
            string[] ports = [.. shape.Ports.Select(p => p.Name)];
            _reader.Unknown(rest.Place, $"{Plant.Parts[part].Name} has no port '{PartNames.Shorten(name)}'", name, ports);
            return null;
        }

        return (new PortRef(part, port), colon < 0 ? null : rest.From(colon + 1));
    }

    private int? NoPart(SeenCell cell, string expected, IReadOnlyList<string> alsoPossible)
    {
        // The name of a cord without one of its own is no slip of anybody.
        string? near = _reader.Nearest(cell.Text, alsoPossible.Concat(Plant.Parts.Where(p => !p.IsInline).Select(p => p.Name)));
        Problems.Add(cell.Place, $"there is no part '{PartNames.Shorten(cell.Text)}'", expected, near);
        return null;
    }

    private PortRef? Refused(SeenCell cell, string message, string expected)
    {
        Problems.Add(cell.Place, message, expected);
        return null;
    }

    /// <summary>The address of a part's first position, to show how one is written.</summary>
    private string Example(int part)
    {
        Shape shape = Plant.Parts[part].Shape;
        return shape.PositionCount > 0 ? _traced.Address(_traced.Graph.FirstPositionOf(part)) : $"those of the plugs in {Plant.Parts[part].Name}";
    }
}
