using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Planning;

/// <summary>A candidate built, traced and checked.</summary>
/// <param name="Candidate">The candidate.</param>
/// <param name="Planned">The plant as it would be written; null where none can be built.</param>
/// <param name="Report">What the checker says of it; null where nothing could be traced.</param>
/// <param name="Refusals">Why it does not serve the brief; empty when it does.</param>
public sealed record PlanProof(PlanCandidate Candidate, PlannedPlant? Planned, CheckReport? Report, IReadOnlyList<Refusal> Refusals)
{
    /// <summary>The rule that tells arrays which do not go together.</summary>
    private const string ArrayRule = "M04";

    /// <summary>True when every link is proven, nothing was found, now and later, and nothing stands in the way.</summary>
    public bool Serves => Refusals.Count == 0;

    /// <summary>The plant with what its networks are to carry later, or null where nothing is to change.</summary>
    public PlanProof? Later { get; init; }

    /// <summary>Builds a candidate and proves it, now and for what comes later.</summary>
    public static PlanProof Of(Brief brief, PlanCandidate candidate)
    {
        PlanProof now = Built(brief, candidate);
        if (LaterBrief.Of(brief, candidate, out Refusal? refusal) is not { } later)
            return refusal is null ? now : now with { Refusals = [.. now.Refusals, refusal] };
        PlanProof then = Built(later, candidate);
        if (later.Networks.Any(n => Structure.OfApplication(n, n.Application, candidate, "later") is not null))
            return now with { Refusals = [.. now.Refusals.Select(r => WithFinding(r, then.Report))] };
        IEnumerable<Refusal> late = then.Refusals.Select(r => AsLater(brief, r)).Where(r => !now.Refusals.Any(n => n.Requirement == r.Requirement && n.Finding == r.Finding && n.Code == r.Code));
        return now with { Later = then, Refusals = [.. now.Refusals, .. late] };
    }

    private static PlanProof Built(Brief brief, PlanCandidate candidate)
    {
        GeneratedPlan generated = PlanGenerator.Generate(brief, candidate);
        if (generated.Planned is not { } planned)
            return new PlanProof(candidate, null, null, generated.Refusals);
        if (PlantAssembly.Of(planned, out string twice) is not { } plant)
            return new PlanProof(candidate, planned, null, [.. generated.Refusals, NameRefusal.Of(planned, twice)]);
        CheckReport report = CheckReport.Of(TracedPlant.Of(plant));
        Refusal[] structural = [.. generated.Refusals.Select(r => WithFinding(r, report))];

        // What is told of the brief already is not told of the plant as well.
        return new PlanProof(candidate, planned, report, [.. structural, .. FindingRefusals.Of(brief, candidate, report).Where(f => !structural.Any(s => s.Finding == f.Finding))]);
    }

    /// <summary>Arrays of different sizes with the code of the rule that finds them, where it did.</summary>
    private static Refusal WithFinding(Refusal refusal, CheckReport? report) =>
        refusal is { Code: RefusalCode.Array, Finding: null } && report?.Findings.Any(f => f.Rule.Code == ArrayRule) == true
            ? refusal with { Finding = ArrayRule, Reason = $"{ArrayRule} {RuleCatalogue.Find(ArrayRule)!.Title}: {refusal.Reason}" }
            : refusal;

    /// <summary>A refusal of the plant as it will be, told of what is asked for later.</summary>
    private static Refusal AsLater(Brief brief, Refusal refusal)
    {
        const string now = ".application";
        return refusal.Requirement.EndsWith(now, StringComparison.Ordinal) && brief.Networks.FirstOrDefault(n => refusal.Requirement == $"networks.{n.Name}{now}") is { Later: not null } network
            ? refusal with { Requirement = $"networks.{network.Name}.later" }
            : refusal with { Reason = $"later: {refusal.Reason}" };
    }
}
