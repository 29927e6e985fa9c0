using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Documents.Tables;

/// <summary>
/// Writes schedules as one workbook after ECMA-376, a sheet for each: numbers as numbers with a format, texts as shared strings and
/// never as formulas, the first row frozen and with filters, columns as wide as what they hold. Same schedules, same bytes.
/// </summary>
public static class XlsxWriter
{
    /// <summary>Rows of a sheet, with its first one, that the format has.</summary>
    private const int MostRows = 1_048_576;

    /// <summary>Height of a line of 10-point text.</summary>
    private const int PointsPerLine = 13;

    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Package = "http://schemas.openxmlformats.org/package/2006/";

    /// <summary>The earliest time that a zip file can tell: the bytes know no clock.</summary>
    private static readonly DateTimeOffset s_time = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private static readonly XmlWriterSettings s_settings = new() { Encoding = new UTF8Encoding(false) };

    /// <summary>The bytes of the workbook.</summary>
    /// <param name="schedules">The schedules, one or more, in the order of the sheets.</param>
    /// <exception cref="TableException">A schedule has more rows than a sheet.</exception>
    public static byte[] Write(IReadOnlyList<Schedule> schedules)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Part(zip, "[Content_Types].xml", xml => ContentTypes(xml, schedules.Count));
            Part(zip, "_rels/.rels", static xml => Relationships(xml, [("officeDocument", "xl/workbook.xml")]));
            Part(zip, "xl/workbook.xml", xml => Workbook(xml, schedules));
            Part(zip, "xl/_rels/workbook.xml.rels", xml => Relationships(
                xml,
                [.. schedules.Select((_, i) => ("worksheet", $"worksheets/sheet{i + 1}.xml")), ("styles", "styles.xml"), ("sharedStrings", "sharedStrings.xml")]));
            Part(zip, "xl/styles.xml", XlsxStyles.Write);
            var strings = new SharedStrings();
            for (int i = 0; i < schedules.Count; i++)
            {
                if (schedules[i].Rows.Count >= MostRows)
                    throw new TableException($"the schedule '{schedules[i].Name}' has {schedules[i].Rows.Count} rows, and a sheet takes {MostRows - 1}; write it as CSV");
                Part(zip, $"xl/worksheets/sheet{i + 1}.xml", xml => Sheet(xml, schedules[i], strings));
            }

