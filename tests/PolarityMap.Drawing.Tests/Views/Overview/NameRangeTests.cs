using CsCheck;
using PolarityMap.Drawing.Views.Overview;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Overview;

public sealed class NameRangeTests
{
    [Theory]
    [InlineData("K1", "K1")]
    [InlineData("K1,K2", "K1, K2")]
    [InlineData("K1,K2,K3,K4", "K1 … K4")]
    [InlineData("K10,K9,K8", "K8 … K10")]
    [InlineData("K1,K2,K3,K7", "K1 … K3, K7")]
    [InlineData("A,B", "A, B")]
    [InlineData("K1,K3,K5,K7", "K1 … K7")]
    [InlineData("A1-L,A2-L,A3-L", "A1-L … A3-L")]
    [InlineData("", "")]
    public void Names_are_told_in_few_words(string names, string words) =>
        Assert.Equal(words, NameRange.Of([.. names.Split(',', StringSplitOptions.RemoveEmptyEntries)]));

    /// <summary>Against the count of pairs that stand the wrong way round, which is what an inversion is.</summary>
    [Fact]
    public void Inversions_are_counted_as_pairs_are() => Gen.Int[0, 9].Array[0, 40].Sample(values =>
    {
        long pairs = 0;
        for (int i = 0; i < values.Length; i++)
        {
            for (int j = i + 1; j < values.Length; j++)
                pairs += values[i] > values[j] ? 1 : 0;
        }

        Assert.Equal(pairs, Inversions.Of([.. values]));
    });
}
