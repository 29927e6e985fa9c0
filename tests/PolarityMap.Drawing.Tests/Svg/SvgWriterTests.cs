using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using AngleSharp.Html.Parser;
using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Svg;
using Xunit;

namespace PolarityMap.Drawing.Tests.Svg;

public sealed class SvgWriterTests
{
    private static readonly XNamespace Ns = "http://www.w3.org/2000/svg";
    private static readonly string Text = SvgWriter.Write(Specimen.Sheet(), new SvgOptions());
    private static readonly XElement Root = XDocument.Parse(Text).Root!;

    // What five programs drew alike when tried feature by feature; everything else is refused here.
    [Fact]
    public void Only_elements_and_attributes_that_all_programs_draw_are_used()
    {
        var allowed = new Dictionary<string, string[]>
        {
            ["svg"] = ["xmlns", "width", "height", "viewBox", "role", "aria-labelledby"],
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
        foreach (XElement element in Root.DescendantsAndSelf())
        {
            Assert.Equal(Ns, element.Name.Namespace);
            string[] attributes = Assert.Contains(element.Name.LocalName, (IDictionary<string, string[]>)allowed);
            var places = element.Attributes().Select(a => Array.IndexOf(attributes, a.Name.LocalName)).ToList();
            Assert.DoesNotContain(-1, places);
            Assert.Equal(places.Order(), places);
        }

        Assert.Equal(allowed.Keys.Order(), Root.DescendantsAndSelf().Select(e => e.Name.LocalName).Distinct().Order());
    }

    [Fact]
    public void Colours_are_hex_and_numbers_have_at_most_three_decimals()
    {
        foreach (XAttribute attribute in Root.DescendantsAndSelf().Attributes())
        {
            switch (attribute.Name.LocalName)
            {
                case "fill" or "stroke":
                    Assert.Matches("^(#[0-9A-F]{6}|none)$", attribute.Value);
                    break;
                case "x" or "y" or "x1" or "y1" or "x2" or "y2" or "cx" or "cy" or "r" or "rx" or "stroke-width" or "font-size":
                    Assert.Matches(@"^-?\d+(\.\d{0,2}[1-9])?$", attribute.Value);
                    break;
                case "d":
                    Assert.Matches(@"^(M[-\d.,]+(L[-\d.,]+|H[-\d.]+|C[-\d.,]+ [-\d.,]+ [-\d.,]+)+|(M[-\d.,]+h[-\d.]+v[-\d.]+h[-\d.]+z)+|(M[-\d.,]+(L[-\d.,]+){2,}z)+)$", attribute.Value);
                    Assert.DoesNotMatch(@"\d\.\d{4}|-0[^.\d]|\.\d*0[,LHC hvz]", attribute.Value);
                    break;
            }
        }
    }

    [Fact]
    public void The_user_unit_is_the_millimetre()
    {
        Assert.Equal("297mm", (string?)Root.Attribute("width"));
        Assert.Equal("210mm", (string?)Root.Attribute("height"));
        Assert.Equal("0 0 297 210", (string?)Root.Attribute("viewBox"));
    }

    [Fact]
    public void Title_and_description_come_first_and_name_the_document()
    {
        var children = Root.Elements().Select(e => e.Name.LocalName).ToList();
        Assert.Equal(["title", "desc", "rect", "g"], children);
        Assert.Equal("graphics-document", (string?)Root.Attribute("role"));
        Assert.Equal("title desc", (string?)Root.Attribute("aria-labelledby"));
        Assert.Equal("title", (string?)Root.Element(Ns + "title")!.Attribute("id"));
        Assert.Equal("desc", (string?)Root.Element(Ns + "desc")!.Attribute("id"));
        XElement paper = Root.Element(Ns + "rect")!;
        Assert.Equal(("0", "0", "297", "210", "#FFFFFF"), (
            (string?)paper.Attribute("x"), (string?)paper.Attribute("y"), (string?)paper.Attribute("width"),
            (string?)paper.Attribute("height"), (string?)paper.Attribute("fill")));
    }

    [Fact]
    public void A_sheet_without_description_is_named_by_its_title_alone()
    {
        var sheet = new DrawingSheet { WidthMm = 10, HeightMm = 10, Title = "Bare", Layers = [] };
        XElement root = XDocument.Parse(SvgWriter.Write(sheet, new SvgOptions())).Root!;
        Assert.Equal("title", (string?)root.Attribute("aria-labelledby"));
        Assert.Null(root.Element(Ns + "desc"));
    }

    [Fact]
    public void Every_strand_is_a_named_symbol_of_three_strokes_of_one_path()
    {
        var strands = Root.Descendants(Ns + "g").Where(g => (string?)g.Attribute("role") == "graphics-symbol").ToList();
        Assert.Equal(12, strands.Count);
        foreach (XElement strand in strands)
        {
            Assert.Equal(["title", "desc", "path", "path", "path"], strand.Elements().Select(e => e.Name.LocalName));
            Assert.StartsWith("Strand ", strand.Element(Ns + "title")!.Value);
            Assert.Single(strand.Elements(Ns + "path").Select(p => (string?)p.Attribute("d")).Distinct());
            string[] widths = (string?)strand.Attribute("id") == "strand-7" ? ["2.6", "1.7", "1.4"] : ["1.9", "1", "0.7"];
            Assert.Equal(widths, strand.Elements(Ns + "path").Select(p => (string?)p.Attribute("stroke-width")));
            Assert.Equal(["#FFFFFF", "#222222"], strand.Elements(Ns + "path").Take(2).Select(p => (string?)p.Attribute("stroke")));
        }
    }

    [Fact]
    public void Dashes_scale_with_the_strand_and_leave_the_halo_whole()
    {
        XElement planned = Root.Descendants(Ns + "g").Single(g => (string?)g.Attribute("id") == "strand-5");
        Assert.Equal([null, "8.4,2.1", "8.4,2.1"], planned.Elements(Ns + "path").Select(p => (string?)p.Attribute("stroke-dasharray")));
    }

    [Fact]
    public void Path_data_passes_through_the_points_of_the_route()
    {
        var layer = new SceneGroup("x", [new StrandPath(Route.From(1, 2).LineTo(5, 2).CurveTo(25, 12).LineTo(30, 12), Palette.Note)]);
        var sheet = new DrawingSheet { WidthMm = 50, HeightMm = 20, Title = "Path", Layers = [layer] };
        Assert.Contains("d=\"M1,2H5C15,2 15,12 25,12H30\"", SvgWriter.Write(sheet, new SvgOptions()));
    }

    [Fact]
    public void Capitals_print_at_the_asked_height()
    {
        double inherited = Number(Root.Element(Ns + "g")!.Attribute("font-size")!);
        Assert.Equal(2.5, inherited * FontMetrics.CapHeightPerEm, 3);
        XElement heading = Root.Descendants(Ns + "text").Single(t => t.Value == "Trunk T1");
        Assert.Equal(5, Number(heading.Attribute("font-size")!) * FontMetrics.CapHeightPerEm, 3);
        Assert.Equal("'PolarityMap Sans', 'Source Sans 3', sans-serif", (string?)Root.Element(Ns + "g")!.Attribute("font-family"));
    }

    // Paper under the words of labels in one style lies in one path before the group of the words.
    [Fact]
    public void Paper_under_labels_is_drawn_before_their_words()
    {
        Label On(double x, string words) => new(x, 10, words, 2.5, Anchor.Middle, Palette.Ink, Underlay.Paper);
        var sheet = new DrawingSheet { WidthMm = 50, HeightMm = 20, Title = "Paper", Layers = [new SceneGroup("x", [On(10, "7 RD"), On(30, "8 BK")])] };
        XElement layer = XDocument.Parse(SvgWriter.Write(sheet, new SvgOptions())).Descendants(Ns + "g").Single(g => (string?)g.Attribute("id") == "x");
        Assert.Equal(["path", "g"], layer.Elements().Select(e => e.Name.LocalName));
        XElement paper = layer.Element(Ns + "path")!;
        Assert.Equal("#FFFFFF", (string?)paper.Attribute("fill"));
        double[] left = [.. Regex.Matches(paper.Attribute("d")!.Value, @"M([-\d.]+),").Select(m => double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture))];
        double half = FontMetrics.WidthMm("7 RD", 2.5) / 2;
        Assert.Equal([10 - half - 0.5, 30 - (FontMetrics.WidthMm("8 BK", 2.5) / 2) - 0.5], left, (a, b) => Math.Abs(a - b) < 0.001);
    }

