using System.Text;
using PolarityMap.Documents.Tables;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Observations;

/// <summary>Adds observations to a file without changing a byte of what its author wrote.</summary>
public static class SeenWriter
{
    /// <summary>The bytes of a file with one more observation, or null when it cannot take one.</summary>
    /// <param name="path">The file; its ending says which form it has.</param>
    /// <param name="bytes">What it holds; none for a new file.</param>
    /// <param name="fields">The observation.</param>
    /// <param name="why">When null is returned, why, as a sentence without a full stop.</param>
    public static byte[]? Append(string path, byte[] bytes, SeenFields fields, out string why)
    {
        why = "";
        if (SeenTable.IsWorkbook(path, bytes))
        {
            why = $"nothing can be added to the workbook '{path}'; name a .yaml or a .csv";
            return null;
        }

        Insertion? insertion = SeenTable.Is(path, bytes) ? IntoTable(path, bytes, fields, ref why) : IntoYaml(path, bytes, fields);
        if (insertion is { } found && found.Into(bytes) is var longer && Count(path, longer) is { } count && count == Count(path, bytes) + 1)
            return longer;
        if (why.Length == 0)
            why = $"'{path}' is written in a way in which nothing can be added to it; add this yourself: {fields.ToYaml()}";
        return null;
    }

    private static int? Count(string path, byte[] bytes) =>
        bytes.Length == 0 ? 0 : SeenFile.Read(path, bytes, new ProblemList(), allowOutside: true)?.Count;

    private static Insertion? IntoTable(string path, byte[] bytes, SeenFields fields, ref string why)
    {
        Encoding encoding = EncodingOf(bytes);
        int mark = bytes.AsSpan().StartsWith(encoding.Preamble) ? encoding.Preamble.Length : 0;
        string text = encoding.GetString(bytes, mark, bytes.Length - mark);
        IReadOnlyList<string> columns = SeenWords.Columns;
        char separator = ',';
        try
        {
            if (CsvReader.ReadPlaced(text, out char written) is [var heading, ..])
                (columns, separator) = ([.. heading.Row.Cells.Select(c => c.Trim().ToLowerInvariant())], written);
            else
                text = "";
        }
        catch (TableException)
        {
            return null;
        }

        foreach (string column in SeenWords.Columns)
        {
            if (!columns.Contains(column) && fields.Under(column).Length > 0)
            {
                why = $"'{path}' has no column '{column}' to write '{fields.Under(column)}' into; add it to the headings";
                return null;
            }
        }

        string end = LineEnd(text);
        string row = string.Join(separator, columns.Select(c => SeenWords.Columns.Contains(c) ? Cell(fields.Under(c), separator) : ""));
        string added = text.Length == 0 ? string.Join(separator, columns) + end + row + end : (text[^1] is '\n' or '\r' ? "" : end) + row + end;
        return new Insertion(bytes.Length, encoding.GetBytes(added));
    }

    private static Insertion? IntoYaml(string path, byte[] bytes, SeenFields fields)
    {
        var problems = new ProblemList();
        if (!TextLoader.TryDecode(bytes, path, problems, out string text))
            return null;
        (int at, string added) = SeenFile.IsBlank(text) ? AtEnd(text, fields) : YamlPlace(path, text, fields);
        if (at < 0)
            return null;
        int mark = bytes.AsSpan().StartsWith("\uFEFF"u8) ? 3 : 0;
        return new Insertion(mark + Encoding.UTF8.GetByteCount(text.AsSpan(0, at)), Encoding.UTF8.GetBytes(added));
    }

    /// <summary>Where in a document the next entry goes and what is to be written there; -1 where none can.</summary>
    private static (int At, string Added) YamlPlace(string path, string text, SeenFields fields)
    {
        if (YamlReader.Read(text, path, new ProblemList()) is not YamlMapping top)
            return (-1, "");
        YamlEntry? entry = null;
        foreach (YamlEntry e in top.Entries)
        {
            if (e.Key.Value == SeenWords.Seen)
                entry = e;
        }

        if (entry is not { } seen)
            return AtEnd(text, fields);
        var lines = new LineIndex(text, path);
        if (seen.Value is not YamlSequence list)
            return NextLine(text, lines.IndexOf(seen.Key.EndLine, seen.Key.EndColumn), $"  - {fields.ToYaml()}");
        int start = lines.IndexOf(list.Place.Line, list.Place.Column);
        bool isFlow = start < text.Length && text[start] == '[';
        if (isFlow && list.Items.Count == 0)
            return (start + 1, fields.ToYaml());
        YamlNode last = list.Items[^1];
        int end = lines.IndexOf(last.EndLine, last.EndColumn);
        if (isFlow)
            return (end, ", " + fields.ToYaml());
        string line = $"{new string(' ', list.Place.Column - 1)}- {fields.ToYaml()}";

        // A text on lines of its own ends where the next line begins.
        return last.EndColumn == 1 && end > 0 && text[end - 1] is '\n' or '\r' ? (end, line + LineEnd(text)) : NextLine(text, end, line);
    }

    /// <summary>A line of its own below the one that holds an index.</summary>
    private static (int At, string Added) NextLine(string text, int index, string line)
    {
        int end = text.AsSpan(index).IndexOfAny('\r', '\n');
        if (end < 0)
            return (text.Length, LineEnd(text) + line + LineEnd(text));
        end += index;
        return (end + (text.AsSpan(end).StartsWith("\r\n") ? 2 : 1), line + LineEnd(text));
    }

    private static (int At, string Added) AtEnd(string text, SeenFields fields)
    {
        string end = LineEnd(text);
        return (text.Length, $"{(text.Length == 0 || text[^1] is '\n' or '\r' ? "" : end)}{SeenWords.Seen}:{end}  - {fields.ToYaml()}{end}");
    }

    /// <summary>How the author ends lines.</summary>
    private static string LineEnd(string text)
    {
        int end = text.AsSpan().IndexOfAny('\r', '\n');
        return end < 0 || text[end] == '\n' ? "\n" : text.AsSpan(end).StartsWith("\r\n") ? "\r\n" : "\r";
    }

    private static string Cell(string text, char separator)
    {
        string guarded = FormulaGuard.Guard(text);
        return guarded.AsSpan().IndexOfAny("\"\r\n") >= 0 || guarded.Contains(separator) || guarded != guarded.Trim()
            ? $"\"{guarded.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
            : guarded;
    }

    private static Encoding EncodingOf(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) ? Encoding.Unicode : bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]) ? Encoding.BigEndianUnicode : Encoding.UTF8;

    /// <summary>Bytes that go between others.</summary>
    private readonly record struct Insertion(int At, byte[] Added)
    {
        public byte[] Into(byte[] bytes) => [.. bytes.AsSpan(0, At), .. Added, .. bytes.AsSpan(At)];
    }
}
