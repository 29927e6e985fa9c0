using PolarityMap.Core.Planning;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Planning;

/// <summary>Slips that would make a plant which is not meant are errors of the brief, each with its place and what to write.</summary>
public sealed class BriefMistakeTests
{
    private const string Small =
        """
        brief: t
        networks: { d: }
        rooms: { ER: , Hall: { distance: 30 m }, Loft: { distance: 20 m } }
        outlets:
          H[1..9]: { room: Hall, links: { d: 1 } }
          L1: { room: Loft, links: { d: 1 } }
        application: 10GBASE-SR
        fibre: OM4

        """;

    [Theory]
    [InlineData("Hall: { distance: 30 m }", "Hall:", "3:16: Hall has no distance, so it would hold switches beside H[1..9]; expected its 'distance:' from ER, or that of these outlets")]
    [InlineData("room: Loft", "room: ER", "6:3: ER holds switches, and L1 in it has no distance, so their cables would have no length; expected their 'distance:' from the switches, such as 10 m")]
    [InlineData("distance: 30 m }, Loft: { distance: 20 m }", "distance: 30 m, from: ER }, Loft: { distance: 20 m, from: ER }, Two:", "3:88: Two has no distance, so it would hold switches, and nothing is reached from it; expected its 'distance:', 'from: Two' at a room, or no Two")]
    [InlineData("ER: ,", "ER: { from: Hall },", "3:22: ER has no distance, so it holds switches and is reached from no other room; expected its 'distance:' as well, or no 'from:'")]
    [InlineData("distance: 30 m", "distance: 0 m", "3:34: '0 m' is no length for a cable or cord; expected a length above 0 m, such as '62 m'")]
    [InlineData("room: Hall,", "room: Hall, distance: 0 ft,", "5:36: '0 ft' is no length for a cable or cord; expected a length above 0 m, such as '62 m'")]
    [InlineData("fibre: OM4", "fibre: OM4\ncords: { switch: 0.0 m }", "9:18: '0.0 m' is no length for a cable or cord; expected a length above 0 m, such as '62 m'")]
    [InlineData("fibre: OM4", "fibre: OM4\nseparation: gathered", "9:13: no outlet has a distance, so there is no zone box to gather networks in; expected 'distance:' of the outlets, the way on from the zone box, or 'separation: own'")]
    [InlineData("room: Loft, links: { d: 1 } }", "room: ER, distance: 9 m, links: { d: 1 } }\nseparation: gathered", "7:13: ER holds switches, so that the trunks to a zone box for L1 in it would have no length; expected a room with a 'distance:' for them, or 'separation: own'")]
    [InlineData("L1:", "H[5..12]:", "6:3: the outlet H5 is in H[1..9] already, at line 5, and again in H[5..12]; expected each outlet once, with all its links; in another room it has another name")]
    [InlineData("L1:", "L[1..3,2]:", "6:3: the outlet L2 is twice in L[1..3,2]; expected each outlet once")]
    [InlineData("L1:", "L[16..9]:", "6:3: 'L[16..9]' is no name for outlets: outlets count up; expected L[9..16]")]
    [InlineData("L1:", "L[1..15 by 2]:", "6:3: 'L[1..15 by 2]' is no name for outlets: steps are not read in a brief; expected the numbers one by one, such as L[1,3,5]")]
    [InlineData("L1:", "L[01..112]:", "6:3: 'L[01..112]' is no name for outlets: with leading zeros all numbers have as many digits; expected L[001..112]")]
    [InlineData("L1:", "L[1..x]:", "6:3: 'L[1..x]' is no name for outlets: '1..x' is no number and no range; expected numbers such as L[1..16] or L[1..3,7]")]
    [InlineData("L1:", "L[1..4:", "6:3: 'L[1..4' is no name for outlets: a bracket is open")]
    [InlineData("L1:", "1L:", "6:3: '1L' is no name for outlets: it begins with a digit; expected a letter first, such as D1L")]
    [InlineData("L1:", "L+:", "6:3: 'L+' is no name for outlets: '+' cannot be part of it")]
    [InlineData("distance: 30 m", "distance: -3 m", "3:34: '-3 m' is no length: a length is never negative; expected a length such as '62 m'")]
    [InlineData("distance: 30 m", "distance: x", "3:34: 'x' is no length; expected a length such as '62 m'")]
    [InlineData("distance: 30 m", "distance: '58,5 m'", "3:34: '58,5 m' is no length: unknown unit ',5 m'; expected m, cm, mm, km or ft, and decimals with a point")]
    [InlineData("fibre: OM4", "fibre: &a OM4", "8:8: anchors such as '&a' are not read; write it again where it is needed")]
    public void A_slip_is_told_with_its_place_and_what_to_write(string right, string wrong, string expected)
    {
        Assert.Contains(right, Small, StringComparison.Ordinal);
        (Brief? brief, ProblemList problems) = BriefReadingTests.Read(Small.Replace(right, wrong, StringComparison.Ordinal));
        Assert.Null(brief);
        Assert.StartsWith("brief.yaml:" + expected, Assert.Single(problems.Items).ToString(), StringComparison.Ordinal);
    }

