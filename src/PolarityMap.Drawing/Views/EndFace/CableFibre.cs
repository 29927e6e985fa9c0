using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>The fibre of a cable behind a position of its plug, counted among the fibres of the cable's near end.</summary>
internal static class CableFibre
{
    /// <summary>
    /// The fibre's number from 1; 0 where no multi-fibre cable is behind the position. The two fibres of a duplex cord are not
    /// counted, since nothing says which colours they have.
    /// </summary>
    public static int NumberAt(TracedPlant traced, int position)
    {
        StrandGraph graph = traced.Graph;
        Shape shape = traced.Plant.Parts[graph.PartOf(position)].Shape;

        // A splice is passed like a cable but has no fibre of its own.
        if (!shape.IsCable || shape.Splices > 0 || graph.Inside[position] < 0)
            return 0;
        PositionPlace place = graph.PlaceOf(position);
        if (shape.Ports[place.Port.Port].Side == Side.Far)
            place = graph.PlaceOf(graph.Inside[position]);
        PortShape port = shape.Ports[place.Port.Port];
        if (port.Face.Family is not (ConnectorFamily.Array or ConnectorFamily.Bare))
            return 0;
        int number = 0;
        for (int i = 0; i < place.Position; i++)
            number += shape.Inside[port.FirstPosition + i] >= 0 ? 1 : 0;
        return number;
    }
}
