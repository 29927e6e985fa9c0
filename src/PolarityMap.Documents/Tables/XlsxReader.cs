using System.Globalization;
using System.IO.Compression;
using System.Xml;
using PolarityMap.Documents.Text;

namespace PolarityMap.Documents.Tables;

/// <summary>
/// Reads the sheets of a workbook (ECMA-376). What is unpacked is bounded, document types and outside references are refused. Of a
/// formula the value that was kept with it is taken. Cells merged downwards all have the value of the first.
/// </summary>
public sealed class XlsxReader
{
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    /// <summary>Cells that merging may fill, in all sheets together.</summary>
    private const int MostMerged = 200_000;

    private static readonly XmlReaderSettings s_settings = new()
    {
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
        CloseInput = true,
    };

    private readonly ZipArchive _zip;
    private readonly List<string> _strings = [];
    private readonly List<TableProblem> _problems = [];
    private long _unpacked;
    private int _rows;
    private int _merged;

    private XlsxReader(ZipArchive zip) => _zip = zip;

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
            using var zip = new ZipArchive(new MemoryStream(bytes), ZipArchiveMode.Read);
            if (zip.Entries.Count > TableLimits.Entries)
                throw new TableException($"the workbook has more than {TableLimits.Entries} parts");
            var reader = new XlsxReader(zip);
            IReadOnlyList<TableSheet> sheets = reader.Sheets();
            problems = reader._problems;
            return sheets;
        }
        catch (Exception broken) when (broken is InvalidDataException or XmlException or IOException or NotSupportedException or FormatException or OverflowException)
        {
            throw new TableException("the workbook is damaged: it cannot be unpacked or is no XML inside");
        }
    }

    private List<TableSheet> Sheets()
    {
        string workbook = Target("_rels/.rels", "", "officeDocument").FirstOrDefault().Path ?? "xl/workbook.xml";
        if (_zip.GetEntry(workbook) is null)
            throw new TableException("this is a zip file and no workbook; save the table as XLSX or CSV");
        string folder = workbook.Contains('/') ? workbook[..(workbook.LastIndexOf('/') + 1)] : "";
        string relations = $"{folder}_rels/{workbook[folder.Length..]}.rels";
        if (Target(relations, folder, "sharedStrings").FirstOrDefault().Path is { } strings && _zip.GetEntry(strings) is not null)
            ReadStrings(strings);
        Dictionary<string, string> parts = Target(relations, folder, "worksheet").DistinctBy(t => t.Id).ToDictionary(t => t.Id, t => t.Path);
        var sheets = new List<TableSheet>();
        using XmlReader xml = Open(workbook);
        while (xml.Read())
        {
            if (xml.NodeType == XmlNodeType.Element && xml.LocalName == "sheet"
                && (xml.GetAttribute("id", Relations) ?? Attribute(xml, "id")) is { } id && parts.TryGetValue(id, out string? part) && _zip.GetEntry(part) is not null)
                sheets.Add(ReadSheet(part, Shown(xml.GetAttribute("name") ?? $"{sheets.Count + 1}")));
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

    /// <summary>An attribute by its local name: strict workbooks have another namespace for the same.</summary>
    private static string? Attribute(XmlReader xml, string name)
    {
        for (bool more = xml.MoveToFirstAttribute(); more; more = xml.MoveToNextAttribute())
        {
            if (xml.LocalName == name)
            {
                string value = xml.Value;
                xml.MoveToElement();
                return value;
            }
        }

        xml.MoveToElement();
        return null;
    }

    private List<(string Id, string Path)> Target(string relations, string folder, string type)
    {
        var targets = new List<(string, string)>();
        if (_zip.GetEntry(relations) is null)
            return targets;
        using XmlReader xml = Open(relations);
        while (xml.Read())
        {
            if (xml.NodeType == XmlNodeType.Element && xml.LocalName == "Relationship" && xml.GetAttribute("TargetMode") != "External"
                && xml.GetAttribute("Type")?.EndsWith("/" + type, StringComparison.Ordinal) == true && xml.GetAttribute("Target") is { } target)
                targets.Add((xml.GetAttribute("Id") ?? "", target.StartsWith('/') ? target[1..] : folder + target));
        }

        return targets;
    }

    private XmlReader Open(string part) => XmlReader.Create(new BoundedStream(this, _zip.GetEntry(part)!.Open()), s_settings);

    private void ReadStrings(string part)
    {
        const int most = 5_000_000;
        using XmlReader xml = Open(part);
        while (xml.Read())
        {
            if (xml.NodeType != XmlNodeType.Element || xml.LocalName != "si")
                continue;
            if (_strings.Count == most)
                throw new TableException($"the workbook has more than {most} texts");
            _strings.Add(Texts(xml));
        }
    }

    /// <summary>The text of a string item or inline string: all of its runs, without readings.</summary>
    private static string Texts(XmlReader xml)
    {
        string text = "";
        if (xml.IsEmptyElement)
            return text;
        int depth = xml.Depth;
        while (xml.Read() && xml.Depth > depth)
        {
            if (xml.NodeType != XmlNodeType.Element)
                continue;
            if (xml.LocalName == "rPh")
                Skip(xml);
            else if (xml.LocalName == "t")
                text += Content(xml);
            if (text.Length > TableLimits.CellLength * 2)
                throw new TableException($"a cell has more than {TableLimits.CellLength} characters");
        }

        return XlsxText.Unescape(text);
    }

    /// <summary>Reads past an element and stands on its end.</summary>
    private static void Skip(XmlReader xml)
    {
        if (xml.IsEmptyElement)
            return;
        int depth = xml.Depth;
        while (xml.Read() && xml.Depth > depth)
            continue;
    }

    /// <summary>The text inside an element; stands on its end.</summary>
    private static string Content(XmlReader xml)
    {
        if (xml.IsEmptyElement)
            return "";
        string text = "";
        int depth = xml.Depth;
        while (xml.Read() && xml.Depth > depth)
        {
            if (xml.NodeType is XmlNodeType.Text or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace or XmlNodeType.CDATA)
                text += xml.Value;
            if (text.Length > TableLimits.CellLength * 8)
                throw new TableException($"a cell has more than {TableLimits.CellLength} characters");
        }

        return text;
    }

    private TableSheet ReadSheet(string part, string name)
    {
        var rows = new List<TableRow>();
        var byNumber = new Dictionary<int, List<string>>();
        int number = 0;
        using XmlReader xml = Open(part);
        while (xml.Read())
        {
            if (xml.NodeType != XmlNodeType.Element)
                continue;
            if (xml.LocalName == "row")
            {
                if (++_rows > TableLimits.Rows)
                    throw new TableException($"the workbook has more than {TableLimits.Rows} rows");
                number = int.TryParse(xml.GetAttribute("r"), NumberStyles.None, CultureInfo.InvariantCulture, out int told) && told > 0 ? told : number + 1;
                List<string> cells = ReadRow(xml, name, number);
                rows.Add(new TableRow(number, cells));
                byNumber[number] = cells;
            }
            else if (xml.LocalName == "mergeCell" && xml.GetAttribute("ref") is { } merged)
            {
                Fill(merged, byNumber, rows);
            }
        }

        // Merging may have made rows that stood in the file with nothing in them.
        rows.RemoveAll(static r => r.IsBlank);
        rows.Sort(static (a, b) => a.Number.CompareTo(b.Number));
        return new TableSheet(name, rows);
    }

    private List<string> ReadRow(XmlReader xml, string sheet, int row)
    {
        var cells = new List<string>();
        if (xml.IsEmptyElement)
            return cells;
        int depth = xml.Depth;
        int column = 0;
        while (xml.Read() && xml.Depth > depth)
        {
            if (xml.NodeType != XmlNodeType.Element || xml.LocalName != "c")
                continue;
            column = xml.GetAttribute("r") is { } place ? ColumnOf(place, out _) : column + 1;
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

    private string ReadCell(XmlReader xml, string sheet, int row, int column)
    {
        string type = xml.GetAttribute("t") ?? "n";
        string? value = null;
        bool isFormula = false;
        if (!xml.IsEmptyElement)
        {
            int depth = xml.Depth;
            while (xml.Read() && xml.Depth > depth)
            {
                if (xml.NodeType != XmlNodeType.Element)
                    continue;
                switch (xml.LocalName)
                {
                    case "v":
                        value = Content(xml);
                        break;
                    case "is":
                        value = Texts(xml);
                        break;
                    case "f":
                        isFormula = true;
                        Skip(xml);
                        break;
                    default:
                        Skip(xml);
                        break;
                }
            }
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

    /// <summary>Counts what is unpacked, of all parts together.</summary>
    private sealed class BoundedStream(XlsxReader reader, Stream inner) : Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position
        {
            get => throw new NotSupportedException();
            set => throw new NotSupportedException();
        }

        public override int Read(byte[] buffer, int offset, int count) => Counted(inner.Read(buffer, offset, count));

        public override int Read(Span<byte> buffer) => Counted(inner.Read(buffer));

        public override void Flush() => inner.Flush();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        protected override void Dispose(bool disposing)
        {
            if (disposing)
                inner.Dispose();
            base.Dispose(disposing);
        }

        private int Counted(int read)
        {
            reader._unpacked += read;
            return reader._unpacked <= TableLimits.UnpackedBytes
                ? read : throw new TableException($"the workbook unpacks to more than {TableLimits.UnpackedBytes / 1024 / 1024} MiB");
        }
    }
}
