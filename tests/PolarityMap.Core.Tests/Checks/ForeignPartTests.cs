using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using Xunit;
using static PolarityMap.Core.Tests.Checks.TwoNetworks;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>S01, and where D06 says that two networks meet. What is foreign follows from the networks written into each bench.</summary>
public sealed class ForeignPartTests
{
    [Fact]
    public void A_lighting_channel_through_parts_of_sound_is_one_finding_at_the_first_of_them()
    {
        Finding finding = Assert.Single(Plain().Cassettes(Sound, Sound)
            .CordOf("C1", Lighting, "LX1/1", "KL/3").CordOf("C2", Lighting, "KR/3", "LX2/1").Check());
        Assert.Equal("S01", finding.Rule.Code);
        Assert.Equal("2 strands of lighting enter KL, a part of sound, at KL/3", finding.Message);
        Assert.Equal("lighting in KL, T and KR of sound", finding.Actual);
        Assert.Equal(2, finding.Strands.Count);
    }

    [Fact]
    public void The_finding_stands_at_the_stop_that_enters_the_foreign_part()
    {
        Bench bench = Plain().Cassettes(Sound, Sound).CordOf("C1", Lighting, "LX1/1", "KL/3");
        int line = bench.Build().Matings[^1].Place.Line;
        bench.CordOf("C2", Lighting, "KR/3", "LX2/1");
        Assert.Equal(line, Assert.Single(bench.Check()).Place.Line);
    }

    [Fact]
    public void A_foreign_cord_is_told_by_where_it_is_plugged_in()
    {
        Finding finding = Assert.Single(Plain().CordOf("C", Sound, "LX1/1", "LX2/1").Check());
        Assert.Equal("2 strands of lighting enter C, a part of sound, at LX1/1", finding.Message);
    }

    [Fact]
    public void A_foreign_panel_between_two_cords_is_told_by_its_adapter()
    {
        Finding finding = Assert.Single(ThroughPanel(v => v.Set("ports", 2), Sound).Check());
        Assert.Equal("2 strands of lighting enter PANEL, a part of sound, at PANEL/2", finding.Message);
    }

    [Fact]
    public void A_port_of_another_network_in_a_part_of_several_is_foreign_and_its_own_port_is_not()
    {
        Finding finding = Assert.Single(ThroughPanel(v => v.Set("ports", 2).Set("networks", ["lighting", "sound"])).Check());
        Assert.Equal("2 strands of lighting enter ports of sound in PANEL at PANEL/2", finding.Message);
        Assert.Equal("", ThroughPanel(v => v.Set("ports", 2).Set("networks", ["sound", "lighting"])).Codes());
    }

    [Fact]
    public void The_array_side_of_a_cassette_with_ports_of_several_networks_is_foreign_to_none()
    {
        Bench bench = Plain();
        foreach (string cassette in (string[])["KL", "KR"])
            bench.Add(cassette, "cassette", v => v.Set("wiring", "U1").Set("base", 8).Set("network", "sound").Set("networks", ["lighting", "sound", "sound", "sound"]));
        bench.Add("T", "trunk", v => v.Set("type", "Type-B").Set("base", 8)).Mate("KL/rear", "T/near").Mate("T/far", "KR/rear")
            .CordOf("C1", Lighting, "LX1/1", "KL/1").CordOf("C2", Lighting, "KR/1", "LX2/1");
        Assert.Equal("", bench.Codes());
    }

    [Fact]
    public void Parts_of_the_own_network_or_of_none_are_not_foreign()
    {
        Assert.Equal("", Plain().SharedChannel().Codes());
        Assert.Equal("", Plain().Cassettes(Lighting, -1).CordOf("C1", Lighting, "LX1/1", "KL/1").CordOf("C2", -1, "KR/1", "LX2/1").Codes());
    }

    [Fact]
    public void Each_network_that_enters_a_part_is_a_finding_and_so_is_each_part_that_is_entered()
    {
        Bench bench = Plain();
        bench.Network("office");
        Assert.Equal("S01 S01", bench.SharedChannel(cassettes: 2).Codes());
        Assert.Equal("S01 S01", Plain().CordOf("C1", Sound, "LX1/1", "LX2/1").CordOf("C2", Sound, "LX1/2", "LX2/2").Codes());
    }

    [Fact]
    public void A_strand_that_comes_back_and_leaves_again_is_two_findings() => Assert.Equal("S01 S01", Plain()
        .Cassettes(-1, Lighting)
        .CordOf("C1", Sound, "LX1/1", "KL/1").CordOf("C2", Sound, "KR/1", "LX2/1")
        .Codes());

