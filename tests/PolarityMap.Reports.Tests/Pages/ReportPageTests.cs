using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Reports.Templates;
using Xunit;

namespace PolarityMap.Reports.Tests.Pages;

/// <summary>The page as an HTML parser of another house reads it.</summary>
public sealed class ReportPageTests
{
    public static TheoryData<string> Gallery => Plants.OfTheGallery;

    [Theory]
    [MemberData(nameof(Gallery))]
    public void A_page_of_the_gallery_is_whole_and_needs_nothing_beside_it(string path)
    {
        ReportInput input = Plants.FromGallery(path);
        IHtmlDocument page = Parse(Plants.Page(input));

        Assert.Equal("en", page.DocumentElement.GetAttribute("lang"));
        Assert.Single(page.QuerySelectorAll("main"));
        Assert.Single(page.QuerySelectorAll("h1"));
        AssertHeadingsInOrder(page);
        AssertIdsAreUniqueAndFound(page);
        AssertNothingOutside(page);
        AssertTablesAreNamed(page);
        AssertEverythingIsInATable(page, input);
        Assert.Contains(input.Check.Verdict(), page.QuerySelector("#verdict")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_plant_gives_the_same_page()
    {
        string one = Plants.Page(Plants.FromGallery("opera-house/as-built.yaml"));

        Assert.Equal(one, Plants.Page(Plants.ReadAnew("opera-house/as-built.yaml")));
        Assert.InRange(one.Length, 500_000, 4_000_000);
    }

    [Fact]
    public void The_font_is_in_the_page_once()
    {
        string page = Plants.Page(Plants.FromGallery("opera-house/as-built.yaml"));

        Assert.Equal(1, Count(page, "@font-face"));
        Assert.Equal(1, Count(page, "data:font/ttf;base64,"));
    }

    [Fact]
    public void Hostile_texts_come_out_as_text()
    {
        ReportInput input = Plants.Written(Plants.Hostile);
        IHtmlDocument page = Parse(Plants.Page(input));

        HostileTexts.AssertHarmless(page);
        Assert.Contains(input.Title.Title, page.QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(input.Title.Title, page.Title, StringComparison.Ordinal);
        Assert.Contains("</td><evil-tag>", page.QuerySelector("#links")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("\u2068שלום\u2069-1/1", page.QuerySelector("#links")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_finding_stands_with_its_place_explanation_drawing_and_remedy()
    {
        IHtmlDocument page = Parse(Plants.Page(Plants.FromGallery("opera-house/as-built.yaml")));
        IElement crossed = page.QuerySelectorAll("article.finding").Single(a => a.QuerySelector("h3")!.TextContent.Contains("D02", StringComparison.Ordinal));

        Assert.Equal("plant.yaml, line 108", crossed.QuerySelector(".place")!.TextContent);
        Assert.Equal(3, crossed.QuerySelectorAll(".remedy").Length);
        Assert.Contains("plant.yaml, lines 85, 86, 87, 88, 105; as-built.yaml, line 10", crossed.TextContent, StringComparison.Ordinal);

        // Two strands, each with every part that it passes: a switch, two cords of patching, two of the desk, cassettes, trunks, outlet.
        Assert.Equal(2, crossed.QuerySelectorAll("ol.hops").Length);
        Assert.All(crossed.QuerySelectorAll("ol.hops"), h => Assert.Equal(11, h.Children.Length));
        IElement drawing = Assert.Single(crossed.QuerySelectorAll("svg"));
        string[] labels = [.. drawing.QuerySelectorAll("text").Select(t => t.TextContent)];
        Assert.Contains("LX-K2/3", labels);
        Assert.DoesNotContain(labels, l => l.Contains("LX-K1", StringComparison.Ordinal));
    }

    [Fact]
    public void A_plant_with_more_findings_than_drawings_says_so_and_lists_all()
    {
        const int links = 30;
        string text = $$"""
            plant: Many
            parts:
              L-[1..{{links}}]: duplex interface
              R-[1..{{links}}]: duplex interface
            runs:
            {{string.Join('\n', Enumerable.Range(1, links).Select(i => $"  - L-{i}/1, A-to-A cord 2 m, R-{i}/1"))}}
            links:
            {{string.Join('\n', Enumerable.Range(1, links).Select(i => $"  - L-{i}/1 to R-{i}/1"))}}

            """;
        IHtmlDocument page = Parse(Plants.Page(Plants.Written(text)));

        Assert.True(page.QuerySelectorAll("article.finding").Length >= links);
        Assert.Equal(24, page.QuerySelectorAll("article.finding svg").Length);
        Assert.Contains("the first 24 findings", page.QuerySelector("#findings")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plant_without_links_or_light_still_gives_a_page()
    {
        IHtmlDocument page = Parse(Plants.Page(Plants.Written("plant: Empty\nparts:\n  K: straight cassette\n") with { SheetsMissing = "Nothing to draw." }));

        Assert.Contains("Nothing to draw.", page.QuerySelector("#diagram")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("declares no links", page.QuerySelector("#verdict")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_may_load_nothing_and_names_its_own_style_by_hash()
    {
        IHtmlDocument page = Parse(Plants.Page(Plants.FromGallery("methods/duplex-B.yaml")));
        IElement policy = page.QuerySelector("meta[http-equiv='Content-Security-Policy']")!;
        string[] directives = policy.GetAttribute("content")!.Split("; ");

        Assert.Contains("default-src 'none'", directives);
        foreach (string element in (string[])["style", "script"])
        {
            string[] hashes = [.. page.QuerySelectorAll(element).Where(e => e.GetAttribute("type") != "application/json").Select(e => e.TextContent)
                .Select(t => $"'sha256-{Convert.ToBase64String(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(t)))}'")];
            Assert.Contains($"{element}-src {(hashes.Length == 0 ? "'none'" : string.Join(' ', hashes))}", directives);
        }

        Assert.DoesNotContain("unsafe", policy.GetAttribute("content"), StringComparison.Ordinal);
        Assert.DoesNotContain(page.QuerySelectorAll("*"), e => e.Attributes.Any(a => a.Name == "style" || a.Name.StartsWith("on", StringComparison.Ordinal)));

        // It comes before all that it has to hold for.
        Assert.Equal(["META", "META"], page.Head!.Children.Take(2).Select(e => e.TagName));
        Assert.Same(policy, page.Head.Children[1]);
    }

    [Fact]
    public void A_template_without_a_head_is_refused()
    {
        var folder = new TemplateFolder(n => n == "index.html" ? "<p>{{ plant.title }}</p>" : null, "mine");

        Assert.Contains("<head>", Assert.Throws<TemplateException>(() => Reports.Pages.ReportPage.Write(Plants.Written(Plants.Hostile), folder)).Message, StringComparison.Ordinal);
    }

    internal static IHtmlDocument Parse(string html) => new HtmlParser().ParseDocument(html);

    internal static void AssertIdsAreUniqueAndFound(IHtmlDocument page)
    {
        string[] ids = [.. page.QuerySelectorAll("[id]").Select(e => e.Id!)];
        Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
        foreach (string name in (string[])["aria-labelledby", "aria-describedby", "for"])
        {
            foreach (IElement element in page.QuerySelectorAll($"[{name}]"))
                Assert.All(element.GetAttribute(name)!.Split(' '), id => Assert.Contains(id, ids));
        }

        Assert.All(page.QuerySelectorAll("a[href^='#']"), a => Assert.Contains(a.GetAttribute("href")![1..], ids));
    }

    internal static void AssertNothingOutside(IHtmlDocument page)
    {
        foreach (string name in (string[])["src", "href", "xlink:href", "data", "action", "poster", "srcset", "background"])
        {
            foreach (IElement element in page.QuerySelectorAll("*").Where(e => e.HasAttribute(name)))
                Assert.Matches("^(#|data:)", element.GetAttribute(name));
        }

        Assert.Empty(page.QuerySelectorAll("link, iframe, object, embed, base, form"));
        Assert.All(page.QuerySelectorAll("style"), s => Assert.DoesNotMatch(@"@import|url\((?!data:)", s.TextContent));
    }

    internal static void AssertTablesAreNamed(IHtmlDocument page)
    {
        foreach (IElement table in page.QuerySelectorAll("table"))
        {
            Assert.False(string.IsNullOrWhiteSpace(table.QuerySelector("caption")?.TextContent));
            Assert.All(table.QuerySelectorAll("thead th"), th => Assert.Equal("col", th.GetAttribute("scope")));
            int columns = table.QuerySelectorAll("thead th").Length;
            Assert.All(table.QuerySelectorAll("tbody tr"), row =>
            {
                Assert.Equal(columns, row.Children.Length);

                // What has no number heads no row, and an empty heading would be read out as one.
                bool heads = row.Children[0].TextContent.Length > 0;
                Assert.Equal(heads ? "TH" : "TD", row.Children[0].TagName);
                Assert.Equal(heads ? "row" : null, row.Children[0].GetAttribute("scope"));
            });
            IElement box = table.ParentElement!;
            Assert.Equal("0", box.GetAttribute("tabindex"));
            Assert.False(string.IsNullOrWhiteSpace(box.GetAttribute("aria-label")));
        }
    }

    internal static void AssertHeadingsInOrder(IHtmlDocument page)
    {
        int level = 0;
        foreach (IElement heading in page.QuerySelectorAll("h1, h2, h3, h4, h5, h6"))
        {
            int next = heading.TagName[1] - '0';
            Assert.True(next <= level + 1, $"'{heading.TextContent}' is of level {next} behind one of level {level}");
            level = next;
        }
    }

    private static void AssertEverythingIsInATable(IHtmlDocument page, ReportInput input)
    {
        TracedPlant traced = input.Traced;
        string[] strands = [.. page.QuerySelectorAll("#diagram tbody tr").Select(r => r.Children[0].TextContent)];
        Assert.Equal(Enumerable.Range(0, traced.Strands.Count).Where(traced.IsActive).Select(traced.NumberOf).Order().Select(n => $"{n}").Except(strands), []);

        (string, string)[] links = [.. page.QuerySelectorAll("#links tbody tr").Select(r => (First(r.Children[1]), First(r.Children[2])))];
        Assert.Equal(input.Plant.Links.Select((Link l) => (input.Plant.Address(l.From), input.Plant.Address(l.To))), links);

        IElement? findings = page.QuerySelector("#findings table");
        Assert.Equal(
            input.Check.Findings.Select((Finding f) => $"{f.Rule.Code} {f.Rule.Title}|{f.Message}"),
            findings?.QuerySelectorAll("tbody tr").Select(r => $"{r.QuerySelector("a")!.TextContent}|{r.Children[1].LastChild!.TextContent}") ?? []);
    }

    private static string First(IElement cell) => cell.ChildNodes[0].TextContent;

    private static int Count(string text, string what) => text.Split(what).Length - 1;
}
