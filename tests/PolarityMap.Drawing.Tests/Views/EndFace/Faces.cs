using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.EndFace;

/// <summary>One fibre place as drawn: its circle, the words at it from the top down, and what else is at it.</summary>
internal sealed record DrawnPlace(Circle Circle, IReadOnlyList<Label> Labels, IReadOnlyList<SceneElement> Marks)
{
    public string Name => Labels.Count > 0 && Labels[0].BaselineY < Circle.CentreY ? Labels[0].Text : "";

    /// <summary>The letters below the circle, or nothing.</summary>
    public string Letters => Labels.FirstOrDefault(l => l.BaselineY > Circle.CentreY)?.Text ?? "";

    /// <summary>Number of ticks below the letters.</summary>
    public int Ticks => Marks.OfType<SceneGroup>().Sum(g => g.Children.Count);
}

/// <summary>Finds on a sheet what a panel shows.</summary>
internal static class Faces
{
    public static SceneGroup Group(DrawingSheet sheet, string id) => All(sheet).OfType<SceneGroup>().Single(g => g.Id == id);

    public static IEnumerable<SceneElement> All(DrawingSheet sheet) => sheet.Layers.SelectMany(All);

    public static IEnumerable<SceneElement> All(SceneElement element) =>
        element is SceneGroup group ? [group, .. group.Children.SelectMany(All)] : [element];

    /// <summary>The places of a face, in the order in which they are drawn.</summary>
    public static DrawnPlace[] Places(DrawingSheet sheet, string id) =>
    [
        .. Group(sheet, id).Children.OfType<SceneGroup>().Select(g => new DrawnPlace(
            g.Children.OfType<Circle>().First(),
            [.. g.Children.OfType<Label>().OrderBy(l => l.BaselineY)],
            [.. g.Children.Where(c => c is Line or SceneGroup)])),
    ];

    /// <summary>The outline of a connector: the first box of its face.</summary>
    public static Box Outline(DrawingSheet sheet, string id) => Group(sheet, id).Children.OfType<Box>().First();

    /// <summary>The guide pins or holes of a face.</summary>
    public static Circle[] Pins(DrawingSheet sheet, string id) => [.. Group(sheet, id).Children.OfType<Circle>()];

    /// <summary>The pairs of a diagram of what meets what, read along its lines from the top down: the upper name and the lower.</summary>
    public static List<(string Upper, string Lower)> Pairs(DrawingSheet sheet, string id)
    {
        SceneGroup group = Group(sheet, id);
        Label[] labels = [.. All(group).OfType<Label>()];
        var pairs = new List<(string, string)>();
        foreach (Line line in All(group).OfType<Line>().OrderBy(l => l.X1))
        {
            Assert.Equal(line.X1, line.X2);
            Label[] on = [.. labels.Where(l => Math.Abs(l.X - line.X1) < 1e-6)];
            pairs.Add((
                on.SingleOrDefault(l => l.BaselineY < Math.Min(line.Y1, line.Y2))?.Text ?? "",
                on.SingleOrDefault(l => l.BaselineY > Math.Max(line.Y1, line.Y2))?.Text ?? ""));
        }

        return pairs;
    }

    /// <summary>Every line of words on the sheet.</summary>
    public static string Words(DrawingSheet sheet) => string.Join("\n", All(sheet).OfType<Label>().Select(l => l.Text));
}
