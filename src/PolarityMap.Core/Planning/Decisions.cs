using PolarityMap.Core.Checks;
using PolarityMap.Core.Checks.Remarks;

namespace PolarityMap.Core.Planning;

/// <summary>Tells what was decided and why.</summary>
internal static class Decisions
{
    public static IReadOnlyList<PlanDecision> Of(PlannedPlant planned)
    {
        Brief brief = planned.Brief;
        PlanCandidate candidate = planned.Candidate;
        bool hasCassettes = planned.Sections.SelectMany(s => s.Families).Any(f => f.Lines[0].Type.Kind.Name is "cassette" or "outlet");
        var decisions = new List<PlanDecision>
        {
            new("method", $"Method {candidate.Method.Name}: {MethodWords.Of(brief, candidate)}", candidate.Method.Source),
            Array(brief, candidate),
            SeparationWording.Of(brief),
            Angled(brief),
        };
        if (planned.Defaults.TrunksArePinned)
        {
            decisions.Add(hasCassettes
                ? new("later", "Trunks have the pins and cassettes none", "parallel ports now or later: cords enter panels without pins, and trunks can stay where cassettes give way to panels")
                : new("later", "Trunks have the pins", "parallel interfaces have pins, so that array cords have none, and trunks that these meet in panels have them"));
        }

        decisions.AddRange(Later(brief, candidate));
        if (brief.Spare.Value > 0)
            decisions.Add(new("spare", $"Arrays for {brief.Spare} more than the links", "ready to be patched; legs beyond come with the trunk and are marked spare"));
        if (Legs(planned) is { } legs)
            decisions.Add(legs);
        if (WaysWording.Of(brief) is { } ways)
            decisions.Add(ways);
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
        string good = alike.Count == 0 ? "" : $"; as good {(alike.Count == 1 ? "is" : "are")} {string.Join(" and ", alike)}, which come later in the order {string.Join(", ", PlanMethod.Preferred)} (of one method the smaller base first)";
        return new("method", $"{Capital(best.Candidate.ToString())}, out of {serving} that serve{others}",
            $"it takes {Count(measures.Cassettes, "kind")} of cassette, {measures.Cords} of cord{(measures.LaterCords > 0 ? $" and later {measures.LaterCords} more" : "")}, {measures.Trunks} of trunk, {Count(measures.Parts, "part")}, {measures.FibresIdle} fibres idle, {(measures.IsAlikeAtBothEnds ? "the same parts at both ends" : "different parts at its ends")}{good}");
    }

    /// <summary>What the check remarks on a plan in its own words; of unused fibres a few.</summary>
    public static IEnumerable<PlanDecision> Remarks(PlanProof plan)
    {
        const int mostOfFibres = 6;
        var first = new List<Remark>();
        LossByStandard.Add(plan.Report!.Context, first);
        OrderOfLanes.Add(plan.Report.Context, first);
        Remark[] others = [.. plan.Report.Remarks.Except(first)];
        foreach (Remark remark in first.Concat(others.Take(others.Length <= mostOfFibres ? mostOfFibres : mostOfFibres - 1)))
            yield return new("remark", $"Remark: {remark.Text}", "from the check, no fault");
        if (others.Length > mostOfFibres)
            yield return new("remark", $"Remark: fibres are unused at {others.Length - mostOfFibres + 1} more sets of alike parts", "the check names them");
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

    private static PlanDecision Angled(Brief brief) => new("angled", $"Array connectors are {(brief.IsAngled ? "angled" : "flat")}",
        brief.Angled is not null ? "the brief says so" : brief.Fibre.IsMultimode ? "multimode arrays are flat as a rule" : "single-mode arrays are angled in practice");

    private static IEnumerable<PlanDecision> Later(Brief brief, PlanCandidate candidate)
    {
        if (LaterBrief.Of(brief, candidate, out _) is not { } later)
            yield break;
        for (int n = 0; n < brief.Networks.Count; n++)
        {
            BriefNetwork network = brief.Networks[n];
            if (network.Later is not { } then)
                continue;
            LinksLater links = LinksLater.Of(brief, later, n);
            string which = links.GoOn < links.Now ? $"{links} links of {network.Name} {(links.GoOn == 1 ? "goes" : "go")} on"
                : links.Now == 1 ? $"The link of {network.Name} goes on" : $"All {links.Now} links of {network.Name} go on";
            yield return new($"networks.{network.Name}.later", $"{which} to {then.Name}{(network.Application.IsParallel && !then.IsParallel ? "" : " over the same trunks")}",
                !LaterBrief.TakesArrays(network) ? "built with the other interfaces and proven"
                    : network.LaterLinks == LaterLinks.All ? "a leg lies for each from the beginning; built with a link in each array and proven" : "built with a link in each array and proven");
        }
    }

    /// <summary>How the trunks are divided, and what of them lies idle; null where each has one leg.</summary>
    private static PlanDecision? Legs(PlannedPlant planned)
    {
        PlannedPart[] cables = [.. planned.Sections.SelectMany(s => s.Families).SelectMany(f => f.Lines).Where(l => l.Type.Kind.Name == "trunk")];
        int Of(PlannedPart line) => line.Type.Shape.Ports.Count / 2;
        int[] legs = [.. cables.Select(Of).Distinct().Order()];
        if (legs.Length == 0 || legs[^1] == 1)
            return null;
        int idle = cables.Sum(l => l.Name.Count * l.Spare.Count);
        string told = idle == 0 ? "no leg is left over" : $"{Count(idle, "leg")} {(idle == 1 ? "lies" : "lie")} idle, marked spare";
        return new("trunk-legs", $"Trunks of {Joined([.. legs.Select(l => l.ToString(System.Globalization.CultureInfo.InvariantCulture))], "and")} {(legs is [.., 1] ? "leg" : "legs")}: {told}",
            $"the fewest cables that do, then the fewest legs left over{(planned.Brief.Networks.Any(n => LaterBrief.TakesArrays(n) && n.LaterLinks == LaterLinks.All) ? "; legs for what comes later lie from the beginning" : "")}");
    }

    private static string Count(int number, string noun) => number == 1 ? $"1 {noun}" : $"{number} {noun}s";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
