using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>Transceivers that work with those at the far ends: of the same application, or of its counterpart.</summary>
internal sealed class OtherTransceiver : ChangeKind
{
    /// <summary>Minutes for one port.</summary>
    private const int Minutes = 5;

    public override string Name => "other-transceiver";

    public override string Title => "transceivers of another application";

    public override bool MayClear(Rule rule) => rule.Code == "F04";

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part device = context.Plant.Parts[part];
        if (!device.Shape.IsInterface || device.Values?.Word("application") is not { } now || PartKinds.Find(device.Kind) is not { } kind)
            yield break;
        AttributeSpec spec = kind.AllAttributes.First(s => s.Name == "application");
        foreach (string wanted in FarEnds(context, part).Select(a => a.Counterpart ?? a.Name).Distinct().Where(n => n != now && spec.Words.Contains(n)))
        {
            int ports = device.Shape.Ports.Count;
            string where = ports == 1 ? context.Plant.Address(new PortRef(part, 0)) : $"all {ports} ports of {device.Name}";
            string text = $"put {wanted} {(ports == 1 ? "in the place of" : "transceivers in the place of")} {now} in {where}";
            if (context.Alter(this, part, text, Minutes * ports, wanted, new Setting("application", wanted)) is { } change)
                yield return change;
        }
    }

    /// <summary>What the ports are for that the strands of a device come out at.</summary>
    private static IEnumerable<Application> FarEnds(ChangeContext context, int part)
    {
        int first = context.Graph.FirstPositionOf(part);
        for (int p = first; p < first + context.Plant.Parts[part].Shape.PositionCount; p++)
        {
            int end = context.Traced.OtherEnd(p);
            if (end != p && context.Graph.HasLane(p) && context.Plant.Port(context.Graph.PlaceOf(end).Port).Application is { } application)
                yield return application;
        }
    }
}
