using System.Text;
using PolarityMap.Core.Checks;

namespace PolarityMap.Cli.Output;

/// <summary>The reference of all rules as one Markdown page, made from the rules' own files.</summary>
internal static class RuleReference
{
    public static string Text()
    {
        var page = new StringBuilder();
        page.Append("# Rules\n\nMade by `polaritymap explain --format markdown` from the rules' own files; do not edit. `polaritymap explain CODE` prints\none of them. Severity `error`: the plant does not do what it is for; `warning`: worth a look.\n");
        foreach (IGrouping<string, Rule> family in RuleCatalogue.All.GroupBy(r => r.Family))
        {
            page.Append($"\n## {char.ToUpperInvariant(family.Key[0])}{family.Key[1..]}\n\n| code | rule | severity |\n| --- | --- | --- |\n");
            foreach (Rule rule in family)
                page.Append($"| [{rule.Code}](#{Anchor(rule)}) | {rule.Title} | {Severity(rule)} |\n");
            foreach (Rule rule in family)
                Append(page, rule);
        }

        return page.ToString();
    }

    private static void Append(StringBuilder page, Rule rule)
    {
        page.Append($"\n### {rule.Code} {rule.Title}\n\n{rule.Why}\n\n**What clears it.** {rule.Clears}\n\n**Source.** {rule.Source}\n\n");
        page.Append($"Faulty ([figure](../gallery/faults/{rule.Code}.svg)):\n\n```yaml\n{rule.Example.Trim()}\n```\n\n");
        page.Append($"Repaired ([figure](../gallery/faults/{rule.Code}.repaired.svg)):\n\n```yaml\n{rule.Repaired.Trim()}\n```\n");
    }

    private static string Severity(Rule rule) => rule.Severity == Core.Checks.Severity.Error ? "error" : "warning";

    private static string Anchor(Rule rule) => $"{rule.Code} {rule.Title}".ToLowerInvariant().Replace(' ', '-');
}
