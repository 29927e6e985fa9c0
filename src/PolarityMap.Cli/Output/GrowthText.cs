using PolarityMap.Core.Planning.Growth;

namespace PolarityMap.Cli.Output;

/// <summary>How a plant grows, for people: what stays, what to buy, move and take out, and the work step by step.</summary>
internal sealed class GrowthText(CommandContext context)
{
    private const int MostJoints = 24;

    private readonly Paint _paint = new(context.Colour);

    private TextWriter Out => context.Out;

    public void Write(GrowthResult result, string plant, IReadOnlyList<string> written)
    {
        Out.WriteLine(_paint.Strong(result.Brief.Title.Title));
        Wrapped.Write(Out, $"Before: {plant}, {result.Before.Verdict()}", "");
        foreach (var finding in result.Before.Findings.Take(MostJoints))
            Wrapped.Write(Out, $"{finding.Rule.Code} {finding.Message}", "  ");
        if (result.Difference is not { } difference || result.After is not { } after)
        {
            Wrapped.Write(Out, $"The plant cannot grow to this brief: {result.Reason}.", "");
            Out.WriteLine("Nothing was written.");
            return;
        }

        Wrapped.Write(Out, $"After: built on with {result.Candidate}{(result.Compared > 1 ? $", the best of {result.Compared} that its trunks tell of" : "")}. {after.Report!.Verdict()}", "");
        if (!result.IsMet)
            Wrapped.Write(Out, "Not every step on the way is proven; what was found is told at the step. Nothing was written.", "");
        WriteCounts(result, difference);
        WriteLots(difference, "Add", difference.Added);
        WriteLots(difference, "Move", difference.Moved);
        WriteChanges(difference);
        WriteLots(difference, "Take out", difference.TakenOut);
        WriteSteps(result, difference);
        Out.WriteLine();
        Wrapped.Write(Out, GrowthWords.Searched, "");
        foreach (string caution in GrowthWords.Cautions)
            Wrapped.Write(Out, caution, "");
        foreach (string path in written)
            Out.WriteLine($"Wrote {path}");
        if (written.Count == 0 && result.IsMet)
            Out.WriteLine("Nothing was written; name a plant document with -o.");
    }

    private void WriteCounts(GrowthResult result, GrowthDifference difference)
    {
        int kept = difference.Links.Count(l => l.IsKept), over = difference.Links.Count(l => l is { IsKept: false, Before: >= 0, After: not null });
        int fresh = difference.Links.Count(l => l.Before < 0), ended = difference.Links.Count(l => l.After is null);
        Out.WriteLine();
        Out.WriteLine($"Links: {kept} stay untouched, {over} go over, {fresh} are new, {ended} end.");
        Out.WriteLine($"Parts: {difference.Staying} stay, {difference.Added.Count} are added, {difference.Moved.Count} moved, {difference.TakenOut.Count} taken out.");
        Out.WriteLine($"Fibres of laid cables: {result.FibresBefore.Used} used and {result.FibresBefore.Idle} idle before, {result.FibresAfter.Used} and {result.FibresAfter.Idle} after.");
        Out.WriteLine($"Dark: {Count(over, "link")} in turn, {(result.Steps.Count == 0 ? 0 : result.Steps.Max(s => s.Dark.Count))} at a time at most, {result.DarkLinkSteps} link-steps in all.");
    }

    private void WriteLots(GrowthDifference difference, string heading, IReadOnlyList<int> parts)
    {
        if (parts.Count == 0)
            return;
        Out.WriteLine();
        Out.WriteLine($"{heading}:");
        foreach (GrowthLot lot in GrowthParts.Lots(difference, parts))
        {
            string names = difference.Parts[lot.Parts[0]].IsInline ? "" : $": {GrowthWords.Few([.. lot.Parts.Select(p => difference.Parts[p].Name)])}";
            Wrapped.Write(Out, lot.Line + names, "  ");
        }
    }

    private void WriteChanges(GrowthDifference difference)
    {
        if (difference.Exchanged.Count + difference.Relabelled.Count == 0)
            return;
        Out.WriteLine();
        Out.WriteLine("Change:");
        string What(int part) => GrowthParts.Lots(difference, [part])[0] is var lot && lot.Network.Length > 0 ? $"{lot.What} ({lot.Network})" : lot.What;
        foreach (var alike in difference.Exchanged.GroupBy(e => (What(e.Old), What(e.New))))
        {
            string names = GrowthWords.Few([.. alike.Select(e => difference.Parts[e.Old].Name.Replace(" (old)", "", StringComparison.Ordinal)).Distinct()]);
            Wrapped.Write(Out, $"{alike.Key.Item1} gives way to {alike.Key.Item2}: {names}", "  ");
        }

        foreach (var alike in difference.Relabelled.GroupBy(p => string.Join(", ", difference.Parts[p].PortNetworks.Select(n => difference.Networks[n].Name))))
            Wrapped.Write(Out, $"Label the ports for {alike.Key}: {GrowthWords.Few([.. alike.Select(p => difference.Parts[p].Name)])}", "  ");
    }

    private void WriteSteps(GrowthResult result, GrowthDifference difference)
    {
        Out.WriteLine();
        Out.WriteLine("Order of work:");
        foreach (GrowthStep step in result.Steps)
        {
            Wrapped.Write(Out, GrowthWords.Title(difference, step) + ".", $"{step.Number,3}. ");
            string first = "     ";
            Joints(difference, step.Opened, "Unplug");
            Parts(difference, step.PartsOut, "Out");
            Parts(difference, step.PartsIn, "In");
            Joints(difference, step.Made, "Plug in");
            Wrapped.Write(Out, step.Dark.Count == 0 ? "Dark: no live link." : $"Dark meanwhile: {Count(step.Dark.Count, "link")}, {GrowthWords.Names(difference, step.Dark)}.", first);
            if (step.Ended.Count > 0)
                Wrapped.Write(Out, $"End for good: {GrowthWords.Names(difference, step.Ended)}.", first);
            if (step.Up.Count > 0)
                Wrapped.Write(Out, $"Up for the first time: {GrowthWords.Names(difference, step.Up)}.", first);
            Wrapped.Write(Out, $"Proven then: {step.Proven} of {step.Live.Count} links.", first);
            foreach (string error in step.Errors.Take(MostJoints))
                Wrapped.Write(Out, $"Found then: {error}", first);
        }
    }

    private void Joints(GrowthDifference difference, IReadOnlyList<Joint> joints, string what)
    {
        if (joints.Count == 0)
            return;
        if (joints.Count > MostJoints)
        {
            Out.WriteLine($"     {what}: {joints.Count} matings (all of them with --format json)");
            return;
        }

        foreach (Joint joint in joints)
            Wrapped.Write(Out, $"{what}: {GrowthWords.Joint(difference, joint)}", "     ");
    }

    private void Parts(GrowthDifference difference, IReadOnlyList<int> parts, string what)
    {
        if (parts.Count > 0)
            Wrapped.Write(Out, $"{what}: {string.Join("; ", GrowthParts.Lots(difference, parts).Select(l => l.Line))}", "     ");
    }

    private static string Count(int number, string noun) => number == 1 ? $"1 {noun}" : $"{number} {noun}s";
}
