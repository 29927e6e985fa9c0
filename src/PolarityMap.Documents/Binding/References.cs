using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Binding;

/// <summary>
/// Reads documents and what they refer to by paths. A path stays in the folder of the document that writes it, unless the
/// user has let documents leave it: a document from elsewhere must not be able to fetch files of the reader's.
/// </summary>
internal sealed class References(IDocumentSource source, ProblemList problems, bool allowOutside)
{
    /// <summary>The most catalogue files that a document includes.</summary>
    internal const int MostIncludes = 50;

    /// <summary>The longest path: no file has a longer one on any system in use, and a message repeats it.</summary>
    internal const int LongestPath = 1000;

    private const string CatalogueExpected = "the path of a catalogue file such as 'parts/cords.yaml'";

    /// <summary>Bytes that the catalogue files of one document may still have together.</summary>
    private int _left = TextLoader.MaxBytes;

    /// <summary>The document that the user names; null after a report.</summary>
    public YamlMapping? First(string path)
    {
        if (source.TryRead(path, TextLoader.MaxBytes, out byte[] bytes, out string why))
            return Parse(bytes, path, "a plant document", "keys such as 'plant:', 'parts:', 'runs:' at the start of a line");
        problems.Add(new SourcePlace(path, 0, 0), why);
        return null;
    }

    /// <summary>The design of an as-built document with its path; null after a report.</summary>
    public (string Path, YamlMapping Root)? Design(string from, YamlNode node)
    {
        if (Resolve(from, node, "design names the plant document that was built", "a path such as 'plant.yaml'") is not { } path
            || Load(from, path, node.Place) is not { } bytes)
            return null;
        return Parse(bytes, path, "a plant document", "keys such as 'plant:', 'parts:', 'runs:' at the start of a line") is { } root ? (path, root) : null;
    }

    /// <summary>
    /// The catalogue files that a document includes, in its order, read one by one. What is wrong with one is reported and
    /// it is left out.
    /// </summary>
    public IEnumerable<YamlMapping> Catalogues(string from, YamlMapping root)
    {
        if (root.Find(DocumentKeys.Include) is not { } node)
            yield break;
        IReadOnlyList<YamlNode> items = node is YamlSequence list ? list.Items : [node];
        if (items.Count > MostIncludes)
        {
            problems.Add(items[MostIncludes].Place, $"a document includes at most {MostIncludes} catalogue files");
            yield break;
        }

        var seen = new Dictionary<string, SourcePlace> { [Plain(from)] = default };
        foreach (YamlNode item in items)
        {
            if (Resolve(from, item, "include names catalogue files", CatalogueExpected) is not { } path)
                continue;
            if (!seen.TryAdd(Plain(path), item.Place))
            {
                SourcePlace first = seen[Plain(path)];
                problems.Add(item.Place, first == default ? "a document does not include itself" : $"this file is included already, {NodeReader.Where(first, item.Place)}", "each catalogue file once");
                continue;
            }

            if (Load(from, path, item.Place) is not { } bytes)
                continue;
            _left -= bytes.Length;
            if (_left < 0)
            {
                problems.Add(item.Place, $"the catalogue files up to here have more than {TextLoader.MaxBytes} bytes together", "fewer or smaller ones");
                yield break;
            }

            if (Parse(bytes, path, "a catalogue file", "'catalogue:' with a title, and 'types:'") is { } catalogue)
                yield return catalogue;
        }
    }

    private static bool IsRooted(string path) => path.StartsWith('/') || HasDrive(path);

    /// <summary>A drive letter with its colon and a stroke, as one system writes the roots of its paths.</summary>
    private static bool HasDrive(string path) => path.Length > 2 && char.IsAsciiLetter(path[0]) && path[1] == ':' && path[2] == '/';

    private static string FolderOf(string path) => path[..(path.LastIndexOfAny(['/', '\\']) + 1)];

    /// <summary>A path without the steps that lead nowhere, to tell whether two are the same.</summary>
    private static string Plain(string path) => string.Join('/', path.Split('/').Where((step, i) => step != "." && (step.Length > 0 || i == 0)));

    /// <summary>The path that a node of the document <paramref name="from"/> writes, or null after a report.</summary>
    internal string? Resolve(string from, YamlNode node, string what, string expected)
    {
        if (node is not YamlScalar { IsNull: false, Value: { Length: > 0 } written })
        {
            problems.Add(node.Place, what, expected);
            return null;
        }

        if (written.Length > LongestPath || written.Contains('\\') || written.AsSpan(HasDrive(written) ? 2 : 0).Contains(':') || written.Any(char.IsControl))
        {
            problems.Add(node.Place, $"'{PartNames.Shorten(written)}' is no path that every system can follow", "a path with forward slashes, without colons");
            return null;
        }

        if (!allowOutside && (IsRooted(written) || written.Split('/').Contains("..")))
        {
            problems.Add(node.Place, $"'{PartNames.Shorten(written)}' leaves the folder of this document", $"a path inside the folder, or the flag {PlantDocument.AllowOutsideFlag} if that is meant");
            return null;
        }

        return IsRooted(written) ? written : FolderOf(from) + written;
    }

    private byte[]? Load(string from, string path, SourcePlace mentioned)
    {
        bool read = allowOutside
            ? source.TryRead(path, TextLoader.MaxBytes, out byte[] bytes, out string why)
            : source.TryReadInside(FolderOf(from), path, TextLoader.MaxBytes, out bytes, out why);
        if (!read)
            problems.Add(mentioned, why);
        return read ? bytes : null;
    }

    private YamlMapping? Parse(byte[] bytes, string path, string what, string expected)
    {
        if (!TextLoader.TryDecode(bytes, path, problems, out string text))
            return null;
        YamlNode? node = YamlReader.Read(text, path, problems);
        if (node is YamlMapping mapping)
            return mapping;
        if (node is not null)
            problems.Add(node.Place, $"{what} is no list or text", expected);
        return null;
    }
}
