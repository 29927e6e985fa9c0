using PolarityMap.Core.Optics;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Optics;

public sealed class ColourSequenceTests
{
    // Source: trade facts 9.1. Sequence and names TIA-598, more than 8 sources; letters IEC 60757, 1 source or from memory.
    [Fact]
    public void The_first_dozen_has_the_names_and_letters_of_the_table()
    {
        foreach (ColourRow row in ColourTable.Twelve)
        {
            FibreColour colour = ColourSequence.Tia598[row.Number];
            Assert.Equal((row.Number, row.TiaName, row.IecCode, 0), (colour.Number, colour.Name, colour.Code, colour.Tracers));
        }
    }

    // Source: trade facts 9.1: 13 to 24 repeat the order with a tracer, every further twelve adds one stripe. TIA-598, 3 sources.
    [Theory]
    [InlineData(12, 12, 0)]
    [InlineData(13, 1, 1)]
    [InlineData(20, 8, 1)]
    [InlineData(24, 12, 1)]
    [InlineData(25, 1, 2)]
    [InlineData(100, 4, 8)]
    [InlineData(144, 12, 11)]
    public void Every_further_dozen_repeats_the_order_with_one_more_tracer(int fibre, int inDozen, int tracers)
    {
        FibreColour colour = ColourSequence.Tia598[fibre];
        Assert.Equal((inDozen, ColourTable.Twelve[inDozen - 1].TiaName, tracers), (colour.Number, colour.Name, colour.Tracers));
    }

    // Source: trade facts 9.1, the colour of the fibre in its tube. 2 sources.
    [Fact]
    public void The_fibre_of_the_tube_examples_has_the_printed_colour()
    {
        foreach ((int fibre, int tube, string tubeColour, int inTube, string fibreColour) in ColourTable.TubeExamples)
        {
            Assert.Equal((inTube, fibreColour), (ColourSequence.Tia598[fibre].Number, ColourSequence.Tia598[fibre].Name));
            Assert.Equal(tubeColour, ColourSequence.Tia598[tube].Name);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(int.MinValue)]
    public void A_fibre_number_below_one_is_refused(int number) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ColourSequence.Tia598[number]);

    [Fact]
    public void Every_colour_of_a_dozen_has_its_own_name_letters_and_ink()
    {
        FibreColour[] dozen = [.. Enumerable.Range(1, 12).Select(n => ColourSequence.Tia598[n])];
        Assert.Equal(12, dozen.Select(c => c.Name).Distinct().Count());
        Assert.Equal(12, dozen.Select(c => c.Code).Distinct().Count());
        Assert.Equal(12, dozen.Select(c => c.Rgb).Distinct().Count());
        Assert.All(dozen, c => Assert.InRange(c.Rgb, 0, 0xFFFFFF));
    }
}
