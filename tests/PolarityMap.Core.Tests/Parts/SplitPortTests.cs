using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Parts;

/// <summary>Parallel ports that are split into links: which modes are offered, and which lanes each link has.</summary>
public sealed class SplitPortTests
{
    // Source: interface facts 3, the rows of breakouts: what becomes what, by how many links of how many lanes.
    private static readonly (string From, string Mode, string To, int Lanes)[] Typed =
    [
        ("40GBASE-SR4", "4x", "10GBASE-SR", 1),
        ("100GBASE-SR4", "4x", "25GBASE-SR", 1),
        ("200GBASE-SR4", "4x", "50GBASE-SR", 1),
        ("400GBASE-SR4", "4x", "100GBASE-SR1", 1),
        ("400GBASE-DR4", "4x", "100GBASE-DR", 1),
        ("400GBASE-SR8", "8x", "50GBASE-SR", 1),
        ("800GBASE-DR8", "8x", "100GBASE-DR", 1),
        ("800GBASE-SR8", "8x", "100GBASE-SR1", 1),
        ("800GBASE-DR8", "2x", "400GBASE-DR4", 4),
        ("400GBASE-SR8", "2x", "200GBASE-SR4", 4),
    ];

    // Source: as the typed rows. 800GBASE-SR8 to two 400GBASE-SR4 is not printed as a row of 3; that two ports of twelve are
    // such links is (2.2, 3 sources for both styles of port; 3: each receptacle is a DR4 or SR4 port, 2 sources).
    [Fact]
    public void Every_breakout_of_the_sheet_is_offered_and_those_that_two_ports_are_by_their_build()
    {
        foreach ((string from, string mode, string to, int lanes) in Typed)
        {
            Breakout found = Breakouts.Find(from, mode)!;
            Assert.Equal((to, lanes), (found.To, found.LanesPerGroup));
        }

        // Interface facts 2.2: an eight-lane port may be built as two ports of twelve, each like the four-lane one (2 sources).
        Assert.Equal(
            [("800GBASE-SR8", "2x", "400GBASE-SR4", 4), ("800GBASE-DR8-2", "2x", "400GBASE-DR4-2", 4), ("800GBASE-VR8", "2x", "400GBASE-VR4", 4)],
            Breakouts.All.Where(b => !Typed.Any(t => (t.From, t.Mode) == (b.From, b.Name))).Select(b => (b.From, b.Name, b.To, b.LanesPerGroup)));
    }

    // Source: interface facts 3: lane k is port Tx k and Rx N+1-k; lanes 1-4 form the first of two links, 5-8 the second
    // (common practice). Positions typed in ConversionTables.
    [Fact]
    public void The_links_of_a_split_port_have_their_lanes_at_the_typed_positions()
    {
        foreach (Breakout breakout in Breakouts.All)
        {
            Shape shape = Bench.ShapeOf("parallel interface", v => v.Set("application", breakout.From).Set("breakout", breakout.Name).Set("ports", 2));
            int links = breakout.Name switch { "2x" => 2, "4x" => 4, _ => 8 };
            IReadOnlyList<BreakoutRow> legs = shape.Ports[0].Face.Count == 12 ? ConversionTables.FourLanesOnTwelve : ConversionTables.EightLanesOnSixteen;
            Assert.All(shape.Ports, p => Assert.Equal(links, p.Groups));
            for (int link = 1; link <= links; link++)
            {
                BreakoutRow[] own = [.. legs.Skip((link - 1) * legs.Count / links).Take(legs.Count / links)];
                for (int port = 0; port < 2; port++)
                {
                    Lane[] lanes = [.. shape.Lanes.Where(l => l.Port == port && l.Group == link)];
                    Assert.Equal(own.Select(l => l.PortTx), lanes.Where(l => l.Direction == LaneDirection.Transmit).OrderBy(l => l.Number).Select(l => l.Position));
                    Assert.Equal(own.Select(l => l.PortRx), lanes.Where(l => l.Direction == LaneDirection.Receive).OrderBy(l => l.Number).Select(l => l.Position));
                    Assert.Equal(2 * own.Length, lanes.Length);
                }
            }
        }
    }

    // Source: interface facts 3: no preset for 100GBASE-SR10, whose pairing no source settles; none where wavelengths share a
    // fibre. The modes that the sheet does not list have no source either.
    [Fact]
    public void A_mode_that_has_no_source_is_refused()
    {
        foreach (Application application in Application.All.Where(a => a.IsParallel))
        {
            foreach (string mode in (string[])["2x", "4x", "8x", "10x", "16x"])
            {
                List<AttributeFault> faults = FaultsOf(v => v.Set("application", application.Name).Set("breakout", mode));
                Assert.Equal(Breakouts.Find(application.Name, mode) is null, faults.Any(f => f.Attribute == "breakout"));
            }
        }

        Assert.Contains("no breakout of it has a source", Assert.Single(FaultsOf(v => v.Set("application", "100GBASE-SR10").Set("breakout", "10x"))).Message);
    }

    // Source: interface facts 3: for ten lanes the user's own list. Both candidates that the sheet names are taken as written.
    [Fact]
    public void Ten_lanes_written_out_split_into_ten_links_as_written()
    {
        foreach (bool mirrored in (bool[])[false, true])
        {
            DuplexPair[] lanes = [.. Enumerable.Range(1, 10).Select(k => new DuplexPair(13 + k, mirrored ? 12 - k : 1 + k))];
            Shape shape = Bench.ShapeOf("parallel interface", v => v.Set("application", "100GBASE-SR10").Set("lanes", lanes).Set("breakout", "10x"));
            Assert.Equal(10, shape.Ports[0].Groups);
            for (int k = 1; k <= 10; k++)
            {
                Assert.Equal(
                    [(lanes[k - 1].A, LaneDirection.Transmit), (lanes[k - 1].B, LaneDirection.Receive)],
                    shape.Lanes.Where(l => l.Group == k).Select(l => (l.Position, l.Direction)));
            }
        }

        DuplexPair[] nine = [.. Enumerable.Range(1, 9).Select(k => new DuplexPair(13 + k, 1 + k))];
        Assert.Equal("9 lanes do not make 10 links", Assert.Single(FaultsOf(v => v.Set("application", "100GBASE-SR10").Set("lanes", nine).Set("breakout", "10x"))).Message);
    }

    // Source: interface facts 3: a port made of two receptacles needs no harness, each is a port of its own. 2 sources.
    [Fact]
    public void A_port_of_two_receptacles_is_split_by_its_build_and_takes_no_mode()
    {
        foreach (string name in (string[])["800GBASE-DR8", "800GBASE-SR8"])
        {
            AttributeFault fault = Assert.Single(FaultsOf(v => v.Set("application", name).Set("layout", "two ports").Set("breakout", "2x")));
            Assert.Equal("breakout", fault.Attribute);
        }
    }

    private static List<AttributeFault> FaultsOf(Action<AttributeValues> set)
    {
        PartKind kind = PartKinds.Find("parallel interface")!;
        var values = new AttributeValues(kind.AllAttributes);
        set(values);
        var faults = new List<AttributeFault>();
        Shape? shape = kind.Build(values, faults);
        Assert.Equal(faults.Count > 0, shape is null);
        return faults;
    }
}
