using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Schedules;
using Xunit;

namespace PolarityMap.Core.Tests.Schedules;

/// <summary>Single rows of schedules, worked out by hand from small plants.</summary>
public sealed class ScheduleRowTests
{
    private static string[][] Rows(Bench bench, string name, params string[] keys)
    {
        Schedule schedule = ScheduleCatalogue.Find(name)!.Of(ScheduleInput.Of(bench.Trace()));
        int[] at = [.. keys.Select(k => schedule.Columns.ToList().FindIndex(c => c.Key == k))];
        Assert.DoesNotContain(-1, at);
        return [.. schedule.Rows.Select(r => at.Select(i => r[i].Text ?? r[i].Number?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "").ToArray())];
    }

    // Two switches, one cord from A to B: two strands of three hops.
    [Fact]
    public void A_strand_is_told_hop_by_hop_with_what_it_meets()
    {
        Bench bench = new Bench().Add("S", "duplex interface").Add("T", "duplex interface").Cord("C", "S/1", "A-to-B", "T/1").Link("S/1", "T/1");
        Assert.Equal(
            [
                ["1", "1", "lit", "S/1 to T/1", "S", "", "S/1:A", "C/near:B"],
                ["1", "2", "lit", "S/1 to T/1", "C", "C/near:B", "C/far:A", "T/1:B"],
                ["1", "3", "lit", "S/1 to T/1", "T", "T/1:B", "", ""],
                ["2", "1", "lit", "S/1 to T/1", "S", "", "S/1:B", "C/near:A"],
                ["2", "2", "lit", "S/1 to T/1", "C", "C/near:A", "C/far:B", "T/1:A"],
                ["2", "3", "lit", "S/1 to T/1", "T", "T/1:A", "", ""],
            ],
            Rows(bench, "connections", "strand", "hop", "state", "link", "part", "in", "out", "meets"));
    }

    [Fact]
    public void What_no_strand_passes_has_a_row_without_a_strand()
    {
        Bench bench = new Bench()
            .Add("S", "duplex interface").Add("T", "duplex interface").Add("P", "duplex panel", v => v.Set("ports", 2))
            .Add("C", "duplex cord", v => v.Set("type", "A-to-B")).Mate("S/1", "C/near").Open("C/far", "P/2").Link("S/1", "T/1");
        Assert.Equal(
            [["", "part", "P", "", "", "", ""], ["", "part", "T", "", "", "", ""], ["", "plugged in one side", "C", "C/far", "", "P/2", ""], ["", "link not joined", "", "", "", "", "S/1 to T/1"]],
            Rows(bench, "connections", "strand", "state", "part", "out", "meets", "through", "link").Where(r => r[0].Length == 0));
    }

    [Fact]
    public void A_faulty_strand_is_not_to_be_signed_off()
    {
        Bench bench = new Bench().Add("S", "duplex interface").Add("T", "duplex interface").Cord("C", "S/1", "A-to-A", "T/1").Link("S/1", "T/1");
        Assert.Equal([["FAULT: receive meets receive"], ["FAULT: transmit meets transmit"]], Rows(bench, "tests", "polarity").Order(Comparer<string[]>.Create((a, b) => string.CompareOrdinal(a[0], b[0]))));
    }

    [Fact]
    public void A_strand_to_the_wrong_port_is_not_to_be_signed_off()
    {
        Bench bench = new Bench().Add("S", "duplex interface").Add("T", "duplex interface", v => v.Set("ports", 2)).Cord("C", "S/1", "A-to-B", "T/2").Link("S/1", "T/1");
        Assert.All(Rows(bench, "tests", "polarity"), r => Assert.StartsWith("FAULT: comes out at", r[0], StringComparison.Ordinal));
    }

    // Colours of TIA-598: blue, orange, green, brown.
    [Fact]
    public void Every_joint_in_the_field_is_told_fibre_by_fibre()
    {
        string[][] rows = Rows(ScheduleTests.Spliced(), "terminations", "place", "work", "cable", "fibre", "colour", "to", "to-fibre");
        Assert.Equal(4 + 4 + 4, rows.Length);
        Assert.Equal(["F", "mount a connector", "C1, near end", "1", "blue (BU)", "F/1:A", ""], rows.First(r => r[0] == "F"));
        Assert.Equal(["J", "splice", "C1, far end", "3", "green (GN)", "C2, near end", "3"], rows.Where(r => r[0] == "J").ElementAt(2));
        Assert.Equal(["C2", "left bare", "C2, far end", "4", "brown (BN)", "nothing", ""], rows.Last(r => r[0] == "C2"));
    }

    [Fact]
    public void A_crossed_splice_is_told_crossed()
    {
        Bench bench = new Bench()
            .Add("C1", "cable", v => v.Set("fibres", 2)).Add("C2", "cable", v => v.Set("fibres", 2))
            .Add("J", "splice", v => v.Set("fibres", 2).Set("wiring", (IReadOnlyList<DuplexPair>)[new(1, 2), new(2, 1)]))
            .Mate("C1/far", "J/near").Mate("J/far", "C2/near");
        Assert.Equal([["1", "2"], ["2", "1"]], Rows(bench, "terminations", "place", "fibre", "to-fibre").Where(r => r[0] == "J").Select(r => r[1..]));
    }

