namespace PolarityMap.Core.Planning;

/// <summary>A plan that serves the brief, beside the others.</summary>
/// <param name="Proof">The plan.</param>
/// <param name="Measures">What it takes.</param>
/// <param name="Pieces">What each weight adds to its sum, in the order of <see cref="PlanWeights.Names"/>.</param>
public sealed record ComparedPlan(PlanProof Proof, PlanMeasures Measures, IReadOnlyList<decimal> Pieces)
{
    /// <summary>The weighted sum: the smallest is the best.</summary>
    public decimal Score { get; } = Pieces.Sum();

    public PlanCandidate Candidate => Proof.Candidate;
}

/// <summary>Why a candidate cannot serve.</summary>
/// <param name="Kind">What kind of reason it is.</param>
/// <param name="Finding">The code of the finding that says so, or null.</param>
/// <param name="Words">The finding's title, or the reason in words.</param>
public sealed record PlanExclusion(RefusalCode Kind, string? Finding, string Words)
{
    /// <summary>With the code in front, where there is one.</summary>
    public override string ToString() => Finding is null ? Words : $"{Finding} {Words}";

    internal static PlanExclusion Of(Refusal refusal) => refusal switch
    {
        { Finding: { } code } => new(refusal.Code, code, Checks.RuleCatalogue.Find(code)!.Title),
        { Code: RefusalCode.Cassettes } => new(refusal.Code, null, "it takes two kinds of cassette, and one is asked for"),
        { Code: RefusalCode.Array } => new(refusal.Code, null, "the array of the interface is of another size"),
        _ => new(refusal.Code, null, refusal.Reason),
    };
}

/// <summary>Candidates that cannot serve for the same reasons.</summary>
public sealed record ExcludedPlans(IReadOnlyList<PlanProof> Proofs, IReadOnlyList<PlanExclusion> Reasons);

/// <summary>Every way to build a brief's plant side by side, each built and proven.</summary>
/// <param name="Brief">The brief.</param>
/// <param name="Weights">What they are sorted by.</param>
/// <param name="Plans">Those that serve, the best first; of equals in the order of <see cref="PlanMethod.Preferred"/>, small bases first.</param>
/// <param name="Excluded">Those that cannot, together where the reasons are the same.</param>
public sealed record PlanComparison(Brief Brief, PlanWeights Weights, IReadOnlyList<ComparedPlan> Plans, IReadOnlyList<ExcludedPlans> Excluded)
{
    /// <summary>How many candidates there are.</summary>
    public int Candidates => Plans.Count + Excluded.Sum(e => e.Proofs.Count);

    /// <summary>Whether something comes later.</summary>
    public bool HasLater => Plans.Any(p => p.Measures.Later is not null);

    /// <summary>Whether a sum of prices is told.</summary>
    public bool HasPrices => Plans.Any(p => p.Measures.Price is not null);

    /// <summary>Whether prices are asked to count and cannot, as some parts have none.</summary>
    public bool IsPriceLeftOut => Weights.Price > 0 && Plans.Count > 0 && !PlanWeights.WeighsPrice([.. Plans.Select(p => p.Measures)]);

    /// <summary>Which candidates are meant, in few words.</summary>
    public string Listed(ExcludedPlans excluded) =>
        Decisions.Listed([.. excluded.Proofs.Select(p => p.Candidate)], [.. Plans.Select(p => p.Proof), .. Excluded.SelectMany(e => e.Proofs)]);

    /// <summary>Builds every method and base that a brief leaves open, proves them and compares them.</summary>
    public static PlanComparison Of(Brief brief) => Of(brief, [.. Planner.Candidates(brief).Select(c => PlanProof.Of(brief, c))]);

    /// <summary>Compares plans that are proven already.</summary>
    public static PlanComparison Of(Brief brief, IReadOnlyList<PlanProof> proofs)
    {
        PlanProof[] serving = [.. proofs.Where(p => p.Serves)];
        PlanMeasures[] measures = [.. serving.Select(PlanMeasures.Of)];
        return new PlanComparison(
            brief,
            brief.Weights,
            [.. serving.Select((p, i) => new ComparedPlan(p, measures[i], brief.Weights.Pieces(measures[i], measures)))
                .OrderBy(p => p.Score).ThenBy(p => p.Candidate.Method.Preference).ThenBy(p => p.Candidate.Base)],
            [.. proofs.Where(p => !p.Serves).Select(p => (Proof: p, Reasons: p.Refusals.Select(PlanExclusion.Of).Distinct().ToArray()))
                .GroupBy(p => string.Join('\n', p.Reasons.Select(r => r.ToString())))
                .Select(g => new ExcludedPlans([.. g.Select(p => p.Proof)], g.First().Reasons))]);
    }
}
