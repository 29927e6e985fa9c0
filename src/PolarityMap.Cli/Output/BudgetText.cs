using PolarityMap.Core.Budget;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Strands;

namespace PolarityMap.Cli.Output;

/// <summary>
/// The budgets for people: for each link a line that says what it is and whether it fits, and below it the figures of its
/// worst strand in columns. No line is longer than 120 characters unless a name is.
/// </summary>
internal sealed class BudgetText(CommandContext context)
{
    private const int Width = 110;

    private static readonly (string Head, int Width)[] s_columns =
    [
        ("length", 10), ("matings", 9), ("splices", 9), ("standard", 10), ("stated", 10), ("expected", 10), ("limit", 10), ("margin", 10),
        ("delay", 10), ("acceptance", 18),
    ];

    private readonly Paint _paint = new(context.Colour);

    public void Write(BudgetReport report)
    {
        TextWriter output = context.Out;
        output.WriteLine(_paint.Strong(report.Plant.Title.Title));
        Wrapped.Write(output, $"losses and lengths by {report.Table.Limits.Name}: {report.Table.Limits.Meaning}", "", Width);
        output.WriteLine();
        if (report.Rows.Count > 0)
            output.WriteLine(_paint.Faint(Line([.. s_columns.Select(c => c.Head)])));
        foreach (List<BudgetRow> alike in Alike(report))
        {
            WriteRow(report, alike[0]);
            if (alike.Count > 1)
                Wrapped.Write(output, $"and {alike.Count - 1} more with the same figures, {Others(report, alike)}; --all shows each", "      ", Width);
        }

        output.WriteLine();
        string verdict = report.Verdict();
        output.WriteLine(report.Exceeding > 0 ? _paint.Error(verdict) : report.Fitting == report.Rows.Count ? _paint.Good(verdict) : _paint.Warning(verdict));
        if (report.Rows.Count > 0)
            WriteLegend(report);
    }

    /// <summary>The links in their order, those whose line and figures are the same together; each by itself where all is asked for.</summary>
    private static List<List<BudgetRow>> Alike(BudgetReport report)
    {
        var groups = new List<List<BudgetRow>>();
        var known = new Dictionary<string, List<BudgetRow>>();
        foreach (BudgetRow row in report.Rows)
        {
            string? figures = report.All || row.Budget is not { } link ? null
                : string.Join('|', [What(link.Worst), BudgetReport.VerdictOf(row), .. Cells(report, link.Worst), .. BudgetWords.Remarks(link.Worst, report.Margin)]);
            if (figures is not null && known.TryGetValue(figures, out List<BudgetRow>? group))
            {
                group.Add(row);
                continue;
            }

            groups.Add(group = [row]);
            if (figures is not null)
                known[figures] = group;
        }

        return groups;
    }

    /// <summary>The links of a group but its first: both of two, else the first and the last.</summary>
    private static string Others(BudgetReport report, List<BudgetRow> alike)
    {
        string Ends(BudgetRow row) => $"{report.Plant.Address(row.From)} to {report.Plant.Address(row.To)}";
        return alike.Count switch
        {
            2 => Ends(alike[1]),
            3 => $"{Ends(alike[1])} and {Ends(alike[2])}",
            _ => $"{Ends(alike[1])} … {Ends(alike[^1])}",
        };
    }

    private static string Line(IReadOnlyList<string> cells)
    {
        var line = new System.Text.StringBuilder();
        for (int i = 0; i < s_columns.Length; i++)
            line.Append(cells[i].PadLeft(s_columns[i].Width));
        return line.ToString();
    }

    private void WriteRow(BudgetReport report, BudgetRow row)
    {
        TextWriter output = context.Out;
        string ends = $"{report.Plant.Address(row.From)} to {report.Plant.Address(row.To)}";
        string verdict = BudgetReport.VerdictOf(row);
        if (row.Budget is not { } link)
        {
            WriteHead(ends, "", verdict, _paint.Warning);
            return;
        }

        WriteHead(ends, What(link.Worst), verdict, link.Exceeds ? _paint.Error : link.IsJudged ? _paint.Good : _paint.Warning);
        foreach (StrandBudget strand in report.Told(link))
        {
            if (report.All)
                WriteStrand(report, link, strand);
            output.WriteLine(Line(Cells(report, strand)));
            foreach (string remark in BudgetWords.Remarks(strand, report.Margin))
                Wrapped.Write(output, remark, "      ", Width);
        }
    }

