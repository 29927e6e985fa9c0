using System.Collections.Concurrent;
using PolarityMap.Acceptance;
using PolarityMap.Cli;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents;
using PolarityMap.Documents.Text;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views;

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

    /// <summary>The demo plant with a desk that is dark.</summary>
    public static string DarkDesk => Page("dark-desk", () => Path.Combine(Repository.Root, "gallery/opera-house/plant.yaml"), "--seen", Path.Combine(Repository.Root, "gallery/faultfinding/dark-desk.seen.yml"));

    /// <summary>The page of a document in the repository.</summary>
    public static string OfFile(string path) => Page(Path.GetFileNameWithoutExtension(path), () => Path.Combine(Repository.Root, path));

    /// <summary>The field papers of a plant with networks and a fault, and of one with a cable that is spliced on site.</summary>
    public static IReadOnlyList<string> Papers { get; } =
        [.. PapersOf("gallery/faults/D06.yaml", "fault"), .. PapersOf("gallery/arrays/spliced-cable.yaml", "spliced")];

    /// <summary>The field papers of a document in the repository, in the order of their names.</summary>
    public static IEnumerable<string> PapersOf(string path, string name)
    {
        string folder = Path.Combine(s_folder.FullName, name);
        using var said = new StringWriter();
        int status = Application.Run(["report", Path.Combine(Repository.Root, path), "-o", folder + "/", "--svg-only"], new CommandContext(said, said) { Folder = s_folder.FullName });
        return status == 2 ? throw new InvalidOperationException(said.ToString()) : Directory.EnumerateFiles(Path.Combine(folder, "papers")).Order(StringComparer.Ordinal);
    }

    /// <summary>What a document in the repository comes to, for tests to compare a page with.</summary>
    public static ViewInput Told(string path) => Input(Read(path, new OnDisk()));

    /// <summary>How many sheets the drawing of a document in the repository has on the paper of a report.</summary>
    public static int SheetsOf(string path) => SheetSet.Of(Told(path), ViewCatalogue.Find("strands")!).Count;

    private static string OfText(string name, string text) => Page(name, () =>
    {
        string document = Path.Combine(s_folder.FullName, name + ".yaml");
        File.WriteAllText(document, text);
        return document;
    });

    /// <summary>The page as <c>report</c> writes it.</summary>
    private static string Page(string name, Func<string> document, params string[] options) => s_pages.GetOrAdd(name, _ => new Lazy<string>(() =>
    {
        string file = Path.Combine(s_folder.FullName, name + ".html");
        using var said = new StringWriter();
        int status = Application.Run(["report", document(), "-o", file, .. options], new CommandContext(said, said) { Folder = s_folder.FullName });
        return status == 2 ? throw new InvalidOperationException(said.ToString()) : file;
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
            Paper = new PaperChoice([SheetFormat.A4Landscape, SheetFormat.A4Portrait], MayGrow: false),
        };
    }

    private sealed class OnDisk : IDocumentSource
    {
        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            bytes = File.ReadAllBytes(Path.Combine(Repository.Root, path));
            why = "";
            return true;
        }
    }
}
