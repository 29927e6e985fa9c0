using PolarityMap.Core.Checks;
using PolarityMap.Core.Remedies;

namespace PolarityMap.Cli.Output;

/// <summary>Remedies for people: the plan first, then each finding with what else clears it.</summary>
internal sealed class RemedyText(CommandContext context, bool all)
{
    /// <summary>The most remedies of a finding, of findings that one plan clears, and of steps, unless all are asked for.</summary>
    private const int MostSets = 4, MostAlike = 4, MostSteps = 12;

    private readonly Paint _paint = new(context.Colour);

    private TextWriter Out => context.Out;

    public void Write(RemedyResult result, string path, string? written)
    {
        Out.WriteLine(_paint.Strong(result.Before.Traced.Plant.Title.Title));
        Out.WriteLine(result.Before.Verdict());
        if (result.Findings.Count == 0)
        {
            Out.WriteLine(_paint.Good("There is nothing to remedy."));
            return;
        }

        WritePlan(result);
        foreach (FindingRemedies[] group in Groups(result))
        {
            Out.WriteLine();
            WriteFinding(result, group);
        }

        WriteEnd(result, path, written);
    }

    private void WritePlan(RemedyResult result)
    {
        Out.WriteLine();
        if (result.Plan is not { } plan)
        {
            Out.WriteLine(_paint.Strong("No change of a part or plug clears any of the findings."));
            return;
        }

        int steps = plan.Steps.Count;
        Out.WriteLine(_paint.Strong($"Plan: {(steps == 1 ? "1 change" : $"{steps} changes")}, about {RemedyWords.Minutes(plan.Minutes)}"));
        int shown = all ? steps : Math.Min(steps, MostSteps);
        for (int i = 0; i < shown; i++)
        {
            PlanStep step = plan.Steps[i];
            Wrapped.Write(Out, $"{step.Change.Text} ({step.Change.Minutes} min, clears {RemedyWords.Findings(step.Clears.Count)})", $"  {i + 1,2}  ");
        }

        if (steps > shown)
            Out.WriteLine($"      and {steps - shown} more, which --all shows");
        Wrapped.Write(Out, RemedyWords.Proof(plan), "  proved  ");
        if (plan.Remaining.Count > 0)
            Wrapped.Write(Out, $"{RemedyWords.Findings(plan.Remaining.Count)}: {string.Join(", ", plan.Remaining.Select(i => result.Before.Findings[i].Rule.Code).GroupBy(c => c).Select(g => g.Count() == 1 ? g.Key : $"{g.Count()} of {g.Key}"))}", "  left    ");
        foreach (string caution in RemedyCautions.For(plan.Steps.Select(s => s.Change)))
            Wrapped.Write(Out, caution, "  mind    ");
    }

    /// <summary>Findings of one rule that the same changes of the plan clear are told once.</summary>
    private IEnumerable<FindingRemedies[]> Groups(RemedyResult result)
    {
        if (all)
            return result.Findings.Select(f => (FindingRemedies[])[f]);
        var first = new Dictionary<(string, string), List<FindingRemedies>>();
        var groups = new List<List<FindingRemedies>>();
        foreach (FindingRemedies finding in result.Findings)
        {
            string best = finding.Sets.Count == 0 || finding.Sets[0].Clears.Count == 1 ? $"{finding.Finding}" : string.Join('|', finding.Sets[0].Changes.Select(c => c.Id));
            (string, string) key = (result.Before.Findings[finding.Finding].Rule.Code, best);
            if (!first.TryGetValue(key, out List<FindingRemedies>? group))
            {
                groups.Add(group = []);
                first[key] = group;
            }

            group.Add(finding);
        }

        return groups.Select(g => g.ToArray());
    }

    private void WriteFinding(RemedyResult result, FindingRemedies[] group)
    {
        FindingRemedies first = group[0];
        Finding finding = result.Before.Findings[first.Finding];
        string head = $"{(finding.Rule.Severity == Severity.Error ? "error" : "warning")} {finding.Rule.Code} {finding.Rule.Title}";
        Out.WriteLine(finding.Rule.Severity == Severity.Error ? _paint.Error(head) : _paint.Warning(head));
        Out.WriteLine($"  {finding.Place}: {finding.Message}");
        if (first.Sets.Count == 0)
            WriteNone(result, finding, first);
        int shown = all ? first.Sets.Count : Math.Min(first.Sets.Count, MostSets);
        for (int i = 0; i < shown; i++)
            WriteSet(result, first.Sets[i], i == 0 ? "  remedy  " : "  or      ");
        if (first.Sets.Count > shown)
            Out.WriteLine($"          and {first.Sets.Count - shown} more, which --all shows");
        if (group.Length > 1)
            WriteAlike(result, group);
    }

    private void WriteNone(RemedyResult result, Finding finding, FindingRemedies remedies)
    {
        if (result.Plan?.Clears.Contains(remedies.Finding) == true)
            Wrapped.Write(Out, "that of the plan, which was proved as a whole", "  remedy  ");
        else
            Wrapped.Write(Out, RemedyWords.Nothing(finding, remedies), "  none    ");
    }

    private void WriteSet(RemedyResult result, RemedySet set, string head)
    {
        Wrapped.Write(Out, $"{string.Join("; and ", set.Changes.Select(c => c.Text))} ({set.Minutes} min{(set.Clears.Count > 1 ? $", clears {set.Clears.Count} findings" : "")})", head);
        if (head.Contains("remedy", StringComparison.Ordinal))
            Wrapped.Write(Out, RemedyWords.Proof(result, set), "  proved  ");
    }

    private void WriteAlike(RemedyResult result, FindingRemedies[] group)
    {
        Out.WriteLine($"  and {group.Length - 1} more that the same remedy clears:");
        foreach (FindingRemedies other in group.Skip(1).Take(MostAlike))
            Out.WriteLine($"    {result.Before.Findings[other.Finding].Message}");
        if (group.Length - 1 > MostAlike)
            Out.WriteLine($"    and {group.Length - 1 - MostAlike} more, which --all shows");
    }

    private void WriteEnd(RemedyResult result, string path, string? written)
    {
        Out.WriteLine();
        if (result.Work.Bound is { } bound)
            Wrapped.Write(Out, $"The search was bounded: {bound}.", "");
        if (written is not null)
            Out.WriteLine(_paint.Good($"The plan is in {written}, under as-built. 'polaritymap check {written}' checks it."));
        else if (result.Plan is not null)
            Out.WriteLine(_paint.Faint($"'polaritymap remedy {path} --apply' writes the plan into the document, under as-built."));
        Out.WriteLine(_paint.Faint("Each remedy was proved so. Minutes are common practice: an order and not a measurement."));
    }
}
