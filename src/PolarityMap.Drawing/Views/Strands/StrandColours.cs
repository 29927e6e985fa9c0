using PolarityMap.Core.Optics;
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

    /// <summary>The colour of a strand of which the visits to parts are known, and the cable in which it is that of its fibre, or null.</summary>
    public static (FibreColour Colour, int? Cable) Of(TracedPlant traced, int strand, IReadOnlyList<Hop> way)
    {
        (int Part, int Fibre)? cable = CableOf(traced, way);
        int fibre = cable?.Fibre ?? 0;

        // A colour to follow by, not that of a fibre, has no tracer, however high the number.
        return (traced.Plant.Practice.Colours[fibre > 0 ? fibre : ((traced.NumberOf(strand) - 1) % 12) + 1], cable?.Part);
    }

    /// <summary>The longest cable of more than two fibres on a strand's way and the number of its fibre there; null where it passes none.</summary>
    public static (int Part, int Fibre)? CableOf(TracedPlant traced, IReadOnlyList<Hop> way)
    {
        (int, int)? best = null;
        long longest = -1;
        foreach (Hop hop in way)
        {
            long length = traced.Plant.Parts[hop.Part].Length?.Millimetres ?? 0;
            if (length <= longest || FibreInCable.NumberOf(traced, hop) is not (> 0 and int fibre))
                continue;
            longest = length;
            best = (hop.Part, fibre);
        }

        return best;
    }

    /// <summary>The colour as drawn.</summary>
    public static Colour Drawn(FibreColour colour) => new((byte)(colour.Rgb >> 16), (byte)(colour.Rgb >> 8), (byte)colour.Rgb);
}
