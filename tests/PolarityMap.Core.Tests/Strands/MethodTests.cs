using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Strands;

/// <summary>The five duplex methods end to end, as the product traces them.</summary>
public sealed class MethodTests
{
    public static TheoryData<string> Methods => [.. MethodTables.Ingredients.Select(i => i.Method)];

    // Source: trade facts 3.1, the method's twelve rows (sources beside the typed tables; end-to-end rows proved), with the
    // cords of 2.4 and the duplex mating of section 1, rule 3.
    [Theory]
    [MemberData(nameof(Methods))]
    public void Every_strand_of_a_method_passes_the_positions_of_its_printed_row(string method)
    {
        MethodIngredients parts = MethodTables.IngredientsOf(method);
        TracedPlant traced = Channels.Method(method).Trace();
        IReadOnlyList<MethodRow> rows = MethodTables.Rows(method);
        Assert.Equal(12, rows.Count);
        foreach (MethodRow row in rows)
        {
            char start = row.LeftTransmits ? 'A' : 'B';
            char end = row.LeftTransmits ? 'B' : 'A';
            char leftPlug = Through(PartTables.DuplexMating, start);
            char rightPlug = Through(PartTables.DuplexMating, row.RightPos);
            Assert.Equal(
                [
                    $"L/{row.LeftPort}:{start}",
                    $"C1-{row.LeftPort}/near:{leftPlug}",
                    $"C1-{row.LeftPort}/far:{Through(CordOf(parts.LeftCord), leftPlug)}",
                    $"KL1/{row.LeftPort}:{row.LeftPos}",
                    $"KL1/rear:{row.LeftArray}",
                    $"T1/near:{row.TrunkNear}",
                    $"T1/far:{row.TrunkFar}",
                    $"KR1/rear:{row.RightArray}",
                    $"KR1/{row.RightPort}:{row.RightPos}",
                    $"C2-{row.RightPort}/near:{rightPlug}",
                    $"C2-{row.RightPort}/far:{Through(CordOf(parts.RightCord), rightPlug)}",
                    $"R/{row.RightPort}:{end}",
                ],
                traced.WalkFrom($"L/{row.LeftPort}:{start}"));
        }
    }

    // Source: trade facts 3 and 6.1: all five methods pass with twelve fibres and with eight. Proved.
    [Theory]
    [MemberData(nameof(Methods))]
    public void Every_method_joins_port_to_port_and_transmit_to_receive_in_both_directions(string method)
    {
        foreach (int fibres in (int[])[12, 8])
        {
            TracedPlant traced = Channels.Method(method, fibres).Trace();
            for (int port = 1; port <= fibres / 2; port++)
            {
                Assert.Equal($"R/{port}:B", traced.Meets($"L/{port}:A"));
                Assert.Equal($"R/{port}:A", traced.Meets($"L/{port}:B"));
                Assert.Equal($"L/{port}:B", traced.Meets($"R/{port}:A"));
                Assert.Equal($"L/{port}:A", traced.Meets($"R/{port}:B"));
            }

            Assert.Equal("", Channels.Method(method, fibres).Codes());
        }
    }

    // Source: trade facts 3: in method A the A-to-A cord may be at either end. Proved; 2 sources.
    [Fact]
    public void Method_a_works_with_its_a_to_a_cord_at_either_end_and_not_at_both()
    {
        LinkParts link = LinkParts.Of(MethodTables.IngredientsOf("A"));
        Assert.Equal("", Channels.Duplex(link, "A-to-A", "A-to-B").Codes());
        Assert.Equal("", Channels.Duplex(link, "A-to-B", "A-to-A").Codes());
        Assert.Equal("P01 P01 P01 P01 P01 P01", Channels.Duplex(link, "A-to-A", "A-to-A").Codes());
    }

    // Source: trade facts 3.4: a U1 end and a U2 end work together over one trunk. Derived.
    [Fact]
    public void A_u1_end_and_a_u2_end_work_together() => Assert.Equal(
        "",
        Channels.Duplex(new LinkParts("U1", "Type-A", "Type-B", "Type-B", "U2"), "A-to-B", "A-to-B").Codes());

    private static CordRow CordOf(string cord) => cord == "A-to-B" ? PartTables.CordAToB : PartTables.CordAToA;

    private static char Through(CordRow cord, char position) => position == 'A' ? cord.NearAReaches : cord.NearBReaches;
}
