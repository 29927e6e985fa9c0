using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Strands;

/// <summary>Single-fibre interfaces against each other, all of them with all of them.</summary>
public sealed class SingleFibreChannelTests
{
    public static TheoryData<string> Interfaces => [.. InterfaceTables.SingleFibrePairs.Select(r => r.Interface)];

    // Source: interface facts 2.1: a legal pair is U with D of the same family and reach; U-U or D-D has light at the wrong
    // wavelength. 2 sources for the gigabit wavelengths, 3 for the ten-gigabit pair.
    [Theory]
    [MemberData(nameof(Interfaces))]
    public void An_interface_meets_its_counterpart_and_its_like_hears_nothing(string name)
    {
        SingleFibreRow row = InterfaceTables.SingleFibrePairs.Single(r => r.Interface == name);
        foreach (bool backwards in (bool[])[false, true])
        {
            Assert.Equal("", Pair(name, row.Counterpart, backwards).LightCodes());
            Assert.Equal("P06", Pair(name, name, backwards).LightCodes());
        }
    }

    // Source: as above; every other pair of the typed eight is refused, for its wavelengths or for its family and reach.
    [Theory]
    [MemberData(nameof(Interfaces))]
    public void No_other_interface_than_the_counterpart_will_do(string name)
    {
        SingleFibreRow here = InterfaceTables.SingleFibrePairs.Single(r => r.Interface == name);
        foreach (SingleFibreRow there in InterfaceTables.SingleFibrePairs)
        {
            string codes = Pair(name, there.Interface, backwards: false).LightCodes();
            Assert.Equal(there.Interface == here.Counterpart, codes.Length == 0);
        }
    }

    // Source: trade facts 1: the fibre is one; panel or not, it goes straight through.
    [Fact]
    public void A_pair_meets_through_two_cords_and_a_duplex_panel_position_by_position()
    {
        Bench bench = new Bench()
            .Add("L", "single-fibre interface", v => v.Set("application", "1000BASE-BX10-U"))
            .Add("R", "single-fibre interface", v => v.Set("application", "1000BASE-BX10-D"))
            .Add("KL", "cassette", v => v.Set("wiring", "straight"))
            .Add("KR", "cassette", v => v.Set("wiring", "straight"))
            .Add("T", "trunk", v => v.Set("type", "Type-A"))
            .Mate("KL/rear", "T/near")
            .Mate("T/far", "KR/rear")
            .Cord("C1", "L/1", "simplex", "KL/3:A")
            .Cord("C2", "KR/3:A", "simplex", "R/1")
            .Link("L/1", "R/1");
        TracedPlant traced = bench.Trace();
        Assert.Equal("R/1", traced.Meets("L/1"));
        Assert.Equal("", traced.LightCodes());
    }

    private static TracedPlant Pair(string left, string right, bool backwards) => new Runs()
        .Part("L", "single-fibre interface", v => v.Set("application", left))
        .Part("R", "single-fibre interface", v => v.Set("application", right))
        .Part("X", "simplex cord")
        .Run("L/1", "X", "R/1")
        .Link("L/1", "R/1")
        .Write(backwards)
        .Trace();
}
