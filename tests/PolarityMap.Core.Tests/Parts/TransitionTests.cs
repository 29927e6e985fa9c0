using PolarityMap.Core.Parts;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Parts;

public sealed class TransitionTests
{
    public static TheoryData<string, int> Wirings => new()
    {
        { "straight", 12 }, { "straight-reversed", 12 }, { "U1", 12 }, { "U2", 12 },
        { "straight", 8 }, { "straight-reversed", 8 }, { "U1", 8 }, { "U2", 8 },
    };

    // Source: trade facts 2.5 and 6.1. Kinds 4 sources; pairs of U1 and U2 1 source and proved, which is A derived.
    [Theory]
    [MemberData(nameof(Wirings))]
    public void Cassettes_are_wired_as_the_typed_tables_say(string wiring, int fibres)
    {
        Shape shape = Bench.ShapeOf("cassette", v => v.Set("wiring", wiring).Set("base", fibres));
        Assert.Equal([.. Enumerable.Range(1, fibres / 2).Select(n => $"{n}"), "rear"], shape.Ports.Select(p => p.Name));
        AssertWiring(shape, PartTables.Transition(wiring, fibres), "", "rear");
    }

    // Source: as above.
    [Theory]
    [MemberData(nameof(Wirings))]
    public void Outlets_with_an_array_are_wired_like_cassettes(string wiring, int fibres) => AssertWiring(
        Bench.ShapeOf("outlet", v => v.Set("wiring", wiring).Set("base", fibres)),
        PartTables.Transition(wiring, fibres),
        "",
        "rear");

    // Source: as above.
    [Theory]
    [MemberData(nameof(Wirings))]
    public void Harnesses_are_wired_as_the_typed_tables_say(string wiring, int fibres)
    {
        Shape shape = Bench.ShapeOf("harness", v => v.Set("wiring", wiring).Set("base", fibres));
        AssertWiring(shape, PartTables.Transition(wiring, fibres), "leg", "array");
        Assert.Equal(Enumerable.Range(1, fibres / 2), shape.Ports.Where(p => p.Leg > 0).Select(p => p.Leg));
    }

    // Source: trade facts 4.2, derived and proved; each leg pairs one transmit with one receive: 2 sources.
    [Fact]
    public void The_harness_as_it_is_sold_is_wired_leg_by_leg_as_typed()
    {
        Shape shape = Bench.ShapeOf("harness");
        Assert.Equal(1 + PartTables.Harness.Count, shape.Ports.Count);
        foreach ((int leg, int a, int b) in PartTables.Harness)
        {
            Assert.Equal(("array", $"{a}"), Wiring.Through(shape, $"leg{leg}", "A"));
            Assert.Equal(("array", $"{b}"), Wiring.Through(shape, $"leg{leg}", "B"));
        }
    }

    // Source: trade facts 2.5, the wrongly inverted cassette of method B, proved; here as a list that a document writes out.
    [Fact]
    public void A_wiring_written_out_is_built_as_written()
    {
        DuplexPair[] list = [.. PartTables.WronglyInverted12.Select(w => new DuplexPair(w.A, w.B))];
        Shape shape = Bench.ShapeOf("cassette", v => v.Set("wiring", list));
        AssertWiring(shape, PartTables.WronglyInverted12, "", "rear");
    }

    [Fact]
    public void A_wiring_may_leave_fibres_unused()
    {
        DuplexPair[] list = [new(1, 12), new(4, 9)];
        Shape shape = Bench.ShapeOf("cassette", v => v.Set("wiring", list).Set("base", 8));
        Assert.Equal(["1", "2", "rear"], shape.Ports.Select(p => p.Name));
        Assert.Null(Wiring.Through(shape, "rear", "2"));
        Assert.Equal(("2", "A"), Wiring.Through(shape, "rear", "4"));
    }

