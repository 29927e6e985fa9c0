using PolarityMap.Core.Deviations;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Remedies;
using PolarityMap.Documents.Binding;

namespace PolarityMap.Documents.Editing;

/// <summary>Changes of a plant as entries of an as-built section.</summary>
public static class OverlayEntries
{
    /// <summary>One entry for each difference, in the words in which one would tell it: what is exchanged, moved, put in.</summary>
    /// <param name="plant">The plant as it is.</param>
    /// <param name="changes">The changes, in the order in which they are laid.</param>
    public static IReadOnlyList<OverlayEntry> Of(Plant plant, IReadOnlyList<Change> changes)
    {
        var entries = new List<OverlayEntry>();
        foreach (Change change in changes)
        {
            string? comment = Comment(change);
            AddParts(plant, change, ref comment, entries);
            foreach (Difference difference in change.Differences)
            {
                if (Line(plant, difference) is not (var list, var text))
                    continue;
                entries.Add(new ListEntry(list, text, comment));
                comment = null;
            }
        }

        return entries;
    }

    /// <summary>
    /// The same with each plug named by the port that it comes to sit in. It says the same whatever an as-built section says
    /// before it, so it also serves where one lists moves that would be carried out after these.
    /// </summary>
    /// <param name="plant">The plant as it is.</param>
    /// <param name="after">The plant with the changes in it, its parts numbered as before.</param>
    /// <param name="changes">The changes.</param>
    public static IReadOnlyList<OverlayEntry> ByPlugs(Plant plant, Plant after, IReadOnlyList<Change> changes)
    {
        var entries = new List<OverlayEntry>();
        foreach (Change change in changes)
        {
            string? comment = Comment(change);
            AddParts(plant, change, ref comment, entries);
            foreach (PlugPulled pulled in change.Differences.OfType<PlugPulled>())
                entries.Add(new ListEntry(DocumentKeys.Unplugged, plant.Address(pulled.Port), comment));
        }

        HashSet<(PortRef, PortRef, int)> before = [.. Seats(plant)];
        foreach ((PortRef plug, PortRef port, int position) in Seats(after).Where(s => !before.Contains(s)))
            entries.Add(new ListEntry(DocumentKeys.Plugged, $"{plant.Address(plug)} to {Address(plant, port, position)}", $"remedy: {plant.Address(plug)} sits here"));
        return entries;
    }

    /// <summary>Every plug of a cable with the port or adapter that it sits in.</summary>
    private static IEnumerable<(PortRef Plug, PortRef Port, int Position)> Seats(Plant plant)
    {
        foreach (Mating mating in plant.Matings)
        {
            if (IsPlug(plant, mating.A))
                yield return (mating.A, mating.Through ?? mating.B, mating.PositionOfB);
            if (IsPlug(plant, mating.B) && (mating.Through is not null || !IsPlug(plant, mating.A)))
                yield return (mating.B, mating.Through ?? mating.A, mating.PositionOfA);
        }
    }

    private static bool IsPlug(Plant plant, PortRef port) => plant.Parts[port.Part].Shape.IsCable && plant.Port(port).Face.Family != ConnectorFamily.Bare;

    private static string Comment(Change change) => $"remedy: {change.Text}";

    /// <summary>One entry for each part, with all of its attributes.</summary>
    private static void AddParts(Plant plant, Change change, ref string? comment, List<OverlayEntry> entries)
    {
        foreach (IGrouping<int, PartDiffers> part in change.Differences.OfType<PartDiffers>().GroupBy(d => d.Part))
        {
            entries.Add(new PartEntry(plant.Parts[part.Key].Name, [.. part.Select(d => (d.Attribute, Written(d.Value)))], comment));
            comment = null;
        }
    }

    private static (string List, string Text)? Line(Plant plant, Difference difference) => difference switch
    {
        PlugsExchanged pair => (DocumentKeys.Exchanged, $"{plant.Address(pair.A)} and {plant.Address(pair.B)}"),
        PlugMoved move => (DocumentKeys.Moved, $"{plant.Address(move.From)} to {plant.Address(move.To)}"),
        PlugPulled pull => (DocumentKeys.Unplugged, plant.Address(pull.Port)),
        PlugPut put => (DocumentKeys.Plugged, $"{plant.Address(put.Plug)} to {Address(plant, put.Port, put.Position)}"),
        _ => null,
    };

    private static string Address(Plant plant, PortRef port, int position) => position == 0 ? plant.Address(port) : plant.Address(port, position);

    /// <summary>A value as it stands between braces; lists are written already.</summary>
    private static string Written(string value) => value.StartsWith('[') ? value : AttributeWords.Quoted(value);
}
