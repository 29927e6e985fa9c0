using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views;

/// <summary>The sheets a drawing may go on, the preferred first.</summary>
/// <param name="Formats">Sheets of standard size, in the order in which they are tried.</param>
/// <param name="MayGrow">True when a drawing that none of them takes gets a sheet of its own size.</param>
public sealed record PaperChoice(IReadOnlyList<SheetFormat> Formats, bool MayGrow)
{
    /// <summary>ISO sheets from A5 to A3, and beyond that a sheet that grows with the drawing; nothing ever shrinks.</summary>
    public static PaperChoice SmallestThatIsClear { get; } =
        new([SheetFormat.A5Landscape, SheetFormat.A4Landscape, SheetFormat.A4Portrait, SheetFormat.A3Landscape], MayGrow: true);
}
