using PolarityMap.Core.Plants;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents;

/// <summary>Reads plant documents.</summary>
public static class PlantDocument
{
    /// <summary>
    /// Reads a document and everything it refers to. Problems carry their places; the plant is null when there is one.
    /// Never throws for the content of a document.
    /// </summary>
    public static Plant? Read(string path, IDocumentSource source, ProblemList problems)
    {
        if (Load(path, new SourcePlace(path, 0, 0), source, problems) is not { } root)
            return null;
        var binder = new PlantBinder(problems);
        if (root.Find(DocumentKeys.Design) is not { } design)
        {
            binder.Bind(root);
            return binder.Finish();
        }

        if (DesignPath(path, design, problems) is not { } designPath
            || Load(designPath, design.Place, source, problems) is not { } designRoot)
            return null;
        if (designRoot.Find(DocumentKeys.Design) is { } again)
        {
            problems.Add(again.Place, "the design of an as-built document is a plant of its own, not another as-built document");
            return null;
        }

        binder.Bind(designRoot);
        binder.BindOverlay(root);
        return binder.Finish();
    }

    private static YamlMapping? Load(string path, SourcePlace mentioned, IDocumentSource source, ProblemList problems)
    {
        if (!source.TryRead(path, TextLoader.MaxBytes, out byte[] bytes, out string why))
        {
            problems.Add(mentioned, why);
            return null;
        }

        if (!TextLoader.TryDecode(bytes, path, problems, out string text))
            return null;
        YamlNode? node = YamlReader.Read(text, path, problems);
        if (node is YamlMapping mapping)
            return mapping;
        if (node is not null)
            problems.Add(node.Place, "a plant document is no list or text", "keys such as 'plant:', 'parts:', 'runs:' at the start of a line");
        return null;
    }

    /// <summary>The path of the design beside its as-built document. It stays inside that document's folder.</summary>
    private static string? DesignPath(string path, YamlNode design, ProblemList problems)
    {
        if (design is not YamlScalar { Value: { Length: > 0 } relative } || design is YamlScalar { IsNull: true })
        {
            problems.Add(design.Place, "design names the plant document that was built", "a path such as 'plant.yaml'");
            return null;
        }

        if (relative.Contains('\\') || relative.StartsWith('/') || relative.Contains(':') || relative.Split('/').Contains(".."))
        {
            problems.Add(design.Place, $"'{PartNames.Shorten(relative)}' leaves the folder of this document", "a path inside the folder, with forward slashes");
            return null;
        }

        int slash = path.LastIndexOfAny(['/', '\\']);
        return slash < 0 ? relative : path[..(slash + 1)] + relative;
    }
}
