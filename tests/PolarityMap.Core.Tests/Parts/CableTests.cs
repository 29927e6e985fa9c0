using PolarityMap.Core.Parts;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Parts;

public sealed class CableTests
{
    public static TheoryData<string, int> Cables => new()
    {
        { "Type-A", 12 }, { "Type-B", 12 }, { "Type-C", 12 }, { "Type-A", 8 }, { "Type-B", 8 }, { "Type-C", 8 },
    };

    // Source: trade facts 2.1, TIA-568, more than 8 sources; eight fibres proved, their positions 4 sources.
    [Theory]
    [MemberData(nameof(Cables))]
    public void Array_cords_join_their_ends_as_the_typed_tables_say(string type, int fibres)
    {
        Shape shape = Bench.ShapeOf("array cord", v => v.Set("type", type).Set("base", fibres));
        Assert.Equal(2, shape.Ports.Count);
        AssertLeg(shape, "near", "far", type, fibres);
    }

    // Source: as above for the maps; 1 to 24 legs are the product's own limits (common practice).
    [Theory]
    [MemberData(nameof(Cables))]
    public void Trunks_of_1_to_24_legs_join_each_leg_as_the_typed_tables_say(string type, int fibres)
    {
        for (int legs = 1; legs <= 24; legs++)
        {
            Shape shape = Bench.ShapeOf("trunk", v => v.Set("type", type).Set("base", fibres).Set("legs", legs));
            Assert.Equal(2 * legs, shape.Ports.Count);
            Assert.Equal(legs * fibres * 2, shape.Inside.Count(p => p >= 0));
            for (int leg = 1; leg <= legs; leg++)
            {
                string suffix = legs == 1 ? "" : $"{leg}";
                AssertLeg(shape, "near" + suffix, "far" + suffix, type, fibres);
                Assert.Equal(legs == 1 ? 0 : leg, shape.Ports[shape.FindPort("near" + suffix)].Leg);
            }
        }
    }

    // Source: arithmetic, common practice.
    [Fact]
    public void Eight_legs_of_eight_make_64_fibres()
    {
        Shape shape = Bench.ShapeOf("trunk", v => v.Set("type", "Type-B").Set("base", TradeFacts.FibresOfLeg).Set("legs", TradeFacts.LegsOfTrunk));
        Assert.Equal(TradeFacts.FibresOfEightLegsOfEight, shape.Inside.Count(p => p >= 0) / 2);
    }

    // Source: trade facts 2.1: eight fibres sit at 1-4 and 9-12. 4 sources.
    [Fact]
    public void The_middle_four_of_an_eight_fibre_cable_carry_nothing()
    {
        Shape shape = Bench.ShapeOf("array cord", v => v.Set("type", "Type-B").Set("base", 8));
        Assert.All(PartTables.DarkOfTwelve, p => Assert.Null(Wiring.Through(shape, "near", $"{p}")));
        Assert.Equal(PartTables.EightOfTwelve, ArrayBase.Of(8).Used);
    }

    // Source: trade facts 2.4, TIA-568 and ISO/IEC 11801, 6 sources; A-to-A 2 sources.
    [Fact]
    public void Duplex_cords_join_their_ends_as_the_typed_table_says()
    {
        foreach (CordRow cord in (CordRow[])[PartTables.CordAToB, PartTables.CordAToA])
        {
            Shape shape = Bench.ShapeOf("duplex cord", v => v.Set("type", cord.Cord));
            Assert.Equal(("far", $"{cord.NearAReaches}"), Wiring.Through(shape, "near", "A"));
            Assert.Equal(("far", $"{cord.NearBReaches}"), Wiring.Through(shape, "near", "B"));
        }
    }

    [Fact]
    public void A_simplex_cord_joins_its_one_fibre()
    {
        Shape shape = Bench.ShapeOf("simplex cord");
        Assert.Equal(("far", ""), Wiring.Through(shape, "near", ""));
        Assert.Equal(2, shape.PositionCount);
    }

    [Theory]
    [InlineData(2, new[] { 3 }, "no leg 3")]
    [InlineData(1, new[] { 1, 2 }, "no leg 2")]
    public void A_spare_leg_that_the_trunk_does_not_have_is_reported(int legs, int[] spare, string message)
    {
        PartKind trunk = PartKinds.Find("trunk")!;
        var faults = new List<AttributeFault>();
        Assert.Null(trunk.Build(new AttributeValues(trunk.AllAttributes).Set("type", "Type-B").Set("legs", legs).Set("spare", spare), faults));
        AttributeFault fault = Assert.Single(faults);
        Assert.Equal("spare", fault.Attribute);
        Assert.Contains(message, fault.Message);
    }

    private static void AssertLeg(Shape shape, string near, string far, string type, int fibres)
    {
        IReadOnlyList<(int Near, int Far)> map = PartTables.Cable(type, fibres);
        Assert.Equal(fibres, map.Count);
        foreach ((int from, int to) in map)
            Assert.Equal((far, $"{to}"), Wiring.Through(shape, near, $"{from}"));
    }
}
