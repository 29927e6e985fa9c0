using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>A cord of the network whose light it carries, in that network's colour where it has one of another's.</summary>
internal sealed class CordNetwork : ChangeKind
{
    public override string Name => "cord-network";

    public override string Title => "a cord of another network";

    public override bool MayClear(Rule rule) => rule.Code is "S01" or "S09" or "M07";

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part cord = context.Plant.Parts[part];
        if (!PartWork.IsCord(cord))
            yield break;
        foreach (int n in Networks(context, part))
        {
            Network network = context.Plant.Networks[n];
            if (n == cord.Network)
                continue;
            var settings = new List<Setting> { new("network", network.Name) };
            if (cord.Jacket is { } jacket && network.Colour is { } colour && context.Plant.Networks.Any(other => string.Equals(other.Colour, jacket, StringComparison.OrdinalIgnoreCase)))
                settings.Add(new Setting("jacket", colour));
            string text = $"put a cord of {network.Name} in the place of {ChangeWords.Name(context.Plant, part)}";
            if (context.Alter(this, part, text, PartWork.Replace(cord), network.Name, [.. settings]) is { } change)
                yield return change;
        }
    }

    /// <summary>The networks of the interfaces at the ends of the strands in the cord.</summary>
    private static SortedSet<int> Networks(ChangeContext context, int part)
    {
        var networks = new SortedSet<int>();
        StrandGraph graph = context.Graph;
        int first = graph.FirstPositionOf(part);
        for (int p = first; p < first + context.Plant.Parts[part].Shape.PositionCount; p++)
        {
            ReadOnlySpan<int> strand = context.Traced.Strands[context.Traced.StrandOf(p)];
            foreach (int end in (ReadOnlySpan<int>)[strand[0], strand[^1]])
            {
                if (graph.HasLane(end) && context.Plant.NetworkOf(graph.PlaceOf(end).Port) is >= 0 and int network)
                    networks.Add(network);
            }
        }

        return networks;
    }
}
