using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Documents.Tables.Import;

/// <summary>
/// Compares what the rows of a connection schedule say of positions with what the parts that they describe do: where a strand
/// leaves a part that it enters, and what it meets there.
/// </summary>
internal static class HopCheck
{
    /// <summary>Reports every row that says otherwise.</summary>
    public static void Check(Plant plant, IReadOnlyList<ReadHop> hops, Action<TableProblem> report)
    {
        if (hops.Count == 0)
            return;
        var parts = new Dictionary<string, int>(StringComparer.Ordinal);
        for (int i = 0; i < plant.Parts.Count; i++)
            parts[plant.Parts[i].Name] = i;
        var matings = new Dictionary<PortRef, List<Mating>>();
        foreach (Mating mating in plant.Matings)
        {
            Add(matings, mating.A, mating);
            Add(matings, mating.B, mating);
        }

        foreach (ReadHop hop in hops)
        {
            (PortRef Port, int Position)? into = Place(plant, parts, hop.In), from = Place(plant, parts, hop.Out), meets = Place(plant, parts, hop.Meets);
            if (into is { Position: > 0 } i && from is { Position: > 0 } o && Through(plant, i) != o)
            {
                string does = Through(plant, i) is { } way ? $"what enters at {hop.In} leaves at {plant.Address(way.Port, way.Position)}" : $"{hop.In} leads nowhere";
                report(hop.Sheet.Problem(hop.Row, "out", $"by its kind and attributes {does}, not at {hop.Out}"));
            }
            else if (from is { Position: > 0 } leaves && meets is { Position: > 0 } there && Across(plant, matings, leaves, there.Port) is { } across && across != there)
            {
                report(hop.Sheet.Problem(hop.Row, "meets", $"{hop.Out} meets {plant.Address(across.Port, across.Position)}, not {hop.Meets}"));
            }
        }
    }

    private static void Add(Dictionary<PortRef, List<Mating>> matings, PortRef port, Mating mating)
    {
        if (!matings.TryGetValue(port, out List<Mating>? at))
            matings[port] = at = [];
        at.Add(mating);
    }

    /// <summary>The port and position of an address; position 0 where it names none, null where it is none.</summary>
    private static (PortRef Port, int Position)? Place(Plant plant, Dictionary<string, int> parts, string address)
    {
        for (int stroke = address.LastIndexOf('/'); stroke > 0; stroke = address.LastIndexOf('/', stroke - 1))
        {
            if (!parts.TryGetValue(address[..stroke], out int part))
                continue;
            string rest = address[(stroke + 1)..];
            int colon = rest.IndexOf(':');
            int port = plant.Parts[part].Shape.FindPort(colon < 0 ? rest : rest[..colon]);
            if (port < 0)
                return null;
            Face face = plant.Parts[part].Shape.Ports[port].Face;
            int position = face == Face.Simplex ? 1 : colon >= 0 && face.TryParsePosition(rest[(colon + 1)..], out int told) ? told : 0;
            return (new PortRef(part, port), position);
        }

        return null;
    }

    private static (PortRef Port, int Position)? Through(Plant plant, (PortRef Port, int Position) place)
    {
        Shape shape = plant.Parts[place.Port.Part].Shape;
        if (shape.Ports[place.Port.Port].IsAdapter)
            return null;
        int partner = shape.Inside[shape.Ports[place.Port.Port].FirstPosition + place.Position - 1];
        if (partner < 0)
            return null;
        int port = shape.PortAt(partner);
        return (new PortRef(place.Port.Part, port), partner - shape.Ports[port].FirstPosition + 1);
    }

    /// <summary>What a position meets at a port that it is mated to; null where the two are not mated or do not fit.</summary>
    private static (PortRef Port, int Position)? Across(Plant plant, Dictionary<PortRef, List<Mating>> matings, (PortRef Port, int Position) from, PortRef to)
    {
        if (!matings.TryGetValue(from.Port, out List<Mating>? at))
            return null;
        foreach (Mating mating in at)
        {
            if ((mating.A == from.Port ? mating.B : mating.A) != to || !plant.Fits(mating))
                continue;
            if (mating.PositionOfA > 0 || mating.PositionOfB > 0)
                return (to, Math.Max(1, mating.A == to ? mating.PositionOfA : mating.PositionOfB));
            return (to, plant.Port(from.Port).Face.Facing(mating.Keys, from.Position));
        }

        return null;
    }
}
