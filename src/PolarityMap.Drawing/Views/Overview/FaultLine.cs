using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>The faulty strands that end at a box, in words behind a sign.</summary>
/// <param name="IsError">True for errors, false for warnings.</param>
/// <param name="Words">How many strands, and the codes, in lines.</param>
internal sealed record FaultLine(bool IsError, IReadOnlyList<string> Words)
{
    private const double SignRoom = Measures.Sign + 1.2;

    public double Height => (Words.Count * Measures.Line) + 0.8;

    public double Width
    {
        get
        {
            double width = 0;
            foreach (string word in Words)
                width = Math.Max(width, SheetText.Width(word));
            return width + SignRoom;
        }
    }

    /// <summary>One line for errors and one for warnings, as far as there are any.</summary>
    public static IReadOnlyList<FaultLine> Of(FaultTally? tally, double width)
    {
        var lines = new List<FaultLine>(2);
        if (tally is null)
            return lines;
        if (tally.Errors > 0)
            lines.Add(Of(true, tally.Errors, tally.ErrorCodes, width));
        if (tally.WarningCodes.Count > 0)
            lines.Add(Of(false, tally.Warnings, tally.WarningCodes, width));
        return lines;
    }

    /// <summary>Draws it in the middle between two edges, below a height.</summary>
    public void Draw(double centreX, double top, List<SceneElement> elements)
    {
        double left = centreX - (Width / 2);
        double middle = top + 0.8 + (CapHeights.Strand / 2);
        elements.Add(IsError ? Marks.Error(left + (Measures.Sign / 2), middle, Measures.Sign) : Marks.Warning(left + (Measures.Sign / 2), middle, Measures.Sign));
        for (int i = 0; i < Words.Count; i++)
            elements.Add(Label.CentredOn(left + SignRoom, middle + (i * Measures.Line), Words[i], CapHeights.Strand, Anchor.Start, Palette.Ink));
    }

    private static FaultLine Of(bool isError, int strands, SortedSet<string> codes, double width)
    {
        string count = strands > 0 ? OverviewWords.Counted(strands, "strand") + ": " : "";
        return new FaultLine(isError, SheetText.Wrapped(count + string.Join(", ", codes), width - SignRoom));
    }
}
