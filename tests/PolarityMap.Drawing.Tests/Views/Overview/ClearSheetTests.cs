using CsCheck;
using PolarityMap.Drawing.Views;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Overview;

/// <summary>Nothing on an overview lies on anything else. Measured on the drawn sheet, not on the plan.</summary>
public sealed class ClearSheetTests
{
    public static TheoryData<string> Documents => [.. Plants.Gallery];

    public static TheoryData<string> Texts =>
        [Plants.Campus, Plants.Ring, Plants.Mixed, Plants.SideBySide(3), Plants.SideBySide(12), Plants.SideBySide(30), Plants.Chain(4), Plants.Chain(9), Plants.Chain(40)];

    /// <summary>Up to nine interfaces and up to fourteen cords between any two of them, in circles or not.</summary>
    private static readonly Gen<(int Interfaces, List<(int From, int To)> Cords)> Webs =
        Gen.Int[2, 9].SelectMany(n => Gen.Select(Gen.Int[0, n - 1], Gen.Int[1, n - 1]).Select((a, b) => (a, (a + b) % n)).List[1, 14].Select(cords => (n, cords)));

    [Theory]
    [MemberData(nameof(Documents))]
    public void Nothing_lies_on_anything_else_in_the_gallery(string path)
    {
        ViewInput input = Plants.OfFile(path);
        if (input.Selection.Strands.Count > 0)
            new DrawnSheet(Plants.Sheet(input)).AssertClear(path);
    }

    [Theory]
    [MemberData(nameof(Texts))]
    public void Nothing_lies_on_anything_else_in_larger_plants(string text) =>
        new DrawnSheet(Plants.Sheet(Plants.OfText(text))).AssertClear(text[..text.IndexOf('\n')]);

    [Fact]
    public void Nothing_lies_on_anything_else_whatever_is_joined_to_what() => Webs.Sample(web =>
    {
        string text = Plants.Web(web.Interfaces, web.Cords);
        new DrawnSheet(Plants.Sheet(Plants.OfText(text))).AssertClear(text);
    }, iter: 150);
}
