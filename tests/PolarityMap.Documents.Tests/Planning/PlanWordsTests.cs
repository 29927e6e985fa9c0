using PolarityMap.Core.Planning;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Planning;

/// <summary>What a plan says of itself holds for that plan: each brief's own truth, reckoned by hand, stands in its document or does not.</summary>
public sealed class PlanWordsTests
{
    private const string Plain =
        """
        brief: t
        networks: { d: }
        rooms: { ER: , Hall: { distance: 30 m } }
        outlets:
          H[1..9]: { room: Hall, links: { d: 1 } }
        application: 10GBASE-SR
        fibre: OM4
        array-loss: 0.35 dB
        duplex-loss: 0.15 dB

        """;

    private static readonly string s_zone = Plain.Replace("links: { d: 1 }", "distance: 22 m, links: { d: 1 }", StringComparison.Ordinal) + "separation: gathered\n";

    private static readonly string s_mixed = s_zone
        .Replace("networks: { d: }", "networks: { d: , p: { application: 40GBASE-SR4 } }", StringComparison.Ordinal)
        .Replace("links: { d: 1 }", "links: { d: 1, p: 1 }", StringComparison.Ordinal);

    // A single network of nine links: three letters keep one row, U1 is the first of equals (the order in docs/plan.md).
    [Theory]
    [InlineData("")]
    [InlineData("two networks")]
    public void Without_a_word_on_method_and_base_one_row_and_U1_are_taken(string networks)
    {
        string brief = networks.Length == 0 ? Plain : Plain.Replace("networks: { d: }", "networks: { d: , e: }", StringComparison.Ordinal).Replace("{ d: 1 }", "{ d: 1, e: 1 }", StringComparison.Ordinal);
        PlanCandidate chosen = Planned(brief).Chosen!.Candidate;
        Assert.Equal("U1", chosen.Method.Name);
        Assert.NotEqual(24, chosen.Base);
    }

    [Fact]
    public void The_cables_from_a_zone_box_are_told_as_they_are()
    {
        Assert.Contains("Own trunks to the zone box, there one cable to each outlet (", Text(s_zone), StringComparison.Ordinal);
        string mixed = Text(s_mixed + "base: 12\n");
        Assert.Contains("two cables to each outlet, one for its pairs and one for its parallel links", mixed, StringComparison.Ordinal);
        Assert.Contains("DC-H", mixed, StringComparison.Ordinal);
        Assert.Contains("PC-H", mixed, StringComparison.Ordinal);
        Assert.DoesNotContain("one cable to each outlet", mixed, StringComparison.Ordinal);
    }

