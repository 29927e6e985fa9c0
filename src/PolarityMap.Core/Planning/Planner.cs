namespace PolarityMap.Core.Planning;

/// <summary>A brief planned.</summary>
/// <param name="Brief">The brief.</param>
/// <param name="Proofs">Every candidate that the brief leaves open, built and proven, in the order of methods and bases.</param>
/// <param name="Chosen">The best of those that serve, or null.</param>
/// <param name="Refusals">Where none serves: what cannot be met, with the nearest that can.</param>
public sealed record PlanResult(Brief Brief, IReadOnlyList<PlanProof> Proofs, PlanProof? Chosen, IReadOnlyList<Refusal> Refusals);

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
    public static PlanResult Plan(Brief brief, PlanWeights? weights = null)
    {
        PlanProof[] proofs = [.. Candidates(brief).Select(c => PlanProof.Of(brief, c))];
        PlanProof[] serving = [.. proofs.Where(p => p.Serves)];
        if (serving.Length == 0)
        {
            PlanProof nearest = proofs.MinBy(p => p.Refusals.Count)!;
            var relaxations = new Relaxations(brief, nearest.Candidate, nearest);
            return new PlanResult(brief, proofs, null, [.. nearest.Refusals.Select(relaxations.Explained)]);
        }

        PlanProof best = serving[0];
        if (proofs.Length > 1)
        {
            PlanMeasures[] measures = [.. serving.Select(PlanMeasures.Of)];
            decimal[] scores = [.. measures.Select(m => (weights ?? PlanWeights.Default).Score(m, measures))];
            best = serving[Array.IndexOf(scores, scores.Min())];
            int at = Array.IndexOf(serving, best);
            PlanCandidate[] alike = [.. serving.Where((p, i) => i != at && scores[i] == scores[at]).Select(p => p.Candidate)];
            best = best with { Planned = best.Planned! with { Decisions = [Decisions.Comparison(best, measures[at], proofs, alike), .. Decisions.Excluded(proofs), .. best.Planned.Decisions] } };
        }

        return new PlanResult(brief, proofs, best, []);
    }
}
