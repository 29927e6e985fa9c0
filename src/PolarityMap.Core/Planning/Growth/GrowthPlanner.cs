using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>
/// Plans how an existing plant grows to meet a new brief. Links that serve as they are stay. For the others a plant is planned
/// as for a brief of their own; of its parts those are struck out that the existing plant has free, so that only the rest is
/// bought. Every method and base that the existing plant's trunks tell of is tried; that with the least cable to lay wins, then
/// that with the fewest parts to buy.
/// </summary>
public static class GrowthPlanner
{
    /// <summary>Plans the growth.</summary>
    public static GrowthResult Plan(TracedPlant existing, Brief brief)
    {
        CheckReport before = CheckReport.Of(existing);
        var result = new GrowthResult(brief, before) { FibresBefore = Fibres(before) };
        Plant plant = existing.Plant;
        if (plant.Links.Count == 0)
            return result with { Reason = "the plant declares no links, so there is nothing to go on from: add 'links' to it" };
        if (before.Errors > 0 || before.Proven < plant.Links.Count)
            return result with { Reason = $"the plant is to be sound before it grows: {before.Verdict()} 'polaritymap remedy' says what to mend" };
        if (plant.Parts.Any(p => p.Values is null))
            return result with { Reason = "the plant has parts that are not described by attributes" };
        if (Accord.Of(brief, plant, out brief, out IReadOnlyList<string> remarks) is { } against)
            return result with { Reason = against };
        result = result with { Brief = brief, Remarks = remarks };
        brief = brief with { TrunksArePinned = plant.Parts.Any(p => p.Kind == "trunk" && p.Shape.Ports[0].Pinned == true) };
        GrowthResult? best = null, failed = null;
        PlanCandidate[] tried = Tried(brief, plant);
        foreach (PlanCandidate candidate in tried)
        {
            PlanProof fresh = PlanProof.Of(brief, candidate);
            if (!fresh.Serves)
                continue;
            GrowthResult grown = Grow(result with { Candidate = candidate }, brief, fresh.Report!, anyLoss: true);
            if (grown.Difference is null)
                grown = Grow(result with { Candidate = candidate }, brief, fresh.Report!, anyLoss: false);
            if (grown.Reason is not null)
                failed ??= grown;
            else if (best is null || Cost(grown).CompareTo(Cost(best)) < 0)
                best = grown;
        }

        if (best is null)
        {
            return failed ?? result with
            {
                Refused = Planner.Plan(tried.Length == 1 ? brief with { Method = tried[0].Method, Base = tried[0].Base } : brief),
            };
        }

        if (!GoesOn(best.Difference!))
            return result with { Reason = "nothing of the plant serves the brief: none of its links ends at an outlet of the brief or in its rooms, and no part of it can carry a new link; plan anew without --from" };
        PlantTitle title = plant.Title;
        Stage after = Last(best.Difference!, brief);
        return best with { Steps = new WorkOrder(best.Difference!, title, Practice(brief)).Steps(before, after), Compared = tried.Length };
    }

    /// <summary>
    /// The candidates that the plant tells of; where the brief asks for others, those of the same method, else those of the same
    /// base, else all.
    /// </summary>
    private static PlanCandidate[] Tried(Brief brief, Plant plant)
    {
        PlanCandidate[] open = [.. Planner.Candidates(brief)];
        var bases = plant.Parts.Where(PartFacts.IsLaid).Select(p => p.Shape.Ports[0].Base).ToHashSet();
        PlanCandidate[] exact = [.. open.Where(c => IsOf(plant, c))], method = [.. open.Where(c => bases.Any(b => b > 0 && IsOf(plant, c with { Base = b })))];
        PlanCandidate[] sameBase = [.. open.Where(c => bases.Contains(c.Base))];
        return new[] { exact, method, sameBase, open }.First(c => c.Length > 0 || c == open);
    }

