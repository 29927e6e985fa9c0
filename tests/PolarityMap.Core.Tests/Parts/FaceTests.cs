using PolarityMap.Core.Parts;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Parts;

public sealed class FaceTests
{
    public static TheoryData<int, int> Faces => new() { { 1, 1 }, { 1, 2 }, { 1, 8 }, { 1, 12 }, { 1, 16 }, { 2, 12 }, { 2, 16 }, { 3, 5 } };

    // Source: trade facts 5, proved from coordinates: the reference model places the holes and looks which ones touch.
    [Theory]
    [MemberData(nameof(Faces))]
    public void Positions_touch_as_the_coordinates_of_their_holes_say(int rows, int columns)
    {
        var face = new Face(ConnectorFamily.Array, rows, columns);
        foreach (Keying keys in Enum.GetValues<Keying>())
        {
            Dictionary<int, int> touching = SlowModel.Mating(rows, columns, keys == Keying.Opposed);
            Assert.Equal(face.Count, touching.Count);
            Assert.All(touching, t => Assert.Equal(t.Value, face.Facing(keys, t.Key)));
        }
    }

    [Theory]
    [MemberData(nameof(Faces))]
    public void What_touches_is_touched_back_and_no_two_positions_touch_the_same(int rows, int columns)
    {
        var face = new Face(ConnectorFamily.Array, rows, columns);
        foreach (Keying keys in Enum.GetValues<Keying>())
        {
            int[] positions = [.. Enumerable.Range(1, face.Count)];
            Assert.All(positions, p => Assert.Equal(p, face.Facing(keys, face.Facing(keys, p))));
            Assert.Equal(positions, positions.Select(p => face.Facing(keys, p)).Order());
        }
    }

    // Source: trade facts 2.3, TIA-568, 5 sources; proved.
    [Fact]
    public void Adapters_join_one_row_as_the_typed_tables_say()
    {
        foreach (AdapterRow adapter in (AdapterRow[])[PartTables.AdapterTypeA, PartTables.AdapterTypeB])
        {
            Keying keys = KeyingWords.Parse(adapter.Keys);
            Assert.All(adapter.Joins, j => Assert.Equal(j.To, ArrayBase.Of(12).Face.Facing(keys, j.From)));
            Assert.Equal(ArrayBase.Of(12).Face.Count, adapter.Joins.Count);
        }
    }

    // Source: trade facts 5, 2x12: numbering 1 source, proved from coordinates.
    [Fact]
    public void Two_rows_of_twelve_meet_as_the_typed_tables_say()
    {
        var face = new Face(ConnectorFamily.Array, 2, 12);
        Assert.All(PartTables.TwoRowAligned, j => Assert.Equal(j.To, face.Facing(Keying.Aligned, j.From)));
        Assert.All(PartTables.TwoRowOpposed, j => Assert.Equal(j.To, face.Facing(Keying.Opposed, j.From)));
    }

    // Source: trade facts 1, rule 3: a duplex mating joins A to B. 1 source; proved.
    [Fact]
    public void A_duplex_mating_joins_a_to_b()
    {
        foreach ((char near, char far) in (ReadOnlySpan<(char, char)>)[('A', PartTables.DuplexMating.NearAReaches), ('B', PartTables.DuplexMating.NearBReaches)])
        {
            Assert.True(Face.Duplex.TryParsePosition($"{near}", out int position));
            Assert.Equal($"{far}", Face.Duplex.PositionName(Face.Duplex.Facing(Keying.Aligned, position)));
        }
    }

    [Theory]
    [InlineData("duplex", "A,B")]
    [InlineData("12-position array", "1,2,3,4,5,6,7,8,9,10,11,12")]
    public void Position_names_read_back(string words, string names)
    {
        Face face = words == "duplex" ? Face.Duplex : ArrayBase.Of(12).Face;
        Assert.Equal(words, face.ToString());
        string[] expected = names.Split(',');
        for (int position = 1; position <= face.Count; position++)
        {
            Assert.Equal(expected[position - 1], face.PositionName(position));
            Assert.True(face.TryParsePosition(face.PositionName(position), out int again));
            Assert.Equal(position, again);
        }
    }

    [Theory]
    [InlineData("C")]
    [InlineData("1")]
    [InlineData("AB")]
    [InlineData("")]
    public void A_duplex_face_has_no_other_positions_than_a_and_b(string name) =>
        Assert.False(Face.Duplex.TryParsePosition(name, out _));

    [Theory]
    [InlineData("0")]
    [InlineData("13")]
    [InlineData("-1")]
    [InlineData("A")]
    [InlineData(" 1")]
    [InlineData("99999999999")]
    [InlineData("")]
    public void A_one_row_array_has_no_other_positions_than_1_to_12(string name) =>
        Assert.False(ArrayBase.Of(12).Face.TryParsePosition(name, out _));

    [Theory]
    [InlineData("opposed", Keying.Opposed)]
    [InlineData("aligned", Keying.Aligned)]
    public void Keying_words_read_back(string word, Keying keys)
    {
        Assert.Equal(keys, KeyingWords.Parse(word));
        Assert.Equal(word, keys.Word());
    }

    [Fact]
    public void Another_word_is_no_keying()
    {
        Assert.False(KeyingWords.TryParse("up", out _));
        Assert.Throws<ArgumentException>(() => KeyingWords.Parse("Aligned"));
    }
}
