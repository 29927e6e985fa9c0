using CsCheck;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;
using Xunit;

namespace PolarityMap.Core.Tests.Planning;

/// <summary>What holds of every plan, over random briefs. Counts and lengths are reckoned from the brief, not from the generator.</summary>
public sealed class PlanPropertyTests
{
    private const int Briefs = 150;

    [Fact]
    public void Every_plan_checks_clean_with_as_many_links_as_the_brief_asks_for() => Sample(static (brief, plan) =>
    {
        Assert.Empty(plan.Report!.Findings);
        Assert.Equal(brief.LinkCount, plan.Report.Traced.Plant.Links.Count);
        Assert.Equal(brief.LinkCount, plan.Report.Proven);
        Assert.True(plan.Later is null or { Report.Findings.Count: 0 });
    });

    [Fact]
    public void The_parts_list_counts_the_parts_of_the_plant_and_the_cords_that_the_brief_needs() => Sample(static (brief, plan) =>
    {
        Schedule list = PlanParts.Of(plan);
        Plant plant = plan.Report!.Traced.Plant;
        int Sum(Func<string, bool> kinds) => list.Rows.Where(r => kinds(r[3].Text!)).Sum(r => (int)r[1].Number!.Value);
        Assert.Equal(plant.Parts.Count, Sum(static _ => true));
        foreach (IGrouping<string, Part> kind in plant.Parts.GroupBy(p => p.Kind))
            Assert.Equal(kind.Count(), Sum(k => k == kind.Key));

        // A cord at each end of a link; a duplex link that is gathered has one more in the zone box.
        Assert.Equal(Count(brief, n => !n.Application.IsParallel, own: 2, gathered: 3), Sum(static k => k == "duplex cord"));
        Assert.Equal(Count(brief, n => n.Application.IsParallel, own: 2, gathered: 2), Sum(static k => k == "array cord"));
    });

    [Fact]
    public void The_cables_of_every_link_cover_its_way_with_slack_and_come_in_lengths_that_are_sold() => Sample(static (brief, plan) =>
    {
        Plant plant = plan.Report!.Traced.Plant;
        foreach (LinkOutcome link in plan.Report.Context.Outcomes.All)
        {
            Part device = plant.Parts[plant.Links[link.Index].To.Port.Part];
            string outlet = device.Name[(device.Name.IndexOf('-') + 1)..];
            BriefOutlets outlets = brief.Outlets.Single(o => Enumerable.Range(0, o.Name.Count).Any(i => o.Name.At(i) == outlet));
            long way = (brief.Rooms[outlets.Room].Distance?.Millimetres ?? 0) + (outlets.Distance?.Millimetres ?? 0);
            long needed = way + (way * (long)brief.Slack.Share.Value / 100) + brief.Slack.Extra.Millimetres;
            foreach (int strand in link.Strands)
            {
                Part[] trunks = [.. plan.Report.Traced.Hops(strand).Select(h => plant.Parts[h.Part]).Where(p => p.Kind == "trunk")];
                Assert.NotEmpty(trunks);
                Assert.True(trunks.Sum(t => t.Length!.Value.Millimetres) >= needed, $"{device.Name}: {needed} mm");
                Assert.All(trunks, t => Assert.True(brief.StockLengths.Count == 0 || brief.StockLengths.Contains(t.Length!.Value)));
            }
        }
    });

    [Fact]
    public void Arrays_beyond_the_links_are_at_least_the_spare_that_was_asked_for() => Sample(static (brief, plan) =>
    {
        foreach (BriefNetwork network in brief.Networks.Where(n => !n.Application.IsParallel))
        {
            int index = brief.Networks.ToList().IndexOf(network);
            int links = brief.Outlets.Sum(o => o.Name.Count * o.Links[index]);
            int ports = plan.Report!.Traced.Plant.Parts.Where(p => p.Kind == "cassette" && p.Network == index && p.Name.Contains("-K", StringComparison.Ordinal)).Sum(p => p.Shape.Ports.Count - 1);
            Assert.True(ports * 100 >= links * (100 + brief.Spare.Value), $"{network.Name}: {ports} ports for {links} links and {brief.Spare} more");
        }
    });

    // Told by the judgement of separation on the traced plant, which knows nothing of briefs.
    [Fact]
    public void Networks_may_share_what_the_plant_shares_and_nothing_else() => Sample(static (brief, plan) =>
    {
        if (brief.Networks.Count < 2)
            return;
        Sharing sharing = plan.Report!.Context.Separation.Sharing;
        SharedPlace[] shared = [.. Enum.GetValues<SharedPlace>().Where(p => sharing.Shared(p) > 0)];
        Assert.All(plan.Planned!.Networks, n => Assert.Equal(shared, n.MayShare));
    });

