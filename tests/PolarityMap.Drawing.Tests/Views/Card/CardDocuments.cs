using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using System.Text;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents;
using PolarityMap.Documents.Text;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Card;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Card;

/// <summary>Documents of the gallery and of the tests, read, traced and drawn as cards.</summary>
internal static class CardDocuments
{
    private static readonly string s_gallery = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(ThisFile())!, "..", "..", "..", "..", "gallery"));

    /// <summary>Every document of the gallery, as paths from its folder.</summary>
    public static TheoryData<string> All =>
        [.. Directory.EnumerateFiles(s_gallery, "*.yaml", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(s_gallery, f).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    private static readonly ConcurrentDictionary<string, (ViewInput, IReadOnlyList<DrawingSheet>)> s_drawn = new();

    /// <summary>A document of the gallery with all its cards, drawn once for all tests.</summary>
    public static (ViewInput Input, IReadOnlyList<DrawingSheet> Sheets) Drawn(string name) => s_drawn.GetOrAdd(name, n =>
    {
        ViewInput input = Gallery(n);
        return (input, Draw(input));
    });

    public static ViewInput Gallery(string name, Choice? choice = null) => Input(Path.Combine(s_gallery, name), new Files(null), choice);

    public static ViewInput Text(string text, Choice? choice = null) => Input("plant.yaml", new Files(text), choice);

    /// <summary>All sheets of cards, drawn in order.</summary>
    public static IReadOnlyList<DrawingSheet> Draw(ViewInput input)
    {
        IReadOnlyList<PlannedSheet> sheets = new CardView().Plan(input);
        return [.. sheets.Select((s, i) => s.Draw(new SheetPlace(i + 1, sheets.Count)))];
    }

    private static ViewInput Input(string path, IDocumentSource source, Choice? choice)
    {
        var problems = new ProblemList();
        Plant? plant = PlantDocument.Read(path, source, problems);
        Assert.Equal("", problems.ToString());
        TracedPlant traced = TracedPlant.Of(plant!);
        return new ViewInput(traced, Selection.Of(traced, Checker.Check(traced), choice ?? new Choice()));
    }

    private static string ThisFile([CallerFilePath] string path = "") => path;

    private sealed class Files(string? text) : IDocumentSource
    {
        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            bytes = text is null ? File.ReadAllBytes(path) : Encoding.UTF8.GetBytes(text);
            why = "";
            return true;
        }
    }
}
