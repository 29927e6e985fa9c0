using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Documents.Tests.Binding;

/// <summary>Plugs that an as-built section puts where they sit. Matings were written by hand.</summary>
public class PluggedTests
{
    private const string Design =
        """
        plant: Designed
        parts:
          SW-[1..2]: { kind: duplex interface, ports: 4 }
          K[1..2]: U1 cassette
          T: { kind: Type-B trunk, legs: 2 }
          S: simplex cord
          P: { kind: duplex panel, ports: 3 }
          C[1..2]: A-to-B cord
          E[1..2]: A-to-B cord
        runs:
          - SW-1/1, A-to-B cord 2 m, SW-2/1
          - SW-1/2, A-to-B cord 2 m, SW-2/1
          - SW-1/3:A, S, SW-2/3:A
          - SW-1/4, C1, P/1
          - P/2, C2, SW-2/4
          - K1/rear, T/1

        """;

    private static string Matings(string plugged) => Reading.Matings(Design + "as-built:\n  plugged:\n" + plugged);

    [Fact]
    public void A_plug_that_found_its_port_taken_gets_room_in_a_free_one()
    {
        Plant plant = Reading.Plant(Design + "as-built:\n  plugged:\n    - SW-1/2~SW-2/1/far to SW-2/2\n");
        Assert.Single(Reading.Plant(Design).Clashes);
        Assert.Empty(plant.Clashes);
        Assert.Contains("SW-2/2 = SW-1/2~SW-2/1/far", Reading.Matings(plant), StringComparison.Ordinal);
    }

    [Fact]
    public void A_loose_plug_goes_into_the_free_port_of_a_cassette_with_its_keys() =>
        Assert.Contains("K2/rear = T/far1 opposed", Matings("    - T/far1 to K2/rear\n"), StringComparison.Ordinal);

    [Fact]
    public void A_simplex_plug_goes_into_the_other_place_of_its_port() =>
        Assert.Contains("SW-2/3:B", Matings("    - S/far to SW-2/3:B\n"), StringComparison.Ordinal);

    [Fact]
    public void Two_plugs_may_change_places_and_the_order_of_the_entries_does_not_matter()
    {
        string one = Matings("    - SW-1/1~SW-2/1/near to SW-1/4\n    - C1/near to SW-1/1\n");
        string other = Matings("    - C1/near to SW-1/1\n    - SW-1/1~SW-2/1/near to SW-1/4\n");
        Assert.Contains("SW-1/4 = SW-1/1~SW-2/1/near", one, StringComparison.Ordinal);
        Assert.Contains("SW-1/1 = C1/near", one, StringComparison.Ordinal);
        Assert.Equal(one.Split('\n').Order(StringComparer.Ordinal), other.Split('\n').Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_plug_joins_the_one_that_waits_in_an_adapter_and_leaves_its_own_behind()
    {
        Plant plant = Reading.Plant(Design + "as-built:\n  plugged:\n    - C1/far to P/2\n");
        Assert.Contains("C2/near = C1/far in P/2", Reading.Matings(plant), StringComparison.Ordinal);
        Assert.Empty(plant.OpenPlugs);

        // The other plug of a mating in an adapter stays in it.
        plant = Reading.Plant(Design + "  - E1, P/3, E2\nas-built:\n  plugged:\n    - E1/far to SW-2/2\n");
        Assert.Equal(["C1/far in P/1", "C2/near in P/2", "E2/near in P/3"], plant.OpenPlugs.Select(o => $"{plant.Address(o.Plug)} in {plant.Address(o.Adapter)}").Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_plug_that_is_alone_in_an_adapter_waits_there()
    {
        Plant plant = Reading.Plant(Design + "as-built:\n  plugged:\n    - C1/far to P/3\n");
        Assert.Contains(plant.OpenPlugs, o => plant.Address(o.Plug) == "C1/far" && plant.Address(o.Adapter) == "P/3");
        Assert.DoesNotContain(plant.OpenPlugs, o => plant.Address(o.Adapter) == "P/1");
    }

    [Theory]
    [InlineData("C1/near to SW-2/4", "p:19:7: SW-2/4 is taken already, at line 15; expected a free port, or an entry for the plug that is in it as well\n")]
    [InlineData("C1/near to SW-1/3", "p:19:7: SW-1/3 is taken already, at line 13; expected a free port, or an entry for the plug that is in it as well\n")]
    [InlineData("C1/near to K2/rear", "p:19:7: C1/near is a duplex plug and K2/rear a 12-position array port; expected a port that the plug goes into\n")]
    [InlineData("S/far to SW-2/2", "p:19:7: S/far is a simplex plug and SW-2/2 a duplex port; expected SW-2/2:A or SW-2/2:B\n")]
    [InlineData("SW-1/1 to SW-1/2", "p:19:7: 'SW-1/1' names no plug of a cable; expected nothing here\n")]
    [InlineData("C1/near to C2/near", "p:19:18: 'C2/near' names no port that a plug goes into; expected nothing here\n")]
    [InlineData("C1/near", "p:19:7: 'C1/near' does not name a plug and a port; expected a cable's plug and a port, such as 'CORD/far to K-1/4'\n")]
    [InlineData("C[1..2]/near to SW-1/2", "p:19:7: there are 2 plugs before 'to' and 1 ports after it; expected as many on both sides\n")]
    public void What_cannot_be_plugged_is_refused_with_its_place(string entry, string problem) =>
        Assert.Equal(problem, Reading.Problems(Design + $"as-built:\n  plugged:\n    - {entry}\n"));

    [Fact]
    public void A_plug_is_put_into_one_port_only() =>
        Assert.Equal("p:20:7: C1/near is put somewhere twice; expected each plug once\n", Reading.Problems(Design + "as-built:\n  plugged:\n    - C1/near to SW-2/2\n    - C1/near to SW-1/2\n"));
}
