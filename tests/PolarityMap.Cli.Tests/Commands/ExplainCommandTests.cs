using System.Text.Json;
using PolarityMap.Core.Checks;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

public sealed class ExplainCommandTests
{
    public static TheoryData<string> Codes => [.. RuleCatalogue.All.Select(r => r.Code)];

    [Fact]
    public void Without_a_code_every_rule_is_listed_with_its_title()
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run("explain");
        Assert.Equal(0, outcome.Status);
        Assert.All(RuleCatalogue.All, r => Assert.Contains($"  {r.Code}  {r.Title}", outcome.Out, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_rule_is_told_with_why_what_clears_it_and_both_documents(string code)
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run("explain", code);
        Assert.Equal(0, outcome.Status);
        Rule rule = RuleCatalogue.Find(code)!;
        string flowing = string.Join(' ', outcome.Out.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        foreach (string text in (string[])[rule.Title, rule.Why, rule.Clears, rule.Source])
            Assert.Contains(string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries)), flowing, StringComparison.Ordinal);
        foreach (string line in (rule.Example + rule.Repaired).Split('\n', StringSplitOptions.RemoveEmptyEntries))
            Assert.Contains($"  {line}\n", outcome.Out, StringComparison.Ordinal);
        Assert.All(outcome.Out.Split('\n'), l => Assert.True(l.Length <= 130, l));
    }

    [Fact]
    public void The_case_of_a_code_does_not_matter()
    {
        using var bench = new Workbench();
        Assert.Equal(bench.Run("explain", "P01"), bench.Run("explain", "p01"));
    }

    [Fact]
    public void An_unknown_code_has_status_2_and_all_codes_are_named()
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run("explain", "P99");
        Assert.Equal(2, outcome.Status);
        Assert.Contains("there is no rule 'P99'", outcome.Error, StringComparison.Ordinal);
        Assert.All(RuleCatalogue.All, r => Assert.Contains(r.Code, outcome.Error, StringComparison.Ordinal));
    }

    [Fact]
    public void Json_lists_the_rules_with_all_their_texts()
    {
        using var bench = new Workbench();
        JsonElement[] rules = [.. Json.Parse(bench.Run("explain", "--format", "json").Out, "polaritymap/rules").GetProperty("rules").EnumerateArray()];
        Assert.Equal(RuleCatalogue.All.Select(r => r.Code), rules.Select(r => r.GetProperty("code").GetString()));
        Assert.All(rules, r => Assert.Equal(["code", "title", "family", "severity", "why", "clears", "example", "repaired", "source"], Json.Names(r)));
        JsonElement one = Assert.Single(Json.Parse(bench.Run("explain", "D04", "--format", "json").Out, "polaritymap/rules").GetProperty("rules").EnumerateArray());
        Assert.Equal("D04", one.GetProperty("code").GetString());
    }
}
