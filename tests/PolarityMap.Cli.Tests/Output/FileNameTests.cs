using PolarityMap.Cli.Output;
using Xunit;

namespace PolarityMap.Cli.Tests.Output;

public sealed class FileNameTests
{
    [Theory]
    [InlineData("lighting-1", "lighting-1")]
    [InlineData("../../x", "------x")]
    [InlineData("a b+c.d", "a-b-c-d")]
    [InlineData("con", "con_")]
    [InlineData("Aux", "Aux_")]
    [InlineData("com7", "com7_")]
    [InlineData("com10", "com10")]
    [InlineData("console", "console")]
    [InlineData("", "_")]
    [InlineData("..", "--")]
    [InlineData("\u202Eש", "-ש")]
    public void A_name_stays_in_its_folder_on_every_system(string words, string name) => Assert.Equal(name, FileName.Of(words));

    [Fact]
    public void A_long_name_is_cut_to_what_file_systems_take() =>
        Assert.InRange(System.Text.Encoding.UTF8.GetByteCount(FileName.Of(new string('ש', 300))), 1, 200);
}