    [Fact]
    public void Nothing_is_in_one_place_twice() => Sample(static (_, plan) =>
    {
        // Panels are parts or places of cassettes: each rack unit of a room holds one panel or switch.
        var units = new Dictionary<(string?, string), string>();
        foreach (PlannedPart line in plan.Planned!.Sections.SelectMany(s => s.Families).SelectMany(f => f.Lines))
        {
            if (line.Note is not { } note || note.IndexOf("ack ", StringComparison.Ordinal) is not (>= 0 and int at))
                continue;
            string unit = note[at..].Split(',')[0];
            Assert.True(units.TryAdd((line.Room, unit), line.Name.ToString()), $"{line.Room} {unit}: {line.Name}");
        }
    });

    [Fact]
    public void A_brief_is_refused_only_for_a_reason_that_holds() => RandomBriefs.Any.Sample(
        static brief =>
        {
            PlanResult result = Planner.Plan(brief);
            Assert.True(result.Chosen is null == result.Refusals.Count > 0);
            if (result.Chosen is null)
            {
                PlanProof told = result.Proofs.Single(p => p.Refusals.Count == result.Refusals.Count && p.Refusals.Zip(result.Refusals).All(z => z.First.IsLike(z.Second) && z.First.Reason == z.Second.Reason) && p == result.Proofs.MinBy(q => q.Refusals.Count));
                foreach (Refusal refusal in result.Refusals)
                    Holds(brief, told, refusal);
            }

            // What would meet the whole brief does.
            Assert.True(result.Met is null || PlanProof.Of(result.Met.Brief, result.Met.Candidate).Serves);

            // Every candidate that is left aside has a reason that holds as well.
            foreach (PlanProof proof in result.Proofs)
            {
                foreach (Refusal refusal in proof.Refusals)
                    Reason(brief, proof, refusal);
            }
        },
        iter: Soak.Times(40));

    [Fact]
    public void Every_link_goes_on_to_what_comes_later_over_cables_that_lie()
    {
        int met = 0;
        for (int number = 0; number < Soak.Times(150); number++)
        {
            Brief brief = RandomBriefs.Numbered(number);
            Application parallel = Application.Find(brief.Fibre.IsMultimode ? "40GBASE-SR4" : "400GBASE-DR4")!;
            brief = brief with { Separation = SeparationPolicy.Own, Networks = [.. brief.Networks.Select(n => n.Application.IsParallel ? n : n with { Later = parallel })] };
            if (brief.Networks.All(n => n.Application.IsParallel) || Planner.Served(brief) is not { Later.Report: { } then } plan)
                continue;
            met++;
            Assert.Equal(brief.LinkCount, then.Traced.Plant.Links.Count);
            Assert.Equal(brief.LinkCount, then.Proven);
            Assert.DoesNotContain(LaterChange.Of(plan)!.Buy, i => i.Kind == "trunk");
        }

        Assert.True(met > 10, $"{met} briefs");
    }

    [Fact]
    public void The_random_briefs_come_to_every_kind_of_plan_and_of_refusal()
    {
        PlanProof[] proofs = [.. Enumerable.Range(1, 600).Select(RandomBriefs.Numbered).Select(b => PlanProof.Of(b, Planner.Candidates(b)[^1]))];
        PlanProof[] serving = [.. proofs.Where(p => p.Serves)];
        Assert.InRange(serving.Length, 60, 540);
        Assert.Equal(PlanMethod.All.Count, serving.Select(p => p.Candidate.Method).Distinct().Count());
        Assert.Equal(PlanCandidate.Bases.Count, serving.Select(p => p.Candidate.Base).Distinct().Count());
        Assert.Contains(serving, p => p.Planned!.Brief.Networks.Any(n => n.Application.IsParallel) && p.Planned.Sections[^1].Heading.Contains("outlet", StringComparison.Ordinal));
        Assert.Contains(serving, p => p.Later is not null);
        RefusalCode[] told = [.. proofs.SelectMany(p => p.Refusals).Select(r => r.Code).Distinct()];
        Assert.All(Enum.GetValues<RefusalCode>().Except([RefusalCode.Names]), code => Assert.Contains(code, told));
        string?[] findings = [.. proofs.SelectMany(p => p.Refusals).Select(r => r.Finding).Distinct()];
        Assert.All(new[] { "L01", "L02", "F04", "M06", "S06" }, code => Assert.Contains(code, findings));
        Assert.DoesNotContain(findings, f => f is not null && f[0] is 'P' or 'D' or 'W');
    }

