using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>Two legs of a trunk or harness change places, or two trunks that end side by side.</summary>
internal sealed class LegsExchanged : ChangeKind
{
    private const int Minutes = 6;

    public override string Name => "legs-exchanged";

    public override string Title => "two legs exchanged";

    public override bool MayClear(Rule rule) => false;

    public override IEnumerable<Change> AtPort(ChangeContext context, PortRef port)
    {
        if (!IsLeg(context, port))
            yield break;
        var others = new List<PortRef>();
        FixedList<PortShape> ports = context.Plant.Parts[port.Part].Shape.Ports;
        for (int i = 0; i < ports.Count; i++)
        {
            var other = port with { Port = i };
            if (other != port && IsLeg(context, other) && ports[i].Side == ports[port.Port].Side && ports[i].Face == ports[port.Port].Face)
                others.Add(other);
        }

        if (others.Count >= ChangeContext.FewPorts)
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
            if (Plug(context, a) is { } one && Plug(context, b) is { } two && Exchange(context, one, two) is { } change)
                yield return change;
        }
    }

    private static bool IsLeg(ChangeContext context, PortRef port) =>
        context.Plant.Port(port).Leg > 0 && context.Plugs.Of(port) is not null && ChangeWords.IsPlug(context.Plant, port);

    /// <summary>The plug of a trunk or harness that is in a port, or that the port is.</summary>
    private static PortRef? Plug(ChangeContext context, PortRef port)
    {
        PortRef? plug = ChangeWords.IsSocket(context.Plant, port) ? context.PartnerOf(port) : port;
        return plug is { } at && ChangeWords.IsPlug(context.Plant, at) && !PartWork.IsCord(context.Plant.Parts[at.Part]) ? at : null;
    }

    /// <summary>The plugs are named and not their sockets, since a leg is known by its own number.</summary>
    private Change? Exchange(ChangeContext context, PortRef a, PortRef b)
    {
        Plant plant = context.Plant;
        (PortRef low, PortRef high) = plant.NumberOf(a) < plant.NumberOf(b) ? (a, b) : (b, a);
        if (ChangeWords.Socket(context, low) is not { } first || ChangeWords.Socket(context, high) is not { } second)
            return null;
        string text = $"exchange the plugs of {plant.Address(low)} and {plant.Address(high)} in {plant.Address(first)} and {plant.Address(second)}";
        int[] parts = low.Part == high.Part ? [low.Part] : [low.Part, high.Part];
        return context.Replug(this, low, high, parts, text, Minutes, new PlugsExchanged(low, high));
    }
}