    [Fact]
    public void A_strand_takes_its_network_from_the_one_interface_that_has_one()
    {
        Bench bench = Plain().Add("X", "duplex interface").CordOf("C", Sound, "LX1/1", "X/1");
        Assert.Equal("S01", bench.Codes());
        Assert.Equal("", Plain().Add("X", "duplex interface").CordOf("C", Lighting, "LX1/1", "X/1").Codes());
    }

    [Fact]
    public void A_strand_without_an_interface_of_a_network_enters_nothing_foreign()
    {
        Assert.Equal("", Plain().Cassettes(Sound, Lighting).Codes());
        Assert.Equal("", Plain().Add("X", "duplex interface").Add("Y", "duplex interface").CordOf("C", Sound, "X/1", "Y/1").Codes());
    }

    [Fact]
    public void Interfaces_of_two_networks_joined_are_a_wrong_network_alone() =>
        Assert.Equal("D06", Plain().CordOf("C", Lighting, "LX1/1", "SD1/1").Codes());

    [Fact]
    public void Two_networks_meet_at_the_cord_of_neither() =>
        Assert.EndsWith("; they meet at the cord C between LX1/1 and SD1/1", Meeting(Plain().CordOf("C", -1, "LX1/1", "SD1/1")));

    [Fact]
    public void Two_networks_meet_where_the_cord_of_one_is_plugged_into_a_port_of_the_other()
    {
        Assert.EndsWith("; they meet at SD1/1, where the cord C of lighting is plugged in", Meeting(Plain().CordOf("C", Lighting, "LX1/1", "SD1/1")));
        Assert.EndsWith("; they meet at LX1/1, where the cord C of sound is plugged in", Meeting(Plain().CordOf("C", Sound, "LX1/1", "SD1/1")));
    }

    [Fact]
    public void Two_networks_meet_at_the_adapter_of_their_cords_or_at_that_of_one()
    {
        Assert.EndsWith("; they meet at the adapter PANEL/1", Meeting(TwoCords(Plain().Add("PANEL", "duplex panel"))));
        Assert.EndsWith("; they meet at PANEL/1, where the cord C1 of lighting is plugged in", Meeting(TwoCords(Plain().Add("PANEL", "duplex panel", network: Sound))));
    }

    [Fact]
    public void Two_networks_meet_at_a_mating_of_two_cables() => Assert.EndsWith(
        "; they meet at the mating of CL/far and CS/near",
        Meeting(ParallelPorts()
            .Add("CL", "array cord", v => v.Set("type", "Type-B"), Lighting).Add("CM", "array cord", v => v.Set("type", "Type-A"))
            .Add("CS", "array cord", v => v.Set("type", "Type-B"), Sound)
            .Mate("QL/1", "CL/near").Mate("CL/far", "CS/near", Keying.Opposed).Mate("CS/far", "CM/near", Keying.Aligned).Mate("CM/far", "QS/1")));

    [Fact]
    public void Two_networks_meet_somewhere_in_the_parts_of_neither()
    {
        Bench bench = Plain().Cassettes().CordOf("C1", Lighting, "LX1/1", "KL/1").CordOf("C2", Sound, "KR/1", "SD2/1");
        Assert.EndsWith("; they meet somewhere between KL/1 and KR/1, in KL, T and KR of no network", Meeting(bench));
    }

    /// <summary>The message of the wrong network on a bench.</summary>
    private static string Meeting(Bench bench) => bench.Check().First(f => f.Rule.Code == "D06").Message;

    /// <summary>A cord of lighting and a cord of sound that meet in the first adapter of a panel.</summary>
    private static Bench TwoCords(Bench bench) => bench
        .Add("C1", "duplex cord", v => v.Set("type", "A-to-B"), Lighting).Add("C2", "duplex cord", v => v.Set("type", "A-to-B"), Sound)
        .Mate("LX1/1", "C1/near").Mate("C1/far", "C2/near", through: "PANEL/1").Mate("C2/far", "SD1/1");

    private static Bench ParallelPorts()
    {
        var bench = new Bench();
        bench.Network("lighting");
        bench.Network("sound");
        return bench.Add("QL", "parallel interface", network: Lighting).Add("QS", "parallel interface", network: Sound);
    }

    private static Bench ThroughPanel(Action<AttributeValues> panel, int network = -1) => Plain()
        .Add("PANEL", "duplex panel", panel, network)
        .Add("C1", "duplex cord", v => v.Set("type", "A-to-B"), Lighting).Add("C2", "duplex cord", v => v.Set("type", "A-to-B"), Lighting)
        .Mate("LX1/1", "C1/near").Mate("C1/far", "C2/near", through: "PANEL/2").Mate("C2/far", "LX2/1");
}
