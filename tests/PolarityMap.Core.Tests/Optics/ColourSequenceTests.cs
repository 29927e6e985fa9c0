using PolarityMap.Core.Optics;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Optics;

public sealed class ColourSequenceTests
{
    // Source: trade facts 9.1. Sequence and names TIA-598, more than 8 sources; letters IEC 60757 where a source was read.
    [Fact]
    public void The_first_dozen_has_the_names_and_letters_of_the_table()
    {
        foreach (ColourRow row in ColourTable.Twelve)
        {
            FibreColour colour = ColourSequence.Tia598[row.Number];
            Assert.Equal((row.Number, row.TiaName, 0), (colour.Number, colour.Name, colour.Tracers));
            if (row.IecCodeConfidence != "from memory")
                Assert.Equal(row.IecCode, colour.Code);
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

    // Source: trade facts 9.1: the four colours of 13 to 16 are safe, their order is not; the other order has no source.
    [Fact]
    public void Both_readings_of_13_to_16_have_the_same_four_colours_in_another_order()
    {
        string[] Four(string name) => [.. Enumerable.Range(13, 4).Select(n => ColourSequence.Find(name)![n].Name)];
        Assert.Equal(Four("TIA-598, 13-16 olive first").Order(), Four("TIA-598, 13-16 lime first").Order());
        Assert.NotEqual(Four("TIA-598, 13-16 olive first"), Four("TIA-598, 13-16 lime first"));
        Assert.Equal(ColourTable.Twelve.Select(r => r.TiaName), Enumerable.Range(1, 12).Select(n => ColourSequence.Find("TIA-598, 13-16 lime first")![n].Name));
    }

    // Source: trade facts 9.1 and 9.2. Olive first 1 source; the German order 3 sources.
    [Theory]
    [InlineData("TIA-598", "blue orange green brown slate white red black yellow violet rose aqua")]
    [InlineData("TIA-598, 13-16 olive first", "blue orange green brown slate white red black yellow violet rose aqua olive magenta tan lime")]
    [InlineData("DIN VDE 0888", "red green blue yellow white grey brown violet turquoise black orange pink")]
    public void A_sequence_on_record_has_its_order(string name, string colours)
    {
        ColourSequence sequence = ColourSequence.Find(name)!;
        string[] expected = colours.Split(' ');
        Assert.Equal(expected.Length, sequence.Length);
        Assert.Equal(expected, Enumerable.Range(1, sequence.Length).Select(n => sequence[n].Name));
        Assert.Equal(Enumerable.Range(1, sequence.Length), Enumerable.Range(1, sequence.Length).Select(n => sequence[n].Number));
        Assert.All(Enumerable.Range(1, sequence.Length), n => Assert.Equal(0, sequence[n].Tracers));
        Assert.Equal(sequence.Length, Enumerable.Range(1, sequence.Length).Select(n => sequence[n].Rgb).Distinct().Count());
        Assert.Equal(sequence.Length, Enumerable.Range(1, sequence.Length).Select(n => sequence[n].Code).Distinct().Count());
    }

    [Fact]
    public void The_default_is_the_first_and_the_names_are_those_of_the_list()
    {
        Assert.Same(ColourSequence.Tia598, ColourSequence.All[0]);
        Assert.Equal(ColourSequence.All.Select(s => s.Name), ColourSequence.Names);
        Assert.All(ColourSequence.All, s => Assert.Same(s, ColourSequence.Find(s.Name)));
        Assert.Null(ColourSequence.Find("IEC 60304"));
    }

    [Theory]
    [InlineData(16, "lime", 0)]
    [InlineData(17, "blue", 1)]
    [InlineData(33, "blue", 2)]
    public void A_sequence_of_sixteen_begins_again_after_sixteen(int fibre, string colour, int tracers)
    {
        FibreColour of = ColourSequence.Find("TIA-598, 13-16 olive first")![fibre];
        Assert.Equal((colour, tracers), (of.Name, of.Tracers));
    }

    // Source: trade facts 9.2: 13 to 24 ring-marked black, transparent instead of black for 22. 1 source.
    [Theory]
    [InlineData(10, "black", 0)]
    [InlineData(13, "red", 1)]
    [InlineData(22, "transparent", 1)]
    [InlineData(24, "pink", 1)]
    public void In_the_German_order_a_ringed_black_fibre_is_transparent(int fibre, string colour, int rings)
    {
        FibreColour of = ColourSequence.Find("DIN VDE 0888")![fibre];
        Assert.Equal((colour, rings, ((fibre - 1) % 12) + 1), (of.Name, of.Tracers, of.Number));
    }

    [Fact]
    public void A_users_own_order_counts_as_it_is_written()
    {
        ColourSequence own = ColourSequence.Own("ours", ["Red", " lime ", "grey"], out string why)!;
        Assert.Equal("", why);
        Assert.Equal(("ours", 3), (own.Name, own.Length));
        Assert.Equal(["red", "lime", "grey", "red"], Enumerable.Range(1, 4).Select(n => own[n].Name));
        Assert.Equal((1, 1), (own[4].Number, own[4].Tracers));
    }

    // Source: trade facts 9.1, the names of IEC beside those of TIA.
    [Theory]
    [InlineData("slate", "grey")]
    [InlineData("rose", "pink")]
    [InlineData("aqua", "turquoise")]
    public void Two_names_of_one_colour_share_letters_and_ink_and_not_a_sequence(string tia, string iec)
    {
        FibreColour one = ColourSequence.Own("ours", [tia], out _)![1];
        FibreColour other = ColourSequence.Own("ours", [iec], out _)![1];
        Assert.Equal((one.Code, one.Rgb), (other.Code, other.Rgb));
        Assert.Equal((tia, iec), (one.Name, other.Name));
        Assert.Null(ColourSequence.Own("ours", ["red", tia, iec], out string why));
        Assert.Equal($"'{iec}' is the same colour as number 2; each may stand once", why);
    }

    [Theory]
    [InlineData("ours", "red teal", "unknown colour 'teal'")]
    [InlineData("ours", "red red", "'red' is the same colour as number 1")]
    [InlineData("ours", "", "at least one colour")]
    [InlineData("TIA-598", "red", "'TIA-598' is the name of a sequence on record")]
    public void A_list_that_is_no_sequence_is_refused_with_the_reason(string name, string colours, string part)
    {
        Assert.Null(ColourSequence.Own(name, colours.Split(' ', StringSplitOptions.RemoveEmptyEntries), out string why));
        Assert.Contains(part, why);
    }

    // Source: trade facts 9.1, twelve colours and four more.
    [Fact]
    public void All_sixteen_colours_are_known_with_letters_of_their_own()
    {
        string[] names = ["blue", "orange", "green", "brown", "slate", "white", "red", "black", "yellow", "violet", "rose", "aqua", "olive", "magenta", "tan", "lime"];
        ColourSequence own = ColourSequence.Own("ours", names, out string why)!;
        Assert.Equal("", why);
        Assert.All(Enumerable.Range(1, 16), n => Assert.Equal(2, own[n].Code.Length));
    }
}