    /// <summary>True when the trunks of a plant are those of a candidate, and its adapters have the keys.</summary>
    private static bool IsOf(Plant plant, PlanCandidate candidate) => plant.Parts.Any(p =>
            PartFacts.IsLaid(p) && p.Values?.Word("type") == candidate.Method.TrunkFor(candidate.Array) && p.Shape.Ports[0].Base == candidate.Base)
        && plant.Parts.Any(p => !p.Shape.IsInterface && !p.Shape.IsCable && p.Shape.Ports.Any(s => s.Keys == candidate.Method.Keys && s.Face == candidate.Array.Face))
        && plant.Parts.Where(p => p.Kind == "cassette" && p.Values?.WiringList("wiring") is null && p.Shape.Ports[^1].Base == candidate.Base)
            .All(p => p.Values!.Word("wiring") is { } w && (w == candidate.Method.NearFor(candidate.Array) || w == candidate.Method.FarFor(candidate.Array)));

    private static GrowthResult Grow(GrowthResult result, Brief brief, CheckReport fresh, bool anyLoss)
    {
        PlanCandidate candidate = result.Candidate!.Value;
        CheckReport before = result.Before;
        Plant plant = before.Traced.Plant;
        LinkWay[] ways = Oriented(plant, LinkWay.Of(before), brief);
        List<Service> services = Service.Of(brief);
        new ServiceMatch(brief, plant, ways).Match(services);
        foreach (Service service in services.Where(s => s.Before >= 0))
            service.IsKept = ServiceKeep.Serves(brief, candidate, plant, ways[service.Before], service);
        var supply = new GrowthSupply(brief, before, ways, services, fresh, candidate.Base / 2);
        CheckReport? rest = null;
        if (services.Any(s => !s.IsKept) || supply.LacksSpare)
        {
            if (PlanGenerator.Generate(RestBrief.Of(brief, services, supply, plant), candidate).Planned is not { } planned || PlantAssembly.Of(planned, out _) is not { } added)
                return result with { Reason = "the links that are new cannot be planned by themselves" };
            rest = CheckReport.Of(TracedPlant.Of(added));
            if (rest.Proven < added.Links.Count)
                return result with { Reason = $"the links that are new are not proven: {rest.Verdict()}" };
        }

        GrowthDifference difference = new GrowthMerge(brief, before, ways, services, supply, rest, anyLoss).Merge();
        Stage after = Last(difference, brief);
        CheckReport report = after.Report;

        // What was found at a part before may be found there again, of fewer legs for example.
        var known = before.Findings.Select(f => (f.Rule.Code, f.Place)).ToHashSet();
        Finding[] raised = [.. report.Findings.Where(f => f.Place == default || !known.Contains((f.Rule.Code, f.Place)))];
        if (raised.Length > 0 || report.Proven < report.Traced.Plant.Links.Count)
            return result with { Reason = $"what is there and what would be new do not go together: {report.Verdict()}{(raised.Length > 0 ? $" {raised[0].Rule.Code} {raised[0].Message}" : "")}{(raised.Any(f => f.Rule.Code == "S04") ? $" The brief has separation {brief.Separation.Word()}; leave the key out to keep what the plant says, or plan anew without --from" : "")}" };
        if (TooManySwitches(brief, difference) is { } reason)
            return result with { Reason = reason };
        PlannedPlant? sketch = PlantSketch.Of(report.Traced.Plant, brief, candidate);
        bool isSame = sketch is not null && PlantAssembly.Of(sketch, out _) is { } again && SamePlant.Is(report.Traced.Plant, again);
        sketch = sketch is null ? null : sketch with { Decisions = GrowthWords.Decisions(difference, candidate) };
        string[] named = [.. difference.Links.Where(l => l is { Before: >= 0, After: not null } && l.Name.Split('/')[0] != l.Asked).Select(l => $"{l.Asked} is {l.Name}").Distinct()];
        if (named.Length > 0)
            result = result with { Remarks = [.. result.Remarks, $"the plant's names stay; what the brief asks for is there as follows: {GrowthWords.Few(named, 12)}"] };
        return result with { Difference = difference, Raised = raised, After = new PlanProof(candidate, sketch, report, []), FibresAfter = Fibres(report), IsWritable = isSame };
    }

