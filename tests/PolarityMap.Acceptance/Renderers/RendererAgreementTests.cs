using System.Collections.Concurrent;
using System.Globalization;
using System.Xml.Linq;
using PolarityMap.Drawing.Scene;
using Xunit;
using Xunit.Abstractions;

namespace PolarityMap.Acceptance.Renderers;

/// <summary>
/// Two renderers that share no code draw the same picture from the gallery's files, words included. One figure of each view and
/// paper by default; POLARITYMAP_RENDERERS=all compares every committed figure.
/// </summary>
public sealed class RendererAgreementTests(ITestOutputHelper output)
{
    // Measured on clean pairs and on planted faults at 8 pixels a mm: clean pairs stay below, every fault lies above.
    private const double MostShare = 0.0003;
    private const double WorstTile = 0.20;

    private const string Svg = "methods/duplex-B.svg";

    private static bool All => Environment.GetEnvironmentVariable("POLARITYMAP_RENDERERS") == "all";

    [Fact]
    public void Both_renderers_draw_the_same_picture_of_every_kind_of_figure()
    {
        IGrouping<string, string>[] kinds = [.. GalleryFigures.ByKind()];
        var apart = new ConcurrentDictionary<string, Disagreement>();
        Parallel.ForEach(kinds.SelectMany(k => All ? k : k.Take(1)), svg => apart[svg] = Compare(GalleryFigures.Read(svg)));
        foreach (IGrouping<string, string> kind in kinds)
        {
            string[] compared = [.. kind.Where(apart.ContainsKey)];
            string share = compared.MaxBy(s => apart[s].Share)!, tile = compared.MaxBy(s => apart[s].WorstTile)!;
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{kind.Key}: {compared.Length} of {kind.Count()}, worst share {apart[share].Share:0.000000} ({share}), worst tile {apart[tile].WorstTile:0.000} ({tile})"));
        }

        string[] different = [.. apart.Where(a => !IsSame(a.Value)).Select(a => $"{a.Key}: {a.Value}").Order(StringComparer.Ordinal)];
        Assert.True(different.Length == 0, string.Join('\n', different));
    }

    // The comparison would be worth nothing if it passed a drawing with a strand too few.
    [Fact]
    public void A_missing_strand_is_noticed() => AssertNoticed(whole => Without(whole, e => e.Attribute("id")?.Value == "strand-5"));

    [Fact]
    public void A_missing_casing_is_noticed() => AssertNoticed(whole =>
    {
        XElement? light = null;
        return Without(whole, e => e.Name.LocalName == "path" && e.Attribute("fill") is null && e.Attribute("stroke")?.Value == "#222222"
            && (light ??= FillIsLight(e) ? e : null) == e);
    });

    [Fact]
    public void A_missing_word_is_noticed() => AssertNoticed(whole =>
    {
        XElement? word = null;
        return Without(whole, e => e.Name.LocalName == "text" && e.Value == "TRUNK" && (word ??= e) == e);
    });

    // As a renderer that takes another font would draw it.
    [Fact]
    public void Wider_letters_are_noticed() => AssertNoticed(whole =>
    {
        XElement root = XElement.Parse(whole);
        foreach (XAttribute size in root.DescendantsAndSelf().Attributes("font-size").ToList())
            size.Value = (double.Parse(size.Value, CultureInfo.InvariantCulture) * 1.05).ToString(CultureInfo.InvariantCulture);
        return root.ToString(SaveOptions.DisableFormatting);
    });

    private static bool IsSame(Disagreement apart) => apart.Share <= MostShare && apart.WorstTile <= WorstTile;

    private static bool FillIsLight(XElement casing) =>
        Colour.FromHex(casing.ElementsAfterSelf().First().Attribute("stroke")!.Value).RelativeLuminance > 0.5;

    private void AssertNoticed(Func<string, string> plant)
    {
        string whole = GalleryFigures.Read(Svg);
        string faulty = plant(whole);
        Assert.NotEqual(XElement.Parse(whole).ToString(SaveOptions.DisableFormatting), XElement.Parse(faulty).ToString(SaveOptions.DisableFormatting));
        Disagreement apart = Compare(whole, faulty);
        output.WriteLine($"{apart}");
        Assert.False(IsSame(apart), $"{apart}");
    }

    private static Disagreement Compare(string svg) => Compare(svg, svg);

    /// <summary>
    /// How far the two renderers disagree. Each word is set where the font's own tables put it, in a fine unit: the packaged
    /// librsvg rounds the way from letter to letter, which adds up along a sentence and is no fault of the drawing.
    /// </summary>
    private static Disagreement Compare(string one, string other)
    {
        (int width, int height) = Pixels.Of(one);
        return Envelope.Compare(SkiaRenderer.Render(Prepared(one), width, height), LibrsvgRenderer.Render(Prepared(other), width, height));
    }

    private static string Prepared(string svg) => Pixels.FineText(Pixels.WordByWord(svg));

    private static string Without(string svg, Func<XElement, bool> leave)
    {
        XElement root = XElement.Parse(svg);
        root.Descendants().Where(leave).ToList().Remove();
        return root.ToString(SaveOptions.DisableFormatting);
    }
}
