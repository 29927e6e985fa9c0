using PolarityMap.Acceptance;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;
using PolarityMap.Documents;
using PolarityMap.Documents.Text;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Tests;
using PolarityMap.Drawing.Views;
using Xunit;

namespace PolarityMap.Export.Tests;

/// <summary>Sheets to write: drawn by the real view from documents of the gallery, and one with every element there is.</summary>
internal static class Sheets
{
    /// <summary>Twelve strands in the twelve colours, folded once, on A4 upright; nothing is wrong.</summary>
    public static readonly DrawingSheet Twelve = Drawn("methods/duplex-B.yaml");

    /// <summary>A crossed pair, told by a sign, its code and wider strands.</summary>
    public static readonly DrawingSheet Faulty = Drawn("faults/P01.yaml");

    /// <summary>Every element, mark and line type, on A4 across.</summary>
    public static readonly DrawingSheet Every = Specimen.Sheet();

    public static readonly IReadOnlyList<DrawingSheet> All = [Twelve, Faulty, Every];

    /// <summary>A sheet with nothing but the given elements.</summary>
    public static DrawingSheet Of(double widthMm, double heightMm, params SceneElement[] elements) => new()
    {
        WidthMm = widthMm,
        HeightMm = heightMm,
        Title = "Sheet",
        Layers = [new SceneGroup("layer", elements)],
    };

    /// <summary>The same sheet without some of its elements.</summary>
    public static DrawingSheet Without(DrawingSheet sheet, Func<SceneElement, bool> leave) => Changed(sheet, e => leave(e) ? null : e);

    /// <summary>The same sheet with elements replaced, or left out where the replacement is null.</summary>
    public static DrawingSheet Changed(DrawingSheet sheet, Func<SceneElement, SceneElement?> change)
    {
        return With(sheet, [.. sheet.Layers.Select(l => Group(l))], sheet.Links);

        SceneGroup Group(SceneGroup group) => new(
            group.Id, group.Role, group.Title, group.Description,
            [.. group.Children.Select(c => change(c) is { } kept ? kept is SceneGroup inner && ReferenceEquals(inner, c) ? Group(inner) : kept : null).OfType<SceneElement>()]);
    }

    /// <summary>The same sheet with links.</summary>
    public static DrawingSheet Linked(DrawingSheet sheet, params SheetLink[] links) => With(sheet, sheet.Layers, links);

    /// <summary>Everything on a sheet that is no group, in drawing order.</summary>
    public static IEnumerable<SceneElement> Elements(DrawingSheet sheet) => sheet.Layers.SelectMany(l => Elements(l));

    /// <summary>What a group and its groups hold that is no group.</summary>
    public static IEnumerable<SceneElement> Elements(SceneElement element) =>
        element is SceneGroup group ? group.Children.SelectMany(Elements) : [element];

    private static DrawingSheet With(DrawingSheet sheet, IReadOnlyList<SceneGroup> layers, IReadOnlyList<SheetLink> links) => new()
    {
        WidthMm = sheet.WidthMm,
        HeightMm = sheet.HeightMm,
        Title = sheet.Title,
        Description = sheet.Description,
        Layers = layers,
        Links = links,
    };

    private static DrawingSheet Drawn(string document)
    {
        var problems = new ProblemList();
        var plant = PlantDocument.Read(Path.Combine(Repository.Gallery, document), new Files(), problems);
        Assert.True(plant is not null, problems.ToString());
        var traced = TracedPlant.Of(plant);
        var input = new ViewInput(traced, Selection.Of(traced, Checker.Check(traced), new Choice()));
        return Assert.Single(ViewCatalogue.All[0].Plan(input)).Draw(new SheetPlace(1, 1));
    }

    private sealed class Files : IDocumentSource
    {
        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            bytes = File.ReadAllBytes(path);
            why = "";
            return true;
        }
    }
}
