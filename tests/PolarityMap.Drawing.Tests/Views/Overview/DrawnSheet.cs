using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Overview;

/// <summary>What lies on a sheet, told apart by what it is.</summary>
internal sealed class DrawnSheet
{
    /// <summary>Rounding of sums of millimetres.</summary>
    private const double Rounding = 1e-6;

    public DrawnSheet(DrawingSheet sheet)
    {
        Sheet = sheet;
        foreach (SceneGroup layer in sheet.Layers)
            Walk(layer, layer.Id!, null);
    }

    public DrawingSheet Sheet { get; }

    public List<(string Layer, Label Label)> Labels { get; } = [];

    /// <summary>Outlines of parts.</summary>
    public List<Area> Boxes { get; } = [];

    public List<Area> Rings { get; } = [];

    /// <summary>Signs of findings at boxes.</summary>
    public List<Area> Signs { get; } = [];

    /// <summary>Straight pieces of cables' lines and networks' bars: the group that each is of, and its ends.</summary>
    public List<(string Of, Point From, Point To)> Pieces { get; } = [];

    /// <summary>The words of a layer, in drawing order.</summary>
    public IReadOnlyList<string> Words(string layer) => [.. Labels.Where(l => l.Layer == layer).Select(l => l.Label.Text.Replace('\u00A0', ' '))];

    /// <summary>Fails when anything lies on anything else that it is not part of.</summary>
    public void AssertClear(string name)
    {
        Area[] words = [.. Labels.Select(l => l.Label.Extent())];
        for (int i = 0; i < words.Length; i++)
        {
            for (int j = i + 1; j < words.Length; j++)
                Assert.False(Meet(words[i], words[j]), $"{name}: '{Labels[i].Label.Text}' lies on '{Labels[j].Label.Text}'");
            foreach (Area box in Boxes.Concat(Rings))
                Assert.True(!Meet(words[i], box) || Inside(words[i], box), $"{name}: '{Labels[i].Label.Text}' lies on an edge");
            Assert.True(Inside(words[i], new Area(0, 0, Sheet.WidthMm, Sheet.HeightMm)), $"{name}: '{Labels[i].Label.Text}' leaves the sheet");
        }

        foreach (Area sign in Signs)
        {
            Assert.True(Boxes.TrueForAll(b => !Meet(sign, b) || Inside(sign, b)), $"{name}: a sign lies on an edge");
            Assert.DoesNotContain(words, w => Meet(w, sign));
        }

        for (int i = 0; i < Boxes.Count; i++)
        {
            for (int j = i + 1; j < Boxes.Count; j++)
                Assert.False(Meet(Boxes[i], Boxes[j]), $"{name}: two boxes meet");
        }

        AssertPieces(name, words);
    }

    private void AssertPieces(string name, Area[] words)
    {
        // 0.5 mm is half of a cable's line with its casing.
        const double half = 0.5;
        foreach ((string of, Point from, Point to) in Pieces)
        {
            Assert.True(Math.Abs(from.X - to.X) < Rounding || Math.Abs(from.Y - to.Y) < Rounding, $"{name}: {of} runs aslant");
            Area piece = Between(from, to);
            Assert.True(Boxes.TrueForAll(b => !Meet(piece, b)), $"{name}: {of} runs through a box");
            var wide = new Area(piece.X, piece.Y - half, piece.Width, piece.Height + (2 * half));
            for (int i = 0; i < words.Length; i++)
                Assert.False(Meet(wide, words[i]), $"{name}: {of} runs through '{Labels[i].Label.Text}'");
            foreach ((string other, Point otherFrom, Point otherTo) in Pieces)
            {
                if (other != of && IsLevel(from, to) == IsLevel(otherFrom, otherTo))
                    Assert.False(Meet(Wider(piece), Between(otherFrom, otherTo)), $"{name}: {of} runs along {other}");
            }
        }
    }

    /// <summary>Lines side by side keep a clear gap of 0.7 mm, ISO 128 (from memory), beside 1 mm of line each.</summary>
    private static Area Wider(Area piece) => new(piece.X - 1.7, piece.Y - 1.7, piece.Width + 3.4, piece.Height + 3.4);

    private static bool IsLevel(Point from, Point to) => Math.Abs(from.Y - to.Y) < Rounding;

    private static Area Between(Point from, Point to) =>
        new(Math.Min(from.X, to.X), Math.Min(from.Y, to.Y), Math.Abs(from.X - to.X), Math.Abs(from.Y - to.Y));

    private static bool Meet(Area a, Area b) =>
        a.X < b.Right - Rounding && b.X < a.Right - Rounding && a.Y < b.Bottom - Rounding && b.Y < a.Bottom - Rounding;

    private static bool Inside(Area a, Area b) =>
        a.X >= b.X - Rounding && a.Right <= b.Right + Rounding && a.Y >= b.Y - Rounding && a.Bottom <= b.Bottom + Rounding;

    private void Walk(SceneElement element, string layer, string? group)
    {
        switch (element)
        {
            case SceneGroup inner:
                foreach (SceneElement child in inner.Children)
                    Walk(child, layer, inner.Id ?? group);
                break;
            case Label label:
                Labels.Add((layer, label));
                break;
            case Box box when layer == "parts":
                Boxes.Add(new Area(box.X, box.Y, box.Width, box.Height));
                break;
            case Circle ring when layer == "labels":
                Rings.Add(new Area(ring.CentreX - ring.Radius, ring.CentreY - ring.Radius, 2 * ring.Radius, 2 * ring.Radius));
                break;
            case Polygon sign when layer == "findings":
                double left = sign.Points.Min(p => p.X), top = sign.Points.Min(p => p.Y);
                Signs.Add(new Area(left, top, sign.Points.Max(p => p.X) - left, sign.Points.Max(p => p.Y) - top));
                break;
            case StrandPath path when layer == "lines":
                Point before = path.Route.Start;
                string of = group ?? $"bar {Pieces.Count}";
                foreach (RouteSegment segment in path.Route.Segments)
                {
                    Pieces.Add((of, before, segment.End));
                    before = segment.End;
                }

                break;
        }
    }
}
