using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;

namespace PolarityMap.Cli.Output;

/// <summary>Every strand of a plant for programs, in the order of their numbers; the shape is in docs/json.md.</summary>
internal static class StrandsJson
{
    public static byte[] Bytes(CheckReport report) => JsonText.Bytes("polaritymap/strands", json =>
    {
        TracedPlant traced = report.Traced;
        List<int>[] links = OnStrands(traced, report.Context.Outcomes.All, o => o.Strands, o => o.Index);
        List<int>[] findings = OnStrands(traced, report.Findings.Select((f, i) => (f.Strands, Index: i)), f => f.Strands, f => f.Index);
        json.WriteString("plant", traced.Plant.Title.Title);
        json.WriteStartArray("strands");
        foreach (int strand in Enumerable.Range(0, traced.Strands.Count).OrderBy(traced.NumberOf))
        {
            json.WriteStartObject();
            JsonText.WriteStrandFields(json, traced, strand);
            json.WriteBoolean("active", traced.IsActive(strand));
            json.WriteStartArray("networks");
            foreach (int network in report.Context.Separation.Strands.Of(strand))
                json.WriteStringValue(traced.Plant.Networks[network].Name);
            json.WriteEndArray();
            JsonText.WriteNumbers(json, "links", links[strand]);
            JsonText.WriteNumbers(json, "findings", findings[strand]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });

    /// <summary>For each strand the indices of what it is in, each once, rising.</summary>
    private static List<int>[] OnStrands<T>(TracedPlant traced, IEnumerable<T> all, Func<T, IEnumerable<int>> strandsOf, Func<T, int> indexOf)
    {
        var on = new List<int>[traced.Strands.Count];
        for (int i = 0; i < on.Length; i++)
            on[i] = [];
        foreach (T one in all)
        {
            foreach (int strand in strandsOf(one))
            {
                if (on[strand].Count == 0 || on[strand][^1] != indexOf(one))
                    on[strand].Add(indexOf(one));
            }
        }

        return on;
    }
}
