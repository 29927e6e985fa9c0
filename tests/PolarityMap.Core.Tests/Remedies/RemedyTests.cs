using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Remedies;
using Xunit;

namespace PolarityMap.Core.Tests.Remedies;

/// <summary>What is advised for plants whose faults are known.</summary>
public sealed class RemedyTests
{
    private const string TrunkChange = "put a Type-B trunk in the place of trunk T";

    [Fact]
    public void A_sound_plant_has_nothing_to_remedy()
    {
        RemedyResult result = RemedySearch.Of(FaultyPlants.Legs(1, 4).Report());
        Assert.Empty(result.Findings);
        Assert.Null(result.Plan);
    }

    [Theory]
    [InlineData("OM4")]
    [InlineData("OS2")]
    public void A_type_A_trunk_for_a_type_B_under_six_links_is_changed_before_any_cord(string fibre)
    {
        CheckReport before = FaultyPlants.Legs(2, 3, "Type-A", fibre).Report();
        Assert.Equal(6, before.Findings.Count);
        RemedyResult result = RemedySearch.Of(before);

        PlanStep step = Assert.Single(result.Plan!.Steps);
        Assert.Equal(TrunkChange, step.Change.Text);
        Assert.Equal(6, step.Clears.Count);
        Assert.Empty(result.Plan.Remaining);
        Assert.Equal(6, result.Plan.After.Proven);
        Assert.All(result.Findings, f =>
        {
            Assert.Equal(TrunkChange, Assert.Single(f.Sets[0].Changes).Text);
            Assert.Equal(6, f.Sets[0].Clears.Count);

            // A cord alone would be less work for this one finding.
            Assert.Contains(f.Sets, s => s.Changes is [{ Minutes: 3 }] && s.Clears.Count == 1);
        });
    }

    [Fact]
    public void Of_changes_that_clear_all_alike_that_with_the_least_work_comes_first()
    {
        // One leg only: turning its adapter, or another cassette, does what the trunk does.
        RemedyResult result = RemedySearch.Of(FaultyPlants.Legs(1, 4, "Type-A").Report());
        Assert.Equal("turn the array adapter KL1/rear, so that its keys are aligned instead of opposed", Assert.Single(result.Plan!.Steps).Change.Text);
        int[] minutes = [.. result.Findings[0].Sets.Where(s => s.Clears.Count == 4).Select(s => s.Minutes)];
        Assert.Equal([10, 10, 20, 20, 90], minutes);
        Assert.Equal(3, result.Findings[0].Sets[^1].Minutes);
    }

    [Fact]
    public void A_cord_that_was_right_only_for_a_wrong_trunk_is_changed_with_it()
    {
        // Link 2 has an A-to-A cord, which the wrong trunk made good: putting the trunk right alone would break it.
        CheckReport before = FaultyPlants.Legs(2, 3, "Type-A", rightCord: n => n == 1 ? "A-to-A" : "A-to-B").Report();
        Assert.Equal(5, before.Findings.Count);
        RemedyPlan plan = RemedySearch.Of(before).Plan!;
        Assert.Equal(2, plan.Steps.Count);
        Assert.Equal(TrunkChange, plan.Steps[0].Change.Text);
        Assert.Equal(5, plan.Steps[0].Clears.Count);
        Assert.Contains(plan.Steps[1].Change.Text, (string[])["put an A-to-B cord in the place of cord CR2", "put an A-to-A cord in the place of cord CL2"]);
        Assert.Empty(plan.After.Findings);
    }

    [Fact]
    public void Independent_faults_are_all_in_the_plan_and_each_says_what_it_clears()
    {
        CheckReport before = FaultyPlants.Legs(2, 4, rightCord: n => n is 0 or 6 ? "A-to-A" : "A-to-B").Report();
        Assert.Equal(2, before.Findings.Count);
        RemedyPlan plan = RemedySearch.Of(before).Plan!;
        Assert.Equal(2, plan.Steps.Count);
        Assert.All(plan.Steps, s => Assert.Single(s.Clears));
        Assert.Equal([0, 1], plan.Steps.Select(s => s.Clears[0]).Order());
        Assert.Equal(6, plan.Minutes);
        Assert.Empty(plan.After.Findings);
    }

    [Fact]
    public void A_cord_made_for_it_is_reversed_before_another_is_fetched()
    {
        RemedyResult result = RemedySearch.Of(FaultyPlants.Legs(1, 4, rightCord: n => n == 2 ? "A-to-A" : "A-to-B", reversible: true).Report());
        Assert.Equal([2, 2, 3, 3], Assert.Single(result.Findings).Sets.Select(s => s.Minutes));
        Assert.Equal("exchange the two plugs at the end of cord CL3 in KL1/3 (reversible by hand)", result.Findings[0].Sets[0].Changes[0].Text);
    }

    [Fact]
    public void A_cord_with_two_faults_is_exchanged_once()
    {
        // The only cord is A-to-A and has an angled plug in a flat port.
        CheckReport before = new Bench().Add("L", "duplex interface").Add("R", "duplex interface")
            .Add("C", "duplex cord", v => v.Set("type", "A-to-A").Set("far-duplex-polish", "angled"))
            .Mate("L/1", "C/near").Mate("C/far", "R/1").Link("L/1", "R/1").Report();
        Assert.Equal(["M05", "P01"], before.Findings.Select(f => f.Rule.Code).Order(StringComparer.Ordinal));
        RemedyPlan plan = RemedySearch.Of(before).Plan!;
        Change change = Assert.Single(plan.Steps).Change;
        Assert.Equal(3, change.Minutes);
        Assert.Contains("and in the same go", change.Text, StringComparison.Ordinal);
        Assert.Equal(["far-duplex-polish", "type"], change.Differences.Cast<PartDiffers>().Select(d => d.Attribute).Order(StringComparer.Ordinal));
        Assert.Empty(plan.After.Findings);
    }

    [Fact]
    public void A_bound_on_the_work_is_said_when_it_is_hit()
    {
        CheckReport before = FaultyPlants.Legs(2, 3, "Type-A").Report();
        RemedyResult result = RemedySearch.Of(before, new RemedyOptions { MostProofs = 1 });
        Assert.NotNull(result.Work.Bound);
        Assert.Contains("were not proved and left out", result.Work.Bound, StringComparison.Ordinal);
        Assert.Contains(result.Findings, f => !f.IsComplete || f.Sets.Count == 1);

        // The plan is proved as a whole all the same.
        Assert.Empty(result.Plan!.After.Findings);
    }

    [Fact]
    public void Only_the_findings_that_are_asked_for_are_answered()
    {
        CheckReport before = FaultyPlants.Legs(2, 4, rightCord: n => n is 0 or 6 ? "A-to-A" : "A-to-B").Report();
        RemedyResult result = RemedySearch.Of(before, new RemedyOptions { Wanted = i => i == 1 });
        Assert.Equal(1, Assert.Single(result.Findings).Finding);
        Assert.Equal([1], Assert.Single(result.Plan!.Steps).Clears);
        Assert.Single(result.Plan.After.Findings);
    }

    [Fact]
    public void The_same_plant_has_the_same_answer()
    {
        string[] Answer() => [.. RemedySearch.Of(FaultyPlants.Connectors().Report()).Findings.SelectMany(f => f.Sets).SelectMany(s => s.Changes).Select(c => c.Text)];
        Assert.Equal(Answer(), Answer());
    }
}
