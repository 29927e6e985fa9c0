namespace PolarityMap.Core.Planning;

/// <summary>A brief planned.</summary>
/// <param name="Brief">The brief.</param>
/// <param name="Proofs">Every candidate that the brief leaves open, built and proven, in the order of methods and bases.</param>
/// <param name="Chosen">The best of those that serve, or null.</param>
/// <param name="Refusals">Where none serves: what cannot be met, with the nearest that can.</param>
public sealed record PlanResult(Brief Brief, IReadOnlyList<PlanProof> Proofs, PlanProof? Chosen, IReadOnlyList<Refusal> Refusals)
{
    /// <summary>
    /// Where none serves: what to change so that the whole brief is met, planned and proven; null where no such changes were found.
    /// </summary>
    public NearestBrief? Met { get; init; }
}

/// <summary>Plans a brief: builds each candidate, proves it, and takes the best.</summary>
public static class Planner
{
    /// <summary>The methods and bases that a brief leaves open.</summary>
    public static IReadOnlyList<PlanCandidate> Candidates(Brief brief)
    {
        var candidates = new List<PlanCandidate>();
        foreach (PlanMethod method in PlanMethod.All)
        {
            foreach (int fibres in PlanCandidate.Bases)
            {
                if ((brief.Method is null || brief.Method == method) && (brief.Base is null || brief.Base == fibres))
                    candidates.Add(new PlanCandidate(method, fibres));
            }
        }

        return candidates;
    }

    /// <summary>The first candidate that serves a brief, or null: enough where nothing is to be compared or told.</summary>
    public static PlanProof? Served(Brief brief) => Candidates(brief).Select(c => PlanProof.Of(brief, c)).FirstOrDefault(p => p.Serves);

    /// <summary>Plans a brief. Where nothing serves, the candidate with the fewest refusals tells why.</summary>
    public static PlanResult Plan(Brief brief)
    {
        PlanProof[] proofs = [.. Candidates(brief).Select(c => PlanProof.Of(brief, c))];
        PlanProof[] serving = [.. proofs.Where(p => p.Serves)];
        if (serving.Length == 0)
        {
            PlanProof nearest = proofs.MinBy(p => p.Refusals.Count)!;
            var relaxations = new Relaxations(brief, nearest.Candidate, nearest);
            Refusal[] refusals = [.. nearest.Refusals.Select(relaxations.Explained)];
            return new PlanResult(brief, proofs, null, refusals) { Met = Met(refusals) };
        }

        PlanProof best = serving[0];
        if (proofs.Length > 1)
        {
            IReadOnlyList<ComparedPlan> compared = PlanComparison.Of(brief, proofs).Plans;
            ComparedPlan first = compared[0];
            PlanCandidate[] alike = [.. compared.Where(p => p != first && p.Score == first.Score).Select(p => p.Candidate)];
            best = first.Proof with { Planned = first.Proof.Planned! with { Decisions = [Decisions.Comparison(first.Proof, first.Measures, proofs, alike), .. Decisions.Excluded(proofs), .. first.Proof.Planned.Decisions] } };
        }

        best = best with { Planned = best.Planned! with { Decisions = [.. best.Planned.Decisions, .. Decisions.Remarks(best)] } };
        return new PlanResult(brief, proofs, best, []);
    }

    /// <summary>Changes one thing after the other, each time the nearest that clears the first refusal left, until the brief is met.</summary>
    private static NearestBrief? Met(IReadOnlyList<Refusal> refusals)
    {
        const int mostChanges = 6;
        var words = new List<string>();
        NearestBrief? next = refusals[0].Nearest.Count > 0 ? refusals[0].Nearest[0] : null;
        while (next is { } nearest && words.Count < mostChanges)
        {
            words.Add(nearest.Words);
            PlanProof proof = PlanProof.Of(nearest.Brief, nearest.Candidate);
            if (proof.Serves)
                return nearest with { Words = string.Join("; ", words) };
            next = new Relaxations(nearest.Brief, nearest.Candidate, proof).Nearest(proof.Refusals[0]).FirstOrDefault();
        }

        return null;
    }
}
