using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>The two fibres of one port of a field termination have changed places (trade facts, cause 9).</summary>
internal sealed class PairCrossed : DeviationKind
{
    public override string Name => "pair-crossed";

    public override string Title => "pair crossed in a field termination";

    public override string Symptom => "Exactly one circuit is dead at both ends, and its neighbours are right.";

    public override double Weight => 5;

    public override int LookMinutes => 10;

    public override int MendMinutes => 20;

    public override string Source => "symptom by tracing; weight and minutes are common practice";

    public override string Caution => OpenFibre;

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        foreach (PortRef port in TerminationWiring.Ports(context, part))
        {
            if (context.Once(Id(part, port.Port), (Kind: this, context, port), static f => f.Kind.Make(f.context, f.port)) is { } deviation)
                yield return deviation;
        }
    }

    private Deviation? Make(DeviationContext context, PortRef port)
    {
        int a = context.Graph.PositionOf(port, 1);
        if (context.Exchanged(a, a + 1) is not { } patch)
            return null;
        int first = TerminationWiring.FibreBehind(context.Graph, port, 1), second = TerminationWiring.FibreBehind(context.Graph, port, 2);
        string address = context.Plant.Address(port);
        return new Deviation(
            Id(port.Part, port.Port), this, [port.Part], $"the pair at {address} is crossed: fibre {second} is at A and fibre {first} at B",
            TerminationWiring.Of(context, port.Part, patch), patch)
        {
            Mend = $"exchange the two fibres behind {address}: fibre {first} to A, fibre {second} to B",
            Port = port,
        };
    }
}