    // Told from the front of a panel the cabling behind it runs to the panel at the other end.
    [Fact]
    public void A_label_names_its_own_end_and_then_the_other()
    {
        Bench bench = new Bench()
            .Add("S", "duplex interface", v => v.Set("room", "East"))
            .Add("P", "duplex panel", v => v.Set("ports", 1).Set("room", "East")).Add("Q", "duplex panel", v => v.Set("ports", 1).Set("room", "West"))
            .Add("C", "duplex cord", v => v.Set("type", "A-to-B"))
            .Add("F", "field termination", v => v.Set("fibres", 2).Set("room", "East")).Add("G", "field termination", v => v.Set("fibres", 2).Set("room", "West"))
            .Add("L", "cable", v => v.Set("fibres", 2))
            .Mate("S/1", "C/near").Mate("C/far", "F/1").Mate("F/bare", "L/near").Mate("L/far", "G/bare");
        string[] labels = [.. Rows(bench, "labels", "label").Select(r => r[0])];
        Assert.Contains("East-F:1 / West-G:1", labels);
        Assert.Contains("West-G:1 / East-F:1", labels);
        Assert.Contains("East-S:1 / West-G:1", labels);
        Assert.Contains("East-S:1 / East-F:1", labels);
        Assert.Contains("East-F:bare / West-G:bare", labels);
        Assert.Contains("East-P:1", labels);
    }

    [Fact]
    public void Alike_parts_stand_together_whatever_their_room()
    {
        Bench bench = new Bench();
        foreach (string room in (string[])["East", "West", "North"])
            bench.Add("K " + room, "cassette", v => v.Set("wiring", "U1").Set("room", room));
        bench.Add("K other", "cassette", v => v.Set("wiring", "U2"));
        Assert.Equal([["3", "U1 cassette", "12"], ["1", "U2 cassette", "12"]], Rows(bench, "parts", "quantity", "type", "fibres"));
    }

    // Usual values by docs/plan.md and the kinds' own words: multimode flat, single-mode angled; trunks and cords without pins, cassettes
    // with them, twelve fibres. An order has to say them; adapters have neither, and duplex cords no arrays.
    [Fact]
    public void Base_pins_and_end_face_of_array_connectors_are_said_even_where_the_document_leaves_them_out()
    {
        Bench bench = new Bench()
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("legs", 24).Set("fibre", "OS2"))
            .Add("U", "trunk", v => v.Set("type", "Type-B").Set("base", 8).Set("pins", "far").Set("polish", "angled").Set("fibre", "OM4"))
            .Add("K", "cassette", v => v.Set("wiring", "U1").Set("fibre", "OM4"))
            .Add("P", "array panel", v => v.Set("ports", 2).Set("keys", "opposed"))
            .Add("C", "duplex cord", v => v.Set("type", "A-to-B"));
        string[] told = [.. Rows(bench, "parts", "description").Select(r => r[0])];
        Assert.Contains("type: Type-B, base: 12, legs: 24, pins: none, polish: angled", told);
        Assert.Contains("type: Type-B, base: 8, pins: far, polish: angled", told);
        Assert.Contains("wiring: U1, base: 12, pins: pinned, polish: flat", told);
        Assert.Contains(told, t => t.Contains("keys: opposed", StringComparison.Ordinal) && !t.Contains("pins", StringComparison.Ordinal) && !t.Contains("polish", StringComparison.Ordinal));
        Assert.Contains("type: A-to-B", told);
    }

    [Fact]
    public void Parts_that_are_said_alike_in_other_words_stand_together()
    {
        Bench bench = new Bench()
            .Add("K1", "cassette", v => v.Set("wiring", "U1").Set("fibre", "OM4"))
            .Add("K2", "cassette", v => v.Set("wiring", "U1").Set("base", 12).Set("pins", "pinned").Set("polish", "flat").Set("fibre", "OM4"))
            .Add("K3", "cassette", v => v.Set("wiring", "U1").Set("polish", "flat").Set("fibre", "OM4"));
        Assert.Equal([["3"]], Rows(bench, "parts", "quantity"));
    }

    [Fact]
    public void A_simplex_cord_is_told_with_the_position_that_it_takes()
    {
        Bench bench = new Bench()
            .Add("S", "single-fibre interface", v => v.Set("application", "1000BASE-BX10-U")).Add("K", "cassette", v => v.Set("wiring", "U1"))
            .Add("C", "simplex cord").Mate("S/1", "C/near").Mate("C/far", "K/2:B");
        Assert.Equal([["S/1", "K/2:B"]], Rows(bench, "patching", "from", "to"));
    }

    [Fact]
    public void Attributes_are_told_as_a_document_writes_them_with_what_defaults_stand_for()
    {
        PartKind trunk = PartKinds.Find("trunk")!;
        AttributeValues values = new AttributeValues(trunk.AllAttributes, new PartDefaults { Fibre = FibreClass.Find("OM4"), TrunksArePinned = true })
            .Set("type", "Type-B").Set("note", "a \"b\", c").Set("array-loss", new Decibel(0.35m)).Set("spare", (IReadOnlyList<int>)[2]).Set("legs", 2);
        Assert.Equal(
            "type: Type-B, legs: 2, spare: [2], fibre: OM4, pins: both, array-loss: 0.35 dB, note: \"a \\\"b\\\", c\"",
            AttributeWords.Line(trunk, values, trunk.Build(values, [])!));
    }
}
