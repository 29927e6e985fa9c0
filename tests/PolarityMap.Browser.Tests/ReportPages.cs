using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
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

namespace PolarityMap.Browser.Tests;

/// <summary>The pages under test, each made once: the one place that says how a plant becomes a page.</summary>
internal static class ReportPages
{
    private static readonly DirectoryInfo s_folder = Directory.CreateTempSubdirectory("polaritymap-pages-");
    private static readonly ConcurrentDictionary<string, Lazy<string>> s_pages = [];

    static ReportPages() => AppDomain.CurrentDomain.ProcessExit += (_, _) => s_folder.Delete(recursive: true);

    /// <summary>Twelve strands on one sheet, nothing found.</summary>
    public static string Duplex => OfFile("gallery/methods/duplex-B.yaml");

    /// <summary>The demo plant: 128 strands of four networks on several sheets.</summary>
    public static string OperaHouse => OfFile("gallery/opera-house/plant.yaml");

    /// <summary>The demo plant with its as-built faults.</summary>
    public static string AsBuilt => OfFile("gallery/opera-house/as-built.yaml");

    /// <summary>One fibre both ways at two wavelengths.</summary>
    public static string BothWays => OfText("both-ways", Documents.BothWays);

    /// <summary>Names with markup, quotes, scripts and marks that turn the reading direction.</summary>
    public static string Unfriendly => OfText("unfriendly", Documents.Unfriendly);

    /// <summary>1728 links, 3456 strands.</summary>
    public static string Campus => OfText("campus", Documents.Campus);

    /// <summary>The page of a document in the repository.</summary>
    public static string OfFile(string path) => OfText(Path.GetFileNameWithoutExtension(path), path, new OnDisk());

    /// <summary>What a document in the repository comes to, for tests to compare a page with.</summary>
    public static ViewInput Told(string path) => Input(Read(path, new OnDisk()));

    private static string OfText(string name, string text) => OfText(name, name + ".yaml", new InMemory(text));

    private static string OfText(string name, string path, IDocumentSource source) =>
        s_pages.GetOrAdd(name, _ => new Lazy<string>(() =>
        {
            string file = Path.Combine(s_folder.FullName, name + ".html");
            File.WriteAllText(file, Page(Input(Read(path, source))));
            return file;
        })).Value;

    private static TracedPlant Read(string path, IDocumentSource source)
    {
        var problems = new ProblemList();
        Plant plant = PlantDocument.Read(path, source, problems) ?? throw new InvalidOperationException(problems.ToString());
        return TracedPlant.Of(plant);
    }

    private static ViewInput Input(TracedPlant traced)
    {
        var context = new CheckContext(traced);
        return new ViewInput(traced, Selection.Of(traced, Checker.Check(context), new Choice()))
        {
            ExpectedEnds = ExpectedEnds.Of(context),
            Paper = new PaperChoice([SheetFormat.A4Landscape, SheetFormat.A4Portrait, SheetFormat.A3Landscape], MayGrow: false),
        };
    }

    private static string Page(ViewInput input)
    {
        var diagram = InteractiveDiagram.Of(input, SheetSet.Of(input, new StrandsView()));
        const string frame = """
            body { margin: 1rem; font: 1rem/1.4 'PolarityMap Sans', sans-serif; background: #fff; color: #222 }
            @page { size: A4; margin: 10mm 10mm 10mm 20mm }
            @media print { body { margin: 0 } }

            """;
        string style = frame + diagram.Style;
        string title = new StringBuilder(CleanText.Of(input.Title.Title)).Replace("&", "&amp;").Replace("<", "&lt;").ToString();
        return $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src '{Hash(style)}'; script-src '{Hash(diagram.Script)}'; font-src data:; base-uri 'none'; form-action 'none'">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>{title}</title>
            <style>{style}</style>
            </head>
            <body>
            <main>
            <h1>{title}</h1>
            {diagram.Html}
            </main>
            <script>{diagram.Script}</script>
            </body>
            </html>

            """;
    }

    private static string Hash(string text) => "sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private sealed class OnDisk : IDocumentSource
    {
        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            bytes = File.ReadAllBytes(Path.Combine(Repository.Root, path));
            why = "";
            return true;
        }
    }

    private sealed class InMemory(string text) : IDocumentSource
    {
        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            bytes = Encoding.UTF8.GetBytes(text);
            why = "";
            return true;
        }
    }
}
