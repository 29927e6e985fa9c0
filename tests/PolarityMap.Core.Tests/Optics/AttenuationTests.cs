using CsCheck;
using PolarityMap.Core.Optics;
using Xunit;

namespace PolarityMap.Core.Tests.Optics;

public sealed class AttenuationTests
{
    [Theory]
    [InlineData("3.0 dB/km", "3")]
    [InlineData("0.35dB/km", "0.35")]
    [InlineData(" 1 dB/km ", "1")]
    [InlineData("0 dB/km", "0")]
    [InlineData("100 dB/km", "100")]
    public void A_number_with_its_unit_is_read_exactly(string text, string number)
    {
        Assert.True(Attenuation.TryParse(text, out Attenuation attenuation, out string why), why);
        Assert.Equal(decimal.Parse(number), attenuation.DecibelPerKm);
        Assert.Equal("", why);
    }

    [Theory]
    [InlineData("3.0", "write '3.0 dB/km'")]
    [InlineData("3.0 dB", "unknown unit 'dB'; expected dB/km")]
    [InlineData("3.0 dB/m", "unknown unit 'dB/m'; expected dB/km")]
    [InlineData("3.0 dB / km", "unknown unit 'dB / km'; expected dB/km")]
    [InlineData("3,0 dB/km", "decimals with a point")]
    [InlineData("-3.0 dB/km", "an attenuation is never negative")]
    [InlineData("100.1 dB/km", "more than 100 dB/km")]
    [InlineData("little", "such as '3.0 dB/km'")]
    public void Anything_else_is_refused_with_the_reason(string text, string part)
    {
        Assert.False(Attenuation.TryParse(text, out Attenuation attenuation, out string why));
        Assert.Contains(part, why);
        Assert.Equal(default, attenuation);
    }

    [Theory]
    [InlineData("3.5", "3.5 dB/km")]
    [InlineData("3", "3.0 dB/km")]
    [InlineData("0.35", "0.35 dB/km")]
    [InlineData("0.225", "0.225 dB/km")]
    public void It_is_printed_with_at_least_one_decimal(string number, string printed) =>
        Assert.Equal(printed, new Attenuation(decimal.Parse(number)).ToString());

    // Source: interface facts 4.4, W1 (published): 0.21 km at 0.8 and 19.76 km at 0.5 are 0.168 and 9.88; W7 (derived): 60 m at 3.5 are 0.21.
    [Theory]
    [InlineData("0.8", 210, "0.168")]
    [InlineData("0.5", 19_760, "9.88")]
    [InlineData("3.5", 60, "0.21")]
    [InlineData("3.5", 0, "0")]
    public void Loss_is_attenuation_times_length(string perKm, int metres, string loss) =>
        Assert.Equal(decimal.Parse(loss), new Attenuation(decimal.Parse(perKm)).Over(Length.FromMillimetres(metres * 1000L)).Value);

    [Fact]
    public void Lengths_joined_lose_as_much_as_apart()
    {
        Gen.Select(Gen.Int[0, 10_000], Gen.Int[0, 100_000_000], Gen.Int[0, 100_000_000]).Sample((milli, a, b) =>
        {
            var attenuation = new Attenuation(milli / 1000m);
            Assert.Equal(
                attenuation.Over(Length.FromMillimetres(a + b)),
                attenuation.Over(Length.FromMillimetres(a)) + attenuation.Over(Length.FromMillimetres(b)));
        });
    }

    [Fact]
    public void Order_is_the_order_of_the_numbers()
    {
        Gen.Select(Gen.Int[0, 100], Gen.Int[0, 100]).Sample((a, b) =>
        {
            var x = new Attenuation(a / 10m);
            var y = new Attenuation(b / 10m);
            Assert.Equal(a < b, x < y);
            Assert.Equal(a > b, x > y);
            Assert.Equal(a <= b, x <= y);
            Assert.Equal(a >= b, x >= y);
            Assert.Equal(Math.Sign(a.CompareTo(b)), Math.Sign(x.CompareTo(y)));
        });
    }

    [Theory]
    [InlineData("850", "850 nm")]
    [InlineData("1295.56", "1295.56 nm")]
    [InlineData("1295.5", "1295.5 nm")]
    public void A_wavelength_is_printed_without_idle_decimals(string nanometres, string printed) =>
        Assert.Equal(printed, new Wavelength(decimal.Parse(nanometres)).ToString());
}
