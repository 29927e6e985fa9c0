namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// How far strands are drawn beyond their open ends: a strand has its number at both its ends, so also at an open one.
/// </summary>
internal static class OpenEnds
{
    /// <summary>How far a strand is drawn beyond an open end.</summary>
    /// <param name="text">The words of the sheet.</param>
    /// <param name="way">The strand.</param>
    /// <param name="row">Its row at the open end.</param>
    public static double Length(SheetText text, Way way, Row row) =>
        Measures.Tenths(Arrow(row) + text.LabelWidth(way.Strand) + (2 * Measures.LabelLead) + Ring(text, way));

    /// <summary>From the box to the middle of the number on an open end.</summary>
    public static double LabelAt(SheetText text, Way way, Row row) => (Arrow(row) + Length(text, way, row) - Ring(text, way)) / 2;

    /// <summary>Half of the ring at the ends of a loop, to be kept free of its number and of signs.</summary>
    public static double Ring(SheetText text, Way way) => text.Traced.Strands.IsLoop(way.Strand) ? 1.1 : 0;

    private static double Arrow(Row row) => row.Lane is null ? 0 : Scene.Marks.ArrowLength + 0.6;
}
