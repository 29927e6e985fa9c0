using CsCheck;
using PolarityMap.Core.Optics;
using Xunit;

namespace PolarityMap.Core.Tests.Optics;

public sealed class DecibelTests
{
    [Theory]
    [InlineData("0.35 dB", "0.35")]
    [InlineData("0.35dB", "0.35")]
    [InlineData("  2   dB ", "2")]
    [InlineData(".5 dB", "0.5")]
    [InlineData("0 dB", "0")]
    [InlineData("0.168 dB", "0.168")]
    [InlineData("100 dB", "100")]
    public void A_number_with_its_unit_is_read_exactly(string text, string number)
    {
        Assert.True(Decibel.TryParse(text, out Decibel loss, out string why), why);
        Assert.Equal(decimal.Parse(number), loss.Value);
        Assert.Equal("", why);
    }

    [Theory]
    [InlineData("0.35", "write '0.35 dB'")]
    [InlineData(" 3 ", "write '3 dB'")]
    public void A_bare_number_is_refused_with_the_unit_to_add(string text, string advice)
    {
        Assert.False(Decibel.TryParse(text, out Decibel loss, out string why));
        Assert.Contains(advice, why);
        Assert.Equal(default, loss);
    }

    [Theory]
    [InlineData("-0.35 dB")]
    [InlineData(" -1 dB")]
    [InlineData("\u22121 dB")]
    [InlineData("-1")]
    public void A_negative_loss_is_refused(string text)
    {
        Assert.False(Decibel.TryParse(text, out _, out string why));
        Assert.Equal("a loss is never negative", why);
    }

    [Theory]
    [InlineData("0.35 db", "unknown unit 'db'; expected dB")]
    [InlineData("0.35 dBm", "unknown unit 'dBm'; expected dB")]
    [InlineData("3 dB/km", "unknown unit 'dB/km'; expected dB")]
    [InlineData("0,35 dB", "decimals with a point")]
    public void Another_unit_is_quoted(string text, string part)
    {
        Assert.False(Decibel.TryParse(text, out Decibel loss, out string why));
        Assert.Contains(part, why);
        Assert.Equal(default, loss);
    }

    [Theory]
    [InlineData("")]
    [InlineData("dB")]
    [InlineData("+1 dB")]
    [InlineData("1.2.3 dB")]
    [InlineData(". dB")]
    [InlineData("low")]
    public void Anything_that_does_not_begin_with_a_number_is_refused_with_an_example(string text)
    {
        Assert.False(Decibel.TryParse(text, out _, out string why));
        Assert.Contains("such as '0.35 dB'", why);
    }

    [Theory]
    [InlineData("100.01 dB")]
    [InlineData("79228162514264337593543950335 dB")]
    public void More_than_a_hundred_decibels_are_refused(string text)
    {
        Assert.False(Decibel.TryParse(text, out _, out string why));
        Assert.Contains("100 dB", why);
    }

    [Theory]
    [InlineData("0.35", "0.35 dB")]
    [InlineData("0", "0.00 dB")]
    [InlineData("6", "6.00 dB")]
    [InlineData("0.125", "0.13 dB")]
    [InlineData("0.145", "0.15 dB")]
    [InlineData("0.1449", "0.14 dB")]
    [InlineData("-0.125", "-0.13 dB")]
    [InlineData("-0.004", "0.00 dB")]
    [InlineData("11.048", "11.05 dB")]
    public void It_is_printed_with_two_decimals_halves_away_from_zero(string number, string printed) =>
        Assert.Equal(printed, new Decibel(decimal.Parse(number)).ToString());

    // Source: arithmetic. A tenth has no exact binary fraction; ten of them must still be one.
    [Fact]
    public void Ten_tenths_are_one()
    {
        Decibel sum = Decibel.Zero;
        for (int i = 0; i < 10; i++)
            sum += new Decibel(0.1m);
        Assert.Equal(new Decibel(1m), sum);
        Assert.Equal(sum, new Decibel(0.1m) * 10);
        Assert.Equal(sum, 10 * new Decibel(0.1m));
    }

    [Fact]
    public void Margin_is_limit_less_loss_and_may_be_negative()
    {
        Decibel margin = new Decibel(1.5m) - new Decibel(1.61m);
        Assert.Equal(-0.11m, margin.Value);
        Assert.True(margin < Decibel.Zero);
        Assert.Equal(new Decibel(0.11m), -margin);
    }

    [Fact]
    public void Order_is_the_order_of_the_numbers()
    {
        Gen.Select(Gen.Int[-10_000, 10_000], Gen.Int[-10_000, 10_000]).Sample((a, b) =>
        {
            var x = new Decibel(a / 100m);
            var y = new Decibel(b / 100m);
            Assert.Equal(a < b, x < y);
            Assert.Equal(a > b, x > y);
            Assert.Equal(a <= b, x <= y);
            Assert.Equal(a >= b, x >= y);
            Assert.Equal(Math.Sign(a.CompareTo(b)), Math.Sign(x.CompareTo(y)));
            Assert.Equal(Math.Max(a, b) / 100m, Decibel.Max(x, y).Value);
            Assert.Equal(Math.Min(a, b) / 100m, Decibel.Min(x, y).Value);
        });
    }

    [Fact]
    public void What_is_printed_of_whole_hundredths_reads_back_the_same()
    {
        Gen.Int[0, 10_000].Sample(hundredths =>
        {
            var loss = new Decibel(hundredths / 100m);
            Assert.True(Decibel.TryParse(loss.ToString(), out Decibel read, out string why), why);
            Assert.Equal(loss, read);
        });
    }
}
