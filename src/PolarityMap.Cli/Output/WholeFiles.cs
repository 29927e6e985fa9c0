using Microsoft.Win32.SafeHandles;

namespace PolarityMap.Cli.Output;

/// <summary>
/// Writes files whole and all of them or none: each goes to a new file beside the old one as soon as it is made, and takes its
/// place when all are on the disk. So no more than one has to be kept in memory.
/// </summary>
internal sealed class WholeFiles : IDisposable
{
    private readonly List<(string Path, string Temporary)> _files = [];
    private string? _made;
    private int _placed;

    /// <summary>Adds a file that takes its place later.</summary>
    /// <exception cref="CallException">It cannot be written; what was there before is untouched.</exception>
    public void Add(string path, ReadOnlySpan<byte> content)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        try
        {
            // Most files of a set go to one folder.
            if (folder != _made)
                Directory.CreateDirectory(folder);
            _made = folder;
            if (Directory.Exists(path))
                throw new CallException($"'{path}' is a folder; name a file");
            string temporary = Path.Combine(folder, $".{Path.GetFileName(path)}.{Environment.ProcessId}.part");
            _files.Add((path, temporary));
            using SafeFileHandle file = File.OpenHandle(temporary, FileMode.Create, FileAccess.Write);
            RandomAccess.Write(file, content, 0);
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            throw new CallException($"'{path}' cannot be written: {Why(broken, folder)}");
        }
    }

    /// <summary>All files take their places.</summary>
    /// <exception cref="CallException">One of them cannot.</exception>
    public void Commit()
    {
        for (; _placed < _files.Count; _placed++)
        {
            (string path, string temporary) = _files[_placed];
            try
            {
                File.Move(temporary, path, overwrite: true);
            }
            catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
            {
                throw new CallException($"'{path}' cannot be written: {Why(broken, Path.GetDirectoryName(Path.GetFullPath(path))!)}");
            }
        }
    }

    /// <summary>Removes what did not take its place.</summary>
    public void Dispose()
    {
        for (; _placed < _files.Count; _placed++)
            File.Delete(_files[_placed].Temporary);
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
