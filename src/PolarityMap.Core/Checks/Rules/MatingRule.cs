using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

/// <summary>A rule that judges one mating at a time, and where it can a plug that waits alone in an adapter.</summary>
public abstract class MatingRule : Rule
{
    private protected abstract StopFault? Judge(CheckContext context, Mating mating);

    private protected virtual StopFault? Judge(CheckContext context, OpenPlug plug) => null;

    public sealed override void Check(CheckContext context, List<Finding> findings)
    {
        Plant plant = context.Plant;
        var stops = new StopFindings(this, context);
        foreach (Mating mating in plant.Matings)
        {
            if (Judge(context, mating) is { } fault)
            {
                stops.Add(
                    mating.Place,
                    fault,
                    context.StrandsAt(mating.A, mating.PositionOfA).Concat(context.StrandsAt(mating.B, mating.PositionOfB)),
                    Places(plant, [mating.A, mating.Through, mating.B]),
                    [FindingSite.Of(mating)],
                    breaks: !plant.Fits(mating));
            }
        }

        foreach (OpenPlug plug in plant.OpenPlugs)
        {
            if (Judge(context, plug) is { } fault)
                stops.Add(plug.Place, fault, context.StrandsAt(plug.Plug), Places(plant, [plug.Plug, plug.Adapter]), [FindingSite.Of(plug.Plug)], breaks: !plant.Fits(plug));
        }

        stops.Report(findings);
    }

    /// <summary>Where the parts are described.</summary>
    private static IEnumerable<SourcePlace> Places(Plant plant, IEnumerable<PortRef?> ports)
    {
        foreach (PortRef? port in ports)
        {
            if (port is { } at)
                yield return plant.Parts[at.Part].Place;
        }
    }
}
