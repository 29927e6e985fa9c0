using PolarityMap.Core.Planning;
using PolarityMap.Documents.Planning;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Planning;

/// <summary>Briefs are read with their units, and what is wrong is told with its place and the nearest word.</summary>
public sealed class BriefReadingTests
{
    private const string Small =
        """
        brief: Small
        networks:
          lighting: { key: K1 }
          sound: { application: 25GBASE-SR, label: SND }
        rooms:
          Equipment room:
          Stage: { distance: 58 m }
        outlets:
          DESK[1..16]: { room: Stage, distance: 22 m, links: { lighting: 1, sound: 2 } }
        application: 10GBASE-SR
        later: 25GBASE-SR
        fibre: OM4
        method: U1
        base: 12
        separation: gathered
        spare: 12.5 %
        slack: 5 % and 2 m
        stock-lengths: [50 m, 10 m]

        """;

    [Fact]
    public void A_brief_is_read_with_its_units_and_usual_values()
    {
        (Brief? brief, ProblemList problems) = Read(Small);
        Assert.True(problems.IsEmpty, problems.ToString());
        Assert.Equal(["LI", "SND"], brief!.Networks.Select(n => n.Label));
        Assert.Equal(["10GBASE-SR", "25GBASE-SR"], brief.Networks.Select(n => n.Application.Name));
        Assert.Equal("25GBASE-SR", brief.Networks[0].Later?.Name);
        Assert.Null(brief.Networks[1].Later);
        Assert.Equal(58_000, brief.Rooms[1].Distance!.Value.Millimetres);
        Assert.Equal(0, brief.Rooms[1].From);
        Assert.Equal("EQ-R1", brief.Rooms[0].Rack);
        Assert.Null(brief.Rooms[1].Rack);
        Assert.Equal([1, 2], brief.Outlets[0].Links);
        Assert.Equal(48, brief.LinkCount);
        Assert.Equal(SeparationPolicy.Gathered, brief.Separation);
        Assert.Equal(12.5m, brief.Spare.Value);
        Assert.Equal((5m, 2_000L), (brief.Slack.Share.Value, brief.Slack.Extra.Millimetres));
        Assert.Equal([10_000, 50_000], brief.StockLengths.Select(l => l.Millimetres));
        Assert.Equal(48, brief.PortsPerSwitch);
        Assert.Equal("brief.yaml:7:12", brief.PlaceOf("rooms.Stage.distance").ToString());
        Assert.Equal("brief.yaml:10:1", brief.PlaceOf("networks.lighting.application").ToString());
        Assert.Equal("brief.yaml:4:12", brief.PlaceOf("networks.sound.application").ToString());
        Assert.Equal("brief.yaml:11:1", brief.PlaceOf("networks.sound.later").ToString());
    }

    [Theory]
    [InlineData("fibre: OM4", "fibre: OM6", "brief.yaml:12:8: 'OM6' is no fibre; expected one of OM1, OM2, OM3, OM4, OM5, OS1, OS1a, OS2; did you mean 'OM5'?")]
    [InlineData("method: U1", "method: D", "brief.yaml:13:9: 'D' is no method; expected one of A, B, C, U1, U2, compare")]
    [InlineData("base: 12", "base: 10", "brief.yaml:14:7: '10' is no base; expected one of 8, 12, 16, 24, compare; did you mean '12'?")]
    [InlineData("separation: gathered", "separation: gatherd", "brief.yaml:15:13: 'gatherd' is no separation; expected one of own, gathered; did you mean 'gathered'?")]
    [InlineData("spare: 12.5 %", "spare: 12.5", "brief.yaml:16:8: '12.5' is no share: a share needs its sign: write '12.5 %'; expected a share such as '25 %'")]
    [InlineData("slack: 5 % and 2 m", "slack: 5", "brief.yaml:17:8: '5' is no slack; expected a share, a length, or both: '5 %', '3 m', '5 % and 3 m'")]
    [InlineData("distance: 58 m", "distance: 58", "brief.yaml:7:22: '58' is no length: a length needs its unit: write '58 m'; expected a length such as '62 m'")]
    [InlineData("room: Stage", "room: Stag", "brief.yaml:9:24: there is no room 'Stag'; expected one of Equipment room, Stage; did you mean 'Stage'?")]
    [InlineData("{ lighting: 1,", "{ lightning: 1,", "brief.yaml:9:56: there is no network 'lightning'; expected one of lighting, sound; did you mean 'lighting'?")]
    [InlineData("lighting: 1,", "lighting: one,", "brief.yaml:9:66: 'one' is no number of links; expected a whole number from 0 to 1000")]
    [InlineData("DESK[1..16]", "DESK[1..16]-[1..2]", "brief.yaml:9:3: 'DESK[1..16]-[1..2]' is no name for outlets: it has more than one pair of brackets; expected a name such as DESK, or with numbers in one pair of brackets, DESK[1..16], D[01..12], F[1..3,7]; letters, digits, - _ . with a letter first")]
    [InlineData("label: SND", "label: LI", "brief.yaml:4:44: the label LI is taken; expected a label of its own for each")]
    [InlineData("Equipment room:", "Equipment room: { distance: 5 m }", "brief.yaml:6:3: every room has a distance, and switches stand in a room without one; expected a room such as 'Equipment room:' with no distance")]
    [InlineData("application: 10GBASE-SR\n", "", "brief.yaml:3:3: it is not said what lighting is for; expected 'application:' here or for all networks, such as 10GBASE-SR")]
    [InlineData("fibre: OM4\n", "", "brief.yaml:1:1: the brief has no 'fibre:'; expected 'fibre:' with a class such as OM4")]
    [InlineData("brief: Small", "breif: Small", "brief.yaml:1:1: a brief has no key 'breif'")]
    [InlineData("stock-lengths: [50 m, 10 m]", "stock-lengths: []", "brief.yaml:18:16: stock-lengths is empty; expected lengths such as [10 m, 25 m, 50 m]")]
    [InlineData("base: 12", "base: 12\nweights: { kinds: many }", "brief.yaml:15:19: 'many' is no weight; expected a number from 0 to 1000")]
    [InlineData("base: 12", "base: 12\nweights: { kind: 3 }", "brief.yaml:15:12: weights has no key 'kind'")]
    [InlineData("base: 12", "base: 12\nprices: ../prices.csv", "brief.yaml:15:9: '../prices.csv' leaves the folder of this document")]
    [InlineData("base: 12", "base: 12\nprices: [1]", "brief.yaml:15:9: prices names a price list; expected a price list in the folder of the brief, such as 'prices.csv'")]
    public void What_is_wrong_is_told_with_its_place(string right, string wrong, string expected)
    {
        Assert.Contains(right, Small, StringComparison.Ordinal);
        (Brief? brief, ProblemList problems) = Read(Small.Replace(right, wrong, StringComparison.Ordinal));
        Assert.Null(brief);
        Assert.Contains(problems.Items, p => p.ToString().StartsWith(expected, StringComparison.Ordinal));
    }

    [Fact]
    public void A_plant_is_told_from_a_brief()
    {
        (Brief? brief, ProblemList problems) = Read("plant: A plant\nparts:\n  SW: duplex interface\n");
        Assert.Null(brief);
        Assert.StartsWith("brief.yaml:2:1: this is a plant document, not a brief", Assert.Single(problems.Items).ToString(), StringComparison.Ordinal);
    }

    internal static (Brief? Brief, ProblemList Problems) Read(string text)
    {
        var problems = new ProblemList();
        return (BriefDocument.Read("brief.yaml", new TextSource("brief.yaml", text), problems), problems);
    }
}
