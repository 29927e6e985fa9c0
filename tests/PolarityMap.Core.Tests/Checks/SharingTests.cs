using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using Xunit;
using static PolarityMap.Core.Tests.Checks.TwoNetworks;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>S02 to S05. What is shared can be read off each bench; what may be shared is the policy written into it.</summary>
public sealed class SharingTests
{
    private static readonly SharedPlace[] All = [SharedPlace.Sheath, SharedPlace.Cassette, SharedPlace.Array, SharedPlace.Panel];

    // One trunk, two cassettes and the two matings of their arrays are shared; a policy that lacks a place forbids it there.
    [Theory]
    [InlineData(SharedPlace.Sheath, "S02")]
    [InlineData(SharedPlace.Cassette, "S03 S03")]
    [InlineData(SharedPlace.Array, "S04 S04")]
    [InlineData(SharedPlace.Panel, "")]
    public void A_place_that_a_policy_lacks_is_a_finding_for_each_thing_shared(SharedPlace lacking, string codes)
    {
        Assert.Equal(codes, WithPolicies(Without(lacking), null).SharedChannel().Codes());
        Assert.Equal(codes, WithPolicies(null, Without(lacking)).SharedChannel().Codes());
        Assert.Equal(codes, WithPolicies(Without(lacking), Without(lacking)).SharedChannel().Codes());
        Assert.Equal(codes, WithPolicies(Without(lacking), All).SharedChannel().Codes());
    }

    [Fact]
    public void A_network_that_may_share_nothing_forbids_everything() =>
        Assert.Equal("S02 S03 S03 S04 S04", WithPolicies([], null).SharedChannel().Codes());

    [Fact]
    public void Without_policies_nothing_is_judged_and_what_is_shared_is_known_all_the_same()
    {
        Bench bench = Plain().SharedChannel();
        Assert.Equal("", bench.Codes());
        Assert.Equal(
            ["Sheath T", "Cassette KL", "Cassette KR", "Array KL/rear T/near", "Array T/far KR/rear"],
            Shared(bench, SharingVerdict.NotStated));
    }

    [Fact]
    public void What_every_network_allows_is_allowed_and_what_one_leaves_open_is_not_stated()
    {
        Assert.Equal(5, Shared(WithPolicies(All, All).SharedChannel(), SharingVerdict.Allowed).Length);
        Assert.Equal(5, Shared(WithPolicies(All, null).SharedChannel(), SharingVerdict.NotStated).Length);
        Assert.Equal("", WithPolicies(All, All).SharedChannel().Codes());
    }

    [Fact]
    public void The_policy_of_a_network_that_is_not_there_forbids_nothing()
    {
        Bench bench = WithPolicies(null, null);
        bench.Network("office", mayShare: []);
        Assert.Equal("", bench.SharedChannel().Codes());
    }

    [Fact]
    public void The_finding_names_what_is_shared_by_whom_and_whose_policy_forbids_it()
    {
        Finding finding = Assert.Single(WithPolicies(All, Without(SharedPlace.Sheath)).SharedChannel().Check());
        Assert.Equal("lighting and sound share the sheath of T; the policy of sound forbids it", finding.Message);
        Assert.Equal("sound in a sheath of its own", finding.Expected);

        // The pair of each network.
        Assert.Equal(4, finding.Strands.Count);
    }

    [Fact]
    public void Every_place_is_counted_shared_or_not()
    {
        Sharing sharing = new CheckContext(Plain().SharedChannel().Add("PANEL", "duplex panel").Trace()).Separation.Sharing;

        // Four cords of the channel, two idle ones, and the trunk; two matings of arrays; one panel that nothing sits in.
        Assert.Equal([7, 2, 2, 1], All.Select(sharing.Total));
        Assert.Equal([1, 2, 2, 0], All.Select(sharing.Shared));
    }

