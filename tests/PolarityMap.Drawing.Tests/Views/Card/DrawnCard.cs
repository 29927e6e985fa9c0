using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Tests.Views.Card;

/// <summary>A drawn sheet of cards, read back as a person would: by what stands where.</summary>
internal sealed class DrawnCard
{
    private DrawnCard(DrawingSheet sheet)
    {
        Sheet = sheet;
        foreach (SceneGroup layer in sheet.Layers)
            Collect(layer, layer.Id!, null);
    }

    public DrawingSheet Sheet { get; }

    /// <summary>Every label with the layer it is in.</summary>
    public List<(Label Label, string Layer)> Labels { get; } = [];

    /// <summary>The small boxes that hold a port and position, with their words.</summary>
    public List<(Box Box, string Words)> Cells { get; } = [];

    /// <summary>Outlined boxes of any kind.</summary>
    public List<Box> Boxes { get; } = [];

    public List<Polygon> Polygons { get; } = [];

    /// <summary>The lines of each strand by the id of its group.</summary>
    public List<(string Id, StrandPath Path)> Strands { get; } = [];

    /// <summary>The groups of hops in order.</summary>
    public List<SceneGroup> Hops { get; } = [];

    /// <summary>All words of a layer's group, such as <c>foot</c>, in order with blanks between lines.</summary>
    public string Words(string group) => string.Join(' ', Groups(Sheet.Layers).Where(g => g.Id == group).SelectMany(g => g.Children).OfType<Label>().Select(l => l.Text)).Replace('\u00A0', ' ');

    /// <summary>All words on the sheet.</summary>
    public string AllWords => string.Join(' ', Labels.Select(l => l.Label.Text)).Replace('\u00A0', ' ');

    public static DrawnCard Of(DrawingSheet sheet) => new(sheet);

    /// <summary>The words of the cells that a strand's line runs through, from the top down: a finger that follows it.</summary>
    public IEnumerable<string> Followed(string strandId)
    {
        foreach ((_, StrandPath path) in Strands.Where(s => s.Id == strandId))
        {
            IReadOnlyList<Point> points = path.Route.Flatten(0.01);
            foreach ((Box box, string words) in Cells.OrderBy(c => c.Box.Y))
            {
                double x = box.X + (box.Width / 2), y = box.Y + (box.Height / 2);
                if (Enumerable.Range(1, points.Count - 1).Any(i => Math.Abs(points[i].X - x) < 0.01 && Math.Abs(points[i - 1].X - x) < 0.01 && points[i - 1].Y <= y + 0.01 && points[i].Y >= y - 0.01))
                    yield return words;
            }
        }
    }

    /// <summary>The connector faces of a hop in the order drawn: number of places, and the filled one counted by rows from the left.</summary>
    public static List<(int Places, int Lit)> Faces(SceneGroup hop)
    {
        var faces = new List<(int, int)>();
        Circle[] circles = [.. hop.Children.OfType<Circle>()];
        foreach (Box box in hop.Children.OfType<Box>().Where(b => b is { CornerRadius: > 0.3 and < 0.5 }))
        {
            Circle[] inside = [.. circles.Where(c => c.CentreX > box.X && c.CentreX < box.X + box.Width && c.CentreY > box.Y && c.CentreY < box.Y + box.Height)
                .OrderBy(c => Math.Round(c.CentreY, 3)).ThenBy(c => c.CentreX)];
            int[] lit = [.. inside.Select((c, i) => (c, i)).Where(p => p.c.Fill is not null && p.c.Radius > 0.5).Select(p => p.i + 1)];
            faces.Add((inside.Length, lit.Length == 1 ? lit[0] : -lit.Length));
        }

        return faces;
    }

    private static IEnumerable<SceneGroup> Groups(IEnumerable<SceneElement> elements) =>
        elements.OfType<SceneGroup>().SelectMany(g => Groups(g.Children).Prepend(g));

    private void Collect(SceneGroup group, string layer, string? strand)
    {
        if (layer == "hops" && group.Role == GroupRole.GraphicsObject)
            Hops.Add(group);
        for (int i = 0; i < group.Children.Count; i++)
        {
            switch (group.Children[i])
            {
                case SceneGroup inner:
                    Collect(inner, layer, layer == "strands" ? inner.Id : strand);
                    break;
                case Label label:
                    Labels.Add((label, layer));
                    break;
                case Box { Fill: { } fill, Stroke: not null } box when fill == Palette.Paper && layer == "hops":
                    Cells.Add((box, ((Label)group.Children[i + 1]).Text));
                    Boxes.Add(box);
                    break;
                case Box { Stroke: not null } box:
                    Boxes.Add(box);
                    break;
                case Polygon polygon:
                    Polygons.Add(polygon);
                    break;
                case StrandPath path:
                    Strands.Add((strand!, path));
                    break;
                default:
                    break;
            }
        }
    }
}
