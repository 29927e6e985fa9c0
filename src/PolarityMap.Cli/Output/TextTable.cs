namespace PolarityMap.Cli.Output;

/// <summary>A cell of a table for people; the paint goes over the text once it has its width.</summary>
internal readonly record struct TextCell(string Text, Func<string, string>? Paint = null)
{
    public static implicit operator TextCell(string text) => new(text);
}

/// <summary>Rows in columns, two blanks apart, the heads first.</summary>
internal sealed class TextTable(string indent, params string[] heads)
{
    private readonly List<TextCell[]> _rows = [];

    public void Add(params TextCell[] row) => _rows.Add(row);

    public void Write(TextWriter output, Paint paint)
    {
        var widths = new int[heads.Length];
        for (int column = 0; column < widths.Length; column++)
        {
            widths[column] = heads[column].Length;
            foreach (TextCell[] row in _rows)
                widths[column] = Math.Max(widths[column], row[column].Text.Length);
        }

        WriteRow(output, [.. heads.Select(h => new TextCell(h, paint.Faint))], widths);
        foreach (TextCell[] row in _rows)
            WriteRow(output, row, widths);
    }

    private void WriteRow(TextWriter output, TextCell[] row, int[] widths)
    {
        output.Write(indent);
        for (int column = 0; column < row.Length; column++)
        {
            TextCell cell = row[column];
            output.Write(cell.Paint is null ? cell.Text : cell.Paint(cell.Text));
            if (column + 1 < row.Length)
                output.Write(new string(' ', widths[column] - cell.Text.Length + 2));
        }

        output.WriteLine();
    }
}
