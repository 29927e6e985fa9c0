using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// The one colour a strand has on a sheet: that of its fibre in the longest cable of more than two fibres that it passes, the
/// first of equal ones, counted among the fibres of its near end; without such a cable, that of its number on the sheet.
/// </summary>
public static class StrandColours
{
    public static FibreColour Of(TracedPlant traced, int strand) => Of(traced, strand, traced.Hops(strand)).Colour;

    /// <summary>The colour of a strand of which the visits to parts are known, and whether it is that of a fibre.</summary>
    public static (FibreColour Colour, bool IsFibre) Of(TracedPlant traced, int strand, IReadOnlyList<Hop> way)
    {
        int fibre = CableOf(traced, way)?.Fibre ?? 0;

        // A colour to follow by, not that of a fibre, has no tracer, however high the number.
        return (traced.Plant.Practice.Colours[fibre > 0 ? fibre : ((traced.NumberOf(strand) - 1) % 12) + 1], fibre > 0);
    }

    /// <summary>The longest cable of more than two fibres on a strand's way and the number of its fibre there; null where it passes none.</summary>
    public static (int Part, int Fibre)? CableOf(TracedPlant traced, IReadOnlyList<Hop> way)
    {
        (int, int)? best = null;
        long longest = -1;
        foreach (Hop hop in way)
        {
            Part part = traced.Plant.Parts[hop.Part];
            if (!part.Shape.IsCable || hop.In < 0 || (part.Length?.Millimetres ?? 0) <= longest)
                continue;
            PositionPlace place = traced.Graph.PlaceOf(hop.In);
            if (part.Shape.Ports[place.Port.Port].Side == Side.Far && hop.Out >= 0)
                place = traced.Graph.PlaceOf(hop.Out);
            PortShape port = part.Shape.Ports[place.Port.Port];
            if (port.Face.Family is not (ConnectorFamily.Array or ConnectorFamily.Bare))
                continue;
            longest = part.Length?.Millimetres ?? 0;
            int fibre = 0;
            for (int i = 0; i < place.Position; i++)
                fibre += part.Shape.Inside[port.FirstPosition + i] >= 0 ? 1 : 0;
            best = (hop.Part, Math.Max(1, fibre));
        }

        return best;
    }

    /// <summary>The colour as drawn.</summary>
    public static Colour Drawn(FibreColour colour) => new((byte)(colour.Rgb >> 16), (byte)(colour.Rgb >> 8), (byte)colour.Rgb);
}
