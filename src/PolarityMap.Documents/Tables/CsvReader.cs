using System.Text;
using System.Text.Unicode;

namespace PolarityMap.Documents.Tables;

/// <summary>
/// Reads comma, semicolon or tab separated text. Encodings: UTF-8, with or without a byte order mark, and UTF-16 with one, as
/// spreadsheet programs save "Unicode text".
/// </summary>
public static class CsvReader
{
    /// <summary>The table of a file.</summary>
    /// <param name="name">What the sheet is called.</param>
    /// <param name="bytes">The file.</param>
    /// <exception cref="TableException">It is no such text, or more than is read.</exception>
    public static TableSheet Read(string name, ReadOnlySpan<byte> bytes) => new(name, [.. ReadPlaced(Decode(bytes), out _).Select(r => r.Row)]);

    /// <summary>The rows of a text with the places of their cells.</summary>
    /// <param name="text">What <see cref="Decode"/> gives.</param>
    /// <param name="separator">What parts the cells.</param>
    /// <exception cref="TableException">It is more than is read, or quotes are wrong.</exception>
    internal static List<PlacedRow> ReadPlaced(string text, out char separator)
    {
        int start = 0;

        // A first line such as "sep=;" says the separator to one spreadsheet program and is no row.
        int lineEnd = text.AsSpan().IndexOfAny('\r', '\n');
        ReadOnlySpan<char> first = text.AsSpan(0, lineEnd < 0 ? text.Length : lineEnd);
        int row = 1;
        if (first.Length == 5 && first.StartsWith("sep=", StringComparison.OrdinalIgnoreCase))
        {
            separator = first[4];
            start = lineEnd < 0 ? text.Length : lineEnd + (text.AsSpan(lineEnd).StartsWith("\r\n") ? 2 : 1);
            row = 2;
        }
        else
        {
            separator = Separator(text);
        }

        return new Scanner(text, start, row, separator).Rows();
    }

    /// <summary>The text of a file, without its byte order mark.</summary>
    /// <exception cref="TableException">It is no text in an encoding that is read.</exception>
    internal static string Decode(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > TableLimits.FileBytes)
            throw new TableException($"the file has more than {TableLimits.FileBytes / 1024 / 1024} MiB");
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) && !bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE, 0, 0]))
            return Encoding.Unicode.GetString(bytes[2..]);
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]))
            return Encoding.BigEndianUnicode.GetString(bytes[2..]);
        if (bytes.StartsWith("\uFEFF"u8))
            bytes = bytes[3..];
        if (bytes.Contains((byte)0))
            throw new TableException("the file holds NUL bytes and is no text in UTF-8; save it as CSV in UTF-8");
        if (Utf8.IsValid(bytes))
            return Encoding.UTF8.GetString(bytes);
        int line = 1;
        ReadOnlySpan<byte> rest = bytes;
        while (rest.IndexOf((byte)'\n') is >= 0 and int end && Utf8.IsValid(rest[..end]))
        {
            rest = rest[(end + 1)..];
            line++;
        }

        throw new TableException($"line {line} is not UTF-8; save the table as CSV in UTF-8, or as XLSX");
    }

    /// <summary>The separator that the first line has most of, outside quotes.</summary>
    private static char Separator(string text)
    {
        int commas = 0, semicolons = 0, tabs = 0;
        bool quoted = false;
        foreach (char c in text)
        {
            if (c == '"')
                quoted = !quoted;
            else if (!quoted && c is '\r' or '\n' && commas + semicolons + tabs > 0)
                break;
            else if (!quoted)
                _ = c switch { ',' => commas++, ';' => semicolons++, '\t' => tabs++, _ => 0 };
        }

        return tabs > commas && tabs > semicolons ? '\t' : semicolons > commas ? ';' : ',';
    }

    private sealed class Scanner(string text, int at, int firstRow, char separator)
    {
        private readonly StringBuilder _field = new();
        private int _at = at;
        private int _row = firstRow;

        public List<PlacedRow> Rows()
        {
            var rows = new List<PlacedRow>();
            while (_at < text.Length)
            {
                // Rows are counted as spreadsheet programs do: a line break inside quotes begins no row.
                int first = _at;
                var starts = new List<int>();
                var row = new TableRow(_row++, Row(starts));
                if (row.IsBlank)
                    continue;
                if (rows.Count == TableLimits.Rows)
                    throw new TableException($"row {row.Number}: there are more than {TableLimits.Rows} rows");
                rows.Add(new PlacedRow(row, first, starts));
            }

            return rows;
        }

        private List<string> Row(List<int> starts)
        {
            var cells = new List<string>();
            while (true)
            {
                if (cells.Count == TableLimits.Columns)
                    throw new TableException($"row {_row - 1} has more than {TableLimits.Columns} columns");
                starts.Add(_at);
                cells.Add(FormulaGuard.Unguard(Field()));
                if (_at < text.Length && text[_at] == separator)
                {
                    _at++;
                    continue;
                }

                if (_at < text.Length)
                    _at += text.AsSpan(_at).StartsWith("\r\n") ? 2 : 1;
                return cells;
            }
        }

        private string Field()
        {
            if (_at < text.Length && text[_at] == '"')
                return Quoted();
            int start = _at;
            while (_at < text.Length && text[_at] != separator && text[_at] is not ('\r' or '\n'))
                _at++;
            return Bounded(text.AsSpan(start, _at - start));
        }

        private string Quoted()
        {
            int begins = _row - 1;
            _field.Clear();
            _at++;
            while (true)
            {
                int quote = text.IndexOf('"', _at);
                if (quote < 0)
                    throw new TableException($"row {begins}: a quoted cell has no end; write a quote inside a cell twice");
                _field.Append(text, _at, quote - _at);
                _at = quote + 1;
                if (_at == text.Length || text[_at] != '"')
                    break;
                _field.Append('"');
                _at++;
            }

            if (_at < text.Length && text[_at] != separator && text[_at] is not ('\r' or '\n'))
                throw new TableException($"row {begins}: there is text after a closing quote; write a quote inside a cell twice");
            return Bounded(_field.ToString());
        }

        private string Bounded(ReadOnlySpan<char> cell) => cell.Length <= TableLimits.CellLength
            ? cell.ToString()
            : throw new TableException($"row {_row - 1}: a cell has more than {TableLimits.CellLength} characters");
    }
}
