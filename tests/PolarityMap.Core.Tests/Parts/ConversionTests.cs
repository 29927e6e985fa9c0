using PolarityMap.Core.Parts;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Parts;

/// <summary>Conversion modules and harnesses against the typed tables, and what holds for every one of them.</summary>
public sealed class ConversionTests
{
    public static TheoryData<string> Names => [.. Conversion.Names];

    public static TheoryData<string> Typed =>
        ["2x12 to 3x8", "16 to 2x8", "24 to 2x12", "24 to 3x8 in-row", "24 to 3x8 full"];

    /// <summary>The typed table of a conversion.</summary>
    internal static IReadOnlyList<ConversionRow> TableOf(string conversion) => conversion switch
    {
        "2x12 to 3x8" => ConversionTables.TwoTwelvesToThreeEights,
        "16 to 2x8" => ConversionTables.SixteenToTwoEights,
        "24 to 2x12" => ConversionTables.TwentyFourToTwoTwelves,
        "24 to 3x8 in-row" => ConversionTables.TwentyFourToThreeEightsReversedInRow,
        "24 to 3x8 full" => ConversionTables.TwentyFourToThreeEightsFullyReversed,
        _ => throw new ArgumentOutOfRangeException(nameof(conversion), conversion, "no typed table for this conversion"),
    };

    // Source: trade facts 6.3. Derived and proved, 24 to 2x12 common practice; no wiring table was found in a source.
    [Theory]
    [MemberData(nameof(Typed))]
    public void A_conversion_is_wired_fibre_by_fibre_as_typed(string conversion)
    {
        IReadOnlyList<ConversionRow> table = TableOf(conversion);
        int trunks = table.Max(r => r.Trunk);
        Shape module = Bench.ShapeOf("conversion module", v => v.Set("conversion", conversion));
        Shape harness = Bench.ShapeOf("conversion harness", v => v.Set("conversion", conversion));
        foreach (ConversionRow row in table)
        {
            Assert.Equal((Wide("rear", row.Trunk, trunks), $"{row.TrunkPosition}"), Wiring.Through(module, $"{row.Port}", $"{row.PortPosition}"));
            Assert.Equal((Wide("array", row.Trunk, trunks), $"{row.TrunkPosition}"), Wiring.Through(harness, $"leg{row.Port}", $"{row.PortPosition}"));
        }

        Assert.All((Shape[])[module, harness], s => Assert.Equal(2 * table.Count, s.Inside.Count(p => p >= 0)));
    }

    // Source: trade facts 6.3 has no table for 32; these are its readings of 24 and 16 carried on. In-row: the table of one row
    // for the top row, then for the bottom row. Full: port n, lane k joins position k to 4(n-1)+k and 13-k to its reversed
    // partner. Derived by analogy; the channels of ConversionChannelTests prove that they are conversions.
    [Fact]
    public void Conversions_of_32_carry_on_the_readings_of_16_and_24()
    {
        ConversionRow[] inRow =
        [
            .. ConversionTables.SixteenToTwoEights,
            .. ConversionTables.SixteenToTwoEights.Select(r => r with { Port = r.Port + 2, TrunkPosition = r.TrunkPosition + 16 }),
        ];
        ConversionRow[] full =
        [
            .. from port in Enumerable.Range(1, 4)
               from lane in Enumerable.Range(1, 4)
               let q = (4 * (port - 1)) + lane
               from end in new[] { (Position: lane, Wide: q), (Position: 13 - lane, Wide: 33 - q) }
               select new ConversionRow(port, end.Position, 1, end.Wide),
        ];
        foreach ((string name, ConversionRow[] rows) in new[] { ("32 to 4x8 in-row", inRow), ("32 to 4x8 full", full) })
        {
            Assert.Equal(32, rows.Select(r => r.TrunkPosition).Distinct().Count());
            Shape module = Bench.ShapeOf("conversion module", v => v.Set("conversion", name));
            Assert.All(rows, r => Assert.Equal(("rear", $"{r.TrunkPosition}"), Wiring.Through(module, $"{r.Port}", $"{r.PortPosition}")));
        }
    }

