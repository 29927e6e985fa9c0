using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>An array adapter with its keys the other way: a Type-B adapter for a Type-A, or the reverse (TIA-568; five public sources).</summary>
internal sealed class AdapterTurned : ChangeKind
{
    /// <summary>Minutes for one adapter.</summary>
    private const int Minutes = 10;

    private static readonly (string Attribute, Side Side)[] s_attributes = [("keys", Side.Far), ("front-keys", Side.Near)];

    public override string Name => "adapter-turned";

    public override string Title => "an array adapter turned";

    public override bool MayClear(Rule rule) => rule.Code is "M05" or "M06";

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part held = context.Plant.Parts[part];
        if (held.Shape.IsCable || held.Shape.IsInterface)
            yield break;
        foreach ((string attribute, Side side) in s_attributes)
        {
            if (held.Values?.Word(attribute) is not { } keys || !KeyingWords.TryParse(keys, out Keying now))
                continue;
            string turned = (now == Keying.Aligned ? Keying.Opposed : Keying.Aligned).Word();
            PortRef[] used = [.. Used(context, part, held.Kind == "conversion module" ? side : null)];
            if (used.Length == 0)
                continue;
            string what = used.Length == 1 ? $"the array adapter {context.Plant.Address(used[0])}" : $"all {used.Length} array adapters of {held.Name} that are in use";
            if (context.Alter(this, part, $"turn {what}, so that its keys are {turned} instead of {keys}", Minutes * used.Length, $"{attribute} {turned}", new Setting(attribute, turned)) is { } change)
                yield return change;
        }
    }

    /// <summary>The array ports of a part in which something is mated.</summary>
    private static IEnumerable<PortRef> Used(ChangeContext context, int part, Side? side)
    {
        FixedList<PortShape> ports = context.Plant.Parts[part].Shape.Ports;
        for (int i = 0; i < ports.Count; i++)
        {
            if (ports[i].Keys is not null && (side is null || ports[i].Side == side) && context.Plugs.At(new PortRef(part, i)) >= 0)
                yield return new PortRef(part, i);
        }
    }
}
