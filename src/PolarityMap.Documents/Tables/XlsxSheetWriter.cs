using System.Globalization;
using System.Text;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using PolarityMap.Core.Schedules;
using Cell = PolarityMap.Core.Schedules.Cell;
using SheetCell = DocumentFormat.OpenXml.Spreadsheet.Cell;

namespace PolarityMap.Documents.Tables;

/// <summary>Writes one sheet, row by row: a large plant has a million cells, which are not held as objects.</summary>
internal sealed class XlsxSheetWriter
{
    /// <summary>Height of a line of 10-point text.</summary>
    private const int PointsPerLine = 13;

    private readonly OpenXmlWriter _xml;
    private readonly Schedule _schedule;
    private readonly XlsxStrings _strings;
    private readonly int[] _widths;
    private readonly string[] _letters;

    // Of elements that come a million times there is one each; what differs is told by attributes. A typed element looks its names up
    // each time, which takes longer than all else; one that only has names does not.
    private readonly OpenXmlUnknownElement _row = Named(new Row());
    private readonly OpenXmlUnknownElement _cell = Named(new SheetCell());
    private readonly CellValue _value = new();
    private readonly List<OpenXmlAttribute> _attributes = [];

    private XlsxSheetWriter(OpenXmlWriter xml, Schedule schedule, XlsxStrings strings)
    {
        _xml = xml;
        _schedule = schedule;
        _strings = strings;
        _widths = Widths(schedule);
        _letters = [.. Enumerable.Range(1, schedule.Columns.Count).Select(TableProblem.Letters)];
    }

    public static void Write(WorksheetPart part, Schedule schedule, XlsxStrings strings)
    {
        using var xml = new OpenXmlPartWriter(part, new UTF8Encoding(false));
        new XlsxSheetWriter(xml, schedule, strings).Write();
    }

    private void Write()
    {
        _xml.WriteStartDocument(true);
        _xml.WriteStartElement(new Worksheet());
        _xml.WriteElement(new SheetProperties(new PageSetupProperties { FitToPage = true }));
        _xml.WriteElement(new SheetViews(new SheetView(
            new Pane { VerticalSplit = 1, TopLeftCell = "A2", ActivePane = PaneValues.BottomLeft, State = PaneStateValues.Frozen })
        { WorkbookViewId = 0 }));
        _xml.WriteElement(new Columns(_widths.Select(static (w, c) => new Column { Min = (uint)(c + 1), Max = (uint)(c + 1), Width = w, CustomWidth = true })));
        _xml.WriteStartElement(new SheetData());
        for (int r = -1; r < _schedule.Rows.Count; r++)
            WriteRow(r);
        _xml.WriteEndElement();
        _xml.WriteElement(new AutoFilter { Reference = XlsxWriter.Range(_schedule, "") });
        _xml.WriteElement(new PrintOptions { GridLines = true });
        _xml.WriteElement(new PageMargins { Left = 0.4, Right = 0.4, Top = 0.6, Bottom = 0.6, Header = 0.3, Footer = 0.3 });
        _xml.WriteElement(new PageSetup { PaperSize = 9, Orientation = OrientationValues.Landscape, FitToWidth = 1, FitToHeight = 0 });
        _xml.WriteElement(new HeaderFooter(new OddFooter("&L&A&RPage &P of &N")));
        _xml.WriteEndElement();
    }

    /// <summary>A row of the schedule, the headings being row -1.</summary>
    private void WriteRow(int r)
    {
        string number = (r + 2).ToString(CultureInfo.InvariantCulture);
        _attributes.Clear();
        Attribute("r", number);
        if (Lines(r) is > 1 and int lines)
        {
            Attribute("ht", (lines * PointsPerLine).ToString(CultureInfo.InvariantCulture));
            Attribute("customHeight", "1");
        }

        _xml.WriteStartElement(_row, _attributes, []);
        for (int c = 0; c < _letters.Length; c++)
        {
            if (r < 0)
                WriteText(_letters[c] + number, XlsxStyles.Heading, _schedule.Columns[c].Heading);
            else
                WriteCell(_letters[c] + number, _schedule.Rows[r][c], _schedule.Columns[c]);
        }

        _xml.WriteEndElement();
    }

    private void WriteCell(string place, Cell cell, ScheduleColumn column)
    {
        if (cell.Text is { } text)
            WriteText(place, column.ForPrograms ? XlsxStyles.OneLine : XlsxStyles.Text, text);
        else if (cell.Number is { } value)
            WriteCell(place, XlsxStyles.Of(column.Kind), value.ToString(CultureInfo.InvariantCulture), isText: false);
        else if (column.Kind == CellKind.Blank)
            WriteCell(place, XlsxStyles.Of(column.Kind), null, isText: false);
    }

    private void WriteText(string place, string style, string text) =>
        WriteCell(place, style, _strings.IndexOf(text).ToString(CultureInfo.InvariantCulture), isText: true);

    private void WriteCell(string place, string style, string? value, bool isText)
    {
        _attributes.Clear();
        Attribute("r", place);
        Attribute("s", style);
        if (isText)
            Attribute("t", "s");
        _xml.WriteStartElement(_cell, _attributes, []);
        if (value is not null)
        {
            _xml.WriteStartElement(_value, [], []);
            _xml.WriteString(value);
            _xml.WriteEndElement();
        }

        _xml.WriteEndElement();
    }

    private static OpenXmlUnknownElement Named(OpenXmlElement element) => new(element.Prefix, element.LocalName, element.NamespaceUri);

    private void Attribute(string name, string value) => _attributes.Add(new OpenXmlAttribute(name, "", value));

    /// <summary>Widths in characters, from the first rows: the filter's button takes two beside the heading.</summary>
    private static int[] Widths(Schedule schedule)
    {
        const int least = 6, most = 30, heading = 12, measured = 2_000;
        var widths = new int[schedule.Columns.Count];
        for (int c = 0; c < widths.Length; c++)
        {
            int width = Math.Max(least, Math.Min(schedule.Columns[c].Heading.Length, heading) + 2);
            for (int r = 0; r < schedule.Rows.Count && r < measured; r++)
                width = Math.Max(width, (schedule.Rows[r][c].Text?.Length ?? 6) + 1);
            widths[c] = Math.Min(width, most);
        }

        return widths;
    }

    /// <summary>
    /// How many lines a row takes, the headings being row -1: not every program makes rows as high as their texts. A width counts
    /// digits, which are wider than most letters, and so leaves room for words that are not broken.
    /// </summary>
    private int Lines(int row)
    {
        int lines = 1;
        for (int c = 0; c < _widths.Length; c++)
        {
            ScheduleColumn column = _schedule.Columns[c];
            int length = row < 0 ? column.Heading.Length + 2 : column.ForPrograms ? 0 : _schedule.Rows[row][c].Text?.Length ?? 0;
            if (length > _widths[c])
                lines = Math.Max(lines, (length + _widths[c] - 1) / _widths[c]);
        }

        // The format has rows of at most 409 points.
        return Math.Min(lines, 30);
    }
}
