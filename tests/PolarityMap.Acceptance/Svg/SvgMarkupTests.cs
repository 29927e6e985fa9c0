using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using PolarityMap.Acceptance.Gallery;
using Xunit;

namespace PolarityMap.Acceptance.Svg;

/// <summary>Every drawing of the gallery stays in the portable subset and can be read without eyes.</summary>
public sealed class SvgMarkupTests
{
    // What an office suite, a vector editor, two renderers and a rasteriser drew alike when tried feature by feature.
    private static readonly Dictionary<string, string[]> Portable = new()
    {
        ["svg"] = ["width", "height", "viewBox", "role", "aria-labelledby"],
        ["title"] = ["id"],
        ["desc"] = ["id"],
        ["g"] = ["id", "role", "font-family", "font-size", "text-anchor", "fill"],
        ["rect"] = ["x", "y", "width", "height", "rx", "fill", "stroke", "stroke-width"],
        ["line"] = ["x1", "y1", "x2", "y2", "stroke", "stroke-width", "stroke-dasharray"],
        ["polygon"] = ["points", "fill", "stroke", "stroke-width"],
        ["circle"] = ["cx", "cy", "r", "fill", "stroke", "stroke-width"],
        ["path"] = ["d", "fill", "stroke", "stroke-width", "stroke-dasharray"],
        ["text"] = ["x", "y", "font-size", "text-anchor", "fill"],
    };

    public static TheoryData<string> Svgs => SvgFiles.All;

    [Theory]
    [MemberData(nameof(Svgs))]
    public void It_is_well_formed_and_uses_the_portable_subset_only(string svg)
    {
        using var reader = XmlReader.Create(new StringReader(MadeGallery.Now.Files[svg]), new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit });
        XElement root = XDocument.Load(reader).Root!;
        Assert.Equal("svg", root.Name.LocalName);
        foreach (XElement element in root.DescendantsAndSelf())
        {
            Assert.Equal("http://www.w3.org/2000/svg", element.Name.NamespaceName);
            string[] allowed = Assert.Contains(element.Name.LocalName, (IDictionary<string, string[]>)Portable);
            Assert.All(element.Attributes().Where(a => !a.IsNamespaceDeclaration), a => Assert.Contains(a.Name.LocalName, allowed));
        }
    }

    [Theory]
    [MemberData(nameof(Svgs))]
    public void Ids_are_unique_and_what_is_referred_to_is_there(string svg)
    {
        string[] ids = [.. DrawnSheet.Of(svg).Root.DescendantsAndSelf().Select(e => e.Attribute("id")?.Value).OfType<string>()];
        Assert.Equal(ids.Distinct(), ids);
        Assert.All(DrawnSheet.Of(svg).Root.Attribute("aria-labelledby")!.Value.Split(' '), id => Assert.Contains(id, ids));
    }

    // A second parser, the one that browsers' rules describe, sees the same drawing.
    [Theory]
    [MemberData(nameof(Svgs))]
    public void An_HTML_parser_sees_the_same_elements_and_words(string svg)
    {
        using var document = new HtmlParser().ParseDocument($"<!doctype html><title>t</title><main>{MadeGallery.Now.Files[svg]}</main>");
        IElement root = document.QuerySelector("main > svg")!;
        XElement expected = DrawnSheet.Of(svg).Root;
        Assert.Equal(expected.DescendantsAndSelf().Count(), root.QuerySelectorAll("*").Length + 1);
        Assert.Equal(
            expected.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value),
            root.QuerySelectorAll("text").Select(e => e.TextContent));
        Assert.Equal(expected.Attribute("viewBox")!.Value, root.GetAttribute("viewBox"));
        Assert.Empty(root.QuerySelectorAll("[href], [src], image, script, [style]"));
    }

    // One user unit is one millimetre, or the scale bar lies.
    [Theory]
    [MemberData(nameof(Svgs))]
    public void The_sheet_is_measured_in_millimetres(string svg)
    {
        DrawnSheet sheet = DrawnSheet.Of(svg);
        Assert.Equal(string.Create(CultureInfo.InvariantCulture, $"{sheet.Sheet.Width}mm"), sheet.Root.Attribute("width")!.Value);
        Assert.Equal(string.Create(CultureInfo.InvariantCulture, $"{sheet.Sheet.Height}mm"), sheet.Root.Attribute("height")!.Value);
        Assert.Equal((0.0, 0.0), (sheet.Sheet.X, sheet.Sheet.Y));
    }

    public static TheoryData<string> StrandSvgs => SvgFiles.OfStrands;

    // Graphics Module: a symbol's children mean nothing by themselves, so its name has to say it all.
    [Theory]
    [MemberData(nameof(StrandSvgs))]
    public void Every_strand_has_a_title_with_its_number_colour_and_both_ends(string svg)
    {
        DrawnSheet sheet = DrawnSheet.Of(svg);
        Assert.NotEmpty(sheet.Strands);
        Assert.All(sheet.Strands, s =>
        {
            Assert.StartsWith($"Strand {s.Number}, ", s.Title, StringComparison.Ordinal);
            Assert.Contains(" of ", s.Title, StringComparison.Ordinal);
            Assert.Contains(" to ", s.Title, StringComparison.Ordinal);
            Assert.Contains("/", s.Title, StringComparison.Ordinal);
        });
    }
}
