using PolarityMap.Core.Checks;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>What every rule has to say about itself.</summary>
public sealed class RuleCatalogueTests
{
    public static TheoryData<string> Codes => [.. RuleCatalogue.All.Select(r => r.Code)];

    [Fact]
    public void Codes_and_titles_are_used_once()
    {
        Assert.Equal(RuleCatalogue.All.Count, RuleCatalogue.All.Select(r => r.Code).Distinct().Count());
        Assert.Equal(RuleCatalogue.All.Count, RuleCatalogue.All.Select(r => r.Title).Distinct().Count());
        Assert.Equal(RuleCatalogue.All.Count, RuleCatalogue.All.Select(r => r.GetType()).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_code_is_the_letter_of_a_family_and_two_digits(string code)
    {
        Assert.Matches("^[PDMFSLW][0-9]{2}$", code);
        Assert.NotEqual("", RuleCatalogue.Find(code)!.Family);
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_rule_is_found_by_its_code_in_either_letter_case(string code)
    {
        Assert.Equal(code, RuleCatalogue.Find(code)!.Code);
        Assert.Same(RuleCatalogue.Find(code), RuleCatalogue.Find(code.ToLowerInvariant()));
    }

    [Theory]
    [InlineData("")]
    [InlineData("P")]
    [InlineData("P99")]
    [InlineData("P01 ")]
    public void Another_code_finds_nothing(string code) => Assert.Null(RuleCatalogue.Find(code));

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_title_is_a_few_words_without_a_full_stop(string code)
    {
        string title = RuleCatalogue.Find(code)!.Title;
        Assert.Matches("^[a-z][a-z ]+[a-z]$", title);
        Assert.InRange(title.Split(' ').Length, 2, 5);
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Why_and_remedy_and_source_are_sentences(string code)
    {
        Rule rule = RuleCatalogue.Find(code)!;
        foreach (string text in (string[])[rule.Why, rule.Clears, rule.Source])
        {
            Assert.Matches("^[A-Z]", text);
            Assert.EndsWith(".", text);
            Assert.DoesNotContain("  ", text);
            Assert.DoesNotContain("\n", text);
            Assert.Equal(text.Trim(), text);
        }

        Assert.True(rule.Why.Count(c => c == '.') >= 2, "a paragraph has more than one sentence");
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_faulty_and_the_repaired_example_are_different_documents(string code)
    {
        Rule rule = RuleCatalogue.Find(code)!;
        Assert.NotEqual(rule.Example, rule.Repaired);
        foreach (string text in (string[])[rule.Example, rule.Repaired])
        {
            Assert.StartsWith("plant: ", text);
            Assert.EndsWith("\n", text);
            Assert.DoesNotContain("\r", text);
            Assert.DoesNotContain("\t", text);
            Assert.Contains("\nparts:\n", text);
            Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, 110));
        }

        Assert.NotEqual(rule.Example.Split('\n')[0], rule.Repaired.Split('\n')[0]);
    }

    [Fact]
    public void Polarity_and_destination_faults_are_errors()
    {
        Assert.All(RuleCatalogue.All.Where(r => r.Code[0] is 'P' or 'D'), r => Assert.Equal(Severity.Error, r.Severity));
        Assert.True(Severity.Error > Severity.Warning);
    }

    [Fact]
    public void The_codes_of_a_family_stand_together_and_rise()
    {
        foreach (IGrouping<string, Rule> family in RuleCatalogue.All.GroupBy(r => r.Family))
            Assert.Equal(family.Select(r => r.Code).Order(StringComparer.Ordinal), family.Select(r => r.Code));
        string[] families = [.. RuleCatalogue.All.Select(r => r.Family)];
        Assert.Equal(families.Distinct().Count(), 1 + families.Zip(families.Skip(1)).Count(pair => pair.First != pair.Second));
    }
}
