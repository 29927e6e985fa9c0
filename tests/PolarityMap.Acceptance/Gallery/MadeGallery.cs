using Xunit;

namespace PolarityMap.Acceptance.Gallery;

/// <summary>The gallery as the program makes it now, in a folder that is deleted afterwards.</summary>
internal sealed class MadeGallery
{
    private static readonly Lazy<MadeGallery> Made = new(() => new MadeGallery());

    private readonly SortedDictionary<string, string> _files = new(StringComparer.Ordinal);
    private readonly Dictionary<GalleryDocument, Outcome> _checks = [];
    private readonly Dictionary<Figure, string[]> _calls = [];
    private readonly Dictionary<Figure, string[]> _filesOf = [];

    private MadeGallery()
    {
        string root = Directory.CreateTempSubdirectory("gallery-").FullName;
        try
        {
            foreach (GalleryDocument document in GalleryIndex.Documents)
                Place(root, document);
            foreach (GalleryDocument document in GalleryIndex.Documents)
                Make(Path.Combine(root, document.Folder), document);
            foreach (GalleryCase worked in GalleryIndex.Cases)
                Make(root, worked);
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }

        _files["README.md"] = IndexPage.Write(this);
    }

    /// <summary>Made once, on first use.</summary>
    public static MadeGallery Now => Made.Value;

    /// <summary>Every generated file by its path inside the gallery, parted by strokes.</summary>
    public IReadOnlyDictionary<string, string> Files => _files;

    /// <summary>The drawings among the files.</summary>
    public IEnumerable<string> Svgs => _files.Keys.Where(p => p.EndsWith(".svg", StringComparison.Ordinal));

    public Outcome CheckOf(GalleryDocument document) => _checks[document];

    /// <summary>The files of a figure, named from its document's folder: one, or those of a set in the order in which they are bound.</summary>
    public IReadOnlyList<string> FilesOf(Figure figure) => _filesOf[figure];

    /// <summary>The call that made a figure.</summary>
    public IReadOnlyList<string> CallOf(Figure figure) => _calls[figure];

    private void Make(string root, GalleryCase worked)
    {
        string folder = Directory.CreateDirectory(Path.Combine(root, GalleryIndex.FaultFinding)).FullName;
        foreach (string seen in Directory.EnumerateFiles(Path.Combine(Repository.Gallery, GalleryIndex.FaultFinding), $"{worked.Name}.*seen.yml"))
            File.Copy(seen, Path.Combine(folder, Path.GetFileName(seen)), overwrite: true);
        foreach ((string file, string[] call) in worked.Made)
        {
            Outcome made = Product.Run(folder, call);
            Assert.True(made.Status < 2, $"{file} cannot be made: {made.Error}");
            _files[$"{GalleryIndex.FaultFinding}/{file}"] = file.EndsWith(".svg", StringComparison.Ordinal) ? File.ReadAllText(Path.Combine(folder, file)) : made.Out;
        }
    }

    private void Place(string root, GalleryDocument document)
    {
        string folder = Directory.CreateDirectory(Path.Combine(root, document.Folder)).FullName;
        if (document.Plan is { } plan)
        {
            foreach (string brief in GalleryIndex.Briefs.Concat(GrownGallery.Briefs))
                File.Copy(Path.Combine(Repository.Gallery, document.Folder, brief), Path.Combine(folder, brief), overwrite: true);
            Outcome planned = Product.Run(folder, [.. plan]);
            Assert.True(planned.Status == 0, $"{document.Folder}/{document.File} cannot be planned: {planned.Error}{planned.Out}");
            _files[$"{document.Folder}/{document.File}"] = File.ReadAllText(Path.Combine(folder, document.File));
            return;
        }

        string text = document.Written ?? File.ReadAllText(Path.Combine(Repository.Gallery, document.Folder, document.File));
        File.WriteAllText(Path.Combine(folder, document.File), text);
        if (document.Written is not null)
            _files[$"{document.Folder}/{document.File}"] = text;
    }

    private void Make(string folder, GalleryDocument document)
    {
        Outcome check = Product.Run(folder, "check", document.File);
        _checks[document] = check;
        _files[$"{document.Folder}/{document.Report}"] = check.Out;
        foreach (PrintedText text in document.Texts)
        {
            Outcome printed = Product.Run(folder, text.Call);
            Assert.True(printed.Status < 2, $"{document.Folder}/{text.File} cannot be printed: {printed.Error}");
            _files[$"{document.Folder}/{text.File}"] = printed.Out;
            if (text.Drawing is { } drawing)
                _files[$"{document.Folder}/{drawing}"] = File.ReadAllText(Path.Combine(folder, drawing));
        }

        foreach (Figure figure in document.Figures)
        {
            string[] call = ["draw", document.File, "--without-font", .. figure.Options, "-o", figure.Target];
            Outcome drawn = Product.Run(folder, call);

            // A document about spare fibres has no strand with light on it.
            if (drawn.Status != 0 && drawn.Error.Contains("--dark", StringComparison.Ordinal))
            {
                call = [.. call, "--dark"];
                drawn = Product.Run(folder, call);
            }

            Assert.True(drawn.Status == 0, $"{document.Folder}/{figure.Target} cannot be drawn: {drawn.Error}");
            _calls[figure] = call;
            string[] made = figure.IsSet
                ? [.. Directory.EnumerateFiles(Path.Combine(folder, figure.Target)).Select(f => figure.Target + Path.GetFileName(f)).Order(StringComparer.Ordinal)]
                : [figure.Target];
            _filesOf[figure] = made;
            foreach (string file in made)
                _files[$"{document.Folder}/{file}"] = File.ReadAllText(Path.Combine(folder, file));
        }
    }
}
