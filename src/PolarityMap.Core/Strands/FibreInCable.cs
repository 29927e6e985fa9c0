using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Strands;

/// <summary>Which fibre of a cable a strand rides on.</summary>
public static class FibreInCable
{
    /// <summary>
    /// The number of the fibre among those of the connector or bare end at the cable's near end, from 1; 0 where the part is no
    /// cable, or one of so few fibres that their colours are no help. A place without a fibre does not count; a fibre that is broken
    /// has its number at both sides of the break.
    /// </summary>
    public static int NumberOf(TracedPlant traced, Hop hop)
    {
        Shape shape = traced.Plant.Parts[hop.Part].Shape;

        // Splices have no fibre of their own, and no length.
        if (!shape.IsCable || (shape.Splices > 0 && traced.Plant.Parts[hop.Part].Length is null))
            return 0;
        int start = traced.Graph.FirstPositionOf(hop.Part), position = NearEnd(shape, hop, start);
        if (position < 0 || shape.AsMade[position] < 0)
            return 0;
        PortShape port = shape.Ports[shape.PortAt(position)];
        if (port.Face.Family is not (ConnectorFamily.Array or ConnectorFamily.Bare))
            return 0;
        int number = 0;
        for (int i = port.FirstPosition; i <= position; i++)
            number += shape.AsMade[i] >= 0 ? 1 : 0;
        return number;
    }

    /// <summary>The place at the near end of the fibre that a hop rides on, within the part; -1 where it rides on none.</summary>
    private static int NearEnd(Shape shape, Hop hop, int start)
    {
        foreach (int end in (ReadOnlySpan<int>)[hop.In, hop.Out])
        {
            if (end >= 0 && shape.Ports[shape.PortAt(end - start)].Side != Side.Far)
                return end - start;
        }

        return hop.In < 0 && hop.Out < 0 ? -1 : shape.AsMade[(hop.In >= 0 ? hop.In : hop.Out) - start];
    }
}