    /// <summary>The reason holds, and a brief with nothing changed but what is told is not refused for it any more.</summary>
    private static void Holds(Brief brief, PlanProof proof, Refusal refusal)
    {
        Reason(brief, proof, refusal);
        foreach (NearestBrief nearest in refusal.Nearest)
        {
            PlanProof changed = PlanProof.Of(nearest.Brief, nearest.Candidate);
            Assert.DoesNotContain(changed.Refusals, r => r.Requirement == refusal.Requirement && r.Code == refusal.Code && r.Finding == refusal.Finding);
            if (proof.Refusals.Count == 1)
                Assert.True(changed.Serves, $"{nearest.Words}: {string.Join("; ", changed.Refusals)}");
        }
    }

    private static void Reason(Brief brief, PlanProof proof, Refusal refusal)
    {
        switch (refusal.Code)
        {
            case RefusalCode.Finding:
                // Built all the same, the checker finds it.
                Assert.Contains(new[] { proof, proof.Later }, p => p?.Report is { } report && report.Findings.Any(f => f.Rule.Code == refusal.Finding));
                break;
            case RefusalCode.Ports:
                Assert.Contains(brief.Networks.Index(), n => n.Item.Switches is { } most && brief.Rooms.Index().Where(r => r.Item.From == r.Index).Any(main =>
                    brief.Outlets.Where(o => brief.Rooms[o.Room].From == main.Index).Sum(o => o.Name.Count * o.Links[n.Index]) > most * brief.PortsPerSwitch));
                break;
            case RefusalCode.Stock:
                Assert.Contains(brief.Outlets, o => Longest(brief, o) > brief.StockLengths[^1].Millimetres);
                break;
            case RefusalCode.Cassettes:
                Assert.True(brief.OneCassette);
                Assert.Equal("B", proof.Candidate.Method.Name);
                break;
            case RefusalCode.Array:
                Assert.True(refusal.Finding == "M04" || proof.Report is null || refusal.Requirement.EndsWith(".later", StringComparison.Ordinal) || Unused(brief, refusal), refusal.Reason);
                Assert.Contains(brief.Networks, n => new[] { n.Application, n.Later }.Any(a => a is { IsParallel: true } && a.Form.Positions() != (proof.Candidate.Base == 8 ? 12 : proof.Candidate.Base)));
                break;
            case RefusalCode.Application:
                Assert.Contains(brief.Networks, n => new[] { n.Application, n.Later }.Any(a => a is not null && (a.Form == PortForm.Simplex || a.Layouts[0].Receptacles > 1)));
                break;
            case RefusalCode.Later:
                Assert.Equal(SeparationPolicy.Gathered, brief.Separation);
                break;
            case RefusalCode.Way:
                Assert.Contains(brief.Outlets, o => brief.Separation == SeparationPolicy.Gathered && brief.Rooms[o.Room].Distance is null);
                break;
            case RefusalCode.Legs:
                Assert.Contains(brief.Outlets, o => brief.Spare.Over(o.LinksEach) > brief.TrunkLegs[^1]);
                break;
            default:
                Assert.Fail($"no test for {refusal}");
                break;
        }
    }

    /// <summary>Of a network without links nothing is built that could be found.</summary>
    private static bool Unused(Brief brief, Refusal refusal) => brief.Networks.Index().Any(n => refusal.Requirement == $"networks.{n.Item.Name}.application" && brief.Outlets.All(o => o.Links[n.Index] == 0));

    private static decimal Longest(Brief brief, BriefOutlets outlets)
    {
        decimal room = brief.Rooms[outlets.Room].Distance?.Millimetres ?? 0, outlet = outlets.Distance?.Millimetres ?? 0;
        decimal way = brief.Separation == SeparationPolicy.Own ? room + outlet : Math.Max(room, outlet);
        return (way * (100 + brief.Slack.Share.Value) / 100) + brief.Slack.Extra.Millimetres;
    }

    private static int Count(Brief brief, Func<BriefNetwork, bool> which, int own, int gathered)
    {
        int cords = 0;
        for (int n = 0; n < brief.Networks.Count; n++)
        {
            if (which(brief.Networks[n]))
                cords += brief.Outlets.Sum(o => o.Name.Count * o.Links[n] * (brief.Separation == SeparationPolicy.Gathered && o.Distance is not null ? gathered : own));
        }

        return cords;
    }

    private static void Sample(Action<Brief, PlanProof> holds) => RandomBriefs.Any.Sample(
        brief =>
        {
            if (Planner.Served(brief) is { } plan)
                holds(brief, plan);
        },
        iter: Soak.Times(Briefs));
}
