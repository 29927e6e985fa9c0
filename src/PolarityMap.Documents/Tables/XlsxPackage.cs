using System.IO.Compression;

namespace PolarityMap.Documents.Tables;

/// <summary>
/// The zip file around a workbook: what the library leaves open. It bounds no sizes, and it writes the time of day into what it packs.
/// </summary>
internal static class XlsxPackage
{
    public const string NoWorkbook = "this is a zip file and no workbook; save the table as XLSX or CSV";

    private const string ContentTypes = "[Content_Types].xml";

    /// <summary>The earliest time that a zip file can tell: the bytes know no clock.</summary>
    private static readonly DateTimeOffset s_time = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>What every part unpacks to, in bytes, by its name without regard to case. No more than that is ever unpacked.</summary>
    /// <exception cref="TableException">It is no package, or one of more parts or bytes than are read.</exception>
    /// <exception cref="InvalidDataException">It is no zip file.</exception>
    public static IReadOnlyDictionary<string, long> Sizes(byte[] bytes)
    {
        var sizes = new Dictionary<string, long>(StringComparer.OrdinalIgnoreCase);
        using var zip = new ZipArchive(new MemoryStream(bytes, false), ZipArchiveMode.Read);
        if (zip.Entries.Count > TableLimits.Entries)
            throw new TableException($"the workbook has more than {TableLimits.Entries} parts");
        long left = TableLimits.UnpackedBytes;
        long leftOfRelations = TableLimits.RelationBytes;
        foreach (ZipArchiveEntry entry in zip.Entries)
        {
            if (entry.Length > left)
                throw new TableException($"the workbook unpacks to more than {TableLimits.UnpackedBytes / 1024 / 1024} MiB");
            left -= entry.Length;

            // These two the library reads as a whole when it opens the package.
            if (entry.Name.EndsWith(".rels", StringComparison.OrdinalIgnoreCase) || entry.FullName.Equals(ContentTypes, StringComparison.OrdinalIgnoreCase))
                leftOfRelations -= entry.Length;
            if (leftOfRelations < 0)
                throw new TableException($"the parts of the workbook are listed in more than {TableLimits.RelationBytes / 1024 / 1024} MiB");
            if (!sizes.TryAdd(entry.FullName, entry.Length))
                throw new InvalidDataException();
        }

        return sizes.ContainsKey(ContentTypes) ? sizes : throw new TableException(NoWorkbook);
    }

    /// <summary>
    /// Takes the times out of a package. Its parts stay as they are packed, in the order in which they were made, which is always the same.
    /// </summary>
    public static void RemoveTimes(MemoryStream package)
    {
        using var zip = new ZipArchive(package, ZipArchiveMode.Update, leaveOpen: true);
        foreach (ZipArchiveEntry part in zip.Entries)
            part.LastWriteTime = s_time;
    }
}
