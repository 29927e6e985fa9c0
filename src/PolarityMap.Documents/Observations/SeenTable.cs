using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Tables;
using PolarityMap.Documents.Text;

namespace PolarityMap.Documents.Observations;

/// <summary>Reads observations from a table: a heading and then a row for each.</summary>
internal sealed class SeenTable(string path, ProblemList problems)
{
    private readonly NodeReader _reader = new(problems);
    private readonly List<SeenEntry> _entries = [];

    /// <summary>True when a file is a table and no YAML: by its name, or because it is a workbook.</summary>
    public static bool Is(string path, ReadOnlySpan<byte> bytes) =>
        path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) || path.EndsWith(".tsv", StringComparison.OrdinalIgnoreCase) || IsWorkbook(path, bytes);

    /// <summary>True when a file is a workbook, to which nothing can be added.</summary>
    public static bool IsWorkbook(string path, ReadOnlySpan<byte> bytes) => path.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase) || bytes.StartsWith("PK"u8);

    public IReadOnlyList<SeenEntry> Read(byte[] bytes)
    {
        try
        {
            if (IsWorkbook(path, bytes))
                ReadWorkbook(bytes);
            else
                ReadText(CsvReader.Decode(bytes));
        }
        catch (TableException wrong)
        {
            problems.Add(new SourcePlace(path, 0, 0), wrong.Message);
        }

        return _entries;
    }

    private void ReadText(string text)
    {
        if (!ForbiddenCharacters.Check(text, path, problems))
            return;
        var lines = new LineIndex(text, path);
        List<PlacedRow> rows = CsvReader.ReadPlaced(text, out _);
        ReadRows([.. rows.Select(r => r.Row)], (row, column) =>
        {
            PlacedRow placed = rows[row];
            if (column >= placed.CellStarts.Count)
                return _ => lines.PlaceAt(placed.Start);
            int start = placed.CellStarts[column], at = start;
            string cell = placed.Row[column];
            while (at < text.Length && text[at] is ' ' or '"' or '\t')
                at++;

            // Where quotes are doubled or the like the characters of a cell are not those of the file.
            bool asWritten = text.AsSpan(at).StartsWith(cell, StringComparison.Ordinal);
            return i => lines.PlaceAt(asWritten ? at + i : start);
        });
    }

    /// <summary>A workbook has no lines: rows and columns are told instead.</summary>
    private void ReadWorkbook(byte[] bytes)
    {
        IReadOnlyList<TableSheet> sheets = TableFile.Read(path, bytes, out IReadOnlyList<TableProblem> cells);
        if (sheets.FirstOrDefault(s => s.Rows.Count > 0) is not { } sheet)
            return;
        foreach (TableProblem cell in cells)
        {
            if (cell.Sheet == sheet.Name)
                problems.Add(new SourcePlace(path, cell.Row, cell.Column), cell.Reason);
        }

        ReadRows(sheet.Rows, (row, column) => _ => new SourcePlace(path, sheet.Rows[row].Number, column + 1));
    }

    private void ReadRows(IReadOnlyList<TableRow> rows, Func<int, int, Func<int, SourcePlace>> places)
    {
        if (rows.Count == 0 || Headings(rows[0], c => places(0, c)(0)) is not { } columns)
            return;
        for (int row = 1; row < rows.Count; row++)
        {
            if (_entries.Count == SeenFile.MostObservations)
            {
                problems.Add(places(row, 0)(0), $"there are more than {SeenFile.MostObservations} observations; what was seen at one plant is less");
                return;
            }

            AddRow(rows[row], columns, row, places);
        }
    }

    /// <summary>For each heading its column, or null after a report.</summary>
    private Dictionary<string, int>? Headings(TableRow row, Func<int, SourcePlace> placeOf)
    {
        var columns = new Dictionary<string, int>();
        int before = problems.Count;
        for (int c = 0; c < row.Cells.Count; c++)
        {
            string heading = row[c].ToLowerInvariant();
            if (heading.Length == 0)
                continue;
            if (!SeenWords.Columns.Contains(heading))
                _reader.Unknown(placeOf(c), $"there is no column '{PartNames.Shorten(row[c])}'", heading, SeenWords.Columns);
            else if (!columns.TryAdd(heading, c))
                problems.Add(placeOf(c), $"column '{heading}' is here a second time");
        }

        foreach (string needed in (ReadOnlySpan<string>)[SeenWords.Test, SeenWords.At, SeenWords.Seen])
        {
            if (!columns.ContainsKey(needed) && problems.Count == before)
                problems.Add(placeOf(0), $"column '{needed}' is missing", $"a first line such as '{string.Join(',', SeenWords.Columns)}'");
        }

        return problems.Count == before ? columns : null;
    }

    private void AddRow(TableRow row, Dictionary<string, int> columns, int index, Func<int, int, Func<int, SourcePlace>> places)
    {
        SeenCell? Cell(string name) =>
            columns.TryGetValue(name, out int c) && row[c] is { Length: > 0 } text ? new SeenCell(text, places(index, c)) : null;
        SourcePlace begin = places(index, 0)(0);
        for (int c = 0; c < row.Cells.Count; c++)
        {
            if (row[c].Length > 0 && !columns.ContainsValue(c))
            {
                problems.Add(places(index, c)(0), $"'{PartNames.Shorten(row[c])}' stands under no heading", "a text with the separator in it in quotes");
                return;
            }
        }

        if (Cell(SeenWords.Test) is not { } test)
        {
            problems.Add(begin, "this row has no test", NodeReader.OneOf(SeenWords.Tests));
            return;
        }

        string word = test.Text.ToLowerInvariant();
        if (!SeenWords.Tests.Contains(word))
        {
            _reader.Unknown(test.Place, $"there is no test '{PartNames.Shorten(test.Text)}'", word, SeenWords.Tests);
            return;
        }

        if (Cell(SeenWords.At) is not { } at)
        {
            problems.Add(begin, $"this {word} test does not say where: '{SeenWords.At}' is empty", "an address such as SW-L/1:A");
            return;
        }

        if (Cell(SeenWords.Seen) is not { } seen)
        {
            problems.Add(begin, $"this {word} test does not say what was seen: '{SeenWords.Seen}' is empty", SeenWords.Expected(word));
            return;
        }

        _entries.Add(new SeenEntry(begin, word, at, seen, Cell(SeenWords.Value), Cell(SeenWords.Note)?.Text));
    }
}
