using System.Text;

namespace PolarityMap.Cli.Output;

/// <summary>Writes files whole or not at all: the content goes to a new file beside the old one, which then takes its place.</summary>
internal static class WholeFile
{
    private static readonly UTF8Encoding WithoutMark = new(false);

    /// <exception cref="CallException">The file cannot be written; what was there before is untouched.</exception>
    public static void Write(string path, string text) => Write(path, WithoutMark.GetBytes(text));

    /// <exception cref="CallException">The file cannot be written; what was there before is untouched.</exception>
    public static void Write(string path, byte[] content) => Write([(path, content)]);

    /// <summary>Writes several files; none takes its place before all of them are on the disk.</summary>
    /// <exception cref="CallException">One of them cannot be written; what was there before is untouched.</exception>
    public static void Write(IReadOnlyList<(string Path, byte[] Content)> files)
    {
        string path = "", folder = "";
        var temporaries = new List<string>(files.Count);
        try
        {
            for (int i = 0; i < files.Count; i++)
            {
                path = files[i].Path;
                folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
                Directory.CreateDirectory(folder);
                if (Directory.Exists(path))
                    throw new CallException($"'{path}' is a folder; name a file");
                temporaries.Add(Path.Combine(folder, $".{Path.GetFileName(path)}.{Environment.ProcessId}.part"));
                File.WriteAllBytes(temporaries[^1], files[i].Content);
            }

            for (int i = 0; i < files.Count; i++)
            {
                path = files[i].Path;
                folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
                File.Move(temporaries[i], path, overwrite: true);
            }
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            throw new CallException($"'{path}' cannot be written: {Why(broken, folder)}");
        }
        finally
        {
            foreach (string temporary in temporaries.Where(File.Exists))
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
