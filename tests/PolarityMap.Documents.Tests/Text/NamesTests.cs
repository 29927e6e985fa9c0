using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Text;

public class NamesTests
{
    [Theory]
    [InlineData("SW-1")]
    [InlineData("7")]
    [InlineData("Room 2.14 (east)")]
    [InlineData("K_1+2#3~4")]
    [InlineData("Außenstelle")]
    [InlineData("機房1")]
    [InlineData("कक्षा")] // with vowels written as marks
    public void Names_of_the_trade_and_of_other_scripts_are_valid(string name)
    {
        Assert.True(Names.IsValid(name, out var why));
        Assert.Equal("", why);
    }

    [Theory]
    [InlineData("", "the name is empty")]
    [InlineData(" a", "the name begins with a space")]
    [InlineData("a ", "the name ends with a space")]
    [InlineData("a  b", "the name has two spaces in a row")]
    [InlineData("-", "the name has no letter or digit")]
    [InlineData("K1/2", "'/' cannot be part of a name")]
    [InlineData("K1:2", "':' cannot be part of a name")]
    [InlineData("a,b", "',' cannot be part of a name")]
    [InlineData("a[1", "'[' cannot be part of a name")]
    [InlineData("a]1", "']' cannot be part of a name")]
    [InlineData("a{1", "'{' cannot be part of a name")]
    [InlineData("a}1", "'}' cannot be part of a name")]
    [InlineData("a\"1", "'\"' cannot be part of a name")]
    [InlineData("a'1", "''' cannot be part of a name")]
    [InlineData("a;1", "';' cannot be part of a name")]
    [InlineData("a\tb", "U+0009 cannot be part of a name")]
    [InlineData("a\nb", "U+000A cannot be part of a name")]
    [InlineData("a\u00A0b", "U+00A0 cannot be part of a name")] // a no-break space looks like a space
    [InlineData("a\u200Bb", "U+200B cannot be part of a name")] // a zero-width space cannot be seen
    [InlineData("a\u202Eb", "U+202E cannot be part of a name")]
    [InlineData("1\u0301", "U+0301 cannot be part of a name")] // a mark on a digit
    public void What_is_wrong_with_a_name_is_said(string name, string expected)
    {
        Assert.False(Names.IsValid(name, out var why));
        Assert.Equal(expected, why);
    }

    [Fact]
    public void Half_a_character_is_no_name()
    {
        Assert.False(Names.IsValid("a" + '\uD834', out var why));
        Assert.Equal("the name holds half of a character; type it again", why);
    }

    [Fact]
    public void Eighty_characters_are_allowed_and_no_more()
    {
        Assert.True(Names.IsValid(new string('a', 80), out _));
        Assert.False(Names.IsValid(new string('a', 81), out var why));
        Assert.Equal("the name has 81 characters, at most 80 are allowed", why);
    }
}
