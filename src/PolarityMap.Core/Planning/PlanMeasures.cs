using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Core.Planning;

/// <summary>Parts of one kind.</summary>
/// <param name="Name">The kind, such as <c>A-to-B cord</c>.</param>
/// <param name="Count">How many there are.</param>
public sealed record KindCount(string Name, int Count)
{
    public override string ToString() => $"{Count} x {Name}";
}

/// <summary>What a proven plan takes, counted on its plant.</summary>
public sealed record PlanMeasures
{
    /// <summary>The kinds of cassettes and of outlets by their wiring and size.</summary>
    public required IReadOnlyList<KindCount> CassetteKinds { get; init; }

    /// <summary>The kinds of cords by how they are joined, whatever their length, colour and key.</summary>
    public required IReadOnlyList<KindCount> CordKinds { get; init; }

    /// <summary>The kinds of trunks by how they are joined and their legs, whatever their length.</summary>
    public required IReadOnlyList<KindCount> TrunkKinds { get; init; }

    /// <summary>The kinds of array adapters by their keys, those of cassettes among them.</summary>
    public required IReadOnlyList<KindCount> AdapterKinds { get; init; }

    /// <summary>Different kinds of cassettes and of outlets.</summary>
    public int Cassettes => CassetteKinds.Count;

    /// <summary>Different kinds of cords.</summary>
    public int Cords => CordKinds.Count;

    /// <summary>Different kinds of trunks.</summary>
    public int Trunks => TrunkKinds.Count;

    /// <summary>Different kinds of array adapters.</summary>
    public int Adapters => AdapterKinds.Count;

    /// <summary>Different kinds of cassettes, cords now and later, trunks and adapters together.</summary>
    public int Kinds => Cassettes + Cords + LaterCords + Trunks + Adapters;

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

    /// <summary>Kinds of cords that only what comes later takes; 0 where nothing is to change.</summary>
    public required int LaterCords { get; init; }

    /// <summary>Links of networks that go on to another application later; 0 where nothing is to change.</summary>
    public required LinksLater LinksLater { get; init; }

    /// <summary>Rows of an array connector of the trunks: 1 or 2.</summary>
    public required int ArrayRows { get; init; }

    /// <summary>What has to be bought for what comes later, and what stays; null where nothing is to change.</summary>
    public required LaterChange? Later { get; init; }

    /// <summary>What the parts cost by the brief's price list, interfaces left out; null without one.</summary>
    public required PriceSum? Price { get; init; }

    /// <summary>True when a channel takes the same parts at both ends.</summary>
    public required bool IsAlikeAtBothEnds { get; init; }

    /// <exception cref="ArgumentException">The proof has no plant.</exception>
    public static PlanMeasures Of(PlanProof proof)
    {
        if (proof is not { Planned: { } planned, Report: { } report })
            throw new ArgumentException("nothing was built", nameof(proof));
        Plant plant = report.Traced.Plant;
        int parts = 0, fibres = 0, used = 0;
        var cassettes = new KindList();
        var cords = new KindList();
        var trunks = new KindList();
        var adapters = new KindList();
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
            string type = PartFacts.Type(part), key = $"{part.Kind} {type} {part.Shape.Ports.Max(p => p.Base)}";
            if (PartFacts.IsCord(part))
            {
                cords.Add(key, type);
            }
            else if (part.Shape.IsCable)
            {
                int legs = part.Shape.Ports.Count(p => p.Side == Side.Near);
                trunks.Add($"{key} {part.Shape.Ports.Count}", legs == 1 ? type : $"{type} of {legs} legs");
                fibres += PartFacts.Fibres(part);
                used += Lit(report.Traced, part, first, lit);
            }
            else
            {
                if (!part.Shape.Ports[0].IsAdapter)
                    cassettes.Add(key, type);
                foreach (PortShape port in part.Shape.Ports)
                {
                    if (port.Keys is { } keys)
                        adapters.Add(keys.Word(), $"{(keys == Keying.Opposed ? "Type-A" : "Type-B")} adapter");
                }
            }
        }

        return new PlanMeasures
        {
            CassetteKinds = cassettes.All,
            CordKinds = cords.All,
            TrunkKinds = trunks.All,
            AdapterKinds = adapters.All,
            Parts = parts,
            FibresUsed = used,
            FibresIdle = fibres - used,
            Matings = report.Context.Losses.Links.Select(l => l.Strands.Max(s => s.Stated.MatingCount)).DefaultIfEmpty(0).Max(),
            WorstMargin = report.Context.Losses.Links.Where(l => l.Worst.Margin is not null).Select(l => l.Worst.Margin).Min(),
            LaterCords = proof.Later is { Report: not null } later ? Of(later).CordKinds.Count(k => !cords.All.Any(c => c.Name == k.Name)) : 0,
            LinksLater = LinksLater.Of(proof),
            ArrayRows = planned.Candidate.Array.IsOneRow ? 1 : 2,
            Later = LaterChange.Of(proof),
            Price = planned.Brief.Prices?.Sum(PlanItem.Of(proof)),
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

    /// <summary>Kinds with their counts, in the order of first use.</summary>
    private sealed class KindList
    {
        private readonly Dictionary<string, int> _places = [];
        private readonly List<KindCount> _all = [];

        public IReadOnlyList<KindCount> All => _all;

        public void Add(string key, string name)
        {
            if (!_places.TryGetValue(key, out int place))
            {
                _places[key] = place = _all.Count;
                _all.Add(new KindCount(name, 0));
            }

            _all[place] = _all[place] with { Count = _all[place].Count + 1 };
        }
    }
}
