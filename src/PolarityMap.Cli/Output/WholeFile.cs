namespace PolarityMap.Cli.Output;

/// <summary>Writes a file whole or not at all.</summary>
internal static class WholeFile
{
    /// <exception cref="CallException">The file cannot be written; what was there before is untouched.</exception>
    public static void Write(string path, string text)
    {
        using var file = new WholeFiles();
        file.Add(path, new System.Text.UTF8Encoding(false).GetBytes(text));
        file.Commit();
    }
}
