using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>Two cords change places at the ports of a part, or of two parts that stand side by side.</summary>
internal sealed class PatchesExchanged : ChangeKind
{
    private const int Minutes = 4;

    public override string Name => "patches-exchanged";

    public override string Title => "two cords exchanged";

    public override bool MayClear(Rule rule) => rule.Family is "mechanical" or "fibre" || rule.Code == "S01";

    public override IEnumerable<Change> AtPort(ChangeContext context, PortRef port)
    {
        PortRef[] others = ChangeWords.IsSocket(context.Plant, port) ? [.. Sockets(context, port)] : [.. Plugs(context, port)];
        if (others.Length >= ChangeContext.FewPorts)
            yield break;
        foreach (PortRef other in others)
        {
            if (Exchange(context, port, other) is { } change)
                yield return change;
        }
    }

    public override IEnumerable<Change> Toward(ChangeContext context, IReadOnlyList<int> way, IReadOnlyList<int> meant)
    {
        foreach ((PortRef a, PortRef b) in Joint.Crossings(context, way, meant))
        {
            if (HoldsCord(context, a) && HoldsCord(context, b) && Exchange(context, a, b) is { } change)
                yield return change;
        }
    }

    /// <summary>The other ports of the same part that a cord of the same kind of plug sits in.</summary>
    private static IEnumerable<PortRef> Sockets(ChangeContext context, PortRef port)
    {
        if (!HoldsCord(context, port))
            yield break;
        for (int i = 0; i < context.Plant.Parts[port.Part].Shape.Ports.Count; i++)
        {
            var other = port with { Port = i };
            if (Joint.Alike(context, port, other) && HoldsCord(context, other))
                yield return other;
        }
    }

    /// <summary>Of a cord's plug in an adapter the plugs of other cords in the same panel, on the same side of it.</summary>
    private static IEnumerable<PortRef> Plugs(ChangeContext context, PortRef plug)
    {
        if (!HoldsCord(context, plug) || context.Plugs.Of(plug) is not { Through: { } adapter } mating)
            yield break;
        for (int i = 0; i < context.Plant.Parts[adapter.Part].Shape.Ports.Count; i++)
        {
            if (i == adapter.Port || context.Plugs.Of(adapter with { Port = i }) is not { } other)
                continue;
            PortRef same = mating.A == plug ? other.A : other.B;
            if (HoldsCord(context, same) && context.Plant.Port(same).Face == context.Plant.Port(plug).Face)
                yield return same;
        }
    }

    /// <summary>True for a socket with a cord in it, or for the plug of a cord.</summary>
    private static bool HoldsCord(ChangeContext context, PortRef port) => ChangeWords.IsSocket(context.Plant, port)
        ? context.PartnerOf(port) is { } plug && PartWork.IsCord(context.Plant.Parts[plug.Part])
        : PartWork.IsCord(context.Plant.Parts[port.Part]);

    private Change? Exchange(ChangeContext context, PortRef a, PortRef b)
    {
        Plant plant = context.Plant;
        (PortRef low, PortRef high) = plant.NumberOf(a) < plant.NumberOf(b) ? (a, b) : (b, a);
        PortRef first = ChangeWords.IsSocket(plant, low) ? context.PartnerOf(low)!.Value : low, second = ChangeWords.IsSocket(plant, high) ? context.PartnerOf(high)!.Value : high;
        string text = $"exchange the cords in {Place(context, low)} and {Place(context, high)}";
        return context.Replug(this, low, high, [first.Part, second.Part], text, Minutes, new PlugsExchanged(low, high));
    }

    private static string Place(ChangeContext context, PortRef port) =>
        context.Plant.Address(ChangeWords.IsSocket(context.Plant, port) ? port : ChangeWords.Socket(context, port) ?? port);
}