    // One network in each cable: nothing is shared. Two with pairs share cable, cassettes and the arrays in them; where each fills whole
    // arrays of four pairs, the cable alone; two with parallel links share the cable and the panels, not the arrays, as each has its own.
    [Theory]
    [InlineData("10GBASE-SR", "40GBASE-SR4", 1, "may-share: none")]
    [InlineData("10GBASE-SR", "10GBASE-SR", 1, "may-share: [sheath, cassette, array]")]
    [InlineData("10GBASE-SR", "10GBASE-SR", 4, "may-share: [sheath]")]
    [InlineData("40GBASE-SR4", "40GBASE-SR4", 1, "may-share: [sheath, panel]")]
    public void May_share_lists_what_is_shared(string one, string other, int links, string expected)
    {
        string text = Text(s_mixed.Replace("{ d: , p: { application: 40GBASE-SR4 } }", $"{{ d: {{ application: {one}, key: K1 }}, p: {{ application: {other}, key: K2 }} }}", StringComparison.Ordinal)
            .Replace("{ d: 1, p: 1 }", $"{{ d: {links}, p: {links} }}", StringComparison.Ordinal) + "method: U1\nbase: 8\n");
        Assert.Contains(expected, text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_parallel_plan_speaks_of_no_cassette()
    {
        string text = Text(Plain.Replace("10GBASE-SR", "40GBASE-SR4", StringComparison.Ordinal) + "method: B\nbase: 12\n");
        Assert.DoesNotContain("cassette", text, StringComparison.Ordinal);
        Assert.Contains("Type-B array cords at both ends; aligned keys", text, StringComparison.Ordinal);
        Assert.Contains("Trunks have the pins (", text, StringComparison.Ordinal);
    }

    // One segment of method A takes an A-to-A cord (more than six public sources); two in series take none (two public sources).
    [Fact]
    public void Method_A_tells_its_A_to_A_cord_where_there_is_one_and_where_a_later_patch_would_need_one()
    {
        Assert.Contains("A-to-A cords at the device; opposed keys", Joined(Text(Plain + "method: A\nbase: 12\n")), StringComparison.Ordinal);
        string two = Joined(Text(s_zone + "method: A\nbase: 12\n"));
        Assert.Contains("A-to-B cords only, as two segments lie in series; a device patched straight to the zone box later would need an A-to-A cord", two, StringComparison.Ordinal);
        Assert.DoesNotContain("kind: A-to-A cord", two, StringComparison.Ordinal);
    }

    // 22 m and 10 % are 24.2 m, so 25 m; 30 m are 33 m.
    [Fact]
    public void Every_way_is_told_with_its_cable()
    {
        string text = Joined(Text(s_zone + "slack: 10 %\n"));
        Assert.Contains("30 m to Hall takes 33 m; 22 m on to H[1..9] takes 25 m", text, StringComparison.Ordinal);
        Assert.Contains("30 m to Hall and 22 m on to H[1..9] take 58 m", Joined(Text(s_zone.Replace("separation: gathered", "slack: 10 %", StringComparison.Ordinal))), StringComparison.Ordinal);
    }

    // Nine links on base 8 are three arrays; cables come with 1, 2, 4, 6 ... legs, so one of four is left over.
    [Fact]
    public void Legs_that_lie_idle_are_counted()
    {
        Assert.Contains("Trunks of 4 legs: 1 leg lies idle, marked spare", Joined(Text(Plain + "method: U1\nbase: 8\n")), StringComparison.Ordinal);
        Assert.Contains("Trunks of 2 legs: no leg is left over", Joined(Text(Plain + "method: U1\nbase: 12\n")), StringComparison.Ordinal);
    }

    // 48 duplex ports in a rack unit: 12, 8, 6, 4 cassettes of base 8, 12, 16, 24. 100 links take 25, 17, 13, 9 of them.
    [Theory]
    [InlineData(8, 12)]
    [InlineData(12, 8)]
    [InlineData(16, 6)]
    [InlineData(24, 4)]
    public void A_panel_holds_48_duplex_ports_where_nothing_is_said(int fibres, int cassettes)
    {
        string text = Text(Plain.Replace("H[1..9]", "H[1..100]", StringComparison.Ordinal) + $"base: {fibres}\n");
        Assert.Contains($"Panel ER-P1, rack ER-R1 unit 39, places 1 to {cassettes}\"", text, StringComparison.Ordinal);
        Assert.DoesNotContain($"places 1 to {cassettes + 1}", text, StringComparison.Ordinal);
        Assert.DoesNotContain("places 1 to 4", Text(Plain + $"base: {fibres}\ncassettes-per-panel: 3\n"), StringComparison.Ordinal);
    }

    // A switch and three panels of one unit each for every two units of a rack.
    [Fact]
    public void Racks_after_the_first_count_on()
    {
        string text = Text(Plain.Replace("H[1..9]", "H[1..100]", StringComparison.Ordinal) + "base: 12\nrack-units: 2\n");
        Assert.Contains("rack ER-R2 unit 2", text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("rack ER-R3 unit 2", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("ER-R1-", text, StringComparison.Ordinal);
    }

    // TIA-568.3 allows 0.75 dB for a mating: four of them and the fibre are more than the 2.9 dB of 10GBASE-SR on OM4 (IEEE 802.3).
    [Fact]
    public void What_the_check_remarks_stands_in_the_head()
    {
        PlanResult result = Planned(Plain + "method: U1\nbase: 12\n");
        string head = Joined(PlannedDocumentTests.Text(result.Chosen!));
        Assert.Contains("9 links of 10GBASE-SR fit by what the parts state and fail by the standard's maxima", head, StringComparison.Ordinal);
        Assert.All(result.Chosen!.Report!.Remarks, r => Assert.Contains(r.Text, head, StringComparison.Ordinal));
        Assert.DoesNotContain("standard's maxima", Text(Plain.Replace("array-loss: 0.35 dB\nduplex-loss: 0.15 dB\n", "", StringComparison.Ordinal).Replace("10GBASE-SR", "1000BASE-SX", StringComparison.Ordinal) + "base: 12\n"), StringComparison.Ordinal);
    }

    [Fact]
    public void One_network_in_all_ports_is_written_once_and_outlets_are_named_by_their_ports()
    {
        string text = Text(s_zone.Replace("{ d: 1 }", "{ d: 4 }", StringComparison.Ordinal) + "method: U1\nbase: 8\n");
        Assert.DoesNotContain("[d, d", text, StringComparison.Ordinal);
        Assert.Contains("  H[1..9]: { kind: outlet of 4, network: d, room: Hall }", text, StringComparison.Ordinal);
        Assert.DoesNotContain("desk", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_network_is_written_alike_in_types_and_parts()
    {
        string text = Text(Plain.Replace("{ d: }", "{ Überwachung: }", StringComparison.Ordinal).Replace("{ d: 1 }", "{ Überwachung: 1 }", StringComparison.Ordinal));
        Assert.Contains("network: Überwachung }", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\"Überwachung\"", text, StringComparison.Ordinal);
    }

    // 6 ft are 1828.8 mm and 10 ft 3048 mm; 1.83 m is what it is.
    [Fact]
    public void Lengths_in_feet_are_told_in_feet_as_well()
    {
        string text = Text(Plain + "cords: { switch: 6 ft, device: 10 ft }\n");
        Assert.Contains("1.829 m each (6 ft)", text, StringComparison.Ordinal);
        Assert.Contains("3.048 m each (10 ft)", text, StringComparison.Ordinal);
        Assert.DoesNotContain("ft)", Text(Plain + "cords: { switch: 1.83 m }\n"), StringComparison.Ordinal);
    }

    // A multimode array has flat end faces, a single-mode one is angled (common practice, docs/plan.md); cassettes have the pins then.
    [Theory]
    [InlineData("OM4", "10GBASE-SR", "flat")]
    [InlineData("OS2", "10GBASE-LR", "angled")]
    public void The_parts_list_says_legs_base_end_face_pins_and_ports(string fibre, string application, string face)
    {
        string text = Joined(Text(Plain.Replace("OM4", fibre, StringComparison.Ordinal).Replace("10GBASE-SR", application, StringComparison.Ordinal) + "method: U1\nbase: 12\nports-per-switch: 16\n"));
        Assert.Contains($"1 x Type-B trunk, 24 fibres, 2 legs of 12, {face}, no pins, 30 m each", text, StringComparison.Ordinal);
        Assert.Contains($"4 x U1 cassette, 12 fibres, {face}, with pins", text, StringComparison.Ordinal);
        Assert.Contains($"1 x {application} interface of 16 ports", text, StringComparison.Ordinal);
    }

    [Fact]
    public void How_many_links_go_on_later_is_told()
    {
        PlanResult result = Planned(Plain.Replace("fibre:", "later: 40GBASE-SR4\nfibre:", StringComparison.Ordinal) + "method: U1\nbase: 12\n");
        LinksLater links = PlanMeasures.Of(result.Chosen!).LinksLater;
        Assert.Equal(9, links.Now);
        Assert.Equal(result.Chosen!.Later!.Report!.Traced.Plant.Links.Count, links.GoOn);
        Assert.Contains(links.GoOn < 9 ? $"{links.GoOn} of 9 links of d go" : "All 9 links of d go on", Joined(PlannedDocumentTests.Text(result.Chosen)), StringComparison.Ordinal);
    }

    /// <summary>A text without its line breaks, so that comments stand in one line.</summary>
    private static string Joined(string text) => string.Join(' ', text.Split('\n').Select(l => l.TrimStart('#', ' ')));

    private static string Text(string brief) => PlannedDocumentTests.Text(Planned(brief).Chosen!);

    private static PlanResult Planned(string text)
    {
        (Brief? brief, ProblemList problems) = BriefReadingTests.Read(text);
        Assert.True(problems.IsEmpty, problems.ToString());
        PlanResult result = Planner.Plan(brief!);
        Assert.True(result.Chosen is not null, string.Join("; ", result.Refusals));
        return result;
    }
}
