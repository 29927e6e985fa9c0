using PolarityMap.Core.Planning;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Planning;

/// <summary>Reads briefs: what a plant is planned from. docs/plan.md tells their keys.</summary>
public static class BriefDocument
{
    /// <summary>What to do where something is to be written once and named again: a brief has no types.</summary>
    private const string WriteAgain = "write it again where it is needed";

    /// <summary>
    /// Reads a brief. Problems carry their places; the brief is null when there is one. Never throws for its content.
    /// </summary>
    /// <param name="path">Where it stands.</param>
    /// <param name="source">Reads it, and the price list that it names.</param>
    /// <param name="problems">Takes what is wrong.</param>
    /// <param name="allowOutside">Whether it may name a price list outside its folder.</param>
    /// <param name="isYetToCome">Of a price list that is not there: true where it is about to be written, so that there are no prices yet.</param>
    public static Brief? Read(string path, IDocumentSource source, ProblemList problems, bool allowOutside = false, Func<string, bool>? isYetToCome = null)
    {
        if (!source.TryRead(path, TextLoader.MaxBytes, out byte[] bytes, out string why))
        {
            problems.Add(new SourcePlace(path, 0, 0), why);
            return null;
        }

        if (!TextLoader.TryDecode(bytes, path, problems, out string text) || YamlReader.Read(text, path, problems, WriteAgain) is not { } root)
            return null;
        var reader = new NodeReader(problems);
        if (reader.Mapping(root, "a brief", "keys such as 'brief:' at the start of a line") is not { } top)
            return null;
        if (top.Find(BriefKeys.Brief) is null && top.Entries.FirstOrDefault(e => e.Key.Value == DocumentKeys.Parts) is { Key: { } parts })
        {
            problems.Add(parts.Place, "this is a plant document, not a brief", $"a document with '{BriefKeys.Brief}:' and a title at its start");
            return null;
        }

        return new BriefBinder(reader, new BriefPrices(path, source, reader, allowOutside, isYetToCome)).Bind(top);
    }
}