    [Fact]
    public void Alike_parts_of_one_line_are_one_finding_and_so_are_the_matings_of_one_stop()
    {
        Bench bench = WithPolicies([SharedPlace.Panel], null);
        bench.AtOneStop(b => Each(n => b.Add($"KL{n}", "cassette", v => v.Set("wiring", "U1").Set("base", 8))));
        bench.AtOneStop(b => Each(n => b.Add($"T{n}", "trunk", v => v.Set("type", "Type-B").Set("base", 8))));
        bench.AtOneStop(b => Each(n => b.Add($"KR{n}", "cassette", v => v.Set("wiring", "U1").Set("base", 8))));
        bench.AtOneStop(b => Each(n => b.Mate($"KL{n}/rear", $"T{n}/near")));
        bench.AtOneStop(b => Each(n => b.Mate($"T{n}/far", $"KR{n}/rear")));
        Each(n => bench
            .CordOf($"CL{n}", -1, $"LX1/{n}", $"KL{n}/1").CordOf($"DL{n}", -1, $"KR{n}/1", $"LX2/{n}")
            .CordOf($"CS{n}", -1, $"SD1/{n}", $"KL{n}/2").CordOf($"DS{n}", -1, $"KR{n}/2", $"SD2/{n}"));
        IReadOnlyList<Finding> findings = bench.Check();
        Assert.Equal(["S03", "S02", "S03", "S04", "S04"], findings.Select(f => f.Rule.Code));
        Assert.StartsWith("lighting and sound share the sheath of T1, and 2 more alike;", findings[1].Message);
        Assert.StartsWith("lighting and sound share the array connectors KL1/rear and T1/near, and 2 more alike;", findings[3].Message);

        static void Each(Action<int> add)
        {
            for (int n = 1; n <= 3; n++)
                add(n);
        }
    }

