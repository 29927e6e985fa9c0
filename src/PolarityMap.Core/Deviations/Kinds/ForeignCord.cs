using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>
/// A cord of another network, as its colour or key tells, where it goes in (trade facts, cause 23). It carries the light all the
/// same, so that only looking shows it; where its key would keep it out it is not looked for.
/// </summary>
internal sealed class ForeignCord : DeviationKind
{
    public override string Name => "foreign-cord";

    public override string Title => "cord of another network";

    public override string Symptom => "Light goes its way and the link is up; the cord has the colour or label of another network.";

    public override double Weight => 9;

    public override int LookMinutes => 1;

    public override int MendMinutes => 3;

    public override string Source => "keys and colours for separate networks: common practice, no standard defines codes; weight and minutes are common practice";

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        if (!context.Seats.IsCord(part) || context.Plant.Parts[part].Network < 0)
            yield break;
        for (int network = 0; network < context.Plant.Networks.Count; network++)
        {
            if (network != context.Plant.Parts[part].Network && context.Once(Id(part, network), (Kind: this, context, part, network), static f => f.Kind.Make(f.context, f.part, f.network)) is { } deviation)
                yield return deviation;
        }
    }

    private Deviation? Make(DeviationContext context, int part, int network)
    {
        Part cord = context.Plant.Parts[part];
        FixedList<PortShape> ports = cord.Shape.Ports;
        for (int port = 0; port < ports.Count; port++)
        {
            if (!context.Seats.GoesIn(new PortRef(part, port), network))
                return null;
        }

        string own = context.Plant.Networks[cord.Network].Name, other = context.Plant.Networks[network].Name;
        var differences = new LateDifference(() => context.With(part, "network", other) ?? new PartDiffers(part, cord with { Network = network }, "network", other));
        return new Deviation(Id(part, network), this, [part], $"cord {cord.Name} is one of {other} instead of {own}", differences, GraphPatch.None)
        {
            Mend = $"put a cord of {own} in the place of {cord.Name}",
            Share = 1.0 / (context.Plant.Networks.Count - 1),
        };
    }
}