            Part(zip, "xl/sharedStrings.xml", strings.Write);
        }

        return bytes.ToArray();
    }

    /// <summary>The name of a schedule's sheet: its title, as far as a sheet's name goes.</summary>
    public static string SheetName(Schedule schedule)
    {
        string name = string.Concat(schedule.Title.Where(c => c is not ('[' or ']' or ':' or '*' or '?' or '/' or '\\')));
        return name.Length <= 31 ? name : name[..31];
    }

    private static void Part(ZipArchive zip, string name, Action<XmlWriter> write)
    {
        ZipArchiveEntry entry = zip.CreateEntry(name, CompressionLevel.Fastest);
        entry.LastWriteTime = s_time;
        using Stream stream = entry.Open();
        using var xml = XmlWriter.Create(stream, s_settings);
        xml.WriteStartDocument(standalone: true);
        write(xml);
    }

    private static void ContentTypes(XmlWriter xml, int sheets)
    {
        const string sheet = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
        xml.WriteStartElement("Types", Package + "content-types");
        Element(xml, "Default", ("Extension", "rels"), ("ContentType", "application/vnd.openxmlformats-package.relationships+xml"));
        Element(xml, "Default", ("Extension", "xml"), ("ContentType", "application/xml"));
        Element(xml, "Override", ("PartName", "/xl/workbook.xml"), ("ContentType", sheet + "sheet.main+xml"));
        Element(xml, "Override", ("PartName", "/xl/styles.xml"), ("ContentType", sheet + "styles+xml"));
        Element(xml, "Override", ("PartName", "/xl/sharedStrings.xml"), ("ContentType", sheet + "sharedStrings+xml"));
        for (int i = 1; i <= sheets; i++)
            Element(xml, "Override", ("PartName", $"/xl/worksheets/sheet{i}.xml"), ("ContentType", sheet + "worksheet+xml"));
        xml.WriteEndElement();
    }

    private static void Relationships(XmlWriter xml, IReadOnlyList<(string Type, string Target)> parts)
    {
        xml.WriteStartElement("Relationships", Package + "relationships");
        for (int i = 0; i < parts.Count; i++)
            Element(xml, "Relationship", ("Id", $"rId{i + 1}"), ("Type", $"{Relations}/{parts[i].Type}"), ("Target", parts[i].Target));
        xml.WriteEndElement();
    }

    private static void Workbook(XmlWriter xml, IReadOnlyList<Schedule> schedules)
    {
        xml.WriteStartElement("workbook", Main);
        xml.WriteAttributeString("xmlns", "r", null, Relations);
        xml.WriteStartElement("sheets", Main);
        for (int i = 0; i < schedules.Count; i++)
        {
            xml.WriteStartElement("sheet", Main);
            xml.WriteAttributeString("name", SheetName(schedules[i]));
            xml.WriteAttributeString("sheetId", $"{i + 1}");
            xml.WriteAttributeString("id", Relations, $"rId{i + 1}");
            xml.WriteEndElement();
        }

        // On paper every page begins with the headings.
        xml.WriteEndElement();
        xml.WriteStartElement("definedNames", Main);
        for (int i = 0; i < schedules.Count; i++)
        {
            string sheet = $"'{SheetName(schedules[i]).Replace("'", "''", StringComparison.Ordinal)}'!";
            Name(xml, "_xlnm._FilterDatabase", i, true, sheet + Range(schedules[i], "$"));
            Name(xml, "_xlnm.Print_Area", i, false, sheet + Range(schedules[i], "$", schedules[i].Columns.Count(c => !c.ForPrograms)));
            Name(xml, "_xlnm.Print_Titles", i, false, sheet + "$1:$1");
        }

        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static void Name(XmlWriter xml, string name, int sheet, bool hidden, string refersTo)
    {
        xml.WriteStartElement("definedName", Main);
        xml.WriteAttributeString("name", name);
        xml.WriteAttributeString("localSheetId", $"{sheet}");
        if (hidden)
            xml.WriteAttributeString("hidden", "1");
        xml.WriteString(refersTo);
        xml.WriteEndElement();
    }

    private static string Range(Schedule schedule, string mark, int? columns = null) =>
        $"{mark}A{mark}1:{mark}{TableProblem.Letters(columns ?? schedule.Columns.Count)}{mark}{schedule.Rows.Count + 1}";

    private static void Sheet(XmlWriter xml, Schedule schedule, SharedStrings strings)
    {
        xml.WriteStartElement("worksheet", Main);
        xml.WriteStartElement("sheetPr", Main);
        Element(xml, "pageSetUpPr", ("fitToPage", "1"));
        xml.WriteEndElement();
        xml.WriteStartElement("sheetViews", Main);
        xml.WriteStartElement("sheetView", Main);
        xml.WriteAttributeString("workbookViewId", "0");
        Element(xml, "pane", ("ySplit", "1"), ("topLeftCell", "A2"), ("activePane", "bottomLeft"), ("state", "frozen"));
        xml.WriteEndElement();
        xml.WriteEndElement();
        int[] widths = Widths(schedule);
        Columns(xml, widths);
        xml.WriteStartElement("sheetData", Main);
        string[] letters = [.. Enumerable.Range(1, schedule.Columns.Count).Select(TableProblem.Letters)];
        var row = new StringBuilder();
        for (int r = -1; r < schedule.Rows.Count; r++)
        {
            // Cells hold numbers alone, those of their texts among them, so a row needs no care for marks; most of the time goes here.
            row.Clear().Append(CultureInfo.InvariantCulture, $"<row r=\"{r + 2}\"");
            if (Lines(schedule, r, widths) is > 1 and int lines)
                row.Append(CultureInfo.InvariantCulture, $" ht=\"{lines * PointsPerLine}\" customHeight=\"1\"");
            row.Append('>');
            for (int c = 0; c < letters.Length; c++)
            {
                if (r < 0)
                    Text(row, letters[c], 1, XlsxStyles.Heading, strings.IndexOf(schedule.Columns[c].Heading));
                else
                    Value(row, letters[c], r + 2, schedule.Rows[r][c], schedule.Columns[c], strings);
            }

            xml.WriteRaw(row.Append("</row>").ToString());
        }

        xml.WriteEndElement();
        Element(xml, "autoFilter", ("ref", Range(schedule, "")));
        Element(xml, "printOptions", ("gridLines", "1"));
        Element(xml, "pageMargins", ("left", "0.4"), ("right", "0.4"), ("top", "0.6"), ("bottom", "0.6"), ("header", "0.3"), ("footer", "0.3"));
        Element(xml, "pageSetup", ("paperSize", "9"), ("orientation", "landscape"), ("fitToWidth", "1"), ("fitToHeight", "0"));
        xml.WriteStartElement("headerFooter", Main);
        xml.WriteElementString("oddFooter", Main, "&L&A&RPage &P of &N");
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static void Value(StringBuilder row, string letters, int number, Cell cell, ScheduleColumn column, SharedStrings strings)
    {
        if (cell.Text is { } text)
            Text(row, letters, number, column.ForPrograms ? XlsxStyles.OneLine : XlsxStyles.Text, strings.IndexOf(text));
        else if (cell.Number is { } value)
            row.Append(CultureInfo.InvariantCulture, $"<c r=\"{letters}{number}\" s=\"{XlsxStyles.Of(column.Kind)}\"><v>{value}</v></c>");
        else if (column.Kind == CellKind.Blank)
            row.Append(CultureInfo.InvariantCulture, $"<c r=\"{letters}{number}\" s=\"{XlsxStyles.Of(column.Kind)}\"/>");
    }

    private static void Text(StringBuilder row, string letters, int number, string style, int index) =>
        row.Append(CultureInfo.InvariantCulture, $"<c r=\"{letters}{number}\" s=\"{style}\" t=\"s\"><v>{index}</v></c>");

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

    private static void Columns(XmlWriter xml, int[] widths)
    {
        xml.WriteStartElement("cols", Main);
        for (int c = 0; c < widths.Length; c++)
        {
            string number = $"{c + 1}";
            Element(xml, "col", ("min", number), ("max", number), ("width", $"{widths[c]}"), ("customWidth", "1"));
        }

        xml.WriteEndElement();
    }

    /// <summary>
    /// How many lines a row takes, the headings being row -1: not every program makes rows as high as their texts. A width counts
    /// digits, which are wider than most letters, and so leaves room for words that are not broken.
    /// </summary>
    private static int Lines(Schedule schedule, int row, int[] widths)
    {
        int lines = 1;
        for (int c = 0; c < widths.Length; c++)
        {
            int length = row < 0 ? schedule.Columns[c].Heading.Length + 2 : schedule.Columns[c].ForPrograms ? 0 : schedule.Rows[row][c].Text?.Length ?? 0;
            if (length > widths[c])
                lines = Math.Max(lines, (length + widths[c] - 1) / widths[c]);
        }

        // The format has rows of at most 409 points.
        return Math.Min(lines, 30);
    }

    private static void Element(XmlWriter xml, string name, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        xml.WriteStartElement(name);
        foreach ((string attribute, string value) in attributes)
            xml.WriteAttributeString(attribute, value);
        xml.WriteEndElement();
    }

    /// <summary>Every text once, numbered in the order in which cells need them.</summary>
    private sealed class SharedStrings
    {
        private readonly Dictionary<string, int> _index = new(StringComparer.Ordinal);
        private readonly List<string> _texts = [];
        private int _uses;

        public int IndexOf(string text)
        {
            _uses++;
            if (_index.TryGetValue(text, out int index))
                return index;
            _texts.Add(text);
            return _index[text] = _texts.Count - 1;
        }

        public void Write(XmlWriter xml)
        {
            xml.WriteStartElement("sst", Main);
            xml.WriteAttributeString("count", $"{_uses}");
            xml.WriteAttributeString("uniqueCount", $"{_texts.Count}");
            foreach (string text in _texts)
            {
                xml.WriteStartElement("si", Main);
                xml.WriteStartElement("t", Main);
                if (text[0] is ' ' or '\t' or '\n' || text[^1] is ' ' or '\t' or '\n')
                    xml.WriteAttributeString("xml", "space", null, "preserve");
                xml.WriteString(XlsxText.Escape(text));
                xml.WriteEndElement();
                xml.WriteEndElement();
            }

            xml.WriteEndElement();
        }
    }
}
