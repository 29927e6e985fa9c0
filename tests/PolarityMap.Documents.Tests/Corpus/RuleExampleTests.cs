using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Documents.Tests.Corpus;

/// <summary>The example of a rule raises that rule alone; the repaired one raises nothing.</summary>
public class RuleExampleTests
{
    public static TheoryData<string> Codes => [.. RuleCatalogue.All.Select(r => r.Code)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_example_raises_its_own_rule_and_no_other(string code)
    {
        Plant plant = Reading.Plant(RuleCatalogue.Find(code)!.Example);

        Assert.Equal(code, string.Join(' ', Reading.Codes(plant).Split(' ').Distinct()));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_repaired_example_raises_nothing(string code) =>
        Assert.Equal("", Reading.Codes(Reading.Plant(RuleCatalogue.Find(code)!.Repaired)));

    // Read off the documents by eye: at which mating, port or part of its example a rule's fault is.
    [Theory]
    [InlineData("M01", "C/far with QS-R/1")]
    [InlineData("M03", "SW-L/1~K-L/1/far with K-L/1")]
    [InlineData("M07", "SW-L/1~K-L/1/far with K-L/1")]
    [InlineData("F01", "SW-L/1~K-L/1/far with K-L/1")]
    [InlineData("F03", "SW-L/1~PANEL/1")]
    [InlineData("F04", "SW-L/1~SW-R/1")]
    [InlineData("S01", "SD-K-L")]
    [InlineData("S02", "T")]
    [InlineData("S05", "PANEL")]
    [InlineData("D06", "LIGHT-SW/1~SOUND-DESK/1")]
    [InlineData("W02", "SW-X")]
    [InlineData("D01", "")]
    [InlineData("L01", "")]
    public void A_finding_says_where_it_is(string code, string where)
    {
        Plant plant = Reading.Plant(RuleCatalogue.Find(code)!.Example);
        Finding finding = Checker.Check(Core.Strands.TracedPlant.Of(plant))[0];

        Assert.Equal(where, string.Join(", ", finding.At.Select(Words)));

        string Words(FindingSite site) => site.Port is not { } port ? plant.Parts[site.Part].Name
            : site.Meets is { } other ? $"{plant.Address(port)} with {plant.Address(other)}" : plant.Address(port);
    }
}
