using PolarityMap.Core.Planning;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Planning;

/// <summary>Reads briefs: what a plant is planned from. docs/plan.md tells their keys.</summary>
public static class BriefDocument
{
    /// <summary>
    /// Reads a brief. Problems carry their places; the brief is null when there is one. Never throws for its content.
    /// </summary>
    public static Brief? Read(string path, IDocumentSource source, ProblemList problems)
    {
        if (!source.TryRead(path, TextLoader.MaxBytes, out byte[] bytes, out string why))
        {
            problems.Add(new SourcePlace(path, 0, 0), why);
            return null;
        }

        if (!TextLoader.TryDecode(bytes, path, problems, out string text) || YamlReader.Read(text, path, problems) is not { } root)
            return null;
        var reader = new NodeReader(problems);
        if (reader.Mapping(root, "a brief", "keys such as 'brief:' at the start of a line") is not { } top)
            return null;
        if (top.Find(BriefKeys.Brief) is null && top.Entries.FirstOrDefault(e => e.Key.Value == DocumentKeys.Parts) is { Key: { } parts })
        {
            problems.Add(parts.Place, "this is a plant document, not a brief", $"a document with '{BriefKeys.Brief}:' and a title at its start");
            return null;
        }

        return new BriefBinder(reader, new BriefPrices(path, source, reader)).Bind(top);
    }
}
