using DocumentFormat.OpenXml.Spreadsheet;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Documents.Tables;

/// <summary>How cells look: a format for each kind, bold headings on grey, blanks with a border to be filled in.</summary>
internal static class XlsxStyles
{
    public const string Text = "1";
    public const string Heading = "5";
    public const string OneLine = "6";

    // Numbers of formats that every program knows (ECMA-376 part 1, 18.8.30).
    private const uint General = 0;
    private const uint AsWhole = 1;
    private const uint AsHundredths = 2;
    private const uint AsText = 49;

    /// <summary>The number of the style of a kind's numbers and blanks.</summary>
    public static string Of(CellKind kind) => kind switch
    {
        CellKind.Whole => "2",
        CellKind.Metres or CellKind.Decibels => "3",
        CellKind.Blank => "4",
        _ => Text,
    };

    public static Stylesheet All() => new(
        new Fonts(Letters(isBold: false), Letters(isBold: true)) { Count = 2 },
        new Fills(
            new Fill(new PatternFill { PatternType = PatternValues.None }),
            new Fill(new PatternFill { PatternType = PatternValues.Gray125 }),
            new Fill(new PatternFill(new ForegroundColor { Rgb = "FFE6E6E6" }, new BackgroundColor { Indexed = 64 }) { PatternType = PatternValues.Solid }))
        { Count = 3 },
        new Borders(
            new Border(new LeftBorder(), new RightBorder(), new TopBorder(), new BottomBorder(), new DiagonalBorder()),
            new Border(
                new LeftBorder { Style = BorderStyleValues.Thin },
                new RightBorder { Style = BorderStyleValues.Thin },
                new TopBorder { Style = BorderStyleValues.Thin },
                new BottomBorder { Style = BorderStyleValues.Thin },
                new DiagonalBorder()))
        { Count = 2 },
        new CellStyleFormats(new CellFormat { NumberFormatId = General, FontId = 0, FillId = 0, BorderId = 0 }) { Count = 1 },
        new CellFormats(
            Format(General),
            Format(AsText, new Alignment { Vertical = VerticalAlignmentValues.Top, WrapText = true }),
            Format(AsWhole, OnTheRight()),
            Format(AsHundredths, OnTheRight()),
            Format(General, border: 1),
            Format(AsText, new Alignment { Vertical = VerticalAlignmentValues.Top, WrapText = true }, font: 1, fill: 2),
            Format(AsText, new Alignment { Vertical = VerticalAlignmentValues.Top }))
        { Count = 7 });

    private static Font Letters(bool isBold)
    {
        var font = new Font(new FontSize { Val = 10 }, new FontName { Val = "Arial" });
        if (isBold)
            font.PrependChild(new Bold());
        return font;
    }

    private static Alignment OnTheRight() => new() { Horizontal = HorizontalAlignmentValues.Right, Vertical = VerticalAlignmentValues.Top, Indent = 1 };

    private static CellFormat Format(uint number, Alignment? alignment = null, uint font = 0, uint fill = 0, uint border = 0) => new()
    {
        NumberFormatId = number,
        FontId = font,
        FillId = fill,
        BorderId = border,
        FormatId = 0,
        ApplyNumberFormat = number == General ? null : true,
        ApplyFont = font == 0 ? null : true,
        ApplyFill = fill == 0 ? null : true,
        ApplyBorder = border == 0 ? null : true,
        ApplyAlignment = alignment is null ? null : true,
        Alignment = alignment,
    };
}