    // A style that labels share is said once, by a group that holds nothing else.
    [Fact]
    public void Labels_in_one_style_stand_in_a_group_that_says_it()
    {
        Label Words(double y) => new(5, y, "word", 2.5, Anchor.Middle, Palette.Ink);
        var sheet = new DrawingSheet { WidthMm = 50, HeightMm = 20, Title = "Words", Layers = [new SceneGroup("x", [Words(4), Words(8), Words(12) with { Anchor = Anchor.End }])] };
        XElement layer = XDocument.Parse(SvgWriter.Write(sheet, new SvgOptions())).Descendants(Ns + "g").Single(g => (string?)g.Attribute("id") == "x");
        Assert.Equal(["g", "text"], layer.Elements().Select(e => e.Name.LocalName));
        Assert.Equal("middle", (string?)layer.Element(Ns + "g")!.Attribute("text-anchor"));
        Assert.Equal(["x y", "x y"], layer.Element(Ns + "g")!.Elements().Select(e => string.Join(' ', e.Attributes().Select(a => a.Name.LocalName))));
        Assert.Equal("end", (string?)layer.Element(Ns + "text")!.Attribute("text-anchor"));
    }

    [Fact]
    public void Bytes_and_text_of_a_sheet_are_the_same() =>
        Assert.Equal(Text, System.Text.Encoding.UTF8.GetString(SvgWriter.WriteUtf8(Specimen.Sheet(), new SvgOptions()).Span));

