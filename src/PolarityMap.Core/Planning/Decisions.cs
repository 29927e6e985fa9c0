using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Planning;

/// <summary>Tells what was decided and why.</summary>
internal static class Decisions
{
    public static IReadOnlyList<PlanDecision> Of(PlannedPlant planned)
    {
        Brief brief = planned.Brief;
        var decisions = new List<PlanDecision>
        {
            new("method", $"Method {planned.Candidate.Method.Name}: {planned.Candidate.Method.Meaning}", planned.Candidate.Method.Source),
            Array(brief, planned.Candidate),
            Separation(brief),
            Angled(brief),
        };
        if (planned.Defaults.TrunksArePinned)
            decisions.Add(new("later", "Trunks have the pins and cassettes none", "parallel ports now or later: cords enter panels without pins, and trunks can stay where cassettes give way to panels"));
        foreach (BriefNetwork network in brief.Networks.Where(n => n.Later is not null))
        {
            decisions.Add(new($"networks.{network.Name}.later", $"{network.Name} goes on to {network.Later!.Name}{(network.Application.IsParallel && !network.Later.IsParallel ? "" : " over the same trunks")}",
                network.Later.IsParallel && !network.Application.IsParallel ? "built with a link in each array and proven" : "built with the other interfaces and proven"));
        }

        if (brief.Spare.Value > 0)
            decisions.Add(new("spare", $"Arrays for {brief.Spare} more than the links", "ready to be patched; legs beyond come with the trunk and are marked spare"));
        decisions.AddRange(Lengths(planned));
        if (brief.Networks.Any(n => n.Network.Key is not null))
            decisions.Add(new("networks", "Cords carry their network's key but where they enter an interface", "interfaces are plain, and a cord of one network does not go into another's ports"));
        return decisions;
    }

    /// <summary>Why one candidate was taken of several.</summary>
    public static PlanDecision Comparison(PlanProof best, PlanMeasures measures, IReadOnlyList<PlanProof> proofs, IReadOnlyList<PlanCandidate> alike)
    {
        PlanProof[] excluded = [.. proofs.Where(p => !p.Serves)];
        int serving = proofs.Count - excluded.Length;
        string others = excluded.Length == 0 ? "" : $"; {excluded.Length} cannot serve";
        string good = alike.Count == 0 ? "" : $"; as good {(alike.Count == 1 ? "is" : "are")} {string.Join(" and ", alike)}, which the standard names later";
        return new("method", $"{Capital(best.Candidate.ToString())}, out of {serving} that serve{others}",
            $"it takes {Count(measures.Cassettes, "kind")} of cassette, {measures.Cords} of cord{(measures.LaterCords > 0 ? $" and later {measures.LaterCords}" : "")}, {measures.Trunks} of trunk, {Count(measures.Parts, "part")}, {measures.FibresIdle} fibres idle, {(measures.IsAlikeAtBothEnds ? "the same parts at both ends" : "different parts at its ends")}{good}");
    }

    /// <summary>Which candidates cannot serve, by what was found first in the way of each.</summary>
    public static IEnumerable<PlanDecision> Excluded(IReadOnlyList<PlanProof> proofs) => proofs.Where(p => !p.Serves)
        .GroupBy(p => PlanExclusion.Of(p.Refusals[0]).ToString())
        .Select(g => new PlanDecision("method", $"Not {Listed([.. g.Select(p => p.Candidate)], proofs)}", g.Key));

    /// <summary>Candidates in few words: by their bases alone where every method is meant, without bases where every base is.</summary>
    public static string Listed(IReadOnlyList<PlanCandidate> candidates, IReadOnlyList<PlanProof> all)
    {
        int methods = all.Select(p => p.Candidate.Method).Distinct().Count(), bases = all.Select(p => p.Candidate.Base).Distinct().Count();
        var groups = candidates.GroupBy(c => c.Method).GroupBy(m => string.Join('/', m.Select(c => c.Base))).ToArray();
        return string.Join("; ", groups.Select(g =>
        {
            string[] numbers = [.. g.First().Select(c => c.Base.ToString(System.Globalization.CultureInfo.InvariantCulture))];
            string ofMethods = g.Count() == methods ? "" : $"{(g.Count() == 1 ? "method" : "methods")} {Joined([.. g.Select(m => m.Key.Name)], "and")}";
            string ofBases = numbers.Length == bases && ofMethods.Length > 0 ? "" : $"base {Joined(numbers, "or")}";
            return ofMethods.Length > 0 && ofBases.Length > 0 ? $"{ofMethods} with {ofBases}" : ofMethods + ofBases;
        }));
    }

    private static string Joined(string[] words, string last) => words.Length == 1 ? words[0] : $"{string.Join(", ", words[..^1])} {last} {words[^1]}";

    private static PlanDecision Array(Brief brief, PlanCandidate candidate)
    {
        string pairs = brief.Networks.All(n => n.Application.IsParallel) ? "one parallel link" : $"{candidate.Base / 2} duplex links";
        string why = candidate.Array.IsOneRow
            ? candidate.Base == 8 ? "eight fibres on positions 1-4 and 9-12 of twelve" : $"one row of {candidate.Base}"
            : "two rows, where the letters of the methods are read in several ways; this reading is proven by tracing";
        return new("base", $"Base {candidate.Base}: {pairs} in each array", why);
    }

    private static PlanDecision Separation(Brief brief) => brief.Separation == SeparationPolicy.Own
        ? new("separation", brief.Networks.Count == 1 ? "One network" : "Each network has trunks, cassettes and panels of its own", brief.Networks.Count == 1 ? "nothing to keep apart" : "nothing is shared, so that nobody has to watch it")
        : new("separation", "Own trunks to the zone box, there one cable to each outlet", "networks share what comes after the zone box, as the brief allows");

    private static PlanDecision Angled(Brief brief) => new("angled", $"Array connectors are {(brief.IsAngled ? "angled" : "flat")}",
        brief.Angled is not null ? "the brief says so" : brief.Fibre.IsMultimode ? "multimode arrays are flat as a rule" : "single-mode arrays are angled in practice");

    private static IEnumerable<PlanDecision> Lengths(PlannedPlant planned)
    {
        Brief brief = planned.Brief;
        string slack = brief.Slack.Over(Length.FromMillimetres(1_000).Millimetres) == 1_000 ? "no slack" : $"slack {brief.Slack}";
        string up = brief.StockLengths.Count > 0 ? "up to the next length in stock" : "up to the metre";
        foreach (BriefRoom room in brief.Rooms)
        {
            if (room.Distance is { } way && planned.Sections.SelectMany(s => s.Families).Any(f => f.Lines[0].Type.Kind.Name == "trunk") && brief.Outlets.Any(o => brief.Rooms[o.Room] == room))
                yield return new($"rooms.{room.Name}.distance", $"{way} to {room.Name} and {slack}, {up}", "every length covers its way");
        }
    }

    private static string Count(int number, string noun) => number == 1 ? $"1 {noun}" : $"{number} {noun}s";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
