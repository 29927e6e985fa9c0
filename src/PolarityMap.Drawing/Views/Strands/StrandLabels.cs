using PolarityMap.Core.Optics;
using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>The colour and the label of each strand, found and measured once for each planning.</summary>
internal sealed class StrandLabels(StrandHops hops)
{
    /// <summary>What a strand is labelled with.</summary>
    /// <param name="Colour">Its colour.</param>
    /// <param name="Cable">The cable in which it is the colour of its fibre, or null.</param>
    /// <param name="Text">Its label in a gutter, such as <c>7 RD</c>.</param>
    /// <param name="TextWidth">Width of the label's letters.</param>
    /// <param name="Width">Width of the room that it gets, with room for the ticks of its tracers at either side, since it stands in the middle.</param>
    internal sealed record Entry(FibreColour Colour, int? Cable, string Text, double TextWidth, double Width);

    private readonly Entry?[] _entries = new Entry?[hops.Traced.Strands.Count];

    public Entry Of(int strand) => _entries[strand] ??= Make(strand);

    private Entry Make(int strand)
    {
        int number = hops.Traced.NumberOf(strand);
        (FibreColour colour, int? cable) = StrandColours.Of(hops.Traced, strand, hops.Of(strand));
        string text = $"{number} {colour.Code}";
        long letters = FontMetrics.Advances(text);

        // Made of whole thousandths, so that rooms of the same width are so to the last bit.
        long room = letters + (hops.EvenRoom?.SpareOfNumber(number) ?? 0);
        return new Entry(colour, cable, text, FontMetrics.WidthMm(letters, CapHeights.Strand), FontMetrics.WidthMm(room, CapHeights.Strand) + (2 * colour.Tracers));
    }
}
