using System.Globalization;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Cli.Output;

/// <summary>
/// Strands for people, one hop a line from end to end. The position asked for is marked, so that the lines above it lead one
/// way and the lines below it the other.
/// </summary>
internal static class TraceText
{
    public static void Write(TracedPlant traced, IReadOnlyList<int> positions, CommandContext context)
    {
        var paint = new Paint(context.Colour);
        bool first = true;
        foreach (IGrouping<int, int> asked in positions.GroupBy(traced.StrandOf))
        {
            if (!first)
                context.Out.WriteLine();
            first = false;
            WriteStrand(traced, [.. asked], context.Out, paint);
        }

        if (positions.Count == 0)
            context.Out.WriteLine("Nothing is plugged in here.");
    }

    private static void WriteStrand(TracedPlant traced, int[] asked, TextWriter output, Paint paint)
    {
        int strand = traced.StrandOf(asked[0]);
        ReadOnlySpan<int> positions = traced.Strands[strand];
        if (positions.Length == 1)
        {
            output.WriteLine(paint.Strong($"{traced.Address(asked[0])}: {(traced.Graph.LaneAt(asked[0]) is null ? "no fibre, nothing mated" : "nothing plugged in")}"));
            return;
        }

        output.WriteLine(paint.Strong($"strand {traced.NumberOf(strand)} at {string.Join(" and ", asked.Select(traced.Address))}: {Ends(traced, positions, strand)}"));
        IReadOnlyList<Hop> hops = traced.Hops(strand);
        int widest = hops.Max(h => Name(traced, h).Length);
        for (int i = 0; i < hops.Count; i++)
        {
            Hop hop = hops[i];
            string mark = asked.Contains(hop.In) || asked.Contains(hop.Out) ? ">" : " ";
            string line = $"{mark}{i + 1,4}  {Name(traced, hop).PadRight(widest)}  {Way(traced, hop)}";
            output.WriteLine(line.TrimEnd());
            if (hop.Out >= 0 && traced.MatingAt(hop.Out) is { } mating && traced.Graph.Outside[hop.Out] >= 0)
                output.WriteLine(paint.Faint($"         {Joint(traced, mating)}"));
        }
    }

    private static string Ends(TracedPlant traced, ReadOnlySpan<int> positions, int strand)
    {
        if (traced.Strands.IsLoop(strand))
            return "a closed loop without an end";
        string from = $"{traced.Address(positions[0])} ({HopLine.EndWord(traced, positions[0])})";
        string to = $"{traced.Address(positions[^1])} ({HopLine.EndWord(traced, positions[^1])})";
        return (traced.Graph.LaneAt(positions[0])?.Direction, traced.Graph.LaneAt(positions[^1])?.Direction) switch
        {
            (LaneDirection.Transmit, LaneDirection.Receive) => $"light runs from {from} to {to}",
            (LaneDirection.Receive, LaneDirection.Transmit) => $"light runs from {to} to {from}",
            _ => $"from {from} to {to}",
        };
    }

    private static string Name(TracedPlant traced, Hop hop) => traced.Plant.Parts[hop.Part].Name;

    private static string Way(TracedPlant traced, Hop hop)
    {
        Part part = traced.Plant.Parts[hop.Part];
        string caption = string.Join(' ', part.Caption) + (part.Length is { } l ? string.Create(CultureInfo.InvariantCulture, $", {l}") : "");
        string Local(int p)
        {
            PositionPlace place = traced.Graph.PlaceOf(p);
            PortShape port = traced.Plant.Port(place.Port);
            string name = port.Face.PositionName(place.Position);
            return name.Length == 0 ? port.Name : $"{port.Name}:{name}";
        }

        if (hop.In < 0 || hop.Out < 0)
        {
            int p = hop.In < 0 ? hop.Out : hop.In;
            return $"{Local(p)}  {HopLine.EndWord(traced, p)}  ({caption})";
        }

        string open = traced.Graph.Outside[hop.In] < 0 || traced.Graph.Outside[hop.Out] < 0 ? "  open end" : "";
        return $"{Local(hop.In)} → {Local(hop.Out)}{open}  ({caption})";
    }

    private static string Joint(TracedPlant traced, Mating mating)
    {
        string keys = traced.Plant.Port(mating.A).Face.Family == ConnectorFamily.Array ? $", keys {mating.Keys.Word()}" : "";
        string through = mating.Through is { } adapter ? $" in {traced.Plant.Address(adapter)}" : "";
        return $"mated{through}{keys}  {mating.Place}";
    }
}
