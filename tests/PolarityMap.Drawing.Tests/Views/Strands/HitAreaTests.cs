using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Tests.Views.Overview;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Strands;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Strands;

/// <summary>The places that a page lets its reader point at, against what is drawn there: cells, names and strands.</summary>
public sealed class HitAreaTests
{
    public static TheoryData<string> Documents => new()
    {
        "gallery/methods/duplex-B.yaml", "gallery/opera-house/plant.yaml", "gallery/opera-house/as-built.yaml", "gallery/arrays/two-rows-of-twelve.yaml", "gallery/arrays/single-fibre.yaml",
    };

    [Theory]
    [MemberData(nameof(Documents))]
    public void Each_cell_of_a_position_is_one_hit_area_and_nothing_else_is(string document)
    {
        foreach ((PlannedSheet planned, DrawingSheet drawn) in Sheets(document))
        {
            var cells = Elements(drawn.Layers).OfType<Box>().Where(b => b is { Height: Measures.CellHeight, CornerRadius: 0, StrokeWidthMm: LineWidths.Leader })
                .Select(b => Rounded(new Area(b.X, b.Y, b.Width, b.Height)));
            var areas = planned.HitAreas().Where(a => a.Position > 0).Select(a => Rounded(a.Area));
            Assert.Equal(cells.Order(), areas.Order());
        }
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void The_strand_of_a_position_runs_through_its_hit_area(string document)
    {
        TracedPlant traced = Plants.OfFile(document).Traced;
        foreach ((PlannedSheet planned, DrawingSheet drawn) in Sheets(document))
        {
            var lines = new Dictionary<string, List<(Point From, Point To)>>();
            foreach (SceneGroup strand in drawn.Layers.Single(l => l.Id == "strands").Children.Cast<SceneGroup>())
                lines[strand.Id!] = [.. strand.Children.Cast<StrandPath>().Select(p => p.Route.Flatten(0.01)).SelectMany(p => p.Zip(p.Skip(1)))];
            foreach (HitArea area in planned.HitAreas().Where(a => a.Position > 0))
            {
                int strand = traced.StrandOf(traced.Graph.PositionOf(area.Port, area.Position));
                string id = $"strand-{traced.NumberOf(strand)}";
                Assert.Contains(lines.Where(p => p.Key == id || p.Key.StartsWith(id + "-", StringComparison.Ordinal)).SelectMany(p => p.Value), l => Touches(l, area.Area));
            }
        }
    }

    [Fact]
    public void The_area_of_a_named_port_holds_its_cells_and_its_name()
    {
        (PlannedSheet planned, DrawingSheet drawn) = Sheets("gallery/methods/duplex-B.yaml").Single();
        var ports = planned.HitAreas().Where(a => a.Position == 0).ToList();

        // Six ports at each of two interfaces and two cassettes.
        Assert.Equal(24, ports.Count);
        foreach (HitArea port in ports)
        {
            foreach (HitArea cell in planned.HitAreas().Where(a => a.Position > 0 && a.Port == port.Port))
                Assert.True(Holds(port.Area, cell.Area));
            string name = Plants.OfFile("gallery/methods/duplex-B.yaml").Traced.Plant.Port(port.Port).Name;
            Assert.Contains(Elements(drawn.Layers).OfType<Label>(), l => l.Text == name && Holds(port.Area, l.Extent()));
        }
    }

    private static IEnumerable<(PlannedSheet Planned, DrawingSheet Drawn)> Sheets(string document)
    {
        IReadOnlyList<PlannedSheet> planned = new StrandsView().Plan(Plants.OfFile(document));
        for (int i = 0; i < planned.Count; i++)
            yield return (planned[i], planned[i].Draw(new SheetPlace(i + 1, planned.Count)));
    }

    private static IEnumerable<SceneElement> Elements(IEnumerable<SceneElement> elements) =>
        elements.SelectMany(e => e is SceneGroup group ? Elements(group.Children) : [e]);

    private static (double X, double Y, double Width, double Height) Rounded(Area area) =>
        (Math.Round(area.X, 3), Math.Round(area.Y, 3), Math.Round(area.Width, 3), Math.Round(area.Height, 3));

    /// <summary>True for a level line at the middle height of a cell that reaches at least one of its edges.</summary>
    private static bool Touches((Point From, Point To) line, Area area) =>
        Math.Abs(line.From.Y - area.CentreY) < 0.01 && Math.Abs(line.To.Y - area.CentreY) < 0.01
        && Math.Min(line.From.X, line.To.X) < area.Right + 0.01 && Math.Max(line.From.X, line.To.X) > area.X - 0.01;

    private static bool Holds(Area outer, Area inner) =>
        inner.X > outer.X - 0.5 && inner.Right < outer.Right + 0.5 && inner.Y > outer.Y - 0.5 && inner.Bottom < outer.Bottom + 0.5;
}
