using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Documents.Tests.Binding;

/// <summary>How runs become matings. The matings were written by hand from the text of each document.</summary>
public class RunTests
{
    private const string Parts =
        """
        plant: P
        parts:
          SW-[1..2]: { kind: duplex interface, ports: 4 }
          K[1..2]: U1 cassette
          A1: { kind: U1 cassette, keys: aligned }
          T: { kind: Type-B trunk, legs: 3 }
          ONE: { kind: Type-B trunk, length: 62 m }
          PAN: { kind: array panel, keys: aligned }
          PD: duplex panel
          H: harness
          QS: { kind: parallel interface, ports: 2 }
        runs:

        """;

    private static string Matings(params string[] runs) => Reading.Matings(Parts + string.Concat(runs.Select(r => $"  - {r}\n")));

    [Fact]
    public void Consecutive_stops_are_mated_and_a_cord_is_entered_at_its_near_end() =>
        Assert.Equal(
            "SW-1/3 = SW-1/3~K1/5/near\nSW-1/3~K1/5/far = K1/5",
            Matings("SW-1/3, A-to-B cord 2 m, K1/5"));

    [Fact]
    public void Ranges_run_in_step_and_a_cord_is_made_for_each() =>
        Assert.Equal(
            """
            SW-1/1 = SW-1/1~K1/4/near
            SW-1/1~K1/4/far = K1/4
            SW-1/2 = SW-1/2~K1/3/near
            SW-1/2~K1/3/far = K1/3
            """,
            Matings("SW-1/1..2, A-to-B cord 2 m, K1/4..3"));

    [Fact]
    public void Of_several_ranges_in_an_address_the_leftmost_changes_slowest() =>
        Assert.Equal(
            "SW-1/1 = K1/3\nSW-1/2 = K1/4\nSW-2/1 = K2/3\nSW-2/2 = K2/4",
            Matings("SW-[1..2]/1..2, K[1,2]/[3,4]"));

    [Fact]
    public void A_run_may_be_a_list_as_well_as_a_text() =>
        Assert.Equal(
            Matings("SW-1/1..2, A-to-B cord 2 m, K1/1..2", "K1/rear, opposed, ONE, aligned, K2/rear"),
            Matings("[SW-1/1..2, A-to-B cord 2 m, K1/1..2]", "[K1/rear, opposed, ONE, aligned, K2/rear]"));

    [Fact]
    public void A_range_with_a_comma_stands_in_brackets_within_a_text() =>
        Assert.Equal(
            "K1/rear = T/near1 opposed\nT/far1 = K2/rear opposed\nK2/1 = SW-2/4\nK2/2 = SW-2/1",
            Matings("K1/rear, T/1, K2/rear", "K2/[1,2], SW-2/[4,1]"));

    [Theory]
    [InlineData("A-to-B cord 2 m", "2 m")]
    [InlineData("A-to-B cord 2m", "2 m")]
    [InlineData("A-to-B cord 0.5 m", "0.5 m")]
    [InlineData("A-to-B cord 30 cm", "0.3 m")]
    [InlineData("A-to-B cord 10 ft", "3.048 m")] // an international foot is 0.3048 m exactly (from memory)
    [InlineData("A-to-B cord", null)]
    public void A_cord_in_a_run_has_a_type_and_if_wanted_a_length(string cord, string? length)
    {
        Plant plant = Reading.Plant(Parts + $"  - SW-1/1, {cord}, SW-2/1\n");
        Part part = Reading.Part(plant, "SW-1/1~SW-2/1");

        Assert.True(part.IsInline);
        Assert.Equal("duplex cord", part.Kind);
        Assert.Equal(["cord", "A-to-B"], part.Caption);
        Assert.Equal(length, part.Length?.ToString());
    }

    [Fact]
    public void Cords_with_the_same_ends_get_different_names()
    {
        Plant plant = Reading.Plant(Parts + "  - SW-1/1, A-to-B cord 1 m, A-to-B cord 1 m, A-to-B cord 1 m, A-to-B cord 1 m, SW-2/1\n");

        Assert.Equal(
            ["SW-1/1~open", "open~open", "open~open#2", "open~SW-2/1"],
            plant.Parts.Where(p => p.IsInline).Select(p => p.Name));
    }

