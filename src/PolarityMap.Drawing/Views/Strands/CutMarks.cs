namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// The marks of a strand that goes on on another sheet: <c>→ /2.C4</c> where it leaves, <c>/1.H4 →</c> where it arrives, sheet
/// and zone of the other end (IEC 61082-1: an interrupted line carries a reference to its other end).
/// </summary>
internal static class CutMarks
{
    /// <summary>Room for a mark of three figures of sheets, and from it to the label.</summary>
    public static readonly double Width = SheetText.Width("→ /999.F8") + 1.2;

    /// <summary>Room for the label of a strand and the mark.</summary>
    public static double Room(SheetText text, int strand) => text.LabelWidth(strand) + (2 * Measures.LabelLead) + Width;

    public static string Leaving(int sheet, string zone) => $"→ /{sheet}.{zone}";

    public static string Arriving(int sheet, string zone) => $"/{sheet}.{zone} →";
}

/// <summary>Where a strand is cut: between two of its visits to parts, or where its band ends.</summary>
/// <param name="Strand">The strand.</param>
/// <param name="At">Index of the visit before the cut; where a band ends, -1 less the column before the cut.</param>
internal readonly record struct Cut(int Strand, int At)
{
    public static Cut AfterColumn(int strand, int column) => new(strand, -1 - column);
}

/// <summary>Where each end of each cut lies: filled while sheets are planned, asked when they are drawn.</summary>
internal sealed class CutRegister
{
    /// <summary>One end of a cut.</summary>
    /// <param name="Sheet">The sheet it is on, counted within the view from 0.</param>
    /// <param name="Zone">Its zone there.</param>
    public readonly record struct End(int Sheet, string Zone);

    private readonly Dictionary<Cut, End> _leaving = [];
    private readonly Dictionary<Cut, End> _arriving = [];

    public void Leaves(Cut cut, int sheet, string zone) => _leaving[cut] = new End(sheet, zone);

    public void Arrives(Cut cut, int sheet, string zone) => _arriving[cut] = new End(sheet, zone);

    /// <summary>Where the strand comes from at a cut, or null when that is on no sheet.</summary>
    public End? Before(Cut cut) => _leaving.TryGetValue(cut, out End end) ? end : null;

    /// <summary>Where the strand goes on at a cut, or null when that is on no sheet.</summary>
    public End? After(Cut cut) => _arriving.TryGetValue(cut, out End end) ? end : null;
}
