using CsCheck;
using PolarityMap.Core.Optics;
using Xunit;

namespace PolarityMap.Core.Tests.Optics;

public sealed class LengthTests
{
    // Source: the international foot is 304.8 mm exactly (international yard and pound agreement of 1959); the rest are SI prefixes.
    [Theory]
    [InlineData("62 m", 62_000)]
    [InlineData("1.5m", 1_500)]
    [InlineData("30 cm", 300)]
    [InlineData("0.2 km", 200_000)]
    [InlineData("10 ft", 3_048)]
    [InlineData("5 ft", 1_524)]
    [InlineData("7 mm", 7)]
    [InlineData("  2   m ", 2_000)]
    [InlineData(".5 m", 500)]
    [InlineData("0 m", 0)]
    [InlineData("1000 km", 1_000_000_000)]
    [InlineData("1000000000 mm", 1_000_000_000)]
    public void A_number_with_its_unit_is_read_to_the_millimetre(string text, long millimetres)
    {
        Assert.True(Length.TryParse(text, out Length length, out string why), why);
        Assert.Equal(millimetres, length.Millimetres);
        Assert.Equal("", why);
    }

    [Theory]
    [InlineData("62", "write '62 m'")]
    [InlineData("1.5", "write '1.5 m'")]
    [InlineData(" 3 ", "write '3 m'")]
    public void A_bare_number_is_refused_with_the_unit_to_add(string text, string advice)
    {
        Assert.False(Length.TryParse(text, out Length length, out string why));
        Assert.Contains(advice, why);
        Assert.Equal(default, length);
    }

    [Theory]
    [InlineData("62 yd", "'yd'")]
    [InlineData("62 M", "'M'")]
    [InlineData("62 metres", "'metres'")]
    [InlineData("6 2 m", "'2 m'")]
    [InlineData("1,5 m", "',5 m'")]
    public void An_unknown_unit_is_quoted(string text, string quoted)
    {
        Assert.False(Length.TryParse(text, out _, out string why));
        Assert.Contains("unknown unit " + quoted, why);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("m")]
    [InlineData("+1 m")]
    [InlineData("1.2.3 m")]
    [InlineData(". m")]
    [InlineData("long")]
    public void Anything_that_does_not_begin_with_a_number_is_refused(string text)
    {
        Assert.False(Length.TryParse(text, out _, out string why));
        Assert.Contains("'62 m'", why);
    }

    [Fact]
    public void Less_than_nothing_is_refused()
    {
        Assert.False(Length.TryParse("-1 m", out _, out string why));
        Assert.Contains("never negative", why);
    }

    [Theory]
    [InlineData("1000.001 km")]
    [InlineData("1000001 m")]
    [InlineData("3280840 ft")]
    [InlineData("79228162514264337593543950335 km")]
    public void More_than_a_thousand_kilometres_is_refused(string text)
    {
        Assert.False(Length.TryParse(text, out _, out string why));
        Assert.Contains("1000 km", why);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(Length.MaxMillimetres + 1)]
    [InlineData(long.MinValue)]
    public void Millimetres_outside_the_limits_are_refused(long millimetres) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromMillimetres(millimetres));

    [Theory]
    [InlineData(2_000, "2 m")]
    [InlineData(300, "0.3 m")]
    [InlineData(62_125, "62.125 m")]
    [InlineData(0, "0 m")]
    public void A_length_prints_in_metres_without_idle_zeros(long millimetres, string text) =>
        Assert.Equal(text, Length.FromMillimetres(millimetres).ToString());

    [Fact]
    public void Every_length_reads_back_from_what_it_prints() => Gen.Long[0, Length.MaxMillimetres].Sample(millimetres =>
    {
        Length length = Length.FromMillimetres(millimetres);
        return Length.TryParse(length.ToString(), out Length again, out _) && again == length;
    });

    [Fact]
    public void Lengths_are_ordered_as_their_millimetres() => Gen.Select(Gen.Long[0, 20], Gen.Long[0, 20]).Sample((a, b) =>
    {
        Length left = Length.FromMillimetres(a);
        Length right = Length.FromMillimetres(b);
        return (left < right) == (a < b) && (left > right) == (a > b) && (left <= right) == (a <= b) && (left >= right) == (a >= b);
    });
}