    [Fact]
    public void A_trunk_of_one_leg_needs_no_number() =>
        Assert.Equal("K1/rear = ONE/near opposed\nONE/far = K2/rear opposed", Matings("K1/rear, ONE, K2/rear"));

    [Theory]
    [InlineData("K1/rear, T/3, K2/rear", "K1/rear = T/near3 opposed\nT/far3 = K2/rear opposed")]
    [InlineData("K1/rear, T/near3, K2/rear", "K1/rear = T/near3 opposed\nT/far3 = K2/rear opposed")]
    [InlineData("K1/rear, T/far3, K2/rear", "K1/rear = T/far3 opposed\nT/near3 = K2/rear opposed")]
    [InlineData("T/far3, K2/rear", "T/far3 = K2/rear opposed")]
    [InlineData("K1/rear, T/near3", "K1/rear = T/near3 opposed")]
    [InlineData("T/3, K2/rear", "T/far3 = K2/rear opposed")]
    [InlineData("K1/rear, ONE/far, K2/rear", "K1/rear = ONE/far opposed\nONE/near = K2/rear opposed")]
    [InlineData("K[1..2]/rear, T/far1..2", "K1/rear = T/far1 opposed\nK2/rear = T/far2 opposed")]
    [InlineData("K[1..2]/rear, T/2..3", "K1/rear = T/near2 opposed\nK2/rear = T/near3 opposed")]
    public void Legs_are_named_by_number_or_by_the_end_that_is_entered(string run, string matings) => Assert.Equal(matings, Matings(run));

    [Fact]
    public void A_harness_is_entered_at_its_array_and_left_at_its_legs() =>
        Assert.Equal(
            "QS/1 = H/array aligned\nH/leg1 = SW-1/1\nH/leg2 = SW-1/2\nH/leg4 = SW-1/4",
            Matings("QS/1, H", "H/leg[1..2], SW-1/1..2", "H/4, SW-1/4"));

    [Fact]
    public void A_harness_may_be_entered_at_a_leg() =>
        Assert.Equal("SW-1/1 = H/leg3\nH/array = QS/2 aligned", Matings("SW-1/1, H/leg3, QS/2"));

    // The default is the adapter's: opposed at K1, aligned at A1 and PAN.
    [Theory]
    [InlineData("K1/rear, ONE", "K1/rear = ONE/near opposed")]
    [InlineData("A1/rear, ONE", "A1/rear = ONE/near aligned")]
    [InlineData("K1/rear, aligned, ONE", "K1/rear = ONE/near aligned")]
    [InlineData("A1/rear, opposed, ONE", "A1/rear = ONE/near opposed")]
    [InlineData("T/far1, aligned, T/2", "T/far1 = T/near2 aligned")]
    [InlineData("K1/rear, opposed, A1/rear", "K1/rear = A1/rear opposed")]
    [InlineData("K1/rear, K2/rear", "K1/rear = K2/rear opposed")]
    public void Keys_lie_as_the_adapter_has_it_unless_a_word_says_otherwise(string run, string matings) =>
        Assert.Equal(matings, Matings(run));

    [Theory]
    [InlineData("QS/1, ONE, QS/2", "QS/1 = ONE/near aligned\nONE/far = QS/2 aligned")]
    [InlineData("QS/1, aligned, ONE", "QS/1 = ONE/near aligned")]
    public void A_plug_enters_a_receptacle_with_keys_aligned(string run, string matings) => Assert.Equal(matings, Matings(run));

    [Fact]
    public void Two_plugs_meet_in_a_panel_within_one_run_or_across_two()
    {
        const string Matings2 = "QS/1 = QS/1~PAN/1/near aligned\nQS/1~PAN/1/far = ONE/near aligned in PAN/1\nONE/far = K1/rear opposed";

        Assert.Equal(Matings2, Matings("QS/1, Type-B cord 2 m, PAN/1, ONE, K1/rear"));
        Assert.Equal(Matings2, Matings("QS/1, Type-B cord 2 m, PAN/1", "PAN/1, ONE, K1/rear"));
    }

