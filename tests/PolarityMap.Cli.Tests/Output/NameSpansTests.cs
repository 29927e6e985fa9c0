using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Cli.Tests.Output;

/// <summary>Names in spans. A span stands for three names or more that count up by one; what it stands for can be counted by hand.</summary>
public sealed class NameSpansTests
{
    [Theory]
    [InlineData("A1", "A1")]
    [InlineData("A1 A2", "A1, A2")]
    [InlineData("A1 A2 A3", "A1 … A3")]
    [InlineData("A1 A2 A4 A5 A6", "A1, A2, A4 … A6")]
    [InlineData("A1 A3 A5", "A1, A3, A5")]
    [InlineData("A1 B2 A3", "A1, B2, A3")]
    [InlineData("A3 A2 A1", "A3, A2, A1")]
    [InlineData("A09 A10 A11", "A09 … A11")]
    [InlineData("K1/1 K1/2 K1/3 K2/1 K2/2 K2/3", "K1/1 … K1/3, K2/1 … K2/3")]
    [InlineData("Z1/rear~D1/near Z2/rear~D2/near Z3/rear~D3/near", "Z1/rear~D1/near … Z3/rear~D3/near")]
    [InlineData("Z1~D1 Z2~D2 Z3~D2 Z4~D2", "Z1~D1, Z2~D2 … Z4~D2")]
    [InlineData("A1 A2 A3x", "A1, A2, A3x")]
    [InlineData("LEFT RIGHT", "LEFT, RIGHT")]
    [InlineData("A C E G I K", "A, C, E, G and 2 more")]
    [InlineData("A99999999999999999999 A100000000000000000000 A7", "A99999999999999999999, A100000000000000000000, A7")]
    public void Names_that_count_up_are_told_by_the_first_and_the_last(string names, string words) =>
        Assert.Equal(words, NameSpans.Of(names.Split(' ')));
}
