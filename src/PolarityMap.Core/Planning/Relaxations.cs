using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Planning;

/// <summary>
/// The nearest briefs that can be met: each changes one thing of a refused brief, is planned, and is taken only where the refusal
/// is gone and nothing new stands in the way.
/// </summary>
internal sealed class Relaxations(Brief brief, PlanCandidate candidate, PlanProof refused)
{
    private const int MostTold = 3;

    private const long Metre = 1_000;

    /// <summary>Larger briefs are searched with a few outlets of each group: what a link loses does not depend on how many there are.</summary>
    private const int MostSearched = 500;

    private const int FewOutlets = 4;

    /// <summary>The refusal with what can be met instead.</summary>
    public Refusal Explained(Refusal refusal)
    {
        var nearest = new List<NearestBrief>();
        foreach (NearestBrief tried in Tries(refusal))
        {
            if ((tried.Brief.LinkCount <= MostSearched || ClearsSoFar(tried, refusal)) && Clears(tried, refusal))
                nearest.Add(tried);
            if (nearest.Count == MostTold)
                break;
        }

        return refusal with { Nearest = nearest };
    }

    /// <summary>True when a changed brief is planned without the refusal, and without another that was not there before.</summary>
    private bool Clears(NearestBrief tried, Refusal refusal)
    {
        PlanProof proof = PlanProof.Of(tried.Brief, tried.Candidate);
        return !proof.Refusals.Any(r => r.IsLike(refusal) || !refused.Refusals.Any(r.IsLike));
    }

    /// <summary>As <see cref="Clears"/> for a step of a search, of whose result the whole brief is tried afterwards.</summary>
    private bool ClearsSoFar(NearestBrief tried, Refusal refusal)
    {
        if (tried.Brief.LinkCount <= MostSearched)
            return Clears(tried, refusal);
        Brief few = tried.Brief with { Outlets = [.. tried.Brief.Outlets.Select(o => o with { Name = o.Name.Slice(0, Math.Min(FewOutlets, o.Name.Count)) })] };
        return !PlanProof.Of(few, tried.Candidate).Refusals.Any(r => r.Code == refusal.Code && r.Finding == refusal.Finding);
    }

    private IEnumerable<NearestBrief> Tries(Refusal refusal) => refusal.Code switch
    {
        RefusalCode.Ports => [Changed($"switches: {refusal.Number}", brief with { Networks = [.. brief.Networks.Select(n => refusal.Requirement == $"networks.{n.Name}.switches" ? n with { Switches = refusal.Number } : n)] })],
        RefusalCode.Stock => [Changed($"stock-lengths: up to {refusal.Needed}", brief with { StockLengths = [.. brief.StockLengths, refusal.Needed] }), .. Shorter(refusal, refusal.Requirement)],
        RefusalCode.Cassettes => [.. OtherMethods(), Changed("one-cassette: no", brief with { OneCassette = false })],
        RefusalCode.Array => OtherBases(),
        RefusalCode.Application => OtherApplications(refusal),
        RefusalCode.Later => [Changed("separation: own", brief with { Separation = SeparationPolicy.Own }), Changed("no later application", WithoutLater())],
        RefusalCode.Legs => [Changed($"trunk-legs: up to {refusal.Number}", brief with { TrunkLegs = [.. brief.TrunkLegs, refusal.Number] }), .. OtherBases()],
        RefusalCode.Finding => OfFinding(refusal),
        _ => [],
    };

    private IEnumerable<NearestBrief> OfFinding(Refusal refusal) => refusal.Finding switch
    {
        "L02" => [.. OtherFibres(sameCore: true), .. Shorter(refusal, refusal.Requirement), .. OtherFibres(sameCore: false), Own()],
        "L01" or "L04" or "L06" => [LowerLoss(refusal), .. OtherFibres(sameCore: true), .. refusal.Finding == "L01" ? Shorter(refusal, LongestWay()) : [], Own(), .. OtherFibres(sameCore: false)],
        "L03" => [SmallerMargin(), LowerLoss(refusal)],
        "L05" or "F04" => [.. OtherFibres(sameCore: true), .. OtherFibres(sameCore: false)],
        "M05" or "M06" when brief.Angled is not null => [Changed($"angled: {(brief.IsAngled ? "no" : "yes")}", brief with { Angled = !brief.IsAngled }), .. OtherMethods()],
        "S06" or "S07" => [Changed("a key of its own for each network, such as key: K1", brief with { Networks = [.. brief.Networks.Select((n, i) => n with { Network = n.Network with { Key = $"K{i + 1}", PlainFits = false } })] }), Own()],
        "S08" or "S09" => [Changed("a colour of its own for each network", brief with { Networks = [.. brief.Networks.Select(n => n with { Network = n.Network with { Colour = null } })] })],
        "M04" => OtherBases(),
        _ => OtherMethods(),
    };

    private NearestBrief Changed(string words, Brief changed) => new(words, changed, candidate);

    private NearestBrief Own() => Changed("separation: own", brief with { Separation = SeparationPolicy.Own });

