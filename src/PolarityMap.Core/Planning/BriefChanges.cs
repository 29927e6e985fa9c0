using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Planning;

/// <summary>Briefs with one thing changed, each in the words that would be written. Nothing is proven of them here.</summary>
internal sealed class BriefChanges(Brief brief, PlanCandidate candidate)
{
    private static readonly string[] s_colours = ["red", "blue", "green", "yellow", "orange", "violet", "white", "grey", "brown", "black"];

    public NearestBrief Changed(string words, Brief changed) => new(words, changed, candidate);

    /// <summary>What may clear any refusal.</summary>
    public IEnumerable<NearestBrief> OfAnyRefusal() =>
        [.. OtherMethods(), .. OtherBases(), .. OtherSlopes(), .. Own(), .. WithoutLater(), .. OtherFibres(sameCore: true), .. OtherFibres(sameCore: false)];

    /// <summary>More switches, or larger ones.</summary>
    public IEnumerable<NearestBrief> MoreSwitches(Refusal refusal)
    {
        for (int n = 0; n < brief.Networks.Count; n++)
        {
            BriefNetwork network = brief.Networks[n];
            if (refusal.Requirement != $"networks.{network.Name}.switches" || network.Switches is not { } most)
                continue;
            int links = brief.Outlets.GroupBy(o => brief.Rooms[o.Room].From).Max(from => from.Sum(o => o.Name.Count * o.Links[n]));
            yield return Changed($"{refusal.Requirement}: {refusal.Number}", With(network, network with { Switches = refusal.Number }));
            int ports = (links + most - 1) / most;
            yield return Changed($"ports-per-switch: {ports}", brief with { PortsPerSwitch = ports });
        }
    }

    public NearestBrief LongerStock(Refusal refusal) => Changed($"stock-lengths: up to {refusal.Needed}", brief with { StockLengths = [.. brief.StockLengths, refusal.Needed] });

    public IEnumerable<NearestBrief> NoSlack()
    {
        if (brief.Slack.Share.Value > 0 || brief.Slack.Extra.Millimetres > 0)
            yield return Changed("slack: 0 %", brief with { Slack = new Slack(default, default) });
    }

    public NearestBrief MoreLegs(Refusal refusal) => Changed($"trunk-legs: up to {refusal.Number}", brief with { TrunkLegs = [.. brief.TrunkLegs, refusal.Number] });

    public IEnumerable<NearestBrief> NoSpare()
    {
        if (brief.Spare.Value > 0)
            yield return Changed("spare: 0 %", brief with { Spare = default });
    }

    public IEnumerable<NearestBrief> TwoCassettes() => [Changed("one-cassette: no", brief with { OneCassette = false }), .. OtherMethods()];

    public IEnumerable<NearestBrief> Own()
    {
        if (brief.Separation != SeparationPolicy.Own)
            yield return Changed("separation: own", brief with { Separation = SeparationPolicy.Own });
    }

    public IEnumerable<NearestBrief> WithoutLater()
    {
        if (brief.Networks.Any(n => n.Later is not null))
            yield return Changed("no later application", brief with { Networks = [.. brief.Networks.Select(n => n with { Later = null })] });
    }

    /// <summary>Other end faces of array connectors, where the brief says which.</summary>
    public IEnumerable<NearestBrief> OtherSlopes()
    {
        if (brief.Angled is { } angled)
            yield return Changed($"angled: {(angled ? "no" : "yes")}", brief with { Angled = !angled });
    }

    /// <summary>Other classes of fibre: of the same core the better ones and then the others, the nearest first.</summary>
    public IEnumerable<NearestBrief> OtherFibres(bool sameCore) => FibreClass.All
        .Where(f => f != brief.Fibre && f.Core == brief.Fibre.Core == sameCore)
        .OrderBy(f => sameCore && f.Rank < brief.Fibre.Rank).ThenBy(f => sameCore ? Math.Abs(f.Rank - brief.Fibre.Rank) : 0)
        .Select(f => Changed($"fibre: {f.Name}", brief with { Fibre = f }));

