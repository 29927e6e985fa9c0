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

    /// <summary>
    /// Reads a document that another one refers to and that must lie in a folder, also when links are followed. A source
    /// that has no links reads as <see cref="TryRead"/> does.
    /// </summary>
    /// <param name="folder">The folder with its last stroke, in the words of <paramref name="path"/>; empty for the folder that paths are taken from.</param>
    /// <param name="path">The path, which begins with the folder and has no step out of it.</param>
    /// <param name="maxBytes">A longer document is not read.</param>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="why">When false is returned, why, as a sentence without a full stop.</param>
    bool TryReadInside(string folder, string path, int maxBytes, out byte[] bytes, out string why) =>
        TryRead(path, maxBytes, out bytes, out why);
}