    /// <summary>The ways told from the switch to the device, whichever way the document tells the link.</summary>
    private static LinkWay[] Oriented(Plant plant, LinkWay[] ways, Brief brief)
    {
        var devices = Service.Of(brief).Select(s => s.Device(brief)).ToHashSet();
        var far = brief.Rooms.Where(r => r.Distance is not null).Select(r => r.Name).ToHashSet();
        bool IsDevice(LinkEnd end) => devices.Contains(plant.Parts[end.Port.Part].Name) || (plant.Parts[end.Port.Part].Room is { } room && far.Contains(room));
        return [.. ways.Select(w => IsDevice(w.Link.From) && !IsDevice(w.Link.To)
            ? w with { Link = w.Link with { From = w.Link.To, To = w.Link.From }, Hops = LinkWay.Reversed(w.Hops) } : w)];
    }

    private static Stage Last(GrowthDifference difference, Brief brief)
    {
        var gone = difference.TakenOut.ToHashSet();
        var added = difference.Added.ToHashSet();
        return Stage.Of(
            difference, brief.Title, Practice(brief), Enumerable.Range(0, difference.Parts.Count).Where(p => p < difference.OldParts ? !gone.Contains(p) : added.Contains(p)),
            difference.After, difference.Links.Select(l => l.After).OfType<Link>());
    }

    private static PlantPractice Practice(Brief brief) => new() { Limits = brief.Limits, Margin = brief.Margin };

    private static string? TooManySwitches(Brief brief, GrowthDifference difference)
    {
        Part[] switches = [.. difference.Links.Where(l => l.After is not null).Select(l => l.After!.From.Port.Part).Distinct().Select(p => difference.Parts[p])];
        foreach (BriefNetwork network in brief.Networks.Where(n => n.Switches is not null))
        {
            foreach (BriefRoom room in brief.Rooms.Where(r => r.Distance is null))
            {
                int there = switches.Count(p => p.Room == room.Name && p.Network >= 0 && difference.Networks[p.Network].Name == network.Name);
                if (there > network.Switches)
                    return $"networks.{network.Name}.switches: {there} would stand in {room.Name}, and {network.Switches} may";
            }
        }

        return null;
    }

    /// <summary>True when a link goes on, or a new one is joined to something that is there.</summary>
    private static bool GoesOn(GrowthDifference difference)
    {
        var was = difference.Before.ToHashSet();
        return difference.Links.Any(l => l is { After: not null, Before: >= 0 }) || difference.After.Any(j => !was.Contains(j) && j.Ports.Any(p => p.Part < difference.OldParts));
    }

    /// <summary>What is laid, then what else is bought.</summary>
    private static (long Laid, int Parts, int Out) Cost(GrowthResult grown)
    {
        GrowthDifference difference = grown.Difference!;
        return (difference.Added.Where(p => PartFacts.IsLaid(difference.Parts[p])).Sum(p => difference.Parts[p].Length?.Millimetres ?? 0), difference.Added.Count, difference.TakenOut.Count);
    }

    private static FibreCount Fibres(CheckReport report)
    {
        Plant plant = report.Traced.Plant;
        var lit = report.Context.Outcomes.All.SelectMany(o => o.Strands).ToHashSet();
        int used = 0, all = 0;
        for (int p = 0; p < plant.Parts.Count; p++)
        {
            if (!PartFacts.IsLaid(plant.Parts[p]))
                continue;
            all += PartFacts.Fibres(plant.Parts[p]);
            int first = report.Traced.Graph.FirstPositionOf(p), ends = 0;
            for (int n = 0; n < plant.Parts[p].Shape.PositionCount; n++)
                ends += plant.Parts[p].Shape.Inside[n] >= 0 && lit.Contains(report.Traced.StrandOf(first + n)) ? 1 : 0;
            used += ends / 2;
        }

        return new FibreCount(used, all - used);
    }
}
