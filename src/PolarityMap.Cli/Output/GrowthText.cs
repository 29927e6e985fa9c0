using PolarityMap.Core.Planning;
using PolarityMap.Core.Planning.Growth;

namespace PolarityMap.Cli.Output;

/// <summary>How a plant grows, for people: what stays, what to buy, move and take out, and the work step by step.</summary>
internal sealed class GrowthText(CommandContext context)
{
    private const int MostJoints = 400;

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

        Wrapped.Write(Out, $"After: built on with {result.Candidate}{(result.Compared > 1 ? $", the best of {result.Compared} ways that were tried" : "")}. {after.Report!.Verdict()}", "");
        foreach (string remark in result.Remarks)
            Wrapped.Write(Out, $"Remark: {remark}.", "");
        if (!result.IsMet)
            Wrapped.Write(Out, "Not every step on the way is proven; what was found is told at the step. Nothing was written.", "");
        WriteCounts(result, difference);
        WriteParts(result, "Add", difference.Added);
        WriteParts(result, "Move", difference.Moved);
        WriteLabels(difference);
        WriteChanges(difference);
        WriteParts(result, "Take out", difference.TakenOut);
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
        int dark = result.Steps.Sum(s => s.Dark.Count);
        Out.WriteLine(dark == 0 ? "Dark: no live link." : $"Dark: {Count(dark, "link")}, each in one step, {result.Steps.Max(s => s.Dark.Count)} at a time at most.");
    }

    private void WriteParts(GrowthResult result, string heading, IReadOnlyList<int> parts)
    {
        if (parts.Count == 0)
            return;
        Out.WriteLine();
        Out.WriteLine($"{heading}:");
        foreach (string line in PlanParts.Lines(GrowthParts.List(result, parts)))
            Wrapped.Write(Out, line, "  ");
    }

    /// <summary>Cords whose label tells ends that they have no more.</summary>
    private void WriteLabels(GrowthDifference difference)
    {
        (string Old, string New)[] labels = [.. difference.Moved.Where(p => difference.Parts[p] is { IsInline: true } part && part.Shape.IsCable).Select(p => (difference.Parts[p].Name, GrowthWords.Label(difference, p))).Where(l => l.Item1 != l.Item2)];
        if (labels.Length == 0)
            return;
        Out.WriteLine();
        Out.WriteLine("Label anew at both ends:");
        foreach ((string old, string label) in labels.Take(MostJoints))
            Wrapped.Write(Out, $"{old} becomes {label}", "  ");
        if (labels.Length > MostJoints)
            Out.WriteLine($"  and {labels.Length - MostJoints} more (all of them with --format json)");
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

        foreach (var alike in difference.Relabelled.GroupBy(p => string.Join(", ", difference.Parts[p].PortNetworks.Select(n => difference.Networks[n].Name).Distinct())))
            Wrapped.Write(Out, $"Label the ports for {alike.Key}, and let them carry its key where it has one: {GrowthWords.Few([.. alike.Select(p => difference.Parts[p].Name)])}", "  ");
    }

    private void WriteSteps(GrowthResult result, GrowthDifference difference)
    {
        Out.WriteLine();
        Out.WriteLine(result.Steps.Count == 0 ? "Order of work: nothing is to be done." : "Order of work:");
        if (difference.TakenOut.Any(p => difference.Parts[p].Name != result.Before.Traced.Plant.Parts[p].Name))
            Wrapped.Write(Out, "What goes and is called '(old)' bears the name of what comes: mark it before you begin.", "");
        foreach (GrowthStep step in result.Steps)
        {
            Wrapped.Write(Out, GrowthWords.Title(difference, step) + ".", $"{step.Number,3}. ");
            string first = "     ";
            Joint[] stay = [.. step.Opened.Where(o => o.IsOpen && step.Made.Any(m => m.Through == o.Through && m.Ports.Contains(o.A)))];
            Joints(difference, step.Held, "Pull out first, and plug in again last of all", before: true);
            Joints(difference, [.. step.Opened.Except(stay)], "Unplug", before: true);
            Carried(difference, step);
            if (step.Kind != StepKind.CutOver)
                Parts(result, step.PartsOut, "Take out");
            Parts(result, step.PartsIn, "Put in");
            Places(difference, step.PartsIn);
            Joints(difference, step.Made, "Plug in");
            Joints(difference, step.Cleared, "Then unplug what is dead");
            if (step.Kind == StepKind.CutOver)
                Parts(result, step.PartsOut, "Take out");
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

    /// <summary>Parts that are carried to another room when they are unplugged.</summary>
    private void Carried(GrowthDifference difference, GrowthStep step)
    {
        foreach (int part in step.Held.Concat(step.Opened).Concat(step.Cleared).SelectMany(j => j.Ports).Select(p => p.Part).Distinct().Where(difference.RoomsBefore.ContainsKey))
            Wrapped.Write(Out, $"Carry {difference.Parts[part].Name} from {difference.RoomsBefore[part] ?? "where it is"} to {difference.Parts[part].Room ?? "where it is needed"}.", "     ");
    }

    private void Joints(GrowthDifference difference, IReadOnlyList<Joint> joints, string what, bool before = false)
    {
        if (joints.Count == 0)
            return;
        Out.WriteLine($"     {what}:");
        IReadOnlyList<string> lines = GrowthWords.Lines(difference, joints, before);
        foreach (string line in lines.Take(MostJoints))
            Wrapped.Write(Out, line, "       ");
        if (lines.Count > MostJoints)
            Out.WriteLine($"       and {lines.Count - MostJoints} more (all of them with --format json)");
    }

    private void Parts(GrowthResult result, IReadOnlyList<int> parts, string what)
    {
        if (parts.Count == 0)
            return;
        Out.WriteLine($"     {what}:");
        foreach (string line in PlanParts.Lines(GrowthParts.List(result, parts)))
            Wrapped.Write(Out, line, "       ");
    }

    /// <summary>Where new parts go, those of one place together.</summary>
    private void Places(GrowthDifference difference, IReadOnlyList<int> parts)
    {
        foreach (var of in parts.Where(p => difference.Parts[p].Note is not null).GroupBy(p => (difference.Parts[p].Room, difference.Parts[p].Note)))
            Wrapped.Write(Out, $"{(of.Key.Room is { } room ? $"{room}, " : "")}{of.Key.Note}: {GrowthWords.Few([.. of.Select(p => difference.Parts[p].Name)], 24)}", "       ");
    }

    private static string Count(int number, string noun) => number == 1 ? $"1 {noun}" : $"{number} {noun}s";
}
