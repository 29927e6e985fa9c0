using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Deviations;

/// <summary>Which fibres a field termination or splice joins to what, as a document writes it.</summary>
internal static class TerminationWiring
{
    /// <summary>True for a part in which fibres are brought to duplex ports in the field.</summary>
    public static bool IsTermination(Part part) => part.Kind == "field termination";

    /// <summary>The duplex ports of a part at which fibres are brought to them in the field; none of any other part.</summary>
    public static IEnumerable<PortRef> Ports(DeviationContext context, int part)
    {
        if (!IsTermination(context.Plant.Parts[part]))
            yield break;
        FixedList<PortShape> ports = context.Plant.Parts[part].Shape.Ports;
        for (int port = 0; port < ports.Count; port++)
        {
            if (ports[port].Face == Face.Duplex)
                yield return new PortRef(part, port);
        }
    }

    /// <summary>The difference that a patch of such a part makes: its wiring written out, or, for a part without attributes, its shape.</summary>
    public static LateDifference Of(DeviationContext context, int part, GraphPatch patch) => new(() =>
    {
        PartDiffers bare = context.Rewired(part, patch);
        return context.With(part, "wiring", Pairs(bare.Changed.Shape)) ?? bare;
    });

    /// <summary>The number of the bare fibre that a position (1-based) of a port is joined to, or 0.</summary>
    public static int FibreBehind(StrandGraph graph, PortRef port, int position)
    {
        int behind = graph.Inside[graph.PositionOf(port, position)];
        return behind < 0 ? 0 : graph.PlaceOf(behind).Position;
    }

    /// <summary>Per duplex port its fibres for A and B; of a splice the near and far fibres joined.</summary>
    private static DuplexPair[] Pairs(Shape shape)
    {
        var pairs = new List<DuplexPair>();
        foreach (PortShape port in shape.Ports)
        {
            if (port.Side != Side.Near)
                continue;
            for (int i = 0; i < port.Face.Count; i++)
            {
                if (port.Face.Family == ConnectorFamily.Bare && Number(shape, port.FirstPosition + i) is > 0 and int far)
                    pairs.Add(new DuplexPair(i + 1, far));
            }

            if (port.Face.Family == ConnectorFamily.Duplex)
                pairs.Add(new DuplexPair(Number(shape, port.FirstPosition), Number(shape, port.FirstPosition + 1)));
        }

        return [.. pairs];
    }

    private static int Number(Shape shape, int local)
    {
        int behind = shape.Inside[local];
        return behind < 0 ? 0 : behind - shape.Ports[shape.PortAt(behind)].FirstPosition + 1;
    }
}
