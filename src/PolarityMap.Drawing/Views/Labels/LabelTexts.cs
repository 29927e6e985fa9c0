using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Labels;

/// <summary>
/// The labels of a plant, part by part: one for both ends of every cable and one for every port. Each says what it is on and what
/// is at the far end, in the manner of TIA-606 (identifier and both ends; the words are ours).
/// </summary>
internal static class LabelTexts
{
    /// <summary>All labels, or where something was chosen those of the ports that the chosen strands pass.</summary>
    public static List<LabelText> Of(TracedPlant traced, Selection selection)
    {
        Plant plant = traced.Plant;
        var ends = new FarEnds(traced);
        bool[]? passed = selection.Choice.IsWhole ? null : Passed(traced, selection);
        var labels = new List<LabelText>();
        for (int i = 0; i < plant.Parts.Count; i++)
        {
            Part part = plant.Parts[i];
            if (selection.Choice.Part >= 0 && selection.Choice.Part != i)
                continue;
            bool isCable = part.Shape is { IsCable: true, Splices: 0 };
            for (int p = 0; p < part.Shape.Ports.Count; p++)
            {
                var port = new PortRef(i, p);

                // Bare fibres carry no label of their own: their cable's end does, and what they end in.
                if ((passed is not null && !passed[plant.NumberOf(port)]) || (!isCable && part.Shape.Ports[p].Face.Family == ConnectorFamily.Bare))
                    continue;
                labels.Add(new LabelText(plant.Address(port), isCable ? CableEnd(plant, ends, port) : Port(plant, ends, port), About(plant, port)));
            }
        }

        return labels;
    }

    private static string[] CableEnd(Plant plant, FarEnds ends, PortRef port)
    {
        string here = ends.HolderOf(port) is { } holder ? End(plant, holder) : "nothing yet";
        return [$"in {here}", $"far end {Several(plant, [.. ends.OtherEnds(port).Select(o => ends.HolderOf(o) ?? o)])}"];
    }

    private static string[] Port(Plant plant, FarEnds ends, PortRef port)
    {
        List<PortRef> behind = ends.Behind(port);
        string room = plant.Parts[port.Part].Room is { } own ? own : "";
        string[] far = [behind.Count == 0 ? "far end not connected" : $"far end {Several(plant, behind)}"];
        return room.Length == 0 ? far : [room, .. far];
    }

    /// <summary>Kind, length and network.</summary>
    private static string About(Plant plant, PortRef port)
    {
        Part part = plant.Parts[port.Part];
        string what = part.Caption.Count == 0 ? part.Kind : string.Join(' ', part.Shape.IsInterface ? part.Caption : part.Caption.Reverse());
        var words = new List<string> { what };
        if (part.Length is { } length)
            words.Add(length.ToString());
        if (plant.NetworkOf(port) is >= 0 and int network)
            words.Add(plant.Networks[network].Name);
        return string.Join(", ", words);
    }

    private static string End(Plant plant, PortRef port) =>
        plant.Parts[port.Part].Room is { } room ? $"{plant.Address(port)}, {room}" : plant.Address(port);

    private static string Several(Plant plant, IReadOnlyList<PortRef> ports)
    {
        PortRef[] different = [.. ports.Distinct()];
        return different.Length switch
        {
            0 => "none",
            1 => End(plant, different[0]),
            _ => $"{End(plant, different[0])} and {different.Length - 1} more",
        };
    }

    /// <summary>The ports that the chosen strands pass, and the adapters in which they meet.</summary>
    private static bool[] Passed(TracedPlant traced, Selection selection)
    {
        Plant plant = traced.Plant;
        var passed = new bool[plant.PortCount];
        foreach (int strand in selection.Strands)
        {
            foreach (int position in traced.Strands[strand])
            {
                passed[plant.NumberOf(traced.Graph.PlaceOf(position).Port)] = true;
                if (traced.MatingAt(position)?.Through is { } adapter)
                    passed[plant.NumberOf(adapter)] = true;
            }
        }

        return passed;
    }
}
