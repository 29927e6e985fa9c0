using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Drawing.Tests.Scene;

/// <summary>Limits: WCAG 2.2, 4.5 : 1 for text (1.4.3), 3 : 1 for parts of a graphic (1.4.11).</summary>
public sealed class PaletteTests
{
    public static TheoryData<string, Colour, Colour> TextPairs => new()
    {
        { "ink on paper", Palette.Ink, Palette.Paper },
        { "ink on a part", Palette.Ink, Palette.PartFill },
        { "ink on the warning sign", Palette.Ink, Palette.WarningFill },
        { "muted ink on paper", Palette.MutedInk, Palette.Paper },
        { "muted ink on a part", Palette.MutedInk, Palette.PartFill },
        { "words of an error", Palette.Fault, Palette.Paper },
        { "words of an error on a part", Palette.Fault, Palette.PartFill },
        { "words of a warning", Palette.Warning, Palette.Paper },
        { "words of a note", Palette.Note, Palette.Paper },
        { "cross on the error sign", Palette.Paper, Palette.Fault },
        { "letter on the note sign", Palette.Paper, Palette.Note },
    };

    public static TheoryData<string, Colour, Colour> GraphicPairs => new()
    {
        { "guide on paper", Palette.Guide, Palette.Paper },
        { "guide on a part", Palette.Guide, Palette.PartFill },
        { "outline of the warning sign", Palette.Ink, Palette.WarningFill },
        { "casing on the halo", Palette.Ink, Palette.Paper },
    };

    [Theory]
    [MemberData(nameof(TextPairs))]
    public void Text_reaches_4_5(string pair, Colour a, Colour b) =>
        Assert.True(Colour.Contrast(a, b) >= 4.5, $"{pair}: {Colour.Contrast(a, b):0.00}");

    [Theory]
    [MemberData(nameof(GraphicPairs))]
    public void Graphic_parts_reach_3(string pair, Colour a, Colour b) =>
        Assert.True(Colour.Contrast(a, b) >= 3, $"{pair}: {Colour.Contrast(a, b):0.00}");
}
