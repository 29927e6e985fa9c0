using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Strands;

/// <summary>Which fibre of a cable a strand rides on.</summary>
public static class FibreInCable
{
    /// <summary>
    /// The number of the fibre among those of the connector or bare end at the cable's near end, from 1; 0 where the part is no
    /// cable, or one of so few fibres that their colours are no help. A place without a fibre does not count.
    /// </summary>
    public static int NumberOf(TracedPlant traced, Hop hop)
    {
        Part part = traced.Plant.Parts[hop.Part];
        if (!part.Shape.IsCable || hop.In < 0 || hop.Out < 0)
            return 0;
        PositionPlace place = traced.Graph.PlaceOf(hop.In);
        if (part.Shape.Ports[place.Port.Port].Side == Side.Far)
            place = traced.Graph.PlaceOf(hop.Out);
        PortShape port = part.Shape.Ports[place.Port.Port];
        // Splices have no fibre of their own, and no length.
        if (port.Face.Family is not (ConnectorFamily.Array or ConnectorFamily.Bare) || (part.Shape.Splices > 0 && part.Length is null))
            return 0;
        int number = 0;
        for (int i = 0; i < place.Position; i++)
            number += part.Shape.Inside[port.FirstPosition + i] >= 0 ? 1 : 0;
        return number;
    }
}