    [Fact]
    public void The_second_run_may_come_to_the_panel_from_the_other_side() =>
        Assert.Equal(
            "QS/1 = QS/1~PAN/1/near aligned\nK1/rear = ONE/near opposed\nQS/1~PAN/1/far = ONE/far aligned in PAN/1",
            Matings("QS/1, Type-B cord 2 m, PAN/1", "K1/rear, ONE, PAN/1"));

    [Theory]
    [InlineData("QS/1, Type-B cord 2 m, opposed, PAN/1, ONE")]
    [InlineData("QS/1, Type-B cord 2 m, PAN/1, opposed, ONE")]
    [InlineData("QS/1, Type-B cord 2 m, opposed, PAN/1, opposed, ONE")]
    public void A_word_on_either_side_of_a_panel_is_about_its_adapter(string run) =>
        Assert.Equal("QS/1 = QS/1~PAN/1/near aligned\nQS/1~PAN/1/far = ONE/near opposed in PAN/1", Matings(run));

    [Fact]
    public void A_plug_alone_in_a_panel_is_an_open_plug()
    {
        Plant plant = Reading.Plant(Parts + "  - SW-1/1, A-to-B cord 2 m, PD/7\n");

        OpenPlug open = Assert.Single(plant.OpenPlugs);
        Assert.Equal("SW-1/1~PD/7/far", plant.Address(open.Plug));
        Assert.Equal("PD/7", plant.Address(open.Adapter));
        Assert.Equal(new SourcePlace("p", 13, 30), open.Place); // the P of PD/7, counted
    }

    [Fact]
    public void A_simplex_cord_enters_position_A_or_B_of_a_duplex_port() =>
        Assert.Equal(
            "SW-1/1:A = SW-1/1:A~SW-2/1:B/near\nSW-1/1:A~SW-2/1:B/far = SW-2/1:B\nSW-1/1:B = SW-1/1:B~SW-2/1:A/near\nSW-1/1:B~SW-2/1:A/far = SW-2/1:A",
            Matings("SW-1/1:A, simplex cord 2 m, SW-2/1:B", "SW-1/1:B, simplex cord 2 m, SW-2/1:A"));

    [Fact]
    public void Two_simplex_cords_across_make_a_link_that_is_right() =>
        Assert.Equal("", Reading.Codes(Reading.Plant(
            """
            plant: P
            parts:
              SW-[1..2]: duplex interface
            runs:
              - SW-1/1:A, simplex cord 2 m, SW-2/1:B
              - SW-1/1:B, simplex cord 2 m, SW-2/1:A
            links:
              - SW-1 to SW-2
            """)));

    [Fact]
    public void A_part_with_one_port_needs_no_port_in_its_address() =>
        Assert.Equal(
            "X = Y",
            Reading.Matings("plant: P\nparts:\n  X: duplex interface\n  Y: duplex interface\nruns:\n  - X, Y\n").Replace("/1", "", StringComparison.Ordinal));

    [Fact]
    public void Parts_are_numbered_in_the_order_of_mention_and_unmentioned_ones_come_last()
    {
        const string Runs = "runs:\n  - C/1, A-to-B cord 1 m, A/1\n";
        Plant first = Reading.Plant("plant: P\nparts:\n  A: duplex interface\n  B: duplex interface\n  C: duplex interface\n" + Runs);
        Plant second = Reading.Plant(Runs + "parts:\n  C: duplex interface\n  B: duplex interface\n  A: duplex interface\nplant: P\n");

        Assert.Equal(["C", "C/1~A/1", "A", "B"], first.Parts.Select(p => p.Name));
        Assert.Equal(first.Parts.Select(p => p.Name), second.Parts.Select(p => p.Name));
    }

    [Fact]
    public void A_mating_knows_the_stop_that_makes_it()
    {
        // "  - SW-1/3, A-to-B cord 2 m, K1/5": the cord begins in column 13, K1 in column 30.
        Plant plant = Reading.Plant(Parts + "  - SW-1/3, A-to-B cord 2 m, K1/5\n");

        Assert.Equal([new SourcePlace("p", 13, 13), new SourcePlace("p", 13, 30)], plant.Matings.Select(m => m.Place));
    }
}
