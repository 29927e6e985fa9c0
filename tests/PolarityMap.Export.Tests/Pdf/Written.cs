using PolarityMap.Drawing.Scene;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;

namespace PolarityMap.Export.Tests.Pdf;

/// <summary>A written PDF, read back by a reader that shares no code with what wrote it.</summary>
internal static class Written
{
    public const double PointsPerMm = 72 / 25.4;

    public static byte[] Bytes(PdfDetails details, params IReadOnlyList<DrawingSheet> sheets)
    {
        using var output = new MemoryStream();
        PdfFile.Write(sheets, details, output);
        return output.ToArray();
    }

    public static PdfDocument Open(params IReadOnlyList<DrawingSheet> sheets) => PdfDocument.Open(Bytes(new PdfDetails("Sheets"), sheets));

    /// <summary>Every object of the file.</summary>
    public static IEnumerable<IToken> Objects(PdfDocument document) =>
        document.Structure.CrossReferenceTable.ObjectOffsets.Keys.Select(k => document.Structure.GetObject(k).Data);

    /// <summary>The dictionaries among the objects, those of streams too.</summary>
    public static IEnumerable<DictionaryToken> Dictionaries(PdfDocument document) =>
        Objects(document).Select(o => o as DictionaryToken ?? (o as StreamToken)?.StreamDictionary).OfType<DictionaryToken>();

    /// <summary>What stands under a key, or null when there is nothing of that kind.</summary>
    public static T? Get<T>(DictionaryToken dictionary, string key)
        where T : class, IToken => dictionary.Data.TryGetValue(key, out IToken? token) ? token as T : null;

    /// <summary>The name under a key, or null.</summary>
    public static string? Name(DictionaryToken dictionary, string key) => Get<NameToken>(dictionary, key)?.Data;

    /// <summary>A place of a page in mm from the top left corner, as a scene counts.</summary>
    public static (double X, double Y) Mm(PdfPoint point, double pageHeight) => (point.X / PointsPerMm, (pageHeight - point.Y) / PointsPerMm);
}
