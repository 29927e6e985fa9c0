using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Checks.Rules;

public sealed class ClosedLoop : Rule
{
    public override string Code => "W03";

    public override string Title => "closed loop";

    public override Severity Severity => Severity.Warning;

    public override string Why =>
        "A strand runs in a circle and has no end, so no light ever enters it. A cord joins two ports that are already joined to each other.";

    public override string Clears => "Take one cord of the circle out, or plug one of its ends elsewhere.";

    public override string Source => "Follows from the trace.";

    public override string Example => """
        plant: A cord plugged into both sides of one adapter
        parts:
          PANEL: { kind: duplex panel, ports: 2 }
        runs:
          - PANEL/1, A-to-B cord 1 m, PANEL/1

        """;

    public override string Repaired => """
        plant: A cord from one adapter to the next
        parts:
          PANEL: { kind: duplex panel, ports: 2 }
        runs:
          - PANEL/1, A-to-B cord 1 m, PANEL/2

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        // The strands of one cord make one finding.
        TracedPlant traced = context.Traced;
        var byParts = new Dictionary<string, List<int>>();
        for (int strand = traced.Strands.OpenCount; strand < traced.Strands.Count; strand++)
        {
            string key = string.Join(' ', traced.Hops(strand).Select(h => h.Part).Order());
            if (!byParts.TryGetValue(key, out List<int>? loops))
                byParts[key] = loops = [];
            loops.Add(strand);
        }

        foreach (List<int> loops in byParts.Values)
        {
            string parts = string.Join(", ", traced.Hops(loops[0]).Select(h => traced.Plant.Parts[h.Part].Name).Distinct());
            findings.Add(new Finding(
                this,
                context.PlaceOf(loops[0]),
                $"{loops.Count} {(loops.Count == 1 ? "strand runs" : "strands run")} in a circle through {parts}",
                "every strand with two ends",
                "a strand without an end")
            {
                Strands = loops,
                Related = context.PlacesAlong(loops),
            });
        }
    }
}