    // Source: interface facts 3, one 16-position plug to two 12-position plugs. Derived; the order of the groups is practice.
    [Fact]
    public void A_reversed_harness_from_sixteen_to_two_plugs_is_wired_as_typed()
    {
        Shape harness = Bench.ShapeOf("conversion harness", v => v.Set("conversion", "16 to 2x8").Set("type", "reversed"));
        Assert.Equal(["array", "leg1", "leg2"], harness.Ports.Select(p => p.Name));
        Assert.Equal([16, 12, 12], harness.Ports.Select(p => p.Face.Count));
        foreach (SplitRow row in ConversionTables.SixteenPlugToTwoTwelvePlugs)
            Assert.Equal(($"leg{row.Leg}", $"{row.TwelvePosition}"), Wiring.Through(harness, "array", $"{row.SixteenPosition}"));
    }

    // Source: trade facts 6.3: the modules are bijective; 8 fibres use 1-4 and 9-12 (4 sources).
    [Theory]
    [MemberData(nameof(Names))]
    public void Every_fibre_is_accounted_for_on_both_sides(string conversion)
    {
        foreach (string type in (string[])["straight", "reversed"])
        {
            foreach (string kind in (string[])["conversion module", "conversion harness"])
            {
                Shape shape = Bench.ShapeOf(kind, v => v.Set("conversion", conversion).Set("type", type));
                PortShape[] wide = [.. shape.Ports.Where(p => p.Name.StartsWith("rear", StringComparison.Ordinal) || p.Name.StartsWith("array", StringComparison.Ordinal))];
                PortShape[] narrow = [.. shape.Ports.Except(wide)];
                List<(string Port, string Position)> places = Wiring.Places(shape);
                Assert.Equal(shape.Ports.Sum(p => p.Face.Count), places.Count);
                List<(string Port, string Position)> dark = [.. places.Where((_, i) => shape.Inside[i] < 0)];

                // Wide ports are used up, spares aside; a narrow port of eight leaves the middle of its ferrule dark, one of twelve nothing.
                bool eights = conversion != "24 to 2x12";
                IEnumerable<(string, string)> spare = Spare(conversion).Select(s => (wide[s.Port - 1].Name, $"{s.Position}"));
                Assert.Equal(narrow.SelectMany(p => eights ? PartTables.DarkOfTwelve.Select(d => (p.Name, $"{d}")) : []).Concat(spare).Order(), dark.Order());
                Assert.Equal(wide.Sum(p => p.Face.Count) - Spare(conversion).Count, narrow.Sum(p => eights ? 8 : 12));
                Assert.Equal(places.Count, shape.Inside.Count(p => p >= 0) + dark.Count);
            }
        }
    }

    // The attribute's own words: reversed is each narrow port end for end.
    [Theory]
    [MemberData(nameof(Names))]
    public void Reversed_turns_each_narrow_port_end_for_end_and_leaves_it_in_its_place(string conversion)
    {
        foreach ((string kind, string prefix) in (ReadOnlySpan<(string, string)>)[("conversion module", ""), ("conversion harness", "leg")])
        {
            Shape straight = Bench.ShapeOf(kind, v => v.Set("conversion", conversion));
            Shape reversed = Bench.ShapeOf(kind, v => v.Set("conversion", conversion).Set("type", "reversed"));
            int ports = Conversion.ByName(conversion).Narrow.Count;
            for (int port = 1; port <= ports; port++)
            {
                for (int position = 1; position <= 12; position++)
                    Assert.Equal(Wiring.Through(straight, $"{prefix}{port}", $"{position}"), Wiring.Through(reversed, $"{prefix}{port}", $"{13 - position}"));
            }
        }
    }