    [Fact]
    public void The_same_sheet_gives_the_same_text_under_any_culture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            // A culture whose point is a comma and whose minus sign is not a hyphen.
            var odd = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            odd.NumberFormat.NumberDecimalSeparator = ",";
            odd.NumberFormat.NegativeSign = "~";
            CultureInfo.CurrentCulture = odd;
            Assert.Equal(Text, SvgWriter.Write(Specimen.Sheet(), new SvgOptions()));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.DoesNotContain('\r', Text);
        Assert.EndsWith("</svg>\n", Text);
    }

    [Fact]
    public void A_prefix_keeps_the_ids_of_two_sheets_apart_in_one_page()
    {
        string page = "<!doctype html><title>x</title><body>"
            + SvgWriter.Write(Specimen.Sheet(), new SvgOptions { IdPrefix = "s1-" })
            + SvgWriter.Write(Specimen.Sheet(), new SvgOptions { IdPrefix = "s2-" });
        var html = new HtmlParser().ParseDocument(page);
        var ids = html.QuerySelectorAll("[id]").Select(e => e.Id!).ToList();
        Assert.Contains("s2-strand-12", ids);
        Assert.Equal(ids.Count, ids.Distinct().Count());
        foreach (var svg in html.QuerySelectorAll("svg"))
        {
            foreach (string id in svg.GetAttribute("aria-labelledby")!.Split(' '))
                Assert.Equal(svg, html.GetElementById(id)!.ParentElement);
        }

        Assert.Throws<ArgumentException>(() => SvgWriter.Write(Specimen.Sheet(), new SvgOptions { IdPrefix = "1\"" }));
    }

    [Fact]
    public void The_embedded_font_is_the_font_file_and_the_only_style()
    {
        string svg = SvgWriter.Write(Specimen.Sheet(), new SvgOptions { EmbedFont = true });
        XElement style = Assert.Single(XDocument.Parse(svg).Descendants(Ns + "style"));
        Match match = Regex.Match(
            style.Value, @"^@font-face\{font-family:'PolarityMap Sans';src:url\(data:font/ttf;base64,([A-Za-z0-9+/=]+)\) format\('truetype'\)\}$");
        Assert.True(match.Success);
        Assert.Equal(EmbeddedFont.Bytes(), Convert.FromBase64String(match.Groups[1].Value));
        Assert.Empty(Root.Descendants(Ns + "style"));
    }

    [Fact]
    public void Nothing_points_outside_the_file()
    {
        string svg = SvgWriter.Write(Specimen.Sheet(), new SvgOptions { EmbedFont = true });
        Assert.DoesNotContain("href", svg);
        Assert.Equal(["http://www.w3.org/2000/svg"], Regex.Matches(svg, "https?://[^\"' )]+").Select(m => m.Value));
    }

    [Fact]
    public void A_length_that_is_no_number_is_refused_rather_than_written()
    {
        var layer = new SceneGroup("x", [new Line(0, double.NaN, 1, 1, Palette.Ink, 0.5)]);
        var sheet = new DrawingSheet { WidthMm = 50, HeightMm = 20, Title = "Bad", Layers = [layer] };
        Assert.Throws<ArgumentOutOfRangeException>(() => SvgWriter.Write(sheet, new SvgOptions()));
    }

    private static double Number(XAttribute attribute) => double.Parse(attribute.Value, CultureInfo.InvariantCulture);
}
