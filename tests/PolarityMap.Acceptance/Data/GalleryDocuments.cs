using PolarityMap.Acceptance.Gallery;
using Xunit;

namespace PolarityMap.Acceptance.Data;

/// <summary>The documents of the gallery as rows of a theory, and calls on them.</summary>
internal static class GalleryDocuments
{
    /// <summary>Every document by its path inside the gallery.</summary>
    public static TheoryData<string> All => [.. GalleryIndex.Documents.Select(d => $"{d.Folder}/{d.File}")];

    /// <summary>Runs a command on a document from the root of the gallery.</summary>
    public static Outcome Run(string document, string command, params string[] rest) => Product.Run(Repository.Gallery, [command, document, .. rest]);
}
