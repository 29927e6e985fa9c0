using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Svg;
using PolarityMap.Drawing.Tests.Views.Overview;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Strands;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Sets;

/// <summary>
/// A sheet that takes over the layout of one that looks alike is the sheet that it would be if it were laid out by itself. Oracle:
/// the same plan with every sheet laid out by itself, byte by byte.
/// </summary>
public sealed class LikeLayoutTests
{
    /// <summary>Twenty channels of twelve strands, with what makes them unlike put in.</summary>
    private static string Channels(string cord = "A-to-B cord 2 m", string trunk = "Type-B trunk", string names = "K-L[1..20]", string more = "", string through = "") => $$"""
        plant: Channels
        parts:
          SW-L[1..5]: { kind: duplex interface, ports: 24 }
          SW-R[1..5]: { kind: duplex interface, ports: 24 }
          {{names}}: U1 cassette
          K-R[1..20]: U1 cassette
          T[1..20]: { kind: {{trunk}}, length: 60 m }
        {{more}}
        runs:
          - SW-L[1..5]/1..24, {{cord}}, {{names}}/1..6
          - {{names}}/rear, {{through}}T[1..20], K-R[1..20]/rear
          - K-R[1..20]/1..6, A-to-B cord 2 m, SW-R[1..5]/1..24
        links:
          - SW-L[1..5]/1..24 to SW-R[1..5]/1..24
        """;

    public static TheoryData<string, string> Documents => new()
    {
        { "alike", Channels() },
        { "names of one width that are not in order", Channels(names: "K-L[20..1]") },
        { "names of many widths", Channels(names: "K-L[95..114]") },
        { "adapters between", Channels(more: "  P[1..20]: { kind: array panel, ports: 1, keys: opposed }\n  V[1..20]: { kind: Type-B trunk, length: 20 m }", through: "V[1..20], P[1..20]/1, ") },
        { "crossed in the cords", Channels(cord: "A-to-A cord 2 m") },
        { "crossed in the trunks", Channels(trunk: "Type-C trunk") },
    };

    [Theory]
    [MemberData(nameof(Documents))]
    public void Sheets_that_look_alike_are_what_they_would_be_by_themselves(string what, string document)
    {
        Assert.NotEmpty(what);
        foreach (string paper in (string[])["A4", "A3"])
        {
            ViewInput input = Plants.OfText(document) with { Paper = PaperOf(paper), Division = SheetDivision.Network };
            Assert.Equal(Drawn(input, takesOver: false), Drawn(input, takesOver: true));
        }
    }

    [Fact]
    public void The_sheets_of_the_demo_plant_are_what_they_would_be_by_themselves()
    {
        foreach (string plant in (string[])["gallery/opera-house/plant.yaml", "gallery/opera-house/as-built.yaml"])
        {
            ViewInput input = Plants.OfFile(plant) with { Paper = PaperOf("A4"), Division = SheetDivision.Network };
            Assert.Equal(Drawn(input, takesOver: false), Drawn(input, takesOver: true));
        }
    }

    [Fact]
    public void Channels_that_are_alike_share_a_layout()
    {
        ViewInput input = Plants.OfText(Channels()) with { Paper = PaperOf("A4"), Division = SheetDivision.Network };
        IReadOnlyList<PlannedSheet> sheets = new StrandsView().Plan(input);
        int sharing = sheets.Select((s, i) => s.Draw(new SheetPlace(i + 1, sheets.Count))).Count(d => d.Layers.Any(l => l is { Id: "parts", Repeats: true }));
        Assert.InRange(sharing, sheets.Count / 2, sheets.Count);
    }

    [Fact]
    public void Sheets_share_a_layout_whatever_figures_their_numbers_have()
    {
        ViewInput input = Plants.OfText(Channels()) with { Paper = PaperOf("A4"), Division = SheetDivision.Network };
        IReadOnlyList<PlannedSheet> sheets = new StrandsView().Plan(input);
        (int First, int Count, SceneGroup Parts)[] drawn =
        [
            .. sheets.Select((s, i) => (input.Traced.NumberOf(s.Strands[0]), s.Strands.Count, s.Draw(new SheetPlace(i + 1, sheets.Count)).Layers.Single(l => l.Id == "parts"))),
        ];

        // A switch has 24 ports of two strands, so after 48 strands all begins again.
        var pairs = drawn.SelectMany(a => drawn.Where(b => b.First == a.First + 48 && b.Count == a.Count).Select(b => (a, b))).ToList();
        Assert.Contains(pairs, p => p.a.First < 100 && p.b.First > 99);
        Assert.All(pairs, p => Assert.Same(p.a.Parts, p.b.Parts));
    }

    private static string[] Drawn(ViewInput input, bool takesOver)
    {
        IReadOnlyList<PlannedSheet> sheets = new StrandsView { TakesOverLayouts = takesOver }.Plan(input);
        return [.. sheets.Select((s, i) => $"{s.Name} {s.Subject} {string.Join(' ', s.Parts.Order())} {string.Join(' ', s.HitAreas())}\n{SvgWriter.Write(s.Draw(new SheetPlace(i + 1, sheets.Count)), new SvgOptions { EmbedFont = false })}")];
    }

    private static PaperChoice PaperOf(string name) => name == "A4"
        ? new PaperChoice([SheetFormat.A4Landscape, SheetFormat.A4Portrait], false)
        : new PaperChoice([SheetFormat.A3Landscape, SheetFormat.A3Portrait], false);
}
