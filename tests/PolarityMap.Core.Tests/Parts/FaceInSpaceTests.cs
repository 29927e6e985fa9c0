using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Parts;

/// <summary>Faces of every array size against plugs turned in space.</summary>
public sealed class FaceInSpaceTests
{
    public static TheoryData<int> Sizes => [.. ArrayBase.Sizes];

    // Source: trade facts 2.1, 5 and 7.3: 8 fibres lie in a ferrule of 12 (4 sources), 12, 16, 2x12 and 2x16 fill theirs; the
    // key is in the middle for 8, 12 and 24 (1 source) and to one side for 16 and 32 (from memory, implied by 1 source).
    [Fact]
    public void The_sizes_are_those_of_the_trade_with_their_rows_places_and_keys()
    {
        (int Fibres, int Rows, int Columns, bool OffsetKey)[] trade =
            [(8, 1, 12, false), (12, 1, 12, false), (16, 1, 16, true), (24, 2, 12, false), (32, 2, 16, true)];
        Assert.Equal(trade, ArrayBase.All.Select(b => (b.Fibres, b.Face.Rows, b.Face.Columns, b.Face.OffsetKey)));
        foreach (ArrayBase array in ArrayBase.All)
            Assert.Equal(array.Fibres == 8 ? PartTables.EightOfTwelve : Enumerable.Range(1, array.Fibres), array.Used);
    }

    // Source: trade facts 5, proved from coordinates.
    [Theory]
    [MemberData(nameof(Sizes))]
    public void What_faces_a_position_is_what_touches_it_in_space(int fibres)
    {
        ArrayBase array = ArrayBase.Of(fibres);
        foreach (Keying keys in Enum.GetValues<Keying>())
        {
            FerruleSpace plug = PlugOf(array);
            Dictionary<int, int> touching = plug.Touching(plug, keys == Keying.Opposed);
            Assert.Equal(Enumerable.Range(1, array.Face.Count), touching.Keys.Order());
            Assert.All(touching, t => Assert.Equal(t.Value, array.Face.Facing(keys, t.Key)));

            // A fibre meets a fibre: turning a plug of eight keeps its eight places.
            Assert.Equal(array.Used, array.Used.Select(p => array.Face.Facing(keys, p)).Order());
        }
    }

    // Source: trade facts 5, the typed matings of 1x12, 1x16, 2x12 and 2x16.
    [Fact]
    public void What_faces_a_position_is_what_is_typed_for_its_ferrule()
    {
        foreach ((int fibres, IReadOnlyList<(int From, int To)> aligned, IReadOnlyList<(int From, int To)> opposed) in
            new[]
            {
                (8, PartTables.AdapterTypeB.Joins, PartTables.AdapterTypeA.Joins),
                (12, PartTables.AdapterTypeB.Joins, PartTables.AdapterTypeA.Joins),
                (16, PartTables.SixteenAligned, PartTables.SixteenOpposed),
                (24, PartTables.TwoRowAligned, PartTables.TwoRowOpposed),
                (32, PartTables.ThirtyTwoAligned, PartTables.ThirtyTwoOpposed),
            })
        {
            Face face = ArrayBase.Of(fibres).Face;
            Assert.All(aligned, j => Assert.Equal(j.To, face.Facing(Keying.Aligned, j.From)));
            Assert.All(opposed, j => Assert.Equal(j.To, face.Facing(Keying.Opposed, j.From)));
            Assert.Equal((face.Count, face.Count), (aligned.Count, opposed.Count));
        }
    }

    // Source: trade facts 7.3: the key decides which housings go together, and 12 with 24 goes in without meeting (from memory).
    [Fact]
    public void Plugs_share_an_adapter_when_their_keys_lie_alike_and_their_fibres_meet_only_with_the_same_rows()
    {
        foreach (ArrayBase one in ArrayBase.All)
        {
            foreach (ArrayBase other in ArrayBase.All)
            {
                bool goesIn = PlugOf(one).AdapterTakes(PlugOf(other), opposed: true);
                Assert.Equal(goesIn, one.Face.SharesAdapterWith(other.Face));
                bool meets = goesIn && PlugOf(one).Touching(PlugOf(other), opposed: true).Count > 0;
                Plant plant = new Bench()
                    .Add("X", "array cord", v => Cord(v, one.Fibres))
                    .Add("Y", "array cord", v => Cord(v, other.Fibres))
                    .Add("P", "array panel", v => v.Set("base", one.Fibres))
                    .Mate("X/far", "Y/near", through: "P/1")
                    .Build();
                Assert.Equal(meets, plant.Fits(Assert.Single(plant.Matings)));
            }
        }
    }

    /// <summary>The plug of an array size; a key to one side lies 1 mm beside the middle, which stands for any distance.</summary>
    private static FerruleSpace PlugOf(ArrayBase array) =>
        new(array.IsOneRow ? 1 : 2, array.Fibres is 16 or 32 ? 16 : 12, KeyOffset: array.Fibres is 16 or 32 ? 1 : 0);

    private static void Cord(AttributeValues values, int fibres) =>
        values.Set("base", fibres).Set("type", fibres > 16 ? "reversed-in-row" : "Type-B");
}