    public IEnumerable<NearestBrief> OtherLimits() => LimitProfile.All.Where(l => l != brief.Limits).Select(l => Changed($"limits: {l.Name}", brief with { Limits = l }));

    public IEnumerable<NearestBrief> OtherMethods() => PlanMethod.All.Where(m => m != candidate.Method)
        .Select(m => new NearestBrief($"method: {m.Name}", brief with { Method = m }, candidate with { Method = m }));

    public IEnumerable<NearestBrief> OtherBases() => PlanCandidate.Bases.Where(b => b != candidate.Base)
        .Select(b => new NearestBrief($"base: {b}", brief with { Base = b }, candidate with { Base = b }));

    /// <summary>Applications of the same rate that are planned.</summary>
    public IEnumerable<NearestBrief> OtherApplications(Refusal refusal)
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
                if (other.Name == name || other == network.Application || !other.Name.StartsWith(rate + "-", StringComparison.Ordinal) || !Structure.IsPlanned(other))
                    continue;
                yield return Changed($"{refusal.Requirement}: {other.Name}", With(network, later ? network with { Later = other } : network with { Application = other, Later = network.Later == other ? null : network.Later }));
            }
        }
    }

    /// <summary>A way where there is none.</summary>
    public IEnumerable<NearestBrief> SomeWay(Refusal refusal)
    {
        var way = Length.FromMillimetres(10_000);
        if (Outlets(refusal.Requirement) is [var first, ..] outlets)
            yield return Changed($"{PathOf(first)}: above 0 m, such as {way}", brief with { Outlets = [.. brief.Outlets.Select(o => outlets.Contains(o) ? o with { Distance = way } : o)] });
    }

    public IEnumerable<NearestBrief> Renamed(Refusal refusal)
    {
        const string before = "OUT-";
        if (Outlets(refusal.Requirement + ".distance") is [var first, ..] outlets)
        {
            string written = first.Written ?? first.Name.ToString();
            yield return Changed($"outlets: {before}{written} in place of {written}", brief with
            {
                Outlets = [.. brief.Outlets.Select(o => outlets.Contains(o) ? o with { Name = o.Name.Around(before), Written = before + written } : o)],
            });
        }
    }

    public NearestBrief Keys() => Changed("a key of its own for each network, such as key: K1", brief with
    {
        Networks = [.. brief.Networks.Select((n, i) => n with { Network = n.Network with { Key = $"K{i + 1}", PlainFits = false } })],
    });

    public NearestBrief Colours()
    {
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var free = new Queue<string>(s_colours.Concat(Enumerable.Range(1, brief.Networks.Count).Select(n => $"colour {n}")).Except(brief.Networks.Select(n => n.Network.Colour ?? ""), StringComparer.OrdinalIgnoreCase));
        return Changed($"a colour of its own for each network, such as colour: {free.Peek()}", brief with
        {
            Networks = [.. brief.Networks.Select(n => n with { Network = n.Network with { Colour = n.Network.Colour is not { } colour || taken.Add(colour) ? n.Network.Colour : free.Dequeue() } })],
        });
    }

    /// <summary>The outlets whose distance a key is: all that one entry of the brief names.</summary>
    public IReadOnlyList<BriefOutlets> Outlets(string requirement)
    {
        BriefOutlets? named = brief.Outlets.FirstOrDefault(o => requirement == $"outlets.{o.Name}.distance" || requirement == PathOf(o));
        return named is null ? [] : [.. brief.Outlets.Where(o => o == named || (o.Written is not null && o.Written == named.Written))];
    }

    /// <summary>The key of the distance of outlets, as the brief writes it.</summary>
    public static string PathOf(BriefOutlets outlets) => $"outlets.{outlets.Written ?? outlets.Name.ToString()}.distance";

    private Brief With(BriefNetwork network, BriefNetwork changed) => brief with { Networks = [.. brief.Networks.Select(n => n == network ? changed : n)] };
}
