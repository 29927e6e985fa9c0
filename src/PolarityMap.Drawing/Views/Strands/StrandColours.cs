using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// The one colour a strand has on a sheet: that of its fibre in the first cable of more than two fibres that it passes, counted
/// among the fibres of its end there; without such a cable, that of its number on the sheet.
/// </summary>
internal static class StrandColours
{
    public static FibreColour Of(TracedPlant traced, int strand)
    {
        foreach (Hop hop in traced.Hops(strand))
        {
            Shape shape = traced.Plant.Parts[hop.Part].Shape;
            if (!shape.IsCable || hop.In < 0)
                continue;
            PositionPlace place = traced.Graph.PlaceOf(hop.In);
            PortShape port = shape.Ports[place.Port.Port];
            if (port.Face.Family is not (ConnectorFamily.Array or ConnectorFamily.Bare))
                continue;
            int fibre = 0;
            for (int i = 0; i < place.Position; i++)
            {
                if (shape.Inside[port.FirstPosition + i] >= 0)
                    fibre++;
            }

            return traced.Plant.Practice.Colours[Math.Max(1, fibre)];
        }

        // A colour to follow by, not that of a fibre: it has no tracer, however high the number.
        return traced.Plant.Practice.Colours[((traced.NumberOf(strand) - 1) % 12) + 1];
    }

    /// <summary>The colour as drawn.</summary>
    public static Colour Drawn(FibreColour colour) => new((byte)(colour.Rgb >> 16), (byte)(colour.Rgb >> 8), (byte)colour.Rgb);
}
