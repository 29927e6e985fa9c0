using PolarityMap.Core.Parts;
using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.EndFace;

/// <summary>
/// Which position is drawn at which. What meets what is proved from coordinates (points turned and mirrored) in the fact sheet on
/// polarity; numbers along one row: TIA-604-5, IEC 61754-7 (five public sources), two rows of 12: one source. The numbering of
/// ferrules 16 wide is from memory, so that they are checked by geometry only, in <see cref="FaceGeometryTests"/>.
/// </summary>
public sealed class MeetingTests
{
    [Fact]
    public void One_row_with_keys_aligned_joins_i_to_13_minus_i() => Assert.Equal(
        [("1", "12"), ("2", "11"), ("3", "10"), ("4", "9"), ("5", "8"), ("6", "7"), ("7", "6"), ("8", "5"), ("9", "4"), ("10", "3"), ("11", "2"), ("12", "1")],
        Faces.Pairs(Sheet(12, "Type-B", Keying.Aligned), "kind-1-meets"));

    [Fact]
    public void One_row_with_keys_opposed_joins_equal_numbers() => Assert.Equal(
        [("1", "1"), ("2", "2"), ("3", "3"), ("4", "4"), ("5", "5"), ("6", "6"), ("7", "7"), ("8", "8"), ("9", "9"), ("10", "10"), ("11", "11"), ("12", "12")],
        Faces.Pairs(Sheet(12, "Type-A", Keying.Opposed), "kind-1-meets"));

    [Fact]
    public void Two_rows_with_keys_aligned_keep_the_row_and_turn_it_round()
    {
        DrawingSheet sheet = Sheet(24, "fully-reversed", Keying.Aligned);
        Assert.Equal(
            [("1", "12"), ("2", "11"), ("3", "10"), ("4", "9"), ("5", "8"), ("6", "7"), ("7", "6"), ("8", "5"), ("9", "4"), ("10", "3"), ("11", "2"), ("12", "1")],
            Faces.Pairs(sheet, "kind-1-meets-1"));
        Assert.Equal(
            [("13", "24"), ("14", "23"), ("15", "22"), ("16", "21"), ("17", "20"), ("18", "19"), ("19", "18"), ("20", "17"), ("21", "16"), ("22", "15"), ("23", "14"), ("24", "13")],
            Faces.Pairs(sheet, "kind-1-meets-2"));
    }

    [Fact]
    public void Two_rows_with_keys_opposed_change_places_and_keep_the_column()
    {
        DrawingSheet sheet = Sheet(24, "fully-reversed", Keying.Opposed);
        Assert.Equal(
            [("1", "13"), ("2", "14"), ("3", "15"), ("4", "16"), ("5", "17"), ("6", "18"), ("7", "19"), ("8", "20"), ("9", "21"), ("10", "22"), ("11", "23"), ("12", "24")],
            Faces.Pairs(sheet, "kind-1-meets-1"));
        Assert.Equal(
            [("13", "1"), ("14", "2"), ("15", "3"), ("16", "4"), ("17", "5"), ("18", "6"), ("19", "7"), ("20", "8"), ("21", "9"), ("22", "10"), ("23", "11"), ("24", "12")],
            Faces.Pairs(sheet, "kind-1-meets-2"));
    }

    /// <summary>Eight fibres sit at 1 to 4 and 9 to 12 of a ferrule of 12 (four public sources).</summary>
    [Fact]
    public void Eight_fibres_of_twelve_meet_at_the_outer_places_only() => Assert.Equal(
        [("1", "12"), ("2", "11"), ("3", "10"), ("4", "9"), ("9", "4"), ("10", "3"), ("11", "2"), ("12", "1")],
        Faces.Pairs(Sheet(8, "Type-B", Keying.Aligned), "kind-1-meets"));

    /// <summary>A duplex mating joins A to B (TIA-568, one source; proved). The lower one looks the other way, so its A lies right.</summary>
    [Fact]
    public void A_meets_B_and_B_meets_A()
    {
        DrawingSheet sheet = FacePlants.Duplex().Draw()[0];
        Assert.Equal([("A", "B"), ("B", "A")], Faces.Pairs(sheet, "kind-1-meets"));
        Assert.Contains("A meets B, and B meets A.", Faces.Words(sheet));
    }

    [Fact]
    public void A_simplex_plug_meets_the_position_it_is_put_in()
    {
        DrawingSheet sheet = FacePlants.SimplexInDuplex().Draw()[0];
        Assert.Equal([("A", "")], Faces.Pairs(sheet, "kind-1-meets"));
        Assert.Equal([("B", "")], Faces.Pairs(sheet, "kind-2-meets"));
    }

    /// <summary>Fibre n is spliced to fibre n: the meaning of a splice in this project.</summary>
    [Fact]
    public void Bare_fibres_meet_by_their_numbers() => Assert.Equal(
        [("1", "1"), ("2", "2"), ("3", "3"), ("4", "4"), ("5", "5"), ("6", "6"), ("7", "7"), ("8", "8")],
        Faces.Pairs(FacePlants.Bare(8).Draw()[0], "kind-1-meets"));

    /// <summary>A fibre that meets an empty place is no connection: its line is another than the others.</summary>
    [Fact]
    public void A_line_to_an_empty_place_is_dashed()
    {
        DrawingSheet sheet = new FaceBench()
            .Add("CAS", "cassette", v => v.Set("wiring", "straight").Set("base", 8))
            .Add("TRUNK", "trunk", v => v.Set("type", "Type-B"))
            .Mate("CAS/rear", "TRUNK/near").Draw()[0];
        Line[] dashed = [.. Faces.All(Faces.Group(sheet, "kind-1-meets")).OfType<Line>().Where(l => l.Dash != DashKind.Continuous)];
        Assert.Equal(4, dashed.Length);
        Assert.Equal(12, Faces.Pairs(sheet, "kind-1-meets").Count);
    }

    /// <summary>The rules of the fact sheet, section 5, as they are printed.</summary>
    [Theory]
    [InlineData(12, "Type-B", Keying.Aligned, "Keys aligned: i meets 13 \u2212 i.")]
    [InlineData(12, "Type-A", Keying.Opposed, "Keys opposed: i meets i.")]
    [InlineData(24, "fully-reversed", Keying.Aligned, "1 to 12: i meets 13 \u2212 i. 13 to 24: i meets 37 \u2212 i.")]
    [InlineData(24, "fully-reversed", Keying.Opposed, "1 to 12: i meets i + 12. 13 to 24: i meets i \u2212 12.")]
    public void The_rule_is_said_in_words(int fibres, string type, Keying keys, string rule) =>
        Assert.Contains(rule, Faces.Words(Sheet(fibres, type, keys)).Replace('\n', ' '));

    [Fact]
    public void Nothing_meets_where_the_faces_differ()
    {
        DrawingSheet sheet = FacePlants.Refused().Draw()[0];
        Assert.DoesNotContain(Faces.All(sheet).OfType<SceneGroup>(), g => g.Id is { } id && id.Contains("meets"));
        Assert.Contains("No fibre meets another.", Faces.Words(sheet));
    }

    private static DrawingSheet Sheet(int fibres, string type, Keying keys) => FacePlants.RearAndTrunk(fibres, type, keys).Draw()[0];
}
