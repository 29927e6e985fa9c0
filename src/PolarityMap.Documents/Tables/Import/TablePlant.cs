using PolarityMap.Core.Plants;
using PolarityMap.Documents.Text;

namespace PolarityMap.Documents.Tables.Import;

/// <summary>What became of a table.</summary>
/// <param name="Sheets">Every sheet as it was understood.</param>
/// <param name="Text">The document in the language of <see cref="PlantDocument"/>, or null when there is nothing to write.</param>
/// <param name="Plant">The plant that the document describes, or null with it.</param>
/// <param name="Rejected">Every row that is not in the document, with the reason.</param>
/// <param name="Remarks">What is in it otherwise than in the table.</param>
/// <param name="Count">How many rows were rejected, told or not.</param>
public sealed record ImportedTable(
    IReadOnlyList<ReadSheet> Sheets, string? Text, Plant? Plant, IReadOnlyList<TableProblem> Rejected, IReadOnlyList<TableProblem> Remarks, int Count);

/// <summary>
/// Makes a plant document of tables. A row that cannot be taken is told with its reason; unless good rows are to be kept, there is
/// then no document. What a row says is judged by the reader of documents itself, so that a table and a document are held to the
/// same.
/// </summary>
public static class TablePlant
{
    /// <summary>Each round drops what the round before found; what is left after so many is no plant.</summary>
    private const int MostRounds = 25;

    /// <summary>Reads sheets into a document.</summary>
    /// <param name="sheets">The sheets of a workbook, or the one of a CSV.</param>
    /// <param name="cellProblems">Cells without a value, as <see cref="XlsxReader"/> tells them.</param>
    /// <param name="title">The title of the plant where no sheet says it.</param>
    /// <param name="keepGood">Whether a document is made of the rows that are right when others are not.</param>
    public static ImportedTable Import(IReadOnlyList<TableSheet> sheets, IReadOnlyList<TableProblem> cellProblems, string title, bool keepGood)
    {
        ReadSheet[] read = [.. sheets.Select(ReadSheet.Of)];
        var rejects = new Rejects();
        var remarks = new List<TableProblem>();
        ReadSheet[] used = Used(read);
        if (used.Length == 0)
        {
            rejects.Add(new TableProblem(null, 0, 0, "no sheet has headings that are known; expected columns such as part, in, out, or from, to, or part, kind"));
            return new ImportedTable(read, null, null, rejects.Told, remarks, rejects.Count);
        }

        var broken = new HashSet<(string, int)>();
        foreach (TableProblem problem in cellProblems.Where(p => used.Any(u => u.Name == p.Sheet && p.Row > u.HeaderRow)))
        {
            rejects.Add(problem);
            broken.Add((problem.Sheet!, problem.Row));
        }

        var draft = new Draft();
        var rows = new RowReader(draft, rejects, remarks, broken);
        foreach (ReadSheet sheet in used.OrderBy(s => s.Form switch { SheetForm.Settings => 0, SheetForm.Networks => 1, SheetForm.Parts => 2, _ => 3 }))
            rows.Read(sheet);
        rows.Finish();
        if (draft.Parts.Count == 0 && draft.Runs.Count == 0)
        {
            if (rejects.Count == 0)
                rejects.Add(new TableProblem(used[0].Name, 0, 0, "there is no part and nothing joined below the headings"));
            return new ImportedTable(read, null, null, rejects.Told, remarks, rejects.Count);
        }

        return Bind(draft, title, read, rejects, remarks, keepGood, rows.Hops);
    }

    /// <summary>
    /// The sheets that are read. Where one tells strands hop by hop it tells all parts and matings; the others of its workbook repeat
    /// some of them for other readers.
    /// </summary>
    public static ReadSheet[] Used(IReadOnlyList<ReadSheet> sheets)
    {
        bool hops = sheets.Any(s => s.Form == SheetForm.Hops);
        return [.. sheets.Where(s => s.Form switch
        {
            SheetForm.Unknown => false,
            SheetForm.Hops or SheetForm.Networks or SheetForm.Settings => true,
            _ => !hops,
        })];
    }

    private static ImportedTable Bind(
        Draft draft, string title, ReadSheet[] sheets, Rejects rejects, List<TableProblem> remarks, bool keepGood, IReadOnlyList<ReadHop> hops)
    {
        for (int round = 0; round < MostRounds; round++)
        {
            (string text, IReadOnlyList<DraftLine?> lines) = draft.Write(title);
            var problems = new ProblemList(keepGood ? TableLimits.Rows : TableLimits.Problems);
            Plant? plant = PlantDocument.Read(Source.Name, new Source(text), problems);
            if (plant is not null)
            {
                int before = rejects.Count;
                HopCheck.Check(plant, hops, keepGood ? problem => remarks.Add(problem) : rejects.Add);
                bool isWritten = rejects.Count == 0 || (keepGood && rejects.Count == before);
                return new ImportedTable(sheets, isWritten ? text : null, isWritten ? plant : null, rejects.Told, remarks, rejects.Count);
            }

            bool dropped = false;
            foreach (Problem problem in problems.Items)
            {
                DraftLine? line = problem.Place.Line < lines.Count ? lines[problem.Place.Line] : null;
                rejects.Add(new TableProblem(line?.Sheet, line?.Row ?? 0, line?.ColumnAt(problem.Place.Column) ?? 0, Reason(problem, lines)));
                if (line is { IsDropped: false })
                    dropped = line.IsDropped = true;
            }

            rejects.Hide(problems.Hidden);
            if (!keepGood || !dropped)
                break;
        }

        return new ImportedTable(sheets, null, null, rejects.Told, remarks, rejects.Count);
    }

    /// <summary>A problem of the document in words about the table: lines of the one are rows of the other.</summary>
    private static string Reason(Problem problem, IReadOnlyList<DraftLine?> lines)
    {
        string reason = problem.Message + (problem.Expected is { } e ? $"; expected {e}" : "") + (problem.Suggestion is { } s ? $"; did you mean '{s}'?" : "");
        const string at = "at line ";
        int found = reason.IndexOf(at, StringComparison.Ordinal);
        if (found < 0)
            return reason;
        int end = found + at.Length;
        while (end < reason.Length && char.IsAsciiDigit(reason[end]))
            end++;
        return int.TryParse(reason.AsSpan(found + at.Length, end - found - at.Length), out int number) && number < lines.Count && lines[number] is { } line
            ? $"{reason[..found]}in row {line.Row} of sheet {line.Sheet}{reason[end..]}"
            : reason;
    }

    private sealed class Source(string text) : IDocumentSource
    {
        public const string Name = "table";

        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            bytes = System.Text.Encoding.UTF8.GetBytes(text);
            why = bytes.Length <= maxBytes ? "" : $"the plant would be a document of more than {maxBytes / 1024 / 1024} MiB; divide the table";
            return why.Length == 0;
        }
    }
}

/// <summary>Rejected rows: the first of them told, all counted.</summary>
internal sealed class Rejects
{
    private readonly List<TableProblem> _told = [];
    private readonly HashSet<TableProblem> _seen = [];

    public int Count { get; private set; }

    public IReadOnlyList<TableProblem> Told => _told;

    public void Add(TableProblem problem)
    {
        if (!_seen.Add(problem))
            return;
        Count++;
        if (_told.Count < TableLimits.Problems)
            _told.Add(problem);
    }

    public void Hide(int more) => Count += more;
}
