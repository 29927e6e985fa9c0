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
}
