using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>Two cords sit in each other's ports of one part (trade facts, cause 11).</summary>
internal sealed class CordsExchanged : DeviationKind
{
    public override string Name => "cords-exchanged";

    public override string Title => "two cords exchanged";

    public override string Symptom => "Two links reach each other's far ports, or both hear nothing.";

    public override double Weight => 1;

    public override int LookMinutes => 4;

    public override int MendMinutes => 3;

    public override IEnumerable<Deviation> At(DeviationContext context, int part) => context.Plant.Parts[part].Shape.IsCable ? AtCord(context, part) : AtPorts(context, part);

    /// <summary>The cord itself with another one at either of its ends.</summary>
    private IEnumerable<Deviation> AtCord(DeviationContext context, int cord)
    {
        FixedList<PortShape> ports = context.Plant.Parts[cord].Shape.Ports;
        for (int port = 0; port < ports.Count; port++)
        {
            if (context.Plugs.PartnerOf(new PortRef(cord, port)) is not { } here || !IsCord(context, cord))
                continue;
            foreach (PortRef there in Others(context, here))
            {
                if (Exchange(context, here, there) is { } deviation)
                    yield return deviation;
            }
        }
    }

    /// <summary>Any two cords at the ports of a part.</summary>
    private IEnumerable<Deviation> AtPorts(DeviationContext context, int part)
    {
        for (int port = 0; port < context.Plant.Parts[part].Shape.Ports.Count; port++)
        {
            var here = new PortRef(part, port);
            foreach (PortRef there in Others(context, here))
            {
                if (there.Port > port && Exchange(context, here, there) is { } deviation)
                    yield return deviation;
            }
        }
    }

    /// <summary>The other ports of the same part that a cord of the same kind of plug sits in.</summary>
    private static IEnumerable<PortRef> Others(DeviationContext context, PortRef here)
    {
        if (context.Plugs.PartnerOf(here) is not { } plug || !IsCord(context, plug.Part))
            yield break;
        PortShape port = context.Plant.Port(here);
        for (int other = 0; other < context.Plant.Parts[here.Part].Shape.Ports.Count; other++)
        {
            var there = here with { Port = other };
            PortShape shape = context.Plant.Port(there);
            if (other != here.Port && shape.Face == port.Face && shape.Side == port.Side && context.Plugs.PartnerOf(there) is { } far && IsCord(context, far.Part) && far.Part != plug.Part)
                yield return there;
        }
    }

    private static bool IsCord(DeviationContext context, int part) => PartKinds.Find(context.Plant.Parts[part].Kind) is { IsCord: true };

    private Deviation? Exchange(DeviationContext context, PortRef a, PortRef b)
    {
        Plant plant = context.Plant;
        (PortRef low, PortRef high) = a.Port < b.Port ? (a, b) : (b, a);
        var differs = new PlugsExchanged(low, high);
        if (context.Patch(differs) is not { } patch)
            return null;
        int first = context.Plugs.PartnerOf(low)!.Value.Part, second = context.Plugs.PartnerOf(high)!.Value.Part;
        string cords = $"cords {plant.Parts[first].Name} and {plant.Parts[second].Name}";
        return new Deviation(
            new DeviationId(DeviationCatalogue.IndexOf(this), plant.NumberOf(low), plant.NumberOf(high)), this, [first, second],
            $"{cords} sit in each other's ports, {plant.Address(low)} and {plant.Address(high)}", [differs], patch)
        {
            Mend = $"exchange the plugs in {plant.Address(low)} and {plant.Address(high)}",
            Port = low,
        };
    }
}
