using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>What a sheet says at its foot of things that its lines and boxes do not show.</summary>
internal static class SheetRemarks
{
    /// <summary>More things of a kind than these are not told on one sheet.</summary>
    private const int MostTold = 6;

    public static IEnumerable<string> Of(ViewInput input)
    {
        if (input.Premise.Length > 0)
            yield return input.Premise;
        if (Networks(input) is { } networks)
            yield return networks;
        if (OpenPlugs(input) is { } plugs)
            yield return plugs;
        if (Broken(input.Traced, input.Selection.Strands) is { } broken)
            yield return broken;
    }

    /// <summary>Parts that have several large boxes, in different columns.</summary>
    public static IEnumerable<string> DrawnTwice(Plant plant, Layout layout)
    {
        foreach (IGrouping<int, Node> boxes in layout.Columns.SelectMany(c => c).Where(n => !n.NameInside).GroupBy(n => n.Part))
        {
            if (boxes.Count() > 1)
                yield return $"{plant.Parts[boxes.Key].Name} is one part, drawn {(boxes.Count() == 2 ? "twice" : $"{boxes.Count()} times")}.";
        }
    }

    /// <summary>Which strands belong to which network, with its colour and key; null where all are of one.</summary>
    private static string? Networks(ViewInput input)
    {
        Plant plant = input.Traced.Plant;
        var byNetwork = new SortedDictionary<int, List<int>>();
        foreach (int strand in input.Selection.Strands)
        {
            int network = NetworkOf(input.Traced, strand);
            if (!byNetwork.TryGetValue(network, out List<int>? strands))
                byNetwork[network] = strands = [];
            strands.Add(input.Traced.NumberOf(strand));
        }

        if (byNetwork.Count < 2 || byNetwork.Count > MostTold)
            return null;
        return "Networks: " + string.Join("; ", byNetwork.Where(n => n.Key >= 0).Select(n => $"{Words(plant.Networks[n.Key])}: {NumberRanges.Words("strand", [.. n.Value.Order()])}")) + ".";
    }

    /// <summary>The network at the strand's first end that has one; -1 without.</summary>
    private static int NetworkOf(TracedPlant traced, int strand)
    {
        ReadOnlySpan<int> positions = traced.Strands[strand];
        int first = traced.Plant.NetworkOf(traced.Graph.PlaceOf(positions[0]).Port);
        return first >= 0 ? first : traced.Plant.NetworkOf(traced.Graph.PlaceOf(positions[^1]).Port);
    }

    private static string Words(Network network)
    {
        var marks = new List<string>();
        if (network.Colour is { } colour)
            marks.Add(colour);
        if (network.Key is { } key)
            marks.Add($"key {key}");
        return marks.Count == 0 ? network.Name : $"{network.Name} ({string.Join(", ", marks)})";
    }

    /// <summary>Strands that are two ends of one broken fibre; null without any.</summary>
    private static string? Broken(TracedPlant traced, IReadOnlyList<int> strands)
    {
        var words = new List<string>();
        foreach (int strand in strands)
        {
            int end = traced.Strands[strand][^1];
            int part = traced.Graph.PartOf(end), start = traced.Graph.FirstPositionOf(part);
            Shape shape = traced.Plant.Parts[part].Shape;
            if (shape.Inside[end - start] >= 0 || shape.AsMade[end - start] is not (>= 0 and int partner))
                continue;
            int rest = traced.StrandOf(start + partner);
            if (rest != strand && shape.Inside[partner] < 0)
                words.Add($"Strands {traced.NumberOf(strand)} and {traced.NumberOf(rest)} are one fibre, broken in {traced.Plant.Parts[part].Name}.");
        }

        return words.Count is 0 or > MostTold ? null : string.Join(' ', words);
    }

    /// <summary>Plugs that sit in an adapter with nothing at its other side; null without any.</summary>
    private static string? OpenPlugs(ViewInput input)
    {
        Plant plant = input.Traced.Plant;
        if (plant.OpenPlugs.Count == 0)
            return null;
        var parts = new HashSet<int>();
        foreach (int strand in input.Selection.Strands)
        {
            ReadOnlySpan<int> positions = input.Traced.Strands[strand];
            parts.Add(input.Traced.Graph.PlaceOf(positions[0]).Port.Part);
            parts.Add(input.Traced.Graph.PlaceOf(positions[^1]).Port.Part);
        }

        string[] here = [.. plant.OpenPlugs.Where(p => parts.Contains(p.Plug.Part)).Select(p => plant.Address(p.Adapter)).Distinct()];
        return here.Length is 0 or > MostTold ? null : $"Open plugs sit in {string.Join(", ", here)}, with nothing at the other side.";
    }
}
