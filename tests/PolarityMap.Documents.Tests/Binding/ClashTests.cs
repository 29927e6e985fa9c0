using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Documents.Tests.Binding;

/// <summary>
/// What hands on site may try although it does not go: two plugs for one port, faces that do not meet. The plant keeps it for
/// the checker. Places were counted in the text.
/// </summary>
public class ClashTests
{
    // Runs begin in line 11, their first stop in column 5.
    private const string Parts =
        """
        plant: P
        parts:
          SW-[1..2]: { kind: duplex interface, ports: 4 }
          QS: { kind: parallel interface, ports: 2 }
          K: U1 cassette
          K24: { kind: cassette, wiring: straight, base: 24 }
          T: Type-B trunk
          PAN: { kind: array panel, ports: 2, keys: aligned }
          PD: duplex panel
        runs:

        """;

    private static Plant Read(params string[] runs) => Reading.Plant(Parts + string.Concat(runs.Select(r => $"  - {r}\n")));

    private static string Show(Plant plant, PortClash clash)
    {
        string port = clash.Position == 0 ? plant.Address(clash.Port) : plant.Address(clash.Port, clash.Position);
        string refused = clash.Refused is { } other ? plant.Address(other) : "nothing";
        return $"{port} refuses {refused}, {clash.First.Line}:{clash.First.Column} then {clash.Place.Line}:{clash.Place.Column}";
    }

    private static void Clashes(string expected, params string[] runs)
    {
        Plant plant = Read(runs);
        Assert.Equal(expected, string.Join('\n', plant.Clashes.Select(c => Show(plant, c))));
    }

    [Fact]
    public void A_plant_without_clashes_has_none() => Clashes("", "SW-1/1, A-to-B cord 2 m, SW-2/1", "SW-1/2, A-to-B cord 2 m, SW-2/2");

    [Fact]
    public void A_port_that_a_second_plug_comes_to_keeps_the_first() =>
        Clashes(
            "SW-2/1 refuses SW-1/2~SW-2/1/far, 11:30 then 12:30",
            "SW-1/1, A-to-B cord 2 m, SW-2/1",
            "SW-1/2, A-to-B cord 2 m, SW-2/1");

    [Fact]
    public void The_first_mating_stands_and_the_second_is_not_made()
    {
        Plant plant = Read("SW-1/1, A-to-B cord 2 m, SW-2/1", "SW-1/2, A-to-B cord 2 m, SW-2/1");

        Assert.Equal(
            "SW-1/1 = SW-1/1~SW-2/1/near\nSW-1/1~SW-2/1/far = SW-2/1\nSW-1/2 = SW-1/2~SW-2/1/near",
            Reading.Matings(plant));
    }

    [Fact]
    public void A_port_that_a_second_run_starts_from_is_told_at_the_start() =>
        Clashes(
            "SW-1/1 refuses SW-1/1~SW-2/2/near, 11:5 then 12:5",
            "SW-1/1, A-to-B cord 2 m, SW-2/1",
            "SW-1/1, A-to-B cord 2 m, SW-2/2");

    [Fact]
    public void A_cord_that_two_runs_name_is_taken_at_both_ends() =>
        Clashes(
            "T/near refuses QS/1, 11:13 then 12:11\nT/far refuses QS/2, 11:13 then 12:11",
            "K/rear, T, K24/rear",
            "QS/1, T, QS/2");

    [Fact]
    public void A_port_in_two_ranges_clashes_where_they_meet() =>
        Clashes(
            "K/2 refuses SW-2/1~K/2/far, 11:33 then 12:30",
            "SW-1/1..2, A-to-B cord 2 m, K/1..2",
            "SW-2/1, A-to-B cord 2 m, K/2");

    [Theory]
    [InlineData("SW-1/2:A, simplex cord 2 m, SW-2/1:B", "SW-2/1:B refuses SW-1/2:A~SW-2/1:B/far, 11:33 then 12:33")]
    [InlineData("SW-1/2, A-to-B cord 2 m, SW-2/1", "SW-2/1:B refuses SW-1/2~SW-2/1/far, 11:33 then 12:30")]
    public void A_position_is_taken_for_simplex_and_for_duplex(string second, string clash) =>
        Clashes(clash, "SW-1/1:A, simplex cord 2 m, SW-2/1:B", second);

    [Fact]
    public void A_whole_port_is_taken_for_simplex_as_well() =>
        Clashes("SW-2/1:A refuses SW-1/2:A~SW-2/1:A/far, 11:30 then 12:33", "SW-1/1, A-to-B cord 2 m, SW-2/1", "SW-1/2:A, simplex cord 2 m, SW-2/1:A");

    [Fact]
    public void An_adapter_takes_two_plugs_and_no_third()
    {
        string[] runs = ["QS/1, Type-B cord 2 m, PAN/1", "PAN/1, Type-B cord 2 m, QS/2", "K/rear, Type-B cord 2 m, PAN/1"];

        Clashes("PAN/1 refuses K/rear~PAN/1/far, 11:28 then 13:30", runs);
        Assert.Single(Read(runs).Matings, m => m.Through is not null);
        Assert.Empty(Read(runs).OpenPlugs);
    }

    [Theory]
    [InlineData("SW-1/1, Type-B cord 2 m, QS/1", "SW-1/1 = SW-1/1~QS/1/near")]
    [InlineData("K24/rear, Type-B cord 2 m, K/rear", "K24/rear = K24/rear~K/rear/near opposed")]
    [InlineData("SW-1/1, A-to-B cord 2 m, PAN/1, Type-B cord 2 m, QS/1", "SW-1/1~PAN/1/far = PAN/1~QS/1/near in PAN/1")]
    [InlineData("QS/1, Type-B cord 2 m, PD/1, Type-B cord 2 m, QS/2", "QS/1~PD/1/far = PD/1~QS/2/near aligned in PD/1")]
    public void Faces_that_do_not_meet_are_mated_and_do_not_fit(string run, string mating)
    {
        Plant plant = Read(run);

        Assert.Equal([mating], plant.Matings.Where(m => !plant.Fits(m)).Select(m => Reading.Show(plant, m)));
        Assert.Empty(plant.Clashes);
    }

    [Fact]
    public void Plugs_of_one_row_and_of_two_share_an_adapter_and_their_fibres_do_not_meet()
    {
        Plant plant = Reading.Plant(
            Parts.Replace("  PD: duplex panel\n", "  PD: duplex panel\n  T24: { kind: trunk, type: fully-reversed, base: 24 }\n", StringComparison.Ordinal) + "  - T/far, PAN/1, T24\n");

        Assert.Equal(["T/far = T24/near aligned in PAN/1"], plant.Matings.Where(m => !plant.Fits(m)).Select(m => Reading.Show(plant, m)));
    }
}