    [Theory]
    [InlineData(12, 1, 2, 2, 3, "position 2 is used twice")]
    [InlineData(12, 4, 4, 1, 2, "position 4 is used twice")]
    [InlineData(12, 0, 1, 2, 3, "position 0 carries no fibre")]
    [InlineData(12, 1, 13, 2, 3, "position 13 carries no fibre")]
    [InlineData(8, 1, 5, 2, 3, "position 5 carries no fibre; a base-8 array uses 1, 2, 3, 4, 9, 10, 11, 12")]
    public void A_faulty_wiring_list_is_reported_and_builds_nothing(int fibres, int a1, int b1, int a2, int b2, string message)
    {
        foreach (string name in (string[])["cassette", "harness", "outlet"])
        {
            PartKind kind = PartKinds.Find(name)!;
            DuplexPair[] list = [new(a1, b1), new(a2, b2)];
            var faults = new List<AttributeFault>();
            Assert.Null(kind.Build(new AttributeValues(kind.AllAttributes).Set("wiring", list).Set("base", fibres), faults));
            AttributeFault fault = Assert.Single(faults);
            Assert.Equal("wiring", fault.Attribute);
            Assert.StartsWith(message, fault.Message);
        }
    }

    [Fact]
    public void Every_fault_of_a_wiring_list_is_reported_at_once()
    {
        PartKind cassette = PartKinds.Find("cassette")!;
        DuplexPair[] list = [new(1, 1), new(0, 99)];
        var faults = new List<AttributeFault>();
        Assert.Null(cassette.Build(new AttributeValues(cassette.AllAttributes).Set("wiring", list), faults));
        Assert.Equal(3, faults.Count);
    }

    [Theory]
    [InlineData("opposed", Keying.Opposed)]
    [InlineData("aligned", Keying.Aligned)]
    public void The_adapter_at_the_rear_gives_its_keys_to_the_mating(string word, Keying keys)
    {
        Shape shape = Bench.ShapeOf("cassette", v => v.Set("wiring", "U1").Set("keys", word));
        Assert.Equal(keys, shape.Ports[shape.FindPort("rear")].Keys);
        Assert.False(shape.Ports[shape.FindPort("rear")].KeysFixed);
        Shape panel = Bench.ShapeOf("array panel", v => v.Set("keys", word).Set("ports", 3));
        Assert.All(panel.Ports, p => Assert.Equal((keys, true), (p.Keys, p.IsAdapter)));
    }

    [Theory]
    [InlineData("wiring")]
    [InlineData("base")]
    [InlineData("keys")]
    public void An_outlet_with_duplex_plugs_refuses_what_belongs_to_an_array(string attribute)
    {
        PartKind outlet = PartKinds.Find("outlet")!;
        AttributeValues values = new AttributeValues(outlet.AllAttributes).Set("rear", "duplex");
        if (attribute == "base")
            values.Set(attribute, 8);
        else
            values.Set(attribute, attribute == "keys" ? "aligned" : "U1");
        var faults = new List<AttributeFault>();
        Assert.Null(outlet.Build(values, faults));
        Assert.Equal(attribute, Assert.Single(faults).Attribute);
    }

    [Fact]
    public void An_outlet_with_an_array_refuses_a_number_of_ports()
    {
        PartKind outlet = PartKinds.Find("outlet")!;
        var faults = new List<AttributeFault>();
        Assert.Null(outlet.Build(new AttributeValues(outlet.AllAttributes).Set("ports", 6), faults));
        Assert.Equal("ports", Assert.Single(faults).Attribute);
    }

    [Fact]
    public void Panels_and_duplex_outlets_hold_adapters_and_no_fibre()
    {
        foreach (Shape shape in (Shape[])
            [
                Bench.ShapeOf("duplex panel", v => v.Set("ports", 24)),
                Bench.ShapeOf("array panel", v => v.Set("ports", 24)),
                Bench.ShapeOf("outlet", v => v.Set("rear", "duplex").Set("ports", 24)),
            ])
        {
            Assert.Equal(24, shape.Ports.Count);
            Assert.All(shape.Ports, p => Assert.True(p.IsAdapter));
            Assert.Equal(0, shape.PositionCount);
        }
    }

    private static void AssertWiring(Shape shape, IReadOnlyList<PortWiring> table, string prefix, string array)
    {
        foreach (PortWiring row in table)
        {
            Assert.Equal((array, $"{row.A}"), Wiring.Through(shape, $"{prefix}{row.Port}", "A"));
            Assert.Equal((array, $"{row.B}"), Wiring.Through(shape, $"{prefix}{row.Port}", "B"));
        }

        Assert.Equal(4 * table.Count, shape.Inside.Count(p => p >= 0));
        Assert.Equal(1 + table.Count, shape.Ports.Count);
    }
}
