using System.Globalization;
using System.Text;
using System.Xml;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using PolarityMap.Documents.Text;
using SheetText = DocumentFormat.OpenXml.Spreadsheet.Text;

namespace PolarityMap.Documents.Tables;

/// <summary>
/// Reads the sheets of a workbook (ECMA-376). What is unpacked is bounded, document types and outside references are refused. Of a
/// formula the value that was kept with it is taken. Cells merged downwards all have the value of the first.
/// </summary>
public sealed class XlsxReader
{
    /// <summary>Cells that merging may fill, in all sheets together.</summary>
    private const int MostMerged = 200_000;

    /// <summary>How deep elements are nested; those of a sheet with all of its extensions come to less than half.</summary>
    private const int DeepestElement = 64;

    private readonly WorkbookPart _book;
    private readonly IReadOnlyDictionary<string, long> _sizes;
    private readonly List<string> _strings = [];
    private readonly List<TableProblem> _problems = [];
    private long _unpacked;
    private int _rows;
    private int _merged;

    private XlsxReader(WorkbookPart book, IReadOnlyDictionary<string, long> sizes)
    {
        _book = book;
        _sizes = sizes;
    }

    /// <summary>The sheets of a workbook in order, hidden ones too.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="problems">Takes the cells that have no value, each with its sheet, row and column.</param>
    /// <exception cref="TableException">It is no workbook, or more than is read.</exception>
    public static IReadOnlyList<TableSheet> Read(byte[] bytes, out IReadOnlyList<TableProblem> problems)
    {
        if (bytes.Length > TableLimits.FileBytes)
            throw new TableException($"the file has more than {TableLimits.FileBytes / 1024 / 1024} MiB");
        if (bytes.AsSpan().StartsWith((ReadOnlySpan<byte>)[0xD0, 0xCF, 0x11, 0xE0]))
            throw new TableException("this is a workbook of the old kind, or one with a password; save it as XLSX without one");
        try
        {
            IReadOnlyDictionary<string, long> sizes = XlsxPackage.Sizes(bytes);
            using SpreadsheetDocument document = SpreadsheetDocument.Open(new MemoryStream(bytes, false), false);
            var reader = new XlsxReader(document.WorkbookPart ?? throw new TableException(XlsxPackage.NoWorkbook), sizes);
            IReadOnlyList<TableSheet> sheets = reader.Sheets();
            problems = reader._problems;
            return sheets;
        }
        catch (Exception broken) when (broken is InvalidDataException or XmlException or IOException or NotSupportedException or FormatException
            or OverflowException or OpenXmlPackageException or InvalidOperationException or ArgumentException or KeyNotFoundException)
        {
            throw new TableException("the workbook is damaged: it cannot be unpacked or is no XML inside");
        }
    }

    private List<TableSheet> Sheets()
    {
        using OpenXmlReader xml = Open(_book);
        if (!xml.Read() || !Starts<Workbook>(xml))
            throw new TableException(XlsxPackage.NoWorkbook);
        if (_book.SharedStringTablePart is { } strings)
            ReadStrings(strings);
        var sheets = new List<TableSheet>();
        while (xml.Read())
        {
            if (Starts<Sheet>(xml) && Attribute(xml, "id") is { } id && _book.TryGetPartById(id, out OpenXmlPart? part) && part is WorksheetPart sheet)
                sheets.Add(ReadSheet(sheet, Shown(Attribute(xml, "name") ?? $"{sheets.Count + 1}")));
        }

        return sheets;
    }

    /// <summary>The name of a sheet stands in messages: what could steer a terminal or turn a line round is left out.</summary>
    private static string Shown(string name)
    {
        while (ForbiddenCharacters.IndexIn(name) is >= 0 and int at)
            name = name.Remove(at, 1);
        return name.Length <= 60 ? name : name[..60];
    }

    private static bool Starts<T>(OpenXmlReader xml)
        where T : OpenXmlElement => xml.IsStartElement && xml.ElementType == typeof(T);

