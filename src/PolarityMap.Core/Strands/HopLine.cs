using System.Text;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Strands;

/// <summary>A strand as one line of hops, as findings and <c>trace</c> print it.</summary>
public static class HopLine
{
    /// <summary>
    /// For example <c>SW-L/1:A (transmit) → A-to-B cord B→A → K-L 1:B→rear:2 → …</c>. Between two arrows stands one part, with
    /// the position where the strand enters and the one where it leaves.
    /// </summary>
    public static string Of(TracedPlant traced, int strand)
    {
        var line = new StringBuilder();
        foreach (Hop hop in traced.Hops(strand))
        {
            if (line.Length > 0)
                line.Append(" → ");
            line.Append(Words(traced, hop));
        }

        if (traced.Strands.IsLoop(strand))
            line.Append(" → back to its start");
        return line.ToString();
    }

    /// <summary>One hop in words.</summary>
    public static string Words(TracedPlant traced, Hop hop)
    {
        if (hop.In < 0 || hop.Out < 0)
        {
            int position = hop.In < 0 ? hop.Out : hop.In;
            return $"{traced.Address(position)} ({EndWord(traced, position)})";
        }

        string begins = traced.Graph.Outside[hop.In] < 0 ? "(open end) " : "";
        string ends = traced.Graph.Outside[hop.Out] < 0 ? " (open end)" : "";
        return begins + Through(traced, hop) + ends;
    }

    private static string Through(TracedPlant traced, Hop hop)
    {
        Part part = traced.Plant.Parts[hop.Part];
        PositionPlace into = traced.Graph.PlaceOf(hop.In);
        PositionPlace from = traced.Graph.PlaceOf(hop.Out);
        string name = part.IsInline ? $"{string.Join(' ', part.Caption.Reverse())}{(part.Length is { } l ? $" {l}" : "")}" : part.Name;
        string ends = part.Shape.IsCable && part.Shape.Ports.Count == 2
            ? $"{Position(traced, into, false)}→{Position(traced, from, false)}"
            : $"{Position(traced, into, true)}→{Position(traced, from, true)}";
        return ends == "→" ? name : $"{name} {ends}";
    }

    /// <summary>What is at a strand's end: transmit, receive, an open end, or a place without a fibre.</summary>
    public static string EndWord(TracedPlant traced, int position) => traced.Graph.LaneAt(position) is { } lane
        ? lane.Direction.Word()
        : traced.Graph.Outside[position] < 0 ? "open end" : "no fibre here";

    private static string Position(TracedPlant traced, PositionPlace place, bool withPort)
    {
        PortShape port = traced.Plant.Port(place.Port);
        string position = port.Face.PositionName(place.Position);
        return !withPort ? position : position.Length == 0 ? port.Name : $"{port.Name}:{position}";
    }
}
