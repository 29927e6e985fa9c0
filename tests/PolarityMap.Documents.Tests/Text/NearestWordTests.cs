using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Text;

public class NearestWordTests
{
    // Worked by hand from the definition. "ca" to "abc" is 3 because no letter may be edited twice; the unrestricted
    // distance would be 2.
    [Theory]
    [InlineData("length", "length", 0)]
    [InlineData("LENGTH", "length", 0)]
    [InlineData("lenght", "length", 1)]
    [InlineData("lengt", "length", 1)]
    [InlineData("lenngth", "length", 1)]
    [InlineData("lemgth", "length", 1)]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("ca", "abc", 3)]
    [InlineData("abcd", "badc", 2)]
    [InlineData("", "abc", 3)]
    [InlineData("abc", "", 3)]
    public void Distances_agree_with_hand_worked_ones(string left, string right, int distance)
    {
        Assert.Equal(distance, NearestWord.Distance(left, right));
        Assert.Equal(distance, NearestWord.Distance(right, left));
    }

    [Theory]
    [InlineData("lenght", "length")]
    [InlineData("Type", "type")]
    [InlineData("tpye", "type")]
    [InlineData("legz", "legs")]
    [InlineData("cassete", "cassette")]
    public void A_slip_finds_the_word_that_was_meant(string word, string meant) =>
        Assert.Equal(meant, NearestWord.Find(word, ["length", "type", "legs", "cassette"]));

    [Theory]
    [InlineData("colour")]
    [InlineData("tips")] // two letters from type, and four letters allow one
    [InlineData("x")]
    [InlineData("")]
    public void A_word_that_is_far_from_all_finds_nothing(string word) =>
        Assert.Null(NearestWord.Find(word, ["length", "type", "legs", "cassette", "q"]));

    [Fact]
    public void Of_equally_near_words_the_first_wins()
    {
        Assert.Equal("SW-2", NearestWord.Find("SW-9", ["SW-2", "SW-1", "SW-3"]));
        Assert.Equal("SW-19", NearestWord.Find("SW-91", ["SW-19", "SW-11"]));
        Assert.Equal("SW-11", NearestWord.Find("SW-91", ["SW-11", "SW-19"]));
    }

    [Fact]
    public void A_nearer_word_wins_over_an_earlier_one() =>
        Assert.Equal("trunk", NearestWord.Find("trukn", ["trukan!", "trunk"]));

    [Fact]
    public void A_word_of_more_than_a_hundred_letters_finds_nothing_at_once()
    {
        var word = new string('a', 101);

        Assert.Null(NearestWord.Find(word, [word, new string('a', 100)]));
        Assert.Equal(word[1..], NearestWord.Find(word[1..], [word, word[1..]]));
    }
}
