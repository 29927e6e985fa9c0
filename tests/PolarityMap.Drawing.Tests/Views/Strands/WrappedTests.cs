using CsCheck;
using PolarityMap.Drawing.Views.Strands;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Strands;

/// <summary>
/// Words in lines by the rule itself: every word in its order, no line of several words wider than allowed, and none that would
/// have taken the first word of the next.
/// </summary>
public sealed class WrappedTests
{
    private static readonly Gen<string> Texts = Gen.String[Gen.Char["ab µ  "], 0, 40];

    [Fact]
    public void Lines_are_full_and_lose_no_word() => Gen.Select(Texts, Gen.Double[1, 30]).Sample((text, width) =>
    {
        List<string> lines = SheetText.Wrapped(text, width);
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(words, lines.SelectMany(l => l.Split(' ')));
        for (int i = 0; i < lines.Count; i++)
        {
            Assert.True(!lines[i].Contains(' ', StringComparison.Ordinal) || SheetText.Width(lines[i]) <= width);
            Assert.True(i == 0 || SheetText.Width($"{lines[i - 1]} {lines[i].Split(' ')[0]}") > width);
        }
    }, iter: 2000);

    [Fact]
    public void The_longest_word_is_the_widest_of_all() => Texts.Sample(text =>
        Assert.Equal(text.Split(' ').Max(w => SheetText.Width(w)), SheetText.LongestWord(text)), iter: 500);
}