    /// <summary>What a link is and its verdict, on one line where they have room.</summary>
    private void WriteHead(string ends, string what, string verdict, Func<string, string> colour)
    {
        string head = what.Length == 0 ? ends : $"{ends}: {what}";
        if (head.Length + 2 + verdict.Length <= Width)
        {
            context.Out.WriteLine($"{_paint.Strong(head)}: {colour(verdict)}");
            return;
        }

        context.Out.WriteLine(_paint.Strong(head));
        foreach (string line in Wrapped.Lines(verdict, "    ", Width))
            context.Out.WriteLine(colour(line));
    }

    private void WriteStrand(BudgetReport report, LinkBudget link, StrandBudget strand)
    {
        TracedPlant traced = report.Table.Traced;
        string verdict = BudgetWords.Verdict(strand);
        string differs = What(strand) == What(link.Worst) ? "" : $": {What(strand)}";
        string line = $"strand {traced.NumberOf(strand.Strand)}, {traced.Address(strand.Sender)} to {traced.Address(strand.Receiver)}{differs}: {verdict}";
        Wrapped.Write(context.Out, line, "    ", Width);
    }

    /// <summary>The application, wavelength and fibre, as far as they are known.</summary>
    private static string What(StrandBudget s) => string.Join(", ", new[] { s.Application?.Name, s.Wavelength?.ToString(), s.Fibre?.Name }.OfType<string>());

    private static string[] Cells(BudgetReport report, StrandBudget s)
    {
        string least = s.LengthsMissing > 0 ? "≥ " : "";
        return
        [
            least + s.Length,
            $"{s.Stated.MatingCount}",
            $"{s.Stated.SpliceCount}",
            $"{s.Standard.Total}",
            $"{s.Stated.Total}",
            $"{s.Expected.Total}",
            s.LossLimit?.ToString() ?? "-",
            s.Margin?.ToString() ?? "-",
            s.Delay is { } delay ? least + delay : "-",
            report.Table.Acceptance(s) is { } test ? string.Join(" / ", test.Tests.Select(t => t.Limit.ToString().Replace(" dB", "", StringComparison.Ordinal))) + " dB" : "-",
        ];
    }

    private void WriteLegend(BudgetReport report)
    {
        TextWriter output = context.Out;
        LimitProfile limits = report.Table.Limits;
        output.WriteLine();
        Explain("standard", $"{LossSum.Formula} ({LossSum.Source}), with the largest attenuation of each class, {limits.MatingMax} a mating and {limits.SpliceMax} a splice");
        Explain("stated", "the same by what the parts state, and by the standard where they do not; a mating counts as stated when both of its connectors state a loss. This figure is judged");
        Explain("expected", $"what good work loses, for estimates: by the parts, else by {LossEstimates.Source}; never above stated");
        Explain("limit", "the channel's: matings at the interfaces are outside it and not counted; a shorter link gets no greater limit");
        Explain("delay", "one way, by the fibre's group index");
        Explain("acceptance", $"the most a light-source test of the fixed part may read at {Tested(report)} "
            + "through reference cords in place of the outermost cords, or of a single cord as a whole; both end matings are in the result "
            + $"({Methods(report)}; from memory)");
        foreach (Core.Optics.Application application in report.Applications())
        {
            if (application.Note is { } note)
                Explain(application.Name, note);
        }

        output.WriteLine(_paint.Faint("'polaritymap explain budget' tells where each figure comes from and how well it is attested."));
        Wrapped.Write(output, $"{Cautions.Light} {Cautions.Codes}", "", Width);
    }

    private void Explain(string word, string text) => Wrapped.Write(context.Out, text, word.Length < 12 ? word.PadRight(12) : word + ": ", Width);

    private static string Tested(BudgetReport report) => string.Join(", or ", Kinds(report).Select(mm =>
        string.Join(" / ", ReferenceMethod.TestWavelengths(mm).Select(w => w.ToString().Replace(" nm", "", StringComparison.Ordinal))) + (mm ? " nm for multimode" : " nm for single-mode")));

    private static string Methods(BudgetReport report) => string.Join(", ", Kinds(report).Select(mm => ReferenceMethod.Name(report.Table.Limits, mm)));

    /// <summary>Multimode, single-mode or both, as the rows have them; multimode where none says.</summary>
    private static IEnumerable<bool> Kinds(BudgetReport report)
    {
        bool[] kinds = [.. report.Rows.SelectMany(r => r.Budget?.Strands ?? []).Select(s => s.Fibre).OfType<FibreClass>().Select(f => f.IsMultimode).Distinct().OrderDescending()];
        return kinds.Length == 0 ? [true] : kinds;
    }
}
