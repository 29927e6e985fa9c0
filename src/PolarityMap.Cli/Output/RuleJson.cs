using PolarityMap.Core.Checks;

namespace PolarityMap.Cli.Output;

/// <summary>Rules for programs; the shape is in docs/json.md.</summary>
internal static class RuleJson
{
    public static void Write(IReadOnlyList<Rule> rules, TextWriter output) => JsonText.Write(output, "polaritymap/rules", json =>
    {
        json.WriteStartArray("rules");
        foreach (Rule rule in rules)
        {
            json.WriteStartObject();
            json.WriteString("code", rule.Code);
            json.WriteString("title", rule.Title);
            json.WriteString("family", rule.Family);
            json.WriteString("severity", rule.Severity == Severity.Error ? "error" : "warning");
            json.WriteString("why", rule.Why);
            json.WriteString("clears", rule.Clears);
            json.WriteString("example", rule.Example);
            json.WriteString("repaired", rule.Repaired);
            json.WriteString("source", rule.Source);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });
}