    private static string? Attribute(OpenXmlReader xml, string name)
    {
        foreach (OpenXmlAttribute attribute in xml.Attributes)
        {
            if (attribute.LocalName == name)
                return attribute.Value;
        }

        return null;
    }

    /// <summary>A part that may be read as often as a workbook names it: each time counts as unpacked.</summary>
    private OpenXmlPartReader Open(OpenXmlPart part)
    {
        long size = _sizes.GetValueOrDefault(part.Uri.OriginalString.TrimStart('/'), TableLimits.UnpackedBytes);
        _unpacked += size;
        if (_unpacked > TableLimits.UnpackedBytes)
            throw new TableException($"the workbook unpacks to more than {TableLimits.UnpackedBytes / 1024 / 1024} MiB");
        size = Math.Max(1, size);
        CheckNesting(part, size);
        return new OpenXmlPartReader(part, new OpenXmlPartReaderOptions { MaxCharactersInPart = size, CloseStream = true });
    }

    /// <summary>The library follows nested elements by calling itself, so nests that would exhaust the stack have to be found before.</summary>
    private static void CheckNesting(OpenXmlPart part, long size)
    {
        var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, MaxCharactersInDocument = size, CloseInput = true };
        using var xml = XmlReader.Create(part.GetStream(FileMode.Open, FileAccess.Read), settings);
        while (xml.Read())
        {
            if (xml.Depth > DeepestElement)
                throw new InvalidDataException();
        }
    }

    private void ReadStrings(SharedStringTablePart part)
    {
        const int most = 5_000_000;
        using OpenXmlReader xml = Open(part);
        while (xml.Read())
        {
            if (!Starts<SharedStringItem>(xml))
                continue;
            if (_strings.Count == most)
                throw new TableException($"the workbook has more than {most} texts");
            _strings.Add(Texts(xml));
        }
    }

    /// <summary>The text of a string item or inline string: all of its runs, without readings. Stands on its end.</summary>
    private static string Texts(OpenXmlReader xml)
    {
        var text = new StringBuilder();
        bool isReading = false;
        int depth = xml.Depth;
        while (xml.Read() && xml.Depth > depth)
        {
            if (xml.ElementType == typeof(PhoneticRun))
                isReading = xml.IsStartElement;
            else if (!isReading && Starts<SheetText>(xml))
                text.Append(xml.GetText());
            if (text.Length > TableLimits.CellLength * 8)
                throw new TableException($"a cell has more than {TableLimits.CellLength} characters");
        }

        return XlsxText.Unescape(text.ToString());
    }

    private TableSheet ReadSheet(WorksheetPart part, string name)
    {
        var rows = new List<TableRow>();
        var byNumber = new Dictionary<int, List<string>>();
        int number = 0;
        using OpenXmlReader xml = Open(part);
        while (xml.Read())
        {
            if (Starts<Row>(xml))
            {
                if (++_rows > TableLimits.Rows)
                    throw new TableException($"the workbook has more than {TableLimits.Rows} rows");
                number = int.TryParse(Attribute(xml, "r"), NumberStyles.None, CultureInfo.InvariantCulture, out int told) && told > 0 ? told : number + 1;
                List<string> cells = ReadRow(xml, name, number);
                rows.Add(new TableRow(number, cells));
                byNumber[number] = cells;
            }
            else if (Starts<MergeCell>(xml) && Attribute(xml, "ref") is { } merged)
            {
                Fill(merged, byNumber, rows);
            }
        }

        // Merging may have made rows that stood in the file with nothing in them.
        rows.RemoveAll(static r => r.IsBlank);
        rows.Sort(static (a, b) => a.Number.CompareTo(b.Number));
        return new TableSheet(name, rows);
    }

    private List<string> ReadRow(OpenXmlReader xml, string sheet, int row)
    {
        var cells = new List<string>();
        int depth = xml.Depth;
        int column = 0;
        while (xml.Read() && xml.Depth > depth)
        {
            if (!Starts<Cell>(xml))
                continue;
            column = Attribute(xml, "r") is { } place ? ColumnOf(place, out _) : column + 1;
            string value = ReadCell(xml, sheet, row, column);
            if (value.Length == 0)
                continue;
            if (column is < 1 or > TableLimits.Columns)
                throw new TableException($"sheet {sheet}, row {row} has more than {TableLimits.Columns} columns");
            while (cells.Count < column)
                cells.Add("");
            cells[column - 1] = value;
        }

        return cells;
    }

    private string ReadCell(OpenXmlReader xml, string sheet, int row, int column)
    {
        string type = Attribute(xml, "t") ?? "n";
        string? value = null;
        bool isFormula = false;
        int depth = xml.Depth;
        while (xml.Read() && xml.Depth > depth)
        {
            if (!xml.IsStartElement)
                continue;
            Type element = xml.ElementType;
            if (element == typeof(CellValue))
                value = xml.GetText();
            else if (element == typeof(InlineString))
                value = Texts(xml);
            else if (element == typeof(CellFormula))
                isFormula = true;
        }

        if (isFormula && string.IsNullOrEmpty(value))
        {
            Report(sheet, row, column, "the cell holds a formula without a value; open and save the workbook in a spreadsheet program, or write the value");
            return "";
        }

        if (type == "e")
        {
            Report(sheet, row, column, $"the cell holds the error {(value is { Length: > 0 and <= 10 } ? value : "of a formula")}");
            return "";
        }

        string text = value is null ? "" : type switch
        {
            "s" => int.TryParse(value.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int index) && index < _strings.Count
                ? _strings[index] : throw new TableException("the workbook is damaged: a cell names a text that is not there"),
            "b" => value.Trim() == "1" ? "yes" : "no",
            "n" => Number(value),
            "str" => XlsxText.Unescape(value),
            _ => value,
        };
        return text.Length <= TableLimits.CellLength ? text : throw new TableException($"sheet {sheet}, row {row}: a cell has more than {TableLimits.CellLength} characters");
    }

    private void Report(string sheet, int row, int column, string reason)
    {
        if (_problems.Count < TableLimits.Rows)
            _problems.Add(new TableProblem(sheet, row, column, reason));
    }

    /// <summary>Numbers are kept as binary fractions, so that 0.1 may stand as 0.10000000000000001.</summary>
    private static string Number(string value) =>
        double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && Math.Abs(number) < 1e15
            ? ((decimal)number).ToString(CultureInfo.InvariantCulture) : value.Trim();

    private static int ColumnOf(string place, out int row)
    {
        int column = 0, i = 0;
        for (; i < place.Length && i < 4 && char.IsAsciiLetter(place[i]); i++)
            column = (column * 26) + (char.ToUpperInvariant(place[i]) - 'A' + 1);
        _ = int.TryParse(place.AsSpan(i), NumberStyles.None, CultureInfo.InvariantCulture, out row);
        return column;
    }

    /// <summary>Gives the value of the first cell of a merged area to those below it. Those beside it stay empty: that is how titles are made.</summary>
    private void Fill(string merged, Dictionary<int, List<string>> byNumber, List<TableRow> rows)
    {
        int colon = merged.IndexOf(':');
        if (colon < 0)
            return;
        int column = ColumnOf(merged[..colon], out int first);
        _ = ColumnOf(merged[(colon + 1)..], out int last);
        if (column is < 1 or > TableLimits.Columns || !byNumber.TryGetValue(first, out List<string>? from) || from.Count < column)
            return;
        string value = from[column - 1];
        for (int row = first + 1; row <= last && value.Length > 0; row++)
        {
            if (++_merged > MostMerged)
                throw new TableException($"more than {MostMerged} cells of the workbook are merged");
            if (!byNumber.TryGetValue(row, out List<string>? cells))
            {
                byNumber[row] = cells = [];
                rows.Add(new TableRow(row, cells));
            }

            while (cells.Count < column)
                cells.Add("");
            if (cells[column - 1].Length == 0)
                cells[column - 1] = value;
        }
    }
}