    [Fact]
    public void Two_legs_of_a_trunk_share_its_sheath_and_no_array()
    {
        Bench bench = WithPolicies([], null);
        bench.Add("QL1", "parallel interface", network: Lighting).Add("QL2", "parallel interface", network: Lighting)
            .Add("QS1", "parallel interface", network: Sound).Add("QS2", "parallel interface", network: Sound)
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("legs", 2).Set("base", 8))
            .Mate("QL1/1", "T/near1").Mate("T/far1", "QL2/1").Mate("QS1/1", "T/near2").Mate("T/far2", "QS2/1");
        Assert.Equal("S02", bench.Codes());
    }

    [Fact]
    public void Dark_fibres_belong_to_the_networks_of_the_parts_they_pass()
    {
        Assert.Equal("S02 S03 S03 S04 S04", WithPolicies([], null).Cassettes(Lighting, Sound).Codes());
        Assert.Equal("", WithPolicies([], null).Cassettes(Lighting, Lighting).Codes());
        Assert.Equal("", WithPolicies([], null).Cassettes().Codes());
    }

    [Fact]
    public void Ports_stated_for_two_networks_share_their_cassette_even_before_anything_is_plugged_in() =>
        Assert.Equal(["Cassette K"], Shared(
            WithPolicies(Without(SharedPlace.Cassette), null).Add("K", "cassette", v => v.Set("wiring", "U1").Set("base", 8).Set("networks", ["lighting", "sound"])),
            SharingVerdict.Against).Where(s => s.StartsWith("Cassette", StringComparison.Ordinal)));

    [Fact]
    public void An_array_plug_that_hangs_loose_is_shared_like_a_mated_one()
    {
        Bench bench = WithPolicies(Without(SharedPlace.Array), null);
        bench.Add("H", "harness", v => v.Set("wiring", "U2")).Mate("LX1/1", "H/leg1").Mate("SD1/1", "H/leg2");
        Finding finding = Assert.Single(bench.Check(), f => f.Rule.Code == "S04");
        Assert.StartsWith("lighting and sound share the array connector H/array;", finding.Message);
    }

    [Fact]
    public void A_field_termination_and_its_cables_are_shared_and_their_splice_is_not_told_again()
    {
        Bench bench = WithPolicies([], null)
            .Add("FL", "field termination", v => v.Set("fibres", 4)).Add("WL", "cable", v => v.Set("fibres", 4))
            .Add("S", "splice", v => v.Set("fibres", 4)).Add("WR", "cable", v => v.Set("fibres", 4))
            .Add("FR", "field termination", v => v.Set("fibres", 4).Set("wiring", "reverse-pair"))
            .Mate("FL/bare", "WL/near").Mate("WL/far", "S/near").Mate("S/far", "WR/near").Mate("WR/far", "FR/bare")
            .CordOf("C1", -1, "LX1/1", "FL/1").CordOf("C2", -1, "FR/1", "LX2/1")
            .CordOf("C3", -1, "SD1/1", "FL/2").CordOf("C4", -1, "FR/2", "SD2/1");
        Assert.Equal("S02 S02 S03 S03", bench.Codes());
        Assert.Contains(bench.Check(), f => f.Message.StartsWith("lighting and sound share the termination FL;", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("duplex panel", "panel")]
    [InlineData("outlet", "outlet")]
    public void Plugs_of_two_networks_share_their_panel_whether_they_meet_another_or_not(string kind, string word)
    {
        Bench bench = WithPolicies(Without(SharedPlace.Panel), null);
        bench.Add("PANEL", kind, v => _ = kind == "outlet" ? v.Set("rear", "duplex") : v)
            .Add("C1", "duplex cord", v => v.Set("type", "A-to-B")).Add("C2", "duplex cord", v => v.Set("type", "A-to-B"))
            .Add("C3", "duplex cord", v => v.Set("type", "A-to-B"), Sound)
            .Mate("LX1/1", "C1/near").Mate("C1/far", "C2/near", through: "PANEL/1").Mate("C2/far", "LX2/1")
            .Open("C3/near", "PANEL/2");
        Finding finding = Assert.Single(bench.Check(), f => f.Rule.Code == "S05");
        Assert.StartsWith($"lighting and sound share the {word} PANEL;", finding.Message);
    }

    [Fact]
    public void Strands_of_one_network_share_nothing() => Assert.Equal("", WithPolicies([], [])
        .Cassettes().CordOf("C1", -1, "LX1/1", "KL/1").CordOf("C2", -1, "KR/1", "LX2/1")
        .Codes());

    // What left its network is told as that; the sharing that it brings about would be the same fault once more.
    [Fact]
    public void Strands_astray_or_between_two_networks_share_nothing_by_that()
    {
        Bench astray = WithPolicies([], []).Cassettes(Sound, Sound).CordOf("C1", -1, "LX1/1", "KL/1").CordOf("C2", -1, "KR/1", "LX2/1");
        Assert.Equal("S01", astray.Codes());
        Assert.Equal(5, Shared(astray, SharingVerdict.Astray).Length);
        Bench bridge = WithPolicies([], []).Cassettes().CordOf("C1", -1, "LX1/1", "KL/1").CordOf("C2", -1, "KR/1", "SD2/1");
        Assert.Equal("D06", bridge.Codes());
        Assert.Equal(7, Shared(bridge, SharingVerdict.Astray).Length);
    }

    /// <summary>What has a verdict, in words.</summary>
    private static string[] Shared(Bench bench, SharingVerdict verdict)
    {
        var context = new CheckContext(bench.Trace());
        Plant plant = context.Plant;
        return
        [
            .. context.Separation.Sharing.Groups.Where(g => g.Verdict == verdict).SelectMany(g => g.Uses.Select(u => u.Mating is { } m
                ? $"{g.Place} {plant.Address(m.A)} {plant.Address(m.B)}"
                : $"{g.Place} {plant.Parts[u.Part].Name}")),
        ];
    }

    private static SharedPlace[] Without(SharedPlace lacking) => [.. All.Where(p => p != lacking)];
}
