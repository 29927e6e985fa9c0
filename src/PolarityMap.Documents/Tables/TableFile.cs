namespace PolarityMap.Documents.Tables;

/// <summary>Reads a file that holds tables, whichever of the two forms it has.</summary>
public static class TableFile
{
    /// <summary>The sheets of a file.</summary>
    /// <param name="name">What the one sheet of a CSV is called.</param>
    /// <param name="bytes">The file.</param>
    /// <param name="problems">Takes the cells that have no value.</param>
    /// <exception cref="TableException">It is no table, or more than is read.</exception>
    public static IReadOnlyList<TableSheet> Read(string name, byte[] bytes, out IReadOnlyList<TableProblem> problems)
    {
        problems = [];
        bool isPacked = bytes.AsSpan().StartsWith("PK"u8) || bytes.AsSpan().StartsWith((ReadOnlySpan<byte>)[0xD0, 0xCF, 0x11, 0xE0]);
        return isPacked ? XlsxReader.Read(bytes, out problems) : [CsvReader.Read(name, bytes)];
    }
}