    private Brief WithoutLater() => brief with { Networks = [.. brief.Networks.Select(n => n with { Later = null })] };

    private IEnumerable<NearestBrief> OtherFibres(bool sameCore)
    {
        foreach (FibreClass fibre in FibreClass.All)
        {
            bool same = fibre.Core == brief.Fibre.Core;
            if (same == sameCore && (!same || fibre.Rank > brief.Fibre.Rank))
                yield return Changed($"fibre: {fibre.Name}", brief with { Fibre = fibre });
        }
    }

    private IEnumerable<NearestBrief> OtherMethods()
    {
        foreach (PlanMethod method in PlanMethod.All)
        {
            if (method != candidate.Method)
                yield return new NearestBrief($"method: {method.Name}", brief with { Method = method }, candidate with { Method = method });
        }
    }

    private IEnumerable<NearestBrief> OtherBases()
    {
        foreach (int other in PlanCandidate.Bases)
        {
            if (other != candidate.Base)
                yield return new NearestBrief($"base: {other}", brief with { Base = other }, candidate with { Base = other });
        }
    }

    /// <summary>Applications of the same rate that are planned.</summary>
    private IEnumerable<NearestBrief> OtherApplications(Refusal refusal)
    {
        foreach (BriefNetwork network in brief.Networks)
        {
            bool later = refusal.Requirement == $"networks.{network.Name}.later";
            if (!later && refusal.Requirement != $"networks.{network.Name}.application")
                continue;
            string name = (later ? network.Later! : network.Application).Name;
            string rate = name[..(name.IndexOf('-') is > 0 and int dash ? dash : name.Length)];
            foreach (Application other in Application.All)
            {
                if (!other.Name.StartsWith(rate + "-", StringComparison.Ordinal) || !Structure.IsPlanned(other))
                    continue;
                BriefNetwork changed = later ? network with { Later = other } : network with { Application = other };
                yield return Changed($"{(later ? "later" : "application")}: {other.Name}", brief with { Networks = [.. brief.Networks.Select(n => n == network ? changed : n)] });
            }
        }
    }

    /// <summary>The longest way that is met, to the metre; nothing where not even none at all is.</summary>
    private IEnumerable<NearestBrief> Shorter(Refusal refusal, string requirement)
    {
        if (WayOf(requirement) is not { } way)
            yield break;
        long fits = -1, fails = (way.Millimetres + Metre - 1) / Metre;
        if (!ClearsSoFar(Way(requirement, 0), refusal))
            yield break;
        for (fits = 0; fails - fits > 1;)
        {
            long middle = (fits + fails) / 2;
            if (ClearsSoFar(Way(requirement, middle), refusal))
                fits = middle;
            else
                fails = middle;
        }

        yield return Way(requirement, fits);
    }

    /// <summary>The key of the longest way to a room.</summary>
    private string LongestWay() => brief.Rooms.MaxBy(r => r.Distance?.Millimetres ?? -1) is { } room ? $"rooms.{room.Name}.distance" : "";

    private Length? WayOf(string requirement) =>
        brief.Rooms.FirstOrDefault(r => requirement == $"rooms.{r.Name}.distance")?.Distance
        ?? brief.Outlets.FirstOrDefault(o => requirement == $"outlets.{o.Name}.distance")?.Distance;

    private NearestBrief Way(string requirement, long metres)
    {
        Length length = Length.FromMillimetres(metres * Metre);
        return Changed($"{requirement}: at most {length}", brief with
        {
            Rooms = [.. brief.Rooms.Select(r => requirement == $"rooms.{r.Name}.distance" ? r with { Distance = length } : r)],
            Outlets = [.. brief.Outlets.Select(o => requirement == $"outlets.{o.Name}.distance" ? o with { Distance = length } : o)],
        });
    }

    /// <summary>The largest loss of any mating, in steps of 0.05 dB, with which the links fit; else the smallest step.</summary>
    private NearestBrief LowerLoss(Refusal refusal)
    {
        const decimal step = 0.05m;
        decimal most = brief.Limits.MatingMax.Value;
        NearestBrief tried;
        do
        {
            most -= step;
            var loss = new Decibel(most);
            tried = Changed($"array-loss and duplex-loss: at most {loss}", brief with
            {
                ArrayLoss = brief.ArrayLoss is { } a ? Decibel.Min(a, loss) : loss,
                DuplexLoss = brief.DuplexLoss is { } d ? Decibel.Min(d, loss) : loss,
            });
        }
        while (most > step && !ClearsSoFar(tried, refusal));
        return tried;
    }

    /// <summary>The margin that the worst link has.</summary>
    private NearestBrief SmallerMargin()
    {
        decimal least = new[] { refused, refused.Later }.Where(p => p?.Report is not null)
            .SelectMany(p => p!.Report!.Context.Losses.Links).Select(l => l.Worst.Margin?.Value ?? decimal.MaxValue).DefaultIfEmpty(0).Min();
        var margin = new Decibel(Math.Max(0, decimal.Floor(least * 100) / 100));
        return Changed($"margin: {margin}", brief with { Margin = margin });
    }
}
