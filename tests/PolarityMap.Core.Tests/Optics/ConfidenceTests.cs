using PolarityMap.Core.Optics;
using Xunit;

namespace PolarityMap.Core.Tests.Optics;

public sealed class ConfidenceTests
{
    // Source: the code table at the head of the interface facts.
    [Theory]
    [InlineData("C1", ConfidenceKind.Confirmed, 1, "1 public source")]
    [InlineData("C3", ConfidenceKind.Confirmed, 3, "3 public sources")]
    [InlineData("C12", ConfidenceKind.Confirmed, 12, "12 public sources")]
    [InlineData("M", ConfidenceKind.FromMemory, 0, "from memory")]
    [InlineData("P", ConfidenceKind.CommonPractice, 0, "common practice")]
    [InlineData("C2 P", ConfidenceKind.CommonPractice, 2, "common practice, 2 public sources")]
    [InlineData("C1 P", ConfidenceKind.CommonPractice, 1, "common practice, 1 public source")]
    [InlineData("D", ConfidenceKind.Derived, 0, "derived")]
    [InlineData("", ConfidenceKind.Unknown, 0, "not known")]
    [InlineData("C1, weak", ConfidenceKind.Confirmed, 1, "1 public source, weak")]
    [InlineData(" M , doubtful ", ConfidenceKind.FromMemory, 0, "from memory, doubtful")]
    public void A_code_of_the_sheet_has_its_words(string code, ConfidenceKind kind, int sources, string words)
    {
        Confidence confidence = Confidence.Parse(code);
        Assert.Equal((kind, sources), (confidence.Kind, confidence.Sources));
        Assert.Equal(words, confidence.ToString());
    }

    [Theory]
    [InlineData("C")]
    [InlineData("C0")]
    [InlineData("C-1")]
    [InlineData("c1")]
    [InlineData("X")]
    [InlineData("M P")]
    [InlineData("C1 M")]
    [InlineData(", weak")]
    [InlineData("C99999999999")]
    public void Any_other_code_is_refused(string code)
    {
        FormatException refused = Assert.Throws<FormatException>(() => Confidence.Parse(code));
        Assert.Contains($"'{code}'", refused.Message);
    }

    [Fact]
    public void Without_a_code_nothing_is_known() => Assert.Equal(Confidence.Parse(""), default);
}
