using Xunit;

namespace PolarityMap.Core.Tests.Oracles;

/// <summary>Plugs in space give the typed matings and wedges, and the flat reference model. No product code is called.</summary>
public sealed class FerruleSpaceTests
{
    // Source: trade facts 5, every row of the table; numbering as said beside the typed tables, the rest proved.
    [Fact]
    public void Plugs_put_against_each_other_touch_as_the_typed_matings_say()
    {
        AssertTouching(new FerruleSpace(1, 12), opposed: true, PartTables.AdapterTypeA.Joins);
        AssertTouching(new FerruleSpace(1, 12), opposed: false, PartTables.AdapterTypeB.Joins);
        AssertTouching(new FerruleSpace(1, 16, KeyOffset: 1), opposed: true, PartTables.SixteenOpposed);
        AssertTouching(new FerruleSpace(1, 16, KeyOffset: 1), opposed: false, PartTables.SixteenAligned);
        AssertTouching(new FerruleSpace(2, 12), opposed: true, PartTables.TwoRowOpposed);
        AssertTouching(new FerruleSpace(2, 12), opposed: false, PartTables.TwoRowAligned);
        AssertTouching(new FerruleSpace(2, 16, KeyOffset: 1), opposed: true, PartTables.ThirtyTwoOpposed);
        AssertTouching(new FerruleSpace(2, 16, KeyOffset: 1), opposed: false, PartTables.ThirtyTwoAligned);
    }

    // Source: geometry. A one-row plug against one of two rows: the rows do not line up (trade facts 7.3, from memory).
    [Theory]
    [InlineData(0.25)]
    [InlineData(0.5)]
    public void The_distance_of_the_rows_changes_nothing_and_one_row_touches_no_hole_of_two(double rowPitch)
    {
        foreach (var columns in new[] { 12, 16 })
        {
            foreach (var opposed in new[] { false, true })
            {
                var twoRows = new FerruleSpace(2, columns, rowPitch);
                Assert.Equal(SlowModel.Mating(2, columns, opposed), twoRows.Touching(twoRows, opposed));
                Assert.Empty(new FerruleSpace(1, columns).Touching(twoRows, opposed));
            }
        }
    }

    // Source: trade facts 7.3: 12 and 24 have their key in the middle (1 source), 16 and 32 to one side (from memory, implied
    // by 1 source). To which side is not said, so both are tried.
    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void A_key_to_one_side_and_one_in_the_middle_never_take_the_same_adapter(double offset)
    {
        foreach (var opposed in new[] { false, true })
        {
            var middle = new FerruleSpace(1, 12);
            var side = new FerruleSpace(1, 16, KeyOffset: offset);
            Assert.True(middle.AdapterTakes(middle, opposed));
            Assert.True(side.AdapterTakes(side, opposed));
            Assert.True(middle.AdapterTakes(new FerruleSpace(2, 12), opposed));
            Assert.True(side.AdapterTakes(new FerruleSpace(2, 16, KeyOffset: offset), opposed));
            Assert.False(middle.AdapterTakes(side, opposed));
            Assert.False(side.AdapterTakes(middle, opposed));
        }
    }

    // Source: trade facts 1, rule 6: aligned is key up to key up, opposed key up to key down.
    [Fact]
    public void The_key_of_the_other_plug_is_up_when_aligned_and_down_when_opposed()
    {
        var plug = new FerruleSpace(1, 16, KeyOffset: 1);
        Assert.True(FerruleSpace.PutAgainst(plug.Key, opposed: false).Y > 0);
        Assert.True(FerruleSpace.PutAgainst(plug.Key, opposed: true).Y < 0);
        Assert.True(FerruleSpace.PutAgainst(plug.Key, opposed: false).X < 0);
        Assert.True(FerruleSpace.PutAgainst(plug.Key, opposed: true).X > 0);
    }

    // Source: trade facts 10, end faces, and 7.2.
    [Fact]
    public void The_wedge_between_two_end_faces_is_the_typed_one_from_either_side()
    {
        Assert.Equal(12, WedgeTable.Rows.Select(r => (r.One, r.Other, r.Keys)).Distinct().Count());
        foreach (var row in WedgeTable.Rows)
        {
            Assert.Equal(row.Degrees, FerruleSpace.WedgeDegrees(row.One, row.Other, row.Keys == "opposed"), 6);
            Assert.Equal(row.Degrees, FerruleSpace.WedgeDegrees(row.Other, row.One, row.Keys == "opposed"), 6);
        }
    }

    private static void AssertTouching(FerruleSpace plug, bool opposed, IReadOnlyList<(int From, int To)> typed)
    {
        Assert.Equal(plug.Rows * plug.Columns, typed.Count);
        Assert.Equal(typed.ToDictionary(t => t.From, t => t.To), plug.Touching(plug, opposed));
    }
}
