using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Plants;

namespace PolarityMap.Cli.Output;

/// <summary>A planned brief for people: what was decided, what it takes, or what cannot be met and what can.</summary>
internal sealed class PlanResultText(CommandContext context)
{
    private readonly Paint _paint = new(context.Colour);

    private TextWriter Out => context.Out;

    public void Write(PlanResult result, IReadOnlyList<string> written)
    {
        Out.WriteLine(_paint.Strong(result.Brief.Title.Title));
        if (result.Chosen is { } chosen)
            WritePlan(chosen, written);
        else
            WriteRefusals(result);
    }

    /// <summary>What a brief names and nothing uses, each with its place.</summary>
    public static void WriteRemarks(TextWriter output, Brief brief)
    {
        foreach (BriefRemark remark in BriefRemark.Of(brief))
            Wrapped.Write(output, $"{brief.PlaceOf(remark.About)}: {remark.Words}.", "");
    }

    private void WritePlan(PlanProof plan, IReadOnlyList<string> written)
    {
        Plant plant = plan.Report!.Traced.Plant;
        Out.WriteLine($"Planned with {plan.Candidate}. {plan.Report.Verdict()}");
        Out.WriteLine();
        foreach (PlanDecision decision in plan.Planned!.Decisions)
            Wrapped.Write(Out, $"{decision.What} ({decision.Why}).", "  - ");
        Out.WriteLine();
        PlanMeasures counts = PlanMeasures.Of(plan);
        string margin = counts.WorstMargin is { } least ? $", worst margin {least}" : "";
        Out.WriteLine($"{Count(plant.Links.Count, "link")}, {Count(counts.Parts, "part")} beside interfaces, {counts.FibresUsed} fibres used and {counts.FibresIdle} idle, {Count(counts.Matings, "mating")} a link at most{margin}.");
        Out.WriteLine("Parts:");
        foreach (string line in PlanParts.Lines(PlanParts.Of(plan)))
            Wrapped.Write(Out, line, "  ");
        WriteRemarks(Out, plan.Planned!.Brief);
        foreach (string path in written)
            Out.WriteLine($"Wrote {path}");
        if (written.Count == 0)
            Out.WriteLine("Nothing was written; name a plant document with -o.");
        Wrapped.Write(Out, Cautions.Codes, "");
    }

    private void WriteRefusals(PlanResult result)
    {
        Out.WriteLine(result.Proofs.Count == 1
            ? $"Cannot be met with {result.Proofs[0].Candidate}. Nothing was written."
            : $"None of {result.Proofs.Count} candidates serves; told is the one with the fewest refusals. Nothing was written.");
        foreach (Refusal refusal in result.Refusals)
        {
            Out.WriteLine();
            Out.WriteLine(_paint.Strong($"{result.Brief.PlaceOf(refusal.Requirement)}: {refusal.Requirement}"));
            Wrapped.Write(Out, $"{refusal.Reason}.", "  reason   ");
            if (refusal.Nearest.Count == 0)
                Out.WriteLine("  nearest  nothing that changes one thing clears it");
            foreach (NearestBrief nearest in refusal.Nearest)
                Wrapped.Write(Out, nearest.Words, nearest == refusal.Nearest[0] ? "  nearest  " : "  or       ");
        }

        if (BriefRemark.Of(result.Brief).Count > 0)
        {
            Out.WriteLine();
            WriteRemarks(Out, result.Brief);
        }

        if (result.Refusals.Count > 1 && result.Met is { } met)
        {
            Out.WriteLine();
            Wrapped.Write(Out, $"With all of this changed the brief is met: {met.Words}.", "");
        }
    }

    private static string Count(int number, string noun) => number == 1 ? $"1 {noun}" : $"{number} {noun}s";
}
