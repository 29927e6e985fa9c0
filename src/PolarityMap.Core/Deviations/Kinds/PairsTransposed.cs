using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>The pairs of two neighbouring ports of a field termination have changed places (trade facts, cause 10).</summary>
internal sealed class PairsTransposed : DeviationKind
{
    public override string Name => "pairs-transposed";

    public override string Title => "two pairs exchanged in a field termination";

    public override string Symptom => "Two circuits exchange destinations with polarity right: both have link, at the wrong far port.";

    public override double Weight => 5;

    public override int LookMinutes => 10;

    public override int MendMinutes => 25;

    public override string Source => "symptom by tracing; weight and minutes are common practice";

    public override string Caution => OpenFibre;

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        PortRef? before = null;
        foreach (PortRef port in TerminationWiring.Ports(context, part))
        {
            if (before is { } first && context.Once(Id(part, first.Port), (Kind: this, context, first, port), static f => f.Kind.Make(f.context, f.first, f.port)) is { } deviation)
                yield return deviation;
            before = port;
        }
    }

    private Deviation? Make(DeviationContext context, PortRef port, PortRef next)
    {
        int here = context.Graph.PositionOf(port, 1), there = context.Graph.PositionOf(next, 1);
        if (context.Exchanged(here, there) is not { } ofA || context.Exchanged(here + 1, there + 1) is not { } ofB)
            return null;
        GraphPatch patch = GraphPatch.OfInside(context.Graph, [.. ofA.Inside, .. ofB.Inside]);
        string ports = $"{context.Plant.Address(port)} and {context.Plant.Address(next)}";
        return new Deviation(
            Id(port.Part, port.Port), this, [port.Part], $"the pairs at {ports} sit in each other's places", TerminationWiring.Of(context, port.Part, patch), patch)
        {
            Mend = $"exchange the pairs behind {ports}",
            Port = port,
            Share = 0.5,
        };
    }
}
