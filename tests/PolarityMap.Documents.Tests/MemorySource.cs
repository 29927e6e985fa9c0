using System.Text;

namespace PolarityMap.Documents.Tests;

/// <summary>Documents held in memory. It keeps to the size that it is told, as a source that reads files does.</summary>
internal sealed class MemorySource : IDocumentSource
{
    private readonly Dictionary<string, byte[]> _files = new(StringComparer.Ordinal);

    /// <summary>The paths that were asked for, in order.</summary>
    public List<string> Asked { get; } = [];

    public MemorySource Add(string path, string text) => Add(path, Encoding.UTF8.GetBytes(text));

    public MemorySource Add(string path, byte[] bytes)
    {
        _files[path] = bytes;
        return this;
    }

    public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
    {
        Asked.Add(path);
        bytes = [];
        why = "";
        if (!_files.TryGetValue(path, out byte[]? found))
            why = $"there is no document '{path}'";
        else if (found.Length > maxBytes)
            why = $"'{path}' has {found.Length} bytes, at most {maxBytes} are read";
        else
            bytes = found;
        return why.Length == 0;
    }
}
