using PolarityMap.Core.Parts;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Parts;

/// <summary>Cables, transitions and harnesses of sixteen fibres and of two rows against the typed tables.</summary>
public sealed class TypedWiringTests
{
    /// <summary>The product's name of a two-row transition by the words of the typed tables.</summary>
    internal static string TwoRowName(string words) => words switch
    {
        "straight" => "straight",
        "straight, rows exchanged" => "straight-rows-exchanged",
        "straight, ports reversed in each row" => "straight-reversed-in-row",
        "straight, all ports reversed" => "straight-fully-reversed",
        "universal in each row" => "U1-in-row",
        "universal over both rows" => "U1-across-rows",
        _ => throw new ArgumentOutOfRangeException(nameof(words), words, "no such two-row transition"),
    };

    // Source: trade facts 2.1, N-fibre form; that the letters are used for sixteen: from memory.
    [Theory]
    [InlineData("Type-A")]
    [InlineData("Type-B")]
    [InlineData("Type-C")]
    public void Cables_of_sixteen_join_what_is_typed(string type) => AssertCable(16, type, PartTables.SixteenFibreCable(type));

    // Source: trade facts 2.2, the five maps met in the trade; how well each is attested stands beside the tables.
    [Theory]
    [InlineData("straight-by-number")]
    [InlineData("rows-exchanged")]
    [InlineData("reversed-in-row")]
    [InlineData("fully-reversed")]
    [InlineData("pair-flipped")]
    public void Cables_of_two_rows_join_what_is_typed(string type) => AssertCable(24, type, PartTables.TwoRowCable(type));

    // Source: trade facts 2.2: two-row maps are offered by what they do, and never inferred from a letter.
    [Fact]
    public void A_letter_is_no_map_of_two_rows_and_a_two_row_map_none_of_one()
    {
        foreach (ArrayBase array in ArrayBase.All)
        {
            foreach (string type in ArrayMap.Names)
            {
                PartKind trunk = PartKinds.Find("trunk")!;
                var faults = new List<AttributeFault>();
                Shape? shape = trunk.Build(new AttributeValues(trunk.AllAttributes).Set("base", array.Fibres).Set("type", type), faults);
                bool letter = type.StartsWith("Type-", StringComparison.Ordinal);
                Assert.Equal(letter == array.Fibres is 8 or 12 or 16, shape is not null);
                Assert.Equal(shape is null ? ["type"] : [], faults.Select(f => f.Attribute));
            }
        }
    }

    // Source: trade facts 6.2. All pass with the five methods: proved; which fibre of a pair is A: derived (3.4).
    [Theory]
    [InlineData("straight")]
    [InlineData("straight-reversed")]
    [InlineData("U1")]
    [InlineData("U2")]
    public void Transitions_of_sixteen_are_wired_as_typed(string wiring) => AssertTransition(16, wiring, PartTables.SixteenFibreTransition(wiring));

    // Source: trade facts 5, the words of the table of two-row trunks; wiring derived from them and proved.
    [Theory]
    [InlineData("straight")]
    [InlineData("straight, rows exchanged")]
    [InlineData("straight, ports reversed in each row")]
    [InlineData("straight, all ports reversed")]
    public void Transitions_of_two_rows_are_wired_as_typed(string words) => AssertTransition(24, TwoRowName(words), PartTables.TwoRowTransition(words));

    // Source: trade facts 5, universal transitions: the pairs are proved; order and A or B are a convention.
    [Theory]
    [InlineData("universal in each row", "U2-in-row")]
    [InlineData("universal over both rows", "U2-across-rows")]
    public void Universal_transitions_of_two_rows_are_wired_as_typed_and_their_twins_with_a_and_b_exchanged(string words, string twin)
    {
        IReadOnlyList<PortWiring> typed = PartTables.TwoRowUniversal(words);
        AssertTransition(24, TwoRowName(words), typed);
        AssertTransition(24, twin, [.. typed.Select(p => new PortWiring(p.Port, p.B, p.A))]);
    }

    // Source: trade facts 2.5, 6.1 and 6.2: a transition uses every fibre once, two to a port.
    [Fact]
    public void Every_transition_of_every_size_uses_every_fibre_once()
    {
        foreach (ArrayBase array in ArrayBase.All)
        {
            foreach (string name in Transition.NamesFor(array.IsOneRow ? 1 : 2))
            {
                DuplexPair[] pairs = Transition.ByName(name).Pairs(array);
                Assert.Equal(array.Fibres / 2, pairs.Length);
                Assert.Equal(array.Used, pairs.SelectMany(p => new[] { p.A, p.B }).Order());
            }
        }
    }

    // Source: interface facts 3: array fibre N+1-k goes to plug A of leg k, which enters the far receiver, and fibre k comes
    // from plug B. Derived; each leg pairs one transmit with one receive: 2 sources; that leg k is lane k: common practice.
    [Theory]
    [InlineData(8)]
    [InlineData(16)]
    public void A_harness_as_it_is_sold_breaks_out_as_typed(int fibres)
    {
        Shape shape = Bench.ShapeOf("harness", v => v.Set("base", fibres));
        IReadOnlyList<BreakoutRow> typed = fibres == 8 ? ConversionTables.FourLanesOnTwelve : ConversionTables.EightLanesOnSixteen;
        Assert.Equal(["array", .. typed.Select(r => $"leg{r.Leg}")], shape.Ports.Select(p => p.Name));
        foreach (BreakoutRow row in typed)
        {
            Assert.Equal(("array", $"{row.DuplexA}"), Wiring.Through(shape, $"leg{row.Leg}", "A"));
            Assert.Equal(("array", $"{row.DuplexB}"), Wiring.Through(shape, $"leg{row.Leg}", "B"));
        }
    }

    private static void AssertCable(int fibres, string type, IReadOnlyList<(int Near, int Far)> typed)
    {
        Assert.Equal(fibres, typed.Count);
        foreach (string kind in (string[])["array cord", "trunk"])
        {
            Shape shape = Bench.ShapeOf(kind, v => v.Set("base", fibres).Set("type", type));
            Assert.All(typed, j => Assert.Equal(("far", $"{j.Far}"), Wiring.Through(shape, "near", $"{j.Near}")));
        }

        Shape legs = Bench.ShapeOf("trunk", v => v.Set("base", fibres).Set("type", type).Set("legs", 2));
        Assert.All(typed, j => Assert.Equal(("far2", $"{j.Far}"), Wiring.Through(legs, "near2", $"{j.Near}")));
    }

    private static void AssertTransition(int fibres, string wiring, IReadOnlyList<PortWiring> typed)
    {
        Assert.Equal(fibres / 2, typed.Count);
        foreach ((string kind, string prefix, string array) in (ReadOnlySpan<(string, string, string)>)[("cassette", "", "rear"), ("outlet", "", "rear"), ("harness", "leg", "array")])
        {
            Shape shape = Bench.ShapeOf(kind, v => v.Set("base", fibres).Set("wiring", wiring));
            Assert.Equal(1 + typed.Count, shape.Ports.Count);
            foreach (PortWiring row in typed)
            {
                Assert.Equal((array, $"{row.A}"), Wiring.Through(shape, $"{prefix}{row.Port}", "A"));
                Assert.Equal((array, $"{row.B}"), Wiring.Through(shape, $"{prefix}{row.Port}", "B"));
            }
        }
    }
}
