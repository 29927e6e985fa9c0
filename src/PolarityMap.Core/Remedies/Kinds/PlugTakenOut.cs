using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>A plug taken out where light runs in a circle or comes back to the port that it left.</summary>
internal sealed class PlugTakenOut : ChangeKind
{
    public override string Name => "plug-taken-out";

    public override string Title => "a plug taken out";

    public override bool MayClear(Rule rule) => rule.Code is "W03" or "P04";

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part cable = context.Plant.Parts[part];
        if (!cable.Shape.IsCable || !Loops(context, part))
            yield break;
        for (int i = 0; i < cable.Shape.Ports.Count; i++)
        {
            var plug = new PortRef(part, i);
            if (context.Plugs.Of(plug) is null || !ChangeWords.IsPlug(context.Plant, plug))
                continue;
            string from = ChangeWords.Socket(context, plug) is { } socket ? $" out of {context.Plant.Address(socket)}" : "";
            if (context.Replug(this, plug, plug, [part], $"take {ChangeWords.Name(context.Plant, part)}{from} and cap the plug", 2, new PlugPulled(plug)) is { } change)
                yield return change;
        }
    }

    private static bool Loops(ChangeContext context, int part)
    {
        TracedPlant traced = context.Traced;
        int first = context.Graph.FirstPositionOf(part);
        for (int p = first; p < first + context.Plant.Parts[part].Shape.PositionCount; p++)
        {
            int strand = traced.StrandOf(p);
            ReadOnlySpan<int> positions = traced.Strands[strand];
            if (traced.Strands.IsLoop(strand)
                || (positions.Length > 1 && context.Graph.HasLane(positions[0]) && context.Graph.PlaceOf(positions[0]).Port == context.Graph.PlaceOf(positions[^1]).Port))
                return true;
        }

        return false;
    }
}
