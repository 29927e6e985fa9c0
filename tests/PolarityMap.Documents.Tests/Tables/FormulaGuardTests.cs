using CsCheck;
using PolarityMap.Documents.Tables;
using Xunit;

namespace PolarityMap.Documents.Tests.Tables;

public sealed class FormulaGuardTests
{
    // OWASP, "CSV Injection": equals, plus, minus, at, tab, carriage return, line feed and the full-width forms of the marks.
    [Theory]
    [InlineData("=HYPERLINK(\"http://example.org\")")]
    [InlineData("+49 30 1234")]
    [InlineData("-2+3")]
    [InlineData("@SUM(A1)")]
    [InlineData("\t=1")]
    [InlineData("\r=1")]
    [InlineData("\n=1")]
    [InlineData("\uFF1D1+1")]
    [InlineData("'=1")]
    public void A_text_that_a_program_could_reckon_begins_with_an_apostrophe(string text)
    {
        string written = FormulaGuard.Guard(text);
        Assert.Equal("'" + text, written);
        Assert.Equal(text, FormulaGuard.Unguard(written));
    }

    [Theory]
    [InlineData("K-1/3:A")]
    [InlineData("'twas")]
    [InlineData("'")]
    [InlineData("''")]
    [InlineData("1-2")]
    [InlineData("")]
    [InlineData(" =1")]
    public void Other_texts_stay_as_they_are(string text)
    {
        Assert.Equal(text, FormulaGuard.Guard(text));
        Assert.Equal(text, FormulaGuard.Unguard(text));
    }

    [Fact]
    public void Every_text_comes_back_and_none_begins_as_a_formula() =>
        Gen.Char["'=+-@\t\r\na b,\";"].Array[0, 8].Select(c => new string(c)).Sample(text =>
        {
            string written = FormulaGuard.Guard(text);
            return FormulaGuard.Unguard(written) == text && (written.Length == 0 || !"=+-@\t\r\n".Contains(written[0]));
        });
}
