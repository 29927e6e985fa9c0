using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents;
using PolarityMap.Documents.Text;

namespace PolarityMap.Benchmarks.Drawing;

/// <summary>Reads plant documents from files.</summary>
internal static class PlantFile
{
    /// <exception cref="InvalidDataException">The document is wrong; the message says where.</exception>
    public static TracedPlant Trace(string path)
    {
        var problems = new ProblemList();
        Plant? plant = PlantDocument.Read(Path.GetFileName(path), new Folder(Path.GetDirectoryName(Path.GetFullPath(path))!), problems);
        return plant is not null ? TracedPlant.Of(plant) : throw new InvalidDataException($"{path}: {problems}");
    }

    private sealed class Folder(string folder) : IDocumentSource
    {
        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            bytes = File.ReadAllBytes(Path.Combine(folder, path));
            why = "";
            return true;
        }
    }
}
