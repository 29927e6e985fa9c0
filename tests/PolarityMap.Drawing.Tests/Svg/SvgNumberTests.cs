using System.Globalization;
using PolarityMap.Drawing.Svg;
using Xunit;

namespace PolarityMap.Drawing.Tests.Svg;

public sealed class SvgNumberTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(-0.0, "0")]
    [InlineData(-0.0004, "0")]
    [InlineData(0.0005, "0.001")]
    [InlineData(-0.0005, "-0.001")]
    [InlineData(1, "1")]
    [InlineData(210, "210")]
    [InlineData(279.4, "279.4")]
    [InlineData(0.7, "0.7")]
    [InlineData(0.25, "0.25")]
    [InlineData(0.05, "0.05")]
    [InlineData(0.005, "0.005")]
    [InlineData(10.05, "10.05")]
    [InlineData(100.5, "100.5")]
    [InlineData(1000, "1000")]
    [InlineData(-12.3456, "-12.346")]
    [InlineData(0.9996, "1")]
    [InlineData(999999999, "999999999")]
    public void A_number_is_written_as_short_as_three_decimals_allow(double value, string text) =>
        Assert.Equal(text, Write(value));

    [Fact]
    public void Any_number_reads_back_within_half_a_thousandth_and_has_the_short_form()
    {
        // Fixed seed; the oracle is the base library's own formatting of a decimal.
        var random = new Random(17);
        for (int i = 0; i < 20_000; i++)
        {
            double value = (random.NextDouble() - 0.5) * Math.Pow(10, random.Next(-4, 7));
            string text = Write(value);
            Assert.True(Math.Abs(double.Parse(text, CultureInfo.InvariantCulture) - value) <= 0.0005 + 1e-9, text);
            Assert.Equal(decimal.Parse(text, CultureInfo.InvariantCulture).ToString("0.###", CultureInfo.InvariantCulture), text);
        }
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(1e9)]
    public void A_number_that_is_no_length_is_refused(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Write(value));

    private static string Write(double value)
    {
        var output = new Utf8Text(8);
        SvgNumber.Append(output, value);
        return output.ToString();
    }
}
