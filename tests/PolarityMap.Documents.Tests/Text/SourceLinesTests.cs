using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Text;

public class SourceLinesTests
{
    // Each mark of the string below stands for the place of the character at that index, counted by hand.
    [Theory]
    [InlineData(0, 1, 1)] // a
    [InlineData(1, 1, 2)] // CR of CR LF
    [InlineData(2, 1, 3)] // LF of CR LF
    [InlineData(3, 2, 1)] // b
    [InlineData(4, 2, 2)] // LF
    [InlineData(5, 3, 1)] // lone CR
    [InlineData(6, 4, 1)] // c
    [InlineData(7, 4, 2)] // the end
    [InlineData(99, 4, 2)]
    public void Every_kind_of_line_break_ends_one_line(int index, int line, int column) =>
        Assert.Equal(new SourcePlace("p", line, column), SourceLines.PlaceAt("a\r\nb\n\rc", index, "p"));

    [Theory]
    [InlineData(0, "ab")]
    [InlineData(2, "ab")]
    [InlineData(4, "cd")]
    [InlineData(6, "cd")]
    [InlineData(7, "")]
    public void The_line_around_an_index_comes_without_its_break(int index, string line) =>
        Assert.Equal(line, SourceLines.LineAt("ab\r\ncd\n", index).ToString());
}
