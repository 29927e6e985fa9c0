using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>Legs that nothing is mated to are capped and marked as spare.</summary>
internal sealed class LegSpared : ChangeKind
{
    /// <summary>Minutes for one leg.</summary>
    private const int Minutes = 2;

    public override string Name => "leg-spared";

    public override string Title => "legs capped and marked as spare";

    public override bool MayClear(Rule rule) => rule.Code == "W01";

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part cable = context.Plant.Parts[part];
        if (PartKinds.Find(cable.Kind) is not { } kind || !kind.Has("spare"))
            yield break;
        var open = new SortedSet<int>();
        for (int i = 0; i < cable.Shape.Ports.Count; i++)
        {
            if (cable.Shape.Ports[i].Leg is > 0 and int leg && !context.Check.IsMated(new PortRef(part, i)) && !cable.SpareLegs.Contains(leg))
                open.Add(leg);
        }

        if (open.Count == 0)
            yield break;
        int[] spare = [.. cable.SpareLegs.Concat(open).Order()];
        string legs = open.Count == 1 ? $"leg {open.Min}" : $"legs {string.Join(", ", open)}";
        string text = $"cap {legs} of {ChangeWords.Name(context.Plant, part)} and mark {(open.Count == 1 ? "it" : "them")} as spare";
        var setting = new Setting("spare", $"[{string.Join(", ", spare)}]") { Legs = spare };
        if (context.Alter(this, part, text, Minutes * open.Count, string.Join(',', spare), setting) is { } change)
            yield return change;
    }
}
