using PolarityMap.Core.Checks;
using PolarityMap.Core.Remedies;
using Xunit;

namespace PolarityMap.Core.Tests.Remedies;

/// <summary>Findings get the remedy of the plan, within a bound that is counted and not timed.</summary>
public sealed class ProvedRemediesTests
{
    // Source: the wrong part is known, since the plant was built with it.
    [Fact]
    public void Six_links_over_one_wrong_trunk_all_mark_the_trunk()
    {
        CheckReport report = ProvedRemedies.In(FaultyPlants.Legs(2, 3, "Type-A").Report(), ProvedRemedies.ForDrawing);
        int trunk = PartNamed(report, "T");

        Assert.Equal(6, report.Findings.Count);
        Assert.All(report.Findings, f =>
        {
            Remedy remedy = Assert.Single(f.Remedies);
            Assert.Equal("put a Type-B trunk in the place of trunk T", remedy.Text);
            Assert.Equal("nothing is found any more, 6 of 6 links proven", remedy.Proof);
            Assert.Equal([trunk], remedy.Parts);
            Assert.True(remedy.IsInside);
        });
    }

    // Source: as above; two cords sit in each other's right ports and are right in themselves.
    [Fact]
    public void Where_plugs_are_put_elsewhere_no_part_is_another_inside()
    {
        CheckReport report = ProvedRemedies.In(FaultyPlants.Cords(("A-to-B", 2), ("A-to-B", 1)).Report(), ProvedRemedies.ForDrawing);

        Assert.NotEmpty(report.Findings);
        Assert.All(report.Findings, f =>
        {
            Remedy remedy = Assert.Single(f.Remedies);
            Assert.False(remedy.IsInside);
            Assert.StartsWith("C", report.Traced.Plant.Parts[remedy.Part].Name, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void What_a_rule_proved_itself_stays()
    {
        CheckReport before = FaultyPlants.Legs(1, 2, rightCord: n => n == 0 ? "A-to-A" : "A-to-B", reversible: true).Report();
        Assert.Contains(before.Findings, f => f.Remedies.Count > 0);

        CheckReport after = ProvedRemedies.In(before, ProvedRemedies.ForDrawing);

        foreach ((Finding was, Finding now) in before.Findings.Zip(after.Findings).Where(p => p.First.Remedies.Count > 0))
            Assert.Same(was.Remedies, now.Remedies);
    }

    [Fact]
    public void Without_findings_or_without_room_for_proofs_the_report_is_the_same_one()
    {
        CheckReport clean = FaultyPlants.Legs(1, 4).Report(), faulty = FaultyPlants.Legs(1, 4, "Type-A").Report();

        Assert.Same(clean, ProvedRemedies.In(clean, ProvedRemedies.ForReport));
        Assert.Same(faulty, ProvedRemedies.In(faulty, work: 1000));
        Assert.Equal(faulty.Verdict(), ProvedRemedies.In(faulty, ProvedRemedies.ForReport).Verdict());
    }

    private static int PartNamed(CheckReport report, string name) => report.Traced.Plant.Parts.ToList().FindIndex(p => p.Name == name);
}
