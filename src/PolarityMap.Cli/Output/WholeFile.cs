namespace PolarityMap.Cli.Output;

/// <summary>Writes files whole or not at all: the text goes to a new file beside the old one, which then takes its place.</summary>
internal static class WholeFile
{
    /// <exception cref="CallException">The file cannot be written; what was there before is untouched.</exception>
    public static void Write(string path, string text)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        string temporary = Path.Combine(folder, $".{Path.GetFileName(path)}.{Environment.ProcessId}.part");
        try
        {
            Directory.CreateDirectory(folder);
            if (Directory.Exists(path))
                throw new CallException($"'{path}' is a folder; name a file");
            File.WriteAllText(temporary, text, new System.Text.UTF8Encoding(false));
            File.Move(temporary, path, overwrite: true);
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            throw new CallException($"'{path}' cannot be written: {Why(broken, folder)}");
        }
        finally
        {
            if (File.Exists(temporary))
                File.Delete(temporary);
        }
    }

    /// <summary>The cause in our own words: the built program carries none of the system's.</summary>
    private static string Why(Exception broken, string folder) => broken switch
    {
        UnauthorizedAccessException => "you may not write there",
        _ when File.Exists(folder) => $"'{folder}' is a file, not a folder",
        _ when !Directory.Exists(folder) => "its folder cannot be made",
        _ => "the file system refuses it",
    };
}
