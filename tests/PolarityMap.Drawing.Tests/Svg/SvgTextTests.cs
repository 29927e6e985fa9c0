using System.Text;
using System.Xml.Linq;
using AngleSharp.Html.Parser;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Svg;
using Xunit;

namespace PolarityMap.Drawing.Tests.Svg;

/// <summary>Oracles: the XML reader of the base library and an independent HTML parser.</summary>
public sealed class SvgTextTests
{
    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("a < b && c > d", "a < b && c > d")]
    [InlineData("\"quoted\" 'too'", "\"quoted\" 'too'")]
    [InlineData("</text><script>alert(1)</script>", "</text><script>alert(1)</script>")]
    [InlineData("]]>", "]]>")]
    [InlineData("&amp; &#0; &lt;", "&amp; &#0; &lt;")]
    [InlineData("<!-- x --> <![CDATA[ y", "<!-- x --> <![CDATA[ y")]
    [InlineData("bell\u0007 null\u0000 del\u007F c1\u0090", "bell\uFFFD null\uFFFD del\uFFFD c1\uFFFD")]
    [InlineData("two\r\nlines\tand a tab", "two  lines and a tab")]
    [InlineData("right\u202Eto left\u202C \u2066x\u2069 \u200Ey\u200F \u061Cz", "rightto left x y z")]
    [InlineData("\uFFFE\uFFFF\uFDD0", "\uFFFD\uFFFD\uFFFD")]
    [InlineData("\U0001F600 λ → ≤", "\U0001F600 λ → ≤")]
    [InlineData("\U0001FFFEx\U0010FFFF", "\uFFFDx\uFFFD")]
    [InlineData("DESK-שלום/1 to مرحبا عالم/2", "DESK-\u2068שלום\u2069/1 to \u2068مرحبا عالم\u2069/2")]
    [InlineData("", "")]
    public void Hostile_text_arrives_as_text_in_label_title_and_description(string text, string expected)
    {
        string svg = SvgWriter.Write(SheetWith(text), new SvgOptions());

        XElement root = XDocument.Parse(svg).Root!;
        XNamespace ns = "http://www.w3.org/2000/svg";
        Assert.Equal(expected, root.Descendants(ns + "text").Single().Value);
        Assert.Equal("t" + expected, root.Element(ns + "title")!.Value);
        Assert.Equal("d" + expected, root.Element(ns + "desc")!.Value);
        Assert.Equal("g" + expected, root.Descendants(ns + "g").Single(g => (string?)g.Attribute("id") == "s").Element(ns + "title")!.Value);

        var html = new HtmlParser().ParseDocument("<!doctype html><title>x</title><body>" + svg);
        Assert.Equal(expected, html.QuerySelector("svg text")!.TextContent);
        Assert.Empty(html.QuerySelectorAll("script"));
    }

    [Theory]
    [InlineData('\uD800')]
    [InlineData('\uDC00')]
    public void Half_a_character_is_replaced(char half)
    {
        var output = new Utf8Text(8);
        SvgText.Append(output, "a" + half + "b" + half);
        Assert.Equal("a\uFFFDb\uFFFD", output.ToString());
    }

    [Fact]
    public void Every_single_character_gives_well_formed_XML()
    {
        var every = new StringBuilder();
        for (int c = 0; c <= 0xFFFF; c++)
            every.Append((char)c).Append('.');
        string svg = SvgWriter.Write(SheetWith(every.ToString()), new SvgOptions());
        Assert.NotNull(XDocument.Parse(svg).Root);
        Assert.DoesNotContain('\u202E', svg);
    }

    private static DrawingSheet SheetWith(string text) => new()
    {
        WidthMm = 100,
        HeightMm = 50,
        Title = "t" + text,
        Description = "d" + text,
        Layers =
        [
            new SceneGroup("s", GroupRole.GraphicsSymbol, "g" + text, "g" + text,
                [new Label(1, 2, text, 2.5, Anchor.Start, Palette.Ink, Underlay.Paper)]),
        ],
    };
}