    // docs/document.md: leading zeros keep the width; lists of ranges and single numbers.
    [Theory]
    [InlineData("D[08..11]", "D08 D09 D10 D11")]
    [InlineData("F[1..3,7]", "F1 F2 F3 F7")]
    [InlineData("F[7, 1..2]-x", "F7-x F1-x F2-x")]
    [InlineData("BOX", "BOX")]
    [InlineData("BOX[3]", "BOX3")]
    public void Outlets_are_named_as_in_plant_documents(string written, string names)
    {
        (Brief? brief, ProblemList problems) = BriefReadingTests.Read(Small.Replace("L1:", $"'{written}':", StringComparison.Ordinal));
        Assert.True(problems.IsEmpty, problems.ToString());
        Assert.Equal(names.Split(' '), brief!.Outlets.Skip(1).SelectMany(o => Enumerable.Range(0, o.Name.Count).Select(o.Name.At)));
        Assert.All(brief.Outlets.Skip(1), o => Assert.Equal("brief.yaml:6:3", brief.PlaceOf($"outlets.{o.Name}").ToString()));
    }

    [Fact]
    public void A_distance_of_several_groups_is_told_as_the_brief_writes_it()
    {
        (Brief? brief, _) = BriefReadingTests.Read(Small.Replace("L1: { room: Loft,", "'L[1..3,7]': { room: Loft, distance: 700 m,", StringComparison.Ordinal));
        PlanResult result = Planner.Plan(brief! with { Method = PlanMethod.Find("U1"), Base = 8, ArrayLoss = new Core.Optics.Decibel(0.2m), DuplexLoss = new Core.Optics.Decibel(0.1m) });
        Refusal far = result.Refusals.First(r => r.Finding == "L02");
        Assert.Contains(far.Nearest, n => n.Words.StartsWith("outlets.L[1..3,7].distance: at most ", StringComparison.Ordinal));
        Assert.Equal("brief.yaml:6:30", brief!.PlaceOf(far.Requirement).ToString());
    }

    [Fact]
    public void Labels_keep_the_number_at_the_end_of_a_name()
    {
        (Brief? brief, ProblemList problems) = BriefReadingTests.Read(Small.Replace("ER: , Hall: { ", "ER1: , ER2: , Hall: { from: ER1, ", StringComparison.Ordinal)
            .Replace("Loft: {", "Stage 12: { from: ER2,", StringComparison.Ordinal).Replace("room: Loft", "room: Stage 12", StringComparison.Ordinal));
        Assert.True(problems.IsEmpty, problems.ToString());
        Assert.Equal(["ER1", "ER2", "HA", "ST12"], brief!.Rooms.Select(r => r.Label));
    }

    [Fact]
    public void What_nobody_uses_is_remarked()
    {
        (Brief? brief, _) = BriefReadingTests.Read(Small.Replace("{ d: }", "{ d: , e: }", StringComparison.Ordinal).Replace("ER: ,", "ER: , Cellar: { distance: 5 m },", StringComparison.Ordinal));
        Assert.Equal([("networks.e", "No outlet has a link on e"), ("rooms.Cellar", "No outlet is in Cellar")], BriefRemark.Of(brief!).Select(r => (r.About, r.Words)));
    }
}
