using System.Text;

namespace PolarityMap.Documents;

/// <summary>Hands out documents that are held as texts, for programs that keep them elsewhere than in files.</summary>
/// <param name="documents">The text of each document by its path.</param>
public sealed class TextSource(IReadOnlyDictionary<string, string> documents) : IDocumentSource
{
    /// <summary>A source of one document.</summary>
    public TextSource(string path, string text)
        : this(new Dictionary<string, string> { [path] = text })
    {
    }

    /// <inheritdoc/>
    public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
    {
        bytes = [];
        why = "";
        if (!documents.TryGetValue(path, out string? text))
            why = $"there is no document '{path}'";
        else if (Encoding.UTF8.GetByteCount(text) > maxBytes)
            why = $"'{path}' is larger than {maxBytes / 1024 / 1024} MiB";
        else
            bytes = Encoding.UTF8.GetBytes(text);
        return why.Length == 0;
    }
}
