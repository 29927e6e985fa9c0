using System.Text;
using System.Text.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using PolarityMap.Acceptance;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents;
using PolarityMap.Documents.Text;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Strands;
using PolarityMap.Reports.Interactive;
using PolarityMap.Reports.Templates;
using Xunit;

namespace PolarityMap.Reports.Tests.Interactive;

/// <summary>The diagram's markup and data, read back by AngleSharp and System.Text.Json and compared with the trace. How it behaves is tested in a browser.</summary>
public sealed class InteractiveDiagramTests
{
    private static readonly ViewInput s_operaHouse = Input("gallery/opera-house/as-built.yaml");
    private static readonly InteractiveDiagram s_diagram = Made(s_operaHouse);
    private static readonly IHtmlDocument s_page = new HtmlParser().ParseDocument(s_diagram.Html);
    private static readonly JsonElement s_data = JsonDocument.Parse(s_page.GetElementById("diagram-data")!.TextContent).RootElement;

    [Fact]
    public void The_table_has_a_row_for_each_strand_in_the_order_of_their_numbers()
    {
        IElement[] rows = [.. s_page.QuerySelectorAll("tbody tr")];
        Assert.Equal(s_operaHouse.Selection.Strands.Select(s => $"strand-{s_operaHouse.Traced.NumberOf(s)}"), rows.Select(r => r.Id));
        foreach ((int strand, IElement row) in s_operaHouse.Selection.Strands.Zip(rows))
        {
            ReadOnlySpan<int> positions = s_operaHouse.Traced.Strands[strand];
            Assert.StartsWith(s_operaHouse.Traced.Address(positions[0]), row.Children[2].TextContent, StringComparison.Ordinal);
            Assert.StartsWith(s_operaHouse.Traced.Address(positions[^1]), row.Children[3].TextContent, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_row_of_a_strand_names_its_findings()
    {
        foreach (Finding finding in s_operaHouse.Findings)
        {
            foreach (int strand in finding.Strands)
            {
                string row = s_page.GetElementById($"strand-{s_operaHouse.Traced.NumberOf(strand)}")!.Children[6].TextContent;
                Assert.Contains($"{finding.Rule.Code} {finding.Rule.Title}", row, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void The_data_tells_every_position_of_every_strand_as_the_trace_does()
    {
        TracedPlant traced = s_operaHouse.Traced;
        foreach ((int strand, JsonElement told) in s_operaHouse.Selection.Strands.Zip(s_data.GetProperty("strands").EnumerateArray()))
        {
            Assert.Equal(traced.NumberOf(strand), told.GetProperty("n").GetInt32());
            int[] at = [.. told.GetProperty("at").EnumerateArray().Select(n => n.GetInt32())];
            int[] positions = traced.Strands[strand].ToArray();
            Assert.Equal(2 * positions.Length, at.Length);
            for (int i = 0; i < positions.Length; i++)
            {
                PositionPlace place = traced.Graph.PlaceOf(positions[i]);
                Assert.Equal(traced.Plant.Address(place.Port), s_data.GetProperty("ports")[at[2 * i]].GetProperty("name").GetString());
                Assert.Equal(place.Position, at[(2 * i) + 1]);
            }
        }
    }

    [Fact]
    public void An_adapter_leads_to_the_plug_in_it()
    {
        ViewInput input = Input("gallery/faults/M02.yaml");
        Mating mated = input.Traced.Plant.Matings.First(m => m.Through is not null);
        JsonElement data = Data(Made(input).Html);
        JsonElement adapter = data.GetProperty("ports").EnumerateArray().Single(p => p.GetProperty("name").GetString() == input.Traced.Plant.Address(mated.Through!.Value));
        JsonElement plug = data.GetProperty("ports")[adapter.GetProperty("plug").GetInt32()];
        Assert.Equal(input.Traced.Plant.Address(mated.A), plug.GetProperty("name").GetString());
    }

    [Fact]
    public void A_strand_that_misses_its_end_tells_where_it_was_meant_to_come_out()
    {
        TracedPlant traced = s_operaHouse.Traced;
        var told = s_data.GetProperty("strands").EnumerateArray().Where(s => s.TryGetProperty("meant", out _))
            .ToDictionary(s => s.GetProperty("n").GetInt32(), s => s.GetProperty("meant").EnumerateArray().Select(n => n.GetInt32()).ToArray());
        Assert.NotEmpty(told);
        Assert.Equal(s_operaHouse.ExpectedEnds.Keys.Select(traced.NumberOf).Order(), told.Keys.Order());
        foreach ((int strand, int end) in s_operaHouse.ExpectedEnds)
        {
            PositionPlace place = traced.Graph.PlaceOf(end);
            int[] meant = told[traced.NumberOf(strand)];
            Assert.Equal((traced.Plant.Address(place.Port), place.Position), (s_data.GetProperty("ports")[meant[0]].GetProperty("name").GetString(), meant[1]));
        }
    }

    [Fact]
    public void Ids_are_unique_and_every_reference_finds_its_id()
    {
        string[] ids = [.. s_page.QuerySelectorAll("[id]").Select(e => e.Id!)];
        Assert.Equal(ids.Length, ids.Distinct().Count());
        foreach (IElement element in s_page.QuerySelectorAll("[aria-labelledby], label[for], a[href]"))
        {
            foreach (string id in (element.GetAttribute("aria-labelledby") ?? element.GetAttribute("for") ?? element.GetAttribute("href")!.TrimStart('#')).Split(' '))
                Assert.Contains(id, ids);
        }
    }

    [Fact]
    public void Every_element_that_the_script_asks_for_by_name_is_there()
    {
        foreach (string name in s_diagram.Script.Split("byId('").Skip(1).Select(rest => rest[..rest.IndexOf('\'', StringComparison.Ordinal)]))
            Assert.True(s_page.GetElementById(name) is not null, name);
    }

    [Fact]
    public void Every_sheet_prints_on_a_page_of_its_own_size()
    {
        foreach (IElement sheet in s_page.QuerySelectorAll("figure.sheet"))
        {
            IElement svg = sheet.QuerySelector("svg")!;
            string paper = sheet.ClassList.Single(c => c.StartsWith("paper-", StringComparison.Ordinal));
            Assert.Contains($"@page {paper} {{ size: {svg.GetAttribute("width")} {svg.GetAttribute("height")}; margin: 0 }}", s_diagram.Style, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Unfriendly_text_stays_text_in_markup_and_data()
    {
        const string title = "</script><script>alert(1)</script> & \"friends\" 'n' foes", room = "<b>=1+1</b>]]>";
        InteractiveDiagram diagram = Made(Input("unfriendly.yaml", $$"""
            plant: {{JsonSerializer.Serialize(title)}}
            parts:
              ONE: { kind: duplex interface, room: {{JsonSerializer.Serialize(room)}} }
              TWO: duplex interface
            runs:
              - ONE/1, A-to-B cord 2 m, TWO/1
            """));
        IHtmlDocument page = new HtmlParser().ParseDocument(diagram.Html);
        Assert.Single(page.QuerySelectorAll("script"));
        Assert.Empty(page.QuerySelectorAll("b"));
        Assert.Equal(title, page.QuerySelector("svg title")!.TextContent);
        Assert.EndsWith($"in {room}", page.GetElementById("strand-1")!.Children[2].TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("<", page.GetElementById("diagram-data")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(room, Data(diagram.Html).GetProperty("parts").EnumerateArray().Single(p => p.GetProperty("name").GetString() == "ONE").GetProperty("room").GetString());
    }

    [Fact]
    public void The_same_plant_gives_the_same_bytes()
    {
        InteractiveDiagram again = Made(Input("gallery/opera-house/as-built.yaml"));
        Assert.Equal(s_diagram.Html, again.Html);
        Assert.Equal(s_diagram.Style, again.Style);
        Assert.Equal(s_diagram.Script, again.Script);
    }

    [Fact]
    public void Templates_of_a_readers_own_take_the_place_of_those_inside()
    {
        ViewInput input = Input("gallery/methods/duplex-B.yaml");
        var asked = new List<string>();
        InteractiveDiagram diagram = InteractiveDiagram.Of(input, SheetSet.Of(input, new StrandsView()), new TemplateFolder(name =>
        {
            asked.Add(name);
            return $"/* own {name} */";
        }, "own"));
        Assert.Equal(InteractiveDiagram.StyleFiles.Concat(InteractiveDiagram.ScriptFiles), asked);
        Assert.Contains("/* own diagram.css */", diagram.Style, StringComparison.Ordinal);
        Assert.Contains("/* own diagram-start.js */", diagram.Script, StringComparison.Ordinal);
        Assert.Equal(InteractiveDiagram.StyleFiles.Concat(InteractiveDiagram.ScriptFiles).Order(), Directory.EnumerateFiles(Path.Combine(Repository.Root, "templates"), "diagram*").Where(f => Path.GetExtension(f) != ".html").Select(Path.GetFileName).Order());
    }

    private static JsonElement Data(string html) => JsonDocument.Parse(new HtmlParser().ParseDocument(html).GetElementById("diagram-data")!.TextContent).RootElement;

    private static InteractiveDiagram Made(ViewInput input) => InteractiveDiagram.Of(input, SheetSet.Of(input, new StrandsView()), new TemplateFolder());

    private static ViewInput Input(string path, string? text = null)
    {
        var problems = new ProblemList();
        Plant plant = PlantDocument.Read(path, new Source(text), problems) ?? throw new InvalidOperationException(problems.ToString());
        TracedPlant traced = TracedPlant.Of(plant);
        var context = new CheckContext(traced);
        return new ViewInput(traced, Selection.Of(traced, Checker.Check(context), new Choice()))
        {
            ExpectedEnds = ExpectedEnds.Of(context),
            Paper = new PaperChoice([SheetFormat.A4Landscape, SheetFormat.A3Landscape], MayGrow: false),
        };
    }

    /// <summary>A text, or without one the files of the repository.</summary>
    private sealed class Source(string? text) : IDocumentSource
    {
        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            bytes = text is null ? File.ReadAllBytes(Path.Combine(Repository.Root, path)) : Encoding.UTF8.GetBytes(text);
            why = "";
            return true;
        }
    }
}
