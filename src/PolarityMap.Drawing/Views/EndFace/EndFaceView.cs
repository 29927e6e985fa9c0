using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>
/// The connectors of every kind of mating, seen from their ferrules: key, pins, positions, colours, and what meets what.
/// </summary>
public sealed class EndFaceView : IDrawingView
{
    public string Name => "end-face";

    public string Summary => "Connector faces seen from the ferrule, and which position meets which.";

    public IReadOnlyList<PlannedSheet> Plan(ViewInput input)
    {
        List<MatingKind> kinds = KindPlan.Make(input);
        if (kinds.Count == 0)
            return [];
        foreach (SheetFormat format in Formats(input.Paper, kinds))
        {
            if (SheetPlan.Make(format, kinds) is { } sheets)
                return [.. sheets.Select((s, i) => new EndFaceSheet(input, format, s, sheets.Count == 1 ? Name : $"{Name}-{i + 1}"))];
        }

        throw new DrawingTooLargeException("the faces of a mating are larger than the paper that may be used; an end-face drawing needs A4 or larger");
    }

    /// <summary>The sheets to try: smaller than A4 or Letter nothing is legible, and a sheet that may grow does when nothing else takes it.</summary>
    private static IEnumerable<SheetFormat> Formats(PaperChoice paper, List<MatingKind> kinds)
    {
        const double leastArea = 60_000;
        foreach (SheetFormat format in paper.Formats)
        {
            if (format.WidthMm * format.HeightMm >= leastArea)
                yield return format;
        }

        if (!paper.MayGrow)
            yield break;
        SheetFormat a4 = SheetFormat.A4Landscape;
        double width = Math.Max(a4.WidthMm, kinds.Max(Panel.LeastWidth) + 36);
        for (double height = a4.HeightMm; height <= SheetFormat.MaxMm; height *= 2)
            yield return SheetFormat.Custom(Math.Ceiling(width), height);
    }
}
