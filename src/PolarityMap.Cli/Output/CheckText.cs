using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Cli.Output;

/// <summary>The findings for people. Findings that are alike, made by the same runs, are shown once with the others listed.</summary>
internal sealed class CheckText(CommandContext context, bool every)
{
    /// <summary>The most strands written out with one finding.</summary>
    private const int MostStrands = 4;

    private readonly Paint _paint = new(context.Colour);
    private readonly Dictionary<string, string[]> _lines = [];

    public void Write(CheckReport report)
    {
        TextWriter output = context.Out;
        Plant plant = report.Traced.Plant;
        output.WriteLine(_paint.Strong(plant.Title.Title));
        IReadOnlyList<IReadOnlyList<Finding>> groups = every ? [.. report.Findings.Select(f => (Finding[])[f])] : AlikeFindings.Of(report.Findings);
        foreach (IReadOnlyList<Finding> group in groups)
        {
            output.WriteLine();
            WriteFinding(report, group);
        }

        WriteRemarks(report);
        output.WriteLine();
        string verdict = report.Verdict();
        output.WriteLine(report.Errors > 0 ? _paint.Error(verdict) : report.Warnings > 0 ? _paint.Warning(verdict) : _paint.Good(verdict));
        if (report.Findings.Count > 0)
            output.WriteLine(_paint.Faint("'polaritymap explain CODE' tells why a finding matters and what clears it."));
    }

    /// <summary>What is worth knowing and no fault, a few lines of it unless every line is asked for.</summary>
    private void WriteRemarks(CheckReport report)
    {
        const int mostShown = 6;
        if (report.Remarks.Count == 0)
            return;
        context.Out.WriteLine();
        int shown = every ? report.Remarks.Count : Math.Min(mostShown, report.Remarks.Count);
        foreach (Remark remark in report.Remarks.Take(shown))
            context.Out.WriteLine($"remark  {remark.Place}: {remark.Text}");
        if (report.Remarks.Count > shown)
            context.Out.WriteLine($"and {report.Remarks.Count - shown} more remarks, which --every shows");
    }

    private void WriteFinding(CheckReport report, IReadOnlyList<Finding> group)
    {
        TextWriter output = context.Out;
        Finding first = group[0];
        string head = $"{(first.Rule.Severity == Severity.Error ? "error" : "warning")} {first.Rule.Code} {first.Rule.Title}";
        output.WriteLine(first.Rule.Severity == Severity.Error ? _paint.Error(head) : _paint.Warning(head));
        output.WriteLine($"  {first.Place}: {first.Message}");
        if (SourceLine(first.Place) is { } line)
            output.WriteLine(_paint.Faint($"  {first.Place.Line,5} | {line}"));
        output.WriteLine($"  expected  {first.Expected}");
        output.WriteLine($"  actual    {first.Actual}");
        foreach (int strand in first.Strands.Take(MostStrands))
            output.WriteLine($"  strand {report.Traced.NumberOf(strand),-3}{HopLine.Of(report.Traced, strand)}");
        if (first.Strands.Count > MostStrands)
            output.WriteLine($"  and strands {string.Join(", ", first.Strands.Skip(MostStrands).Select(report.Traced.NumberOf))}");
        if (first.Related.Count > 0)
            output.WriteLine($"  made by   {Lines(first.Related)}");
        WriteRemedies(first, "  ");
        if (group.Count > 1)
        {
            output.WriteLine($"  and {group.Count - 1} more like it:");
            foreach (Finding other in group.Skip(1))
            {
                output.WriteLine($"    {other.Message}");
                WriteRemedies(other, "      ");
            }
        }
    }

    private void WriteRemedies(Finding finding, string indent)
    {
        foreach (Remedy remedy in finding.Remedies)
        {
            context.Out.WriteLine($"{indent}remedy    {remedy.Text}");
            context.Out.WriteLine($"{indent}proved    {remedy.Proof}");
        }
    }

    /// <summary>Places as files with their lines, such as <c>plant.yaml lines 8, 9; as-built.yaml line 4</c>.</summary>
    private static string Lines(IReadOnlyList<SourcePlace> places) => string.Join("; ", places.GroupBy(p => p.File).Select(file =>
    {
        int[] lines = [.. file.Select(p => p.Line).Distinct().Order()];
        return $"{file.Key} {(lines.Length == 1 ? "line" : "lines")} {string.Join(", ", lines)}";
    }));

    /// <summary>The line of the document that a place is on, or null when it cannot be read.</summary>
    private string? SourceLine(SourcePlace place)
    {
        if (!_lines.TryGetValue(place.File, out string[]? lines))
        {
            string path = context.FullPath(place.File);
            _lines[place.File] = lines = File.Exists(path) ? File.ReadAllLines(path) : [];
        }

        return place.Line <= lines.Length ? lines[place.Line - 1].TrimEnd() : null;
    }
}
