using System.Buffers;
using System.Text;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Documents.Tables;

/// <summary>Writes a schedule as RFC 4180 has it: commas, CRLF, quotes where they are needed; UTF-8 without a byte order mark.</summary>
public static class CsvWriter
{
    private static readonly SearchValues<char> s_quoted = SearchValues.Create(",\"\r\n;\t");

    /// <summary>The bytes of the file. The first row holds the keys of the columns, so that no program has to know the headings.</summary>
    public static byte[] Write(Schedule schedule)
    {
        using var bytes = new MemoryStream();
        using (var text = new StreamWriter(bytes, new UTF8Encoding(false), 1 << 16, leaveOpen: true))
        {
            for (int c = 0; c < schedule.Columns.Count; c++)
                Field(text, c, schedule.Columns[c].Key);
            text.Write("\r\n");
            foreach (IReadOnlyList<Cell> row in schedule.Rows)
            {
                for (int c = 0; c < row.Count; c++)
                    Field(text, c, CellText.Of(row[c], schedule.Columns[c].Kind) is { } number ? number : FormulaGuard.Guard(row[c].Text ?? ""));
                text.Write("\r\n");
            }
        }

        return bytes.ToArray();
    }

    private static void Field(StreamWriter text, int column, string value)
    {
        if (column > 0)
            text.Write(',');
        bool quoted = value.AsSpan().ContainsAny(s_quoted) || (value.Length > 0 && (value[0] == ' ' || value[^1] == ' '));
        if (!quoted)
        {
            text.Write(value);
            return;
        }

        text.Write('"');
        text.Write(value.Replace("\"", "\"\"", StringComparison.Ordinal));
        text.Write('"');
    }
}
