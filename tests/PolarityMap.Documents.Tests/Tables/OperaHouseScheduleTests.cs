using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;
using Xunit;

namespace PolarityMap.Documents.Tests.Tables;

/// <summary>
/// The schedules of the opera house, counted by hand from its document: four networks with a switch of 16 ports, a trunk of 8 legs
/// of which 4 are used, 4 cassettes at either end, and 16 desks with a device each; 16 zone boxes, 16 desk cables, 16 outlets.
/// </summary>
public sealed class OperaHouseScheduleTests
{
    private static readonly Plant Plant = Read();

    private static Plant Read()
    {
        const string path = "gallery/opera-house/plant.yaml";
        return Reading.Read(path, new MemorySource().Add(path, File.ReadAllText(Path.Combine(Repository.Root, path)))).Plant!;
    }

    // 64 links of two strands, each past switch, cord, cassette, trunk, cassette, cord, zone box, cable, outlet, cord, device; and
    // 4 spare legs of 8 fibres on each of 4 trunks.
    [Fact]
    public void The_connection_schedule_has_a_row_for_every_part_that_a_strand_passes() =>
        Assert.Equal((64 * 2 * 11) + (4 * 4 * 8), Told.Schedule(Plant, "connections").Rows.Count);

    [Fact]
    public void The_first_strand_is_told_hop_by_hop()
    {
        Schedule schedule = Told.Schedule(Plant, "connections");
        Assert.Equal(["LX-SW", "LX-SW/1~LX-K1/1", "LX-K1", "LX-T", "LX-Z1", "LX-Z1/1~ZB1/1", "ZB1", "DC1", "DESK1", "DESK1/1~LX-D1/1", "LX-D1"], Told.Column(schedule, "part")[..11]);
        Assert.Equal(["1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11"], Told.Column(schedule, "hop")[..11]);
        Assert.All(Told.Column(schedule, "link")[..22], l => Assert.Equal("LX-SW/1 to LX-D1/1", l));

        // U1 puts position B of port 1 on 12 (TIA-568.3 method U1); opposed keys lead 12 to 12, a Type-B trunk 12 to 1.
        Assert.Equal(["LX-SW/1:A", "LX-SW/1~LX-K1/1/far:A", "LX-K1/rear:12", "LX-T/far1:1"], Told.Column(schedule, "out")[..4]);
        Assert.Equal("LX-T/near1:12", Told.Column(schedule, "meets")[2]);
        Assert.Equal("opposed", Told.Column(schedule, "keys")[2]);

        // The eighth of the eight fibres that a base-8 array has; black is the eighth colour of TIA-598.
        Assert.Equal(("8", "black (BK)"), (Told.Column(schedule, "fibre-number")[3], Told.Column(schedule, "colour")[3]));
    }

    // A cord at the switch, at the zone box and at the desk of each of 64 links.
    [Fact]
    public void The_patch_schedule_has_three_cords_for_every_link()
    {
        Schedule schedule = Told.Schedule(Plant, "patching");
        Assert.Equal(64 * 3, schedule.Rows.Count);
        Assert.Equal(64, Told.Column(schedule, "length").Count(l => l == "2"));
        Assert.Equal(64, Told.Column(schedule, "length").Count(l => l == "0.5"));
        Assert.Equal(64, Told.Column(schedule, "length").Count(l => l == "3"));
        Assert.Equal(["LX-SW/1", "Equipment room", "LX-K1/1", "Equipment room"], ((string[])["from", "from-room", "to", "to-room"]).Select(k => Told.Column(schedule, k)[0]));
        Assert.Equal("plain to K1", Told.Column(schedule, "key-codes")[0]);
    }

    [Fact]
    public void The_cable_schedule_has_the_four_trunks_and_the_sixteen_desk_cables()
    {
        Schedule schedule = Told.Schedule(Plant, "cables");
        Assert.Equal(4 + 16, schedule.Rows.Count);
        int trunk = Array.IndexOf(Told.Column(schedule, "cable"), "LX-T"), desk = Array.IndexOf(Told.Column(schedule, "cable"), "DC7");
        Assert.Equal("near1 in LX-K1/rear; near2 in LX-K2/rear; near3 in LX-K3/rear; near4 in LX-K4/rear", Told.Column(schedule, "near-ends")[trunk]);
        Assert.Equal(("64", "62", "5, 6, 7, 8"), (Told.Column(schedule, "fibres")[trunk], Told.Column(schedule, "length")[trunk], Told.Column(schedule, "spare-legs")[trunk]));
        Assert.Equal(("8", "25", "lighting, sound, machinery, office"), (Told.Column(schedule, "fibres")[desk], Told.Column(schedule, "length")[desk], Told.Column(schedule, "network")[desk]));
        Assert.Equal(("near in ZB7/rear", "far in DESK7/rear"), (Told.Column(schedule, "near-ends")[desk], Told.Column(schedule, "far-ends")[desk]));
        Assert.Equal(("Zone box", "Stage"), (Told.Column(schedule, "near-room")[desk], Told.Column(schedule, "far-room")[desk]));
    }

