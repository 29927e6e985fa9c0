using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Core.Planning;

/// <summary>What a proven plan takes, counted on its plant.</summary>
public sealed record PlanMeasures
{
    /// <summary>Different kinds of cassettes and of outlets by their wiring, size and keys.</summary>
    public required int Cassettes { get; init; }

    /// <summary>Different cords by how they are joined, whatever their length, colour and key.</summary>
    public required int Cords { get; init; }

    /// <summary>Different trunks by how they are joined and their legs, whatever their length.</summary>
    public required int Trunks { get; init; }

    /// <summary>Different array adapters by their keys, those of cassettes among them.</summary>
    public required int Adapters { get; init; }

    /// <summary>All parts but interfaces.</summary>
    public required int Parts { get; init; }

    /// <summary>Fibres of trunks that carry a link.</summary>
    public required int FibresUsed { get; init; }

    /// <summary>Fibres of trunks that carry none.</summary>
    public required int FibresIdle { get; init; }

    /// <summary>The most matings that are counted along one link.</summary>
    public required int Matings { get; init; }

    /// <summary>The smallest margin of any link; null where none is judged.</summary>
    public required Decibel? WorstMargin { get; init; }

    /// <summary>Different cords of the plant with what comes later; 0 where nothing is to change.</summary>
    public required int LaterCords { get; init; }

    /// <summary>True when a channel takes the same parts at both ends.</summary>
    public required bool IsAlikeAtBothEnds { get; init; }

    /// <exception cref="ArgumentException">The proof has no plant.</exception>
    public static PlanMeasures Of(PlanProof proof)
    {
        if (proof is not { Planned: { } planned, Report: { } report })
            throw new ArgumentException("nothing was built", nameof(proof));
        Plant plant = report.Traced.Plant;
        int parts = 0, fibres = 0, used = 0;
        var cassettes = new HashSet<string>();
        var cords = new HashSet<string>();
        var trunks = new HashSet<string>();
        var adapters = new HashSet<Keying>();
        var lit = new HashSet<int>(report.Context.Outcomes.All.SelectMany(o => o.Strands));
        int position = 0;
        for (int i = 0; i < plant.Parts.Count; i++)
        {
            Part part = plant.Parts[i];
            int first = position;
            position += part.Shape.PositionCount;
            if (part.Shape.IsInterface)
                continue;
            parts++;
            string type = $"{part.Kind} {PartFacts.Type(part)} {part.Shape.Ports.Max(p => p.Base)}";
            if (PartFacts.IsCord(part))
            {
                cords.Add(type);
            }
            else if (part.Shape.IsCable)
            {
                trunks.Add($"{type} {part.Shape.Ports.Count}");
                fibres += PartFacts.Fibres(part);
                used += Lit(report.Traced, part, first, lit);
            }
            else
            {
                if (!part.Shape.Ports[0].IsAdapter)
                    cassettes.Add(type);
                foreach (PortShape port in part.Shape.Ports)
                {
                    if (port.Keys is { } keys)
                        adapters.Add(keys);
                }
            }
        }

        return new PlanMeasures
        {
            Cassettes = cassettes.Count,
            Cords = cords.Count,
            Trunks = trunks.Count,
            Adapters = adapters.Count,
            Parts = parts,
            FibresUsed = used,
            FibresIdle = fibres - used,
            Matings = report.Context.Losses.Links.Select(l => l.Strands.Max(s => s.Stated.MatingCount)).DefaultIfEmpty(0).Max(),
            WorstMargin = report.Context.Losses.Links.Where(l => l.Worst.Margin is not null).Select(l => l.Worst.Margin).Min(),
            LaterCords = proof.Later is { Report: not null } later ? Of(later).Cords : 0,
            IsAlikeAtBothEnds = IsAlike(planned),
        };
    }

    private static int Lit(Strands.TracedPlant traced, Part part, int first, HashSet<int> lit)
    {
        int used = 0;
        foreach (PortShape port in part.Shape.Ports)
        {
            if (port.Side != Side.Near)
                continue;
            for (int p = 0; p < port.PositionCount; p++)
            {
                int at = first + port.FirstPosition + p;
                used += part.Shape.Inside[port.FirstPosition + p] >= 0 && lit.Contains(traced.StrandOf(at)) ? 1 : 0;
            }
        }

        return used;
    }

    private static bool IsAlike(PlannedPlant planned)
    {
        PlanMethod method = planned.Candidate.Method;
        bool alike = true;
        foreach (BriefNetwork network in planned.Brief.Networks)
        {
            if (network.Application.IsParallel)
                alike &= method.ArrayCords(planned.Candidate.Array, 1) is var (first, last) && first == last;
            else
                alike &= method.HasOneCassette && method.LastCord(planned.Brief.Separation == SeparationPolicy.Own ? 1 : 2) == "A-to-B";
        }

        return alike;
    }
}

/// <summary>How much each measure counts when plans are compared; the plan with the smallest sum is the best.</summary>
/// <param name="Kinds">Different kinds of cassettes, cords now and later, trunks and adapters: what is stocked, and what can be mistaken for another.</param>
/// <param name="Parts">Parts to buy.</param>
/// <param name="Idle">Fibres of trunks that carry nothing.</param>
/// <param name="Matings">Matings along a link.</param>
/// <param name="Ends">What is added when the two ends take different parts.</param>
public sealed record PlanWeights(decimal Kinds = 4, decimal Parts = 3, decimal Idle = 1, decimal Matings = 1, decimal Ends = 2)
{
    /// <summary>Kinds before parts before fibres: a wrong part fitted by mistake costs more than a fibre (common practice).</summary>
    public static PlanWeights Default { get; } = new();

    /// <summary>The weighted sum, each measure as a share of the most that any of the compared plans takes.</summary>
    public decimal Score(PlanMeasures plan, IReadOnlyList<PlanMeasures> compared)
    {
        decimal Share(Func<PlanMeasures, int> of) => compared.Max(of) is > 0 and int most ? (decimal)of(plan) / most : 0;
        return (Kinds * Share(static m => m.Cassettes + m.Cords + m.LaterCords + m.Trunks + m.Adapters)) + (Parts * Share(static m => m.Parts))
            + (Idle * Share(static m => m.FibresIdle)) + (Matings * Share(static m => m.Matings)) + (plan.IsAlikeAtBothEnds ? 0 : Ends);
    }
}
