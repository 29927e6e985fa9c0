using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Text;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views;

namespace PolarityMap.Cli.Input;

/// <summary>Turns what a call of <c>draw</c> names into what a view takes.</summary>
internal static class DrawChoice
{
    /// <summary>The words for <see cref="SheetDivision"/> on the command line.</summary>
    public static readonly IReadOnlyList<string> Divisions = ["network", "room", "trunk"];

    public static readonly IReadOnlyList<string> Papers = ["A4", "A3", "Letter", "Tabloid"];

    public static readonly IReadOnlyList<string> Orientations = ["landscape", "portrait"];

    /// <summary>Index of a name, or -1 without one.</summary>
    /// <exception cref="CallException">Nothing has this name.</exception>
    public static int IndexOf(string? wanted, string what, IEnumerable<string> names)
    {
        if (wanted is null)
            return -1;
        string[] all = [.. names];
        int index = Array.IndexOf(all, wanted);
        if (index >= 0)
            return index;
        string? near = NearestWord.Find(wanted, all);
        throw new CallException($"there is no {what} '{wanted}'"
            + (near is not null ? $"; did you mean '{near}'?" : all.Length is > 0 and <= 12 ? $"; expected one of {string.Join(", ", all)}" : ""));
    }

    /// <summary>The link that an address names, that of either end or of both as the document writes it; -1 without one.</summary>
    /// <exception cref="CallException">No link has such an end, or several do.</exception>
    public static int LinkOf(string? wanted, Plant plant)
    {
        if (wanted is null)
            return -1;
        var found = new List<int>();
        for (int i = 0; i < plant.Links.Count; i++)
        {
            string from = plant.Address(plant.Links[i].From), to = plant.Address(plant.Links[i].To);
            if (wanted == from || wanted == to || wanted == $"{from} to {to}" || wanted == $"{to} to {from}")
                found.Add(i);
        }

        if (found.Count == 1)
            return found[0];
        if (found.Count > 1)
            throw new CallException($"'{wanted}' is an end of {found.Count} links; name both ends, such as '{plant.Address(plant.Links[found[0]].From)} to {plant.Address(plant.Links[found[0]].To)}'");
        string? near = NearestWord.Find(wanted, plant.Links.SelectMany(l => (string[])[plant.Address(l.From), plant.Address(l.To)]));
        throw new CallException($"there is no link '{wanted}'" + (near is not null ? $"; did you mean '{near}'?" : "; name an end of one, such as SW-L/1"));
    }

    /// <summary>The number of a strand; 0 without one.</summary>
    /// <exception cref="CallException">No strand has this number.</exception>
    public static int StrandOf(int? wanted, TracedPlant traced)
    {
        if (wanted is not { } number)
            return 0;
        return number >= 1 && number <= traced.Strands.Count ? number
            : throw new CallException($"there is no strand {number}; they are numbered 1 to {traced.Strands.Count}");
    }

    /// <summary>The paper that a call names, both ways round unless it says which; the usual choice without one.</summary>
    public static PaperChoice PaperOf(string? size, string? orientation, bool mayGrow)
    {
        SheetFormat[] all =
        [
            SheetFormat.A4Landscape, SheetFormat.A4Portrait, SheetFormat.A3Landscape, SheetFormat.A3Portrait,
            SheetFormat.LetterLandscape, SheetFormat.LetterPortrait, SheetFormat.TabloidLandscape, SheetFormat.TabloidPortrait,
        ];
        if (size is null && orientation is null)
            return PaperChoice.SmallestThatIsClear with { MayGrow = mayGrow };
        return new PaperChoice(
            [.. all.Where(f => (size is null ? f.Name is "A4" or "A3" : f.Name == size) && (orientation is null || f.IsLandscape == (orientation == Orientations[0])))],
            mayGrow && size is null);
    }
}