    // Switches 4, devices 64, cords 192, cassettes 32, zone boxes 16, trunks 4, desk cables 16, outlets 16.
    [Fact]
    public void The_parts_list_adds_up_to_every_part()
    {
        Schedule schedule = Told.Schedule(Plant, "parts");
        int[] quantities = [.. Told.Column(schedule, "quantity").Select(int.Parse)];
        Assert.Equal(4 + 64 + 192 + 32 + 16 + 4 + 16 + 16, quantities.Sum());
        string[] types = Told.Column(schedule, "type");
        Assert.Equal(192, quantities.Where((_, i) => types[i] == "A-to-B cord").Sum());
        Assert.Equal(48, quantities.Where((_, i) => types[i] == "U1 cassette").Sum());
        Assert.Equal((4m * 62) + (16 * 25), Told.Column(schedule, "total-length").Where((_, i) => types[i] == "Type-B trunk").Sum(decimal.Parse));
    }

    // Ports: switches 64, devices 64, cassettes and zone boxes 48 x (4 + 1), outlets 16 x (4 + 1). Ends: cords 384, trunks 4 x 16, desk cables 32.
    [Fact]
    public void There_is_a_label_for_every_port_and_both_ends_of_every_cable()
    {
        Schedule schedule = Told.Schedule(Plant, "labels");
        string[] on = Told.Column(schedule, "what");
        Assert.Equal(64 + 64, on.Count(w => w == "interface port"));
        Assert.Equal((48 * 5) + (16 * 5), on.Count(w => w == "port"));
        Assert.Equal(384 + 64 + 32, on.Count(w => w == "cable end"));
        Assert.Equal(schedule.Rows.Count, on.Length);
        Assert.Contains("Equipment room-LX-K1:1 / Zone box-LX-Z1:1", Told.Column(schedule, "label"));
        Assert.Contains("Zone box-LX-Z1:1 / Equipment room-LX-K1:1", Told.Column(schedule, "label"));
        Assert.Contains("Equipment room-LX-K2:rear / Zone box-LX-Z2:rear", Told.Column(schedule, "label"));
    }

    // The fixed part: 62 m, 0.5 m and 25 m, with 6 matings of at most 0.35 or 0.15 dB inside; the polarity is transmit to receive.
    [Fact]
    public void There_is_a_test_for_both_strands_of_every_link()
    {
        Schedule schedule = Told.Schedule(Plant, "tests");
        Assert.Equal(128, schedule.Rows.Count);
        Assert.All(Told.Column(schedule, "length"), l => Assert.Equal("87.5", l));
        Assert.Equal("transmit LX-SW/1:A to receive LX-D1/1:B", Told.Column(schedule, "polarity")[0]);
        Assert.All(Told.Column(schedule, "polarity"), p => Assert.StartsWith("transmit ", p, StringComparison.Ordinal));
        Assert.All(Told.Column(schedule, "wavelength-1"), w => Assert.Equal("850 nm", w));
        Assert.All(Told.Column(schedule, "measured-1-ab"), m => Assert.Equal("", m));
    }

    [Fact]
    public void Nothing_is_terminated_in_the_field() => Assert.Empty(Told.Schedule(Plant, "terminations").Rows);

    [Fact]
    public void The_networks_are_told_with_what_they_may_share()
    {
        Schedule schedule = Told.Schedule(Plant, "networks");
        Assert.Equal(["lighting", "sound", "machinery", "office"], Told.Column(schedule, "network"));
        Assert.Equal(["K1", "K2", "K3", "K4"], Told.Column(schedule, "key"));
        Assert.Equal(["32", "32", "32", "32"], Told.Column(schedule, "strands"));
    }
}
