using PolarityMap.Core.Locate;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Observations;

/// <summary>Something to know about an observation that is no error.</summary>
public sealed record SeenRemark(SourcePlace Place, string Text);

/// <summary>What an observation file says of a plant.</summary>
/// <param name="Observations">In the order of the file.</param>
/// <param name="Remarks">What to know about them.</param>
public sealed record SeenNotes(IReadOnlyList<Observation> Observations, IReadOnlyList<SeenRemark> Remarks);

/// <summary>
/// A file of observations, read but not yet understood as of a plant. A table (CSV, workbook) and YAML say the same in two forms;
/// docs/locate.md tells both.
/// </summary>
public sealed class SeenFile
{
    /// <summary>The most observations of a file.</summary>
    public const int MostObservations = 10_000;

    private readonly IReadOnlyList<SeenEntry> _entries;

    private SeenFile(IReadOnlyList<SeenEntry> entries, string? plant)
    {
        _entries = entries;
        Plant = plant;
    }

    /// <summary>The path of the plant document that the file names, or null.</summary>
    public string? Plant { get; }

    /// <summary>How many observations it holds.</summary>
    public int Count => _entries.Count;

    /// <summary>Reads a file; null after a report. Never throws for its content.</summary>
    /// <param name="path">The file; the ending <c>.csv</c>, <c>.tsv</c> or <c>.xlsx</c> makes it a table.</param>
    /// <param name="source">Where documents come from.</param>
    /// <param name="problems">Takes what is wrong.</param>
    /// <param name="allowOutside">Whether it may name a plant outside its folder.</param>
    public static SeenFile? Read(string path, IDocumentSource source, ProblemList problems, bool allowOutside = false)
    {
        if (source.TryRead(path, TextLoader.MaxBytes, out byte[] bytes, out string why))
            return Read(path, bytes, problems, allowOutside);
        problems.Add(new SourcePlace(path, 0, 0), why);
        return null;
    }

    /// <summary>Reads the bytes of a file; null after a report. A file without anything in it holds no observations.</summary>
    public static SeenFile? Read(string path, byte[] bytes, ProblemList problems, bool allowOutside = false)
    {
        int before = problems.Count;
        IReadOnlyList<SeenEntry> entries;
        string? plant = null;
        if (SeenTable.Is(path, bytes))
        {
            entries = new SeenTable(path, problems).Read(bytes);
        }
        else
        {
            if (!TextLoader.TryDecode(bytes, path, problems, out string text))
                return null;
            if (IsBlank(text))
                return new SeenFile([], null);
            if (YamlReader.Read(text, path, problems) is not { } root)
                return null;
            var yaml = new SeenYaml(problems);
            entries = yaml.Read(root);
            plant = yaml.Plant is { } node ? new References(NoSource.One, problems, allowOutside).Resolve(path, node, "plant names the plant document that was looked at", "a path such as 'plant.yaml'") : null;
        }

        return problems.Count == before ? new SeenFile(entries, plant) : null;
    }

    /// <summary>Understands the observations as of a plant; null after a report.</summary>
    public SeenNotes? Bind(TracedPlant traced, ProblemList problems)
    {
        var binder = new SeenBinder(traced, problems);
        int before = problems.Count;
        var observations = new List<Observation>(_entries.Count);
        foreach (SeenEntry entry in _entries)
        {
            if (binder.Bind(entry) is { } observation)
                observations.Add(observation with { Place = entry.Place, Note = entry.Note });
        }

        return problems.Count == before ? new SeenNotes(observations, binder.Remarks) : null;
    }

    /// <summary>True where a text has nothing but blanks and comments.</summary>
    internal static bool IsBlank(string text)
    {
        foreach (ReadOnlySpan<char> line in text.AsSpan().EnumerateLines())
        {
            if (line.Trim() is [not '#', ..])
                return false;
        }

        return true;
    }

    /// <summary>A path is only made out here; nobody reads it through this.</summary>
    private sealed class NoSource : IDocumentSource
    {
        public static readonly NoSource One = new();

        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            (bytes, why) = ([], $"'{path}' is not read here");
            return false;
        }
    }
}