    // Random lists; what a list says is what is built, in modules and harnesses, straight and reversed.
    [Theory]
    [MemberData(nameof(Names))]
    public void A_wiring_written_out_replaces_the_conversions_own(string conversion)
    {
        foreach (ulong seed in Lots.Seeds)
        {
            Conversion model = Conversion.ByName(conversion);
            IReadOnlyList<IReadOnlyList<WidePosition>> own = RandomWiring(model, new Lots(seed));
            foreach (bool reversed in (bool[])[false, true])
            {
                foreach ((string kind, string prefix, string wide) in (ReadOnlySpan<(string, string, string)>)[("conversion module", "", "rear"), ("conversion harness", "leg", "array")])
                {
                    Shape shape = Bench.ShapeOf(kind, v => v.Set("conversion", conversion).Set("wiring", own).Set("type", reversed ? "reversed" : "straight"));
                    for (int port = 0; port < own.Count; port++)
                    {
                        IReadOnlyList<int> used = model.Narrow[port] == 8 ? PartTables.EightOfTwelve : [.. Enumerable.Range(1, 12)];
                        for (int i = 0; i < own[port].Count; i++)
                        {
                            (string, string)? behind = own[port][i].Port == 0 ? null : (Wide(wide, own[port][i].Port, model.Wide.Count), $"{own[port][i].Position}");
                            Assert.Equal(behind, Wiring.Through(shape, $"{prefix}{port + 1}", $"{(reversed ? 13 - used[i] : used[i])}"));
                        }
                    }

                    Assert.Equal(2 * own.Sum(r => r.Count(w => w.Port > 0)), shape.Inside.Count(p => p >= 0));
                }
            }
        }
    }

    [Fact]
    public void A_list_that_does_not_fit_is_reported_and_builds_nothing()
    {
        WidePosition[] eight = [.. Enumerable.Range(1, 8).Select(p => new WidePosition(1, p))];
        WidePosition[] rest = [.. Enumerable.Range(9, 8).Select(p => new WidePosition(1, p))];
        AssertFault([eight], "the wiring has 1 narrow ports and 16 to 2x8 has 2");
        AssertFault([eight, eight[..7]], "narrow port 2 carries 8 fibres and its list has 7; write none where there is no fibre");
        AssertFault([eight, [.. rest[..7], new WidePosition(2, 1)]], "there is no wide port 2: 16 to 2x8 has 1");
        AssertFault([eight, [.. rest[..7], new WidePosition(1, 17)]], "wide port 1 has no fibre at position 17");
        AssertFault([eight, [.. rest[..7], new WidePosition(1, 8)]], "position 8 of wide port 1 is used twice");
    }

    /// <summary>
    /// Wide places that no narrow port takes: three twelves are four eights and four fibres over (trade facts 6.3). Lane pairs
    /// stay together, so they are the middle of one trunk; that it is the third is our choice.
    /// </summary>
    internal static IReadOnlyList<(int Port, int Position)> Spare(string conversion) =>
        conversion == "3x12 to 4x8" ? [(3, 5), (3, 6), (3, 7), (3, 8)] : [];

    /// <summary>The name of a wide port, numbered only where there are several.</summary>
    internal static string Wide(string word, int port, int of) => of == 1 ? word : $"{word}{port}";

    /// <summary>A drawn wiring of a conversion's size, with a few places left without a fibre.</summary>
    internal static IReadOnlyList<IReadOnlyList<WidePosition>> RandomWiring(Conversion conversion, Lots lots)
    {
        var all = new List<WidePosition>();
        for (int port = 0; port < conversion.Wide.Count; port++)
            all.AddRange(ArrayBase.Of(conversion.Wide[port]).Used.Select(p => new WidePosition(port + 1, p)));
        var drawn = new Queue<WidePosition>(lots.Shuffled(all));
        return [.. conversion.Narrow.Select(n => Enumerable.Range(0, n).Select(_ => lots.Next(6) == 0 ? default : drawn.Dequeue()).ToArray())];
    }

    private static void AssertFault(IReadOnlyList<IReadOnlyList<WidePosition>> wiring, string message)
    {
        foreach (string name in (string[])["conversion module", "conversion harness"])
        {
            PartKind kind = PartKinds.Find(name)!;
            var faults = new List<AttributeFault>();
            Assert.Null(kind.Build(new AttributeValues(kind.AllAttributes).Set("conversion", "16 to 2x8").Set("wiring", wiring), faults));
            Assert.Contains(faults, f => f.Attribute == "wiring" && f.Message == message);
        }
    }
}
