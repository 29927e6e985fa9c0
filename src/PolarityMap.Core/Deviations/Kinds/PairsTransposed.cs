using PolarityMap.Core.Parts;
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
        if (!TerminationWiring.IsTermination(context.Plant.Parts[part]))
            yield break;
        FixedList<PortShape> ports = context.Plant.Parts[part].Shape.Ports;
        for (int port = 0; port + 1 < ports.Count; port++)
        {
            if (ports[port].Face == Face.Duplex && ports[port + 1].Face == Face.Duplex
                && context.Once(Id(part, port), (Kind: this, context, port: new PortRef(part, port)), static f => f.Kind.Make(f.context, f.port)) is { } deviation)
                yield return deviation;
        }
    }

    private Deviation? Make(DeviationContext context, PortRef port)
    {
        PortRef next = port with { Port = port.Port + 1 };
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
