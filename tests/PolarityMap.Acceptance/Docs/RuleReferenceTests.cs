using PolarityMap.Core.Checks;
using Xunit;

namespace PolarityMap.Acceptance.Docs;

/// <summary>The rule reference in docs is what the rules say now. POLARITYMAP_APPROVE=1 writes it anew instead of comparing.</summary>
public sealed class RuleReferenceTests
{
    private static readonly string s_page = Path.Combine(Repository.Root, "docs", "rules.md");

    private static string Made() => Product.Run(Repository.Root, "explain", "--format", "markdown").Out;

    [Fact]
    public void The_committed_page_equals_what_the_program_makes_now()
    {
        string made = Made();
        if (Environment.GetEnvironmentVariable("POLARITYMAP_APPROVE") == "1")
            File.WriteAllText(s_page, made);
        Assert.True(File.Exists(s_page) && File.ReadAllText(s_page) == made,
            "docs/rules.md is stale. Look at the change; when it is right: POLARITYMAP_APPROVE=1 dotnet test tests/PolarityMap.Acceptance --filter RuleReference");
    }

    [Fact]
    public void Every_rule_has_a_section_with_its_why_its_source_and_both_documents()
    {
        string made = Made();
        foreach (Rule rule in RuleCatalogue.All)
        {
            Assert.Contains($"\n### {rule.Code} {rule.Title}\n\n{rule.Why}\n", made, StringComparison.Ordinal);
            Assert.Contains(rule.Source, made, StringComparison.Ordinal);
            Assert.Contains(rule.Example.Trim(), made, StringComparison.Ordinal);
            Assert.Contains(rule.Repaired.Trim(), made, StringComparison.Ordinal);
        }
    }

    // The figures that the page shows are those of the gallery.
    [Fact]
    public void Every_file_that_the_page_links_to_is_there()
    {
        foreach (string piece in Made().Split("](")[1..])
        {
            string target = piece[..piece.IndexOf(')')];
            if (!target.StartsWith('#'))
                Assert.True(File.Exists(Path.Combine(Repository.Root, "docs", target)), $"{target} is missing");
        }
    }
}
