namespace PolarityMap.Documents;

/// <summary>Hands out the bytes of documents by path. The command line reads files; tests read from memory.</summary>
public interface IDocumentSource
{
    /// <summary>Reads a document.</summary>
    /// <param name="path">The path as the user wrote it, or relative to the folder of the first document.</param>
    /// <param name="maxBytes">A longer document is not read.</param>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="why">When false is returned, why, as a sentence without a full stop.</param>
    bool TryRead(string path, int maxBytes, out byte[] bytes, out string why);
}
