using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>The fault catalogue of the trade facts, section 3.3: one part wrong, what meets what, and what the checker says.</summary>
public sealed class FaultTableTests
{
    public static TheoryData<int> Rows => [.. Enumerable.Range(0, FaultTable.Rows.Count)];

    // Source: trade facts 3.3, every row proved.
    [Theory]
    [MemberData(nameof(Rows))]
    public void The_left_transmitters_meet_what_the_catalogue_says(int row)
    {
        FaultRow fault = FaultTable.Rows[row];
        TracedPlant traced = Faulty(fault).Trace();
        Assert.Equal(6, fault.LeftTransmitters.Count);
        foreach (FaultMeeting meeting in fault.LeftTransmitters)
            Assert.Equal((meeting.RightPort, meeting.Meets), traced.Answer(meeting.LeftPort, "Tx"));
    }

    // Source: the landings of trade facts 3.3; which code names which landing is the rules' own text.
    [Theory]
    [MemberData(nameof(Rows))]
    public void The_findings_name_the_fault(int row)
    {
        FaultRow fault = FaultTable.Rows[row];
        Assert.Equal(ExpectedCodes(fault), Faulty(fault).Check().Select(f => f.Rule.Code).Distinct().Order(StringComparer.Ordinal));
    }

    // Source: as above; a link has no direction, so it may be written from either end.
    [Theory]
    [MemberData(nameof(Rows))]
    public void The_findings_are_the_same_when_the_links_are_written_from_the_right(int row)
    {
        FaultRow fault = FaultTable.Rows[row];
        Bench turned = Bare(fault);
        for (int port = 1; port <= 6; port++)
            turned.Link($"R/{port}", $"L/{port}");
        Assert.Equal(Faulty(fault).Codes(), turned.Codes());
    }

    // Source: trade facts 3.3, last row: not visible as a polarity fault. Proved.
    [Fact]
    public void Both_adapters_exchanged_for_the_other_kind_raise_no_finding_in_any_method()
    {
        FaultRow[] rows = [.. FaultTable.Rows.Where(r => r.Changed == "both-adapters")];
        Assert.Equal(5, rows.Length);
        Assert.All(rows, r => Assert.Equal("", Faulty(r).Codes()));
    }

    // Source: trade facts 3.3: reversed order is one fault of the array, not six of the ports.
    [Fact]
    public void Reversed_port_order_is_one_finding_for_all_six_links()
    {
        FaultRow fault = FaultTable.Rows.Single(r => r.Method == "B" && r.Changed == "right-transition");
        Finding finding = Assert.Single(Faulty(fault).Check());
        Assert.Equal([0, 1, 2, 3, 4, 5], finding.Links);
        Assert.Equal(12, finding.Strands.Count);
    }

    // Source: trade facts 3.3, methods with one A-to-A cord: every port is dead, and each is told with both strands.
    [Fact]
    public void Transmit_on_transmit_throughout_is_told_port_by_port_with_both_strands()
    {
        FaultRow fault = FaultTable.Rows.First(r => r.Method == "A" && r.Changed == "right-cord");
        IReadOnlyList<Finding> findings = Faulty(fault).Check();
        Assert.Equal(6, findings.Count);
        Assert.Equal([0, 1, 2, 3, 4, 5], findings.Select(f => Assert.Single(f.Links)));
        Assert.All(findings, f => Assert.Equal(2, f.Strands.Count));
        Assert.All(findings, f => Assert.Contains("and so do their receivers", f.Message));
    }

    private static Bench Faulty(FaultRow fault) => Channels.Links(Bare(fault), 6);

    private static Bench Bare(FaultRow fault)
    {
        (string leftCord, LinkParts link, string rightCord) = Ingredients(fault);
        return Channels.Series([leftCord, rightCord], [link], 12);
    }

    private static (string LeftCord, LinkParts Link, string RightCord) Ingredients(FaultRow fault)
    {
        MethodIngredients good = MethodTables.IngredientsOf(fault.Method);
        string Or(string standard, params string[] places) => places.Contains(fault.Changed) ? fault.To : standard;
        var link = new LinkParts(
            good.LeftTransition,
            Or(good.Adapters, "left-adapter", "both-adapters"),
            Or(good.Trunk, "trunk"),
            Or(good.Adapters, "right-adapter", "both-adapters"),
            Or(good.RightTransition, "right-transition"));
        return (Or(good.LeftCord, "left-cord"), link, Or(good.RightCord, "right-cord"));
    }

    /// <summary>
    /// D04 where all ports come out in reversed order, D01 where they come out elsewhere; P01 where two transmitters meet,
    /// and P02 where two receivers meet whose transmitters do not, which the reference model tells.
    /// </summary>
    private static List<string> ExpectedCodes(FaultRow fault)
    {
        (string leftCord, LinkParts parts, string rightCord) = Ingredients(fault);
        SlowLink link = parts.Slow();
        var codes = new List<string>();
        if (fault.LeftTransmitters.Any(m => m.RightPort != m.LeftPort))
            codes.Add(fault.LeftTransmitters.All(m => m.RightPort == 7 - m.LeftPort) ? "D04" : "D01");
        HashSet<(int, int)> transmit = [.. fault.LeftTransmitters.Where(m => m.Meets == "Tx").Select(m => (m.LeftPort, m.RightPort))];
        if (transmit.Count > 0)
            codes.Add("P01");
        for (int port = 1; port <= 6 && !codes.Contains("P02"); port++)
        {
            if (SlowModel.Answer(leftCord, link, rightCord, port, "Rx") is (int right, "Rx") && !transmit.Contains((port, right)))
                codes.Add("P02");
        }

        return codes;
    }
}
