using System.Text;
using Xunit;

namespace PolarityMap.Acceptance.Gallery;

/// <summary>The committed gallery is what the program makes now. POLARITYMAP_APPROVE=1 writes it anew instead of comparing.</summary>
public sealed class GalleryFilesTests
{
    private const string Regenerate = "POLARITYMAP_APPROVE=1 dotnet test tests/PolarityMap.Acceptance --filter Gallery";

    private static bool Approve => Environment.GetEnvironmentVariable("POLARITYMAP_APPROVE") == "1";

    [Fact]
    public void Every_committed_file_equals_what_the_program_makes_now()
    {
        var stale = new StringBuilder();
        foreach ((string path, string text) in MadeGallery.Now.Files)
        {
            string file = Path.Combine(Repository.Gallery, path);
            byte[] made = Encoding.UTF8.GetBytes(text);
            if (File.Exists(file) && File.ReadAllBytes(file).AsSpan().SequenceEqual(made))
                continue;
            if (Approve)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(file)!);
                File.WriteAllBytes(file, made);
            }
            else
            {
                stale.Append(File.Exists(file) ? $"gallery/{path} is stale: {FirstDifference(File.ReadAllText(file), text)}\n" : $"gallery/{path} is missing\n");
            }
        }

        Assert.True(stale.Length == 0, $"{stale}Look at the change; when it is right: {Regenerate}");
    }

    [Fact]
    public void Nothing_lies_in_the_gallery_that_the_index_does_not_know()
    {
        var known = new HashSet<string>(MadeGallery.Now.Files.Keys);
        known.UnionWith(GalleryIndex.Documents.Select(d => $"{d.Folder}/{d.File}"));
        known.Add($"{GalleryIndex.FaultFinding}/README.md");
        known.UnionWith(GalleryIndex.Briefs.Concat(GrownGallery.Briefs).Select(b => $"{GalleryIndex.Planned}/{b}"));
        known.UnionWith(GalleryIndex.Cases.SelectMany(c => (string[])[$"{GalleryIndex.FaultFinding}/{c.Name}.seen.yml", $"{GalleryIndex.FaultFinding}/{c.Name}.end.seen.yml"]));
        string[] orphans =
        [
            .. Directory.EnumerateFiles(Repository.Gallery, "*", SearchOption.AllDirectories)
                .Select(f => Path.GetRelativePath(Repository.Gallery, f).Replace('\\', '/'))
                .Where(f => !known.Contains(f)).Order(StringComparer.Ordinal),
        ];
        Assert.True(orphans.Length == 0, $"No document makes these files; delete them or add them to GalleryIndex: {string.Join(", ", orphans)}");
    }

    // The page would be no index if a figure could be left out.
    [Fact]
    public void The_index_page_shows_every_figure_and_links_every_document()
    {
        string page = MadeGallery.Now.Files["README.md"];
        foreach (GalleryDocument document in GalleryIndex.Documents)
        {
            Assert.Contains($"]({document.Folder}/{document.File})", page, StringComparison.Ordinal);
            Assert.Contains($"]({document.Folder}/{document.Report})", page, StringComparison.Ordinal);
        }

        foreach (string svg in MadeGallery.Now.Svgs.Where(s => !s.StartsWith(GalleryIndex.FaultFinding, StringComparison.Ordinal)))
            Assert.Contains($"]({svg})", page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_of_worked_cases_shows_every_figure_and_links_what_was_seen_and_said()
    {
        string page = File.ReadAllText(Path.Combine(Repository.Gallery, GalleryIndex.FaultFinding, "README.md"));
        foreach (GalleryCase worked in GalleryIndex.Cases)
        {
            foreach (string file in worked.Made.Select(m => m.File).Append($"{worked.Name}.seen.yml").Append($"{worked.Name}.end.seen.yml"))
                Assert.Contains($"]({file})", page, StringComparison.Ordinal);
        }
    }

    private static string FirstDifference(string committed, string made)
    {
        string[] before = committed.Split('\n'), now = made.Split('\n');
        int line = 0;
        while (line < before.Length && line < now.Length && before[line] == now[line])
            line++;
        string Cut(string[] lines) => line >= lines.Length ? "the end" : lines[line].Length > 160 ? lines[line][..160] + "…" : lines[line];
        return $"line {line + 1} was '{Cut(before)}' and is now '{Cut(now)}'";
    }
}
