using System.Security.Cryptography;
using System.Text;
using PolarityMap.Cli.Input;

namespace PolarityMap.Cli.Output;

/// <summary>
/// A folder that the program writes whole and replaces whole. A list of its contents with their hashes stands in it, so that
/// nothing is ever replaced that somebody else put there or changed.
/// </summary>
internal sealed class ReportFolder : IDisposable
{
    /// <summary>The list of contents: what <c>sha256sum</c> writes, and checks with <c>-c</c>.</summary>
    public const string ContentsName = "contents.sha256";

    private readonly string _shown;
    private readonly string _folder;
    private readonly string _temporary;
    private readonly SortedDictionary<string, string> _hashes = new(StringComparer.Ordinal);
    private bool _isPlaced;

    private ReportFolder(string shown, string folder)
    {
        _shown = shown;
        _folder = folder;
        _temporary = FolderSwap.TemporaryFor(folder);
    }

    /// <summary>Where files are written until the folder takes its place.</summary>
    public string Temporary => _temporary;

    /// <summary>Begins a new folder for a place that is empty, or has one that this program wrote.</summary>
    /// <param name="context">Where the call runs.</param>
    /// <param name="target">The folder as the call names it.</param>
    /// <exception cref="CallException">The place cannot be taken; nothing was changed.</exception>
    public static ReportFolder Begin(CommandContext context, string target)
    {
        try
        {
            string full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(context.FullPath(target)));
            string folder = RealPath.Of(full) ?? throw new CallException($"'{target}' is a link that leads nowhere");
            if (Path.GetDirectoryName(folder) is not { } parent || Path.GetFileName(folder).Length == 0)
                throw new CallException($"'{target}' cannot be replaced; name a folder of its own, such as report/");
            if (File.Exists(folder))
                throw new CallException($"'{target}' is a file; name a folder, such as report/, or a file ending in .html for one page");
            Directory.CreateDirectory(parent);
            FolderSwap.Recover(folder);
            CheckIsOurs(target, folder);
            var begun = new ReportFolder(target, folder);
            if (Directory.Exists(begun._temporary))
                Directory.Delete(begun._temporary, recursive: true);
            Directory.CreateDirectory(begun._temporary);
            return begun;
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            throw Refused(target, broken);
        }
    }

    /// <summary>Writes a file of the new folder.</summary>
    /// <param name="path">Where it lies in the folder, with <c>/</c> between folders.</param>
    /// <param name="content">What it holds.</param>
    /// <exception cref="CallException">It cannot be written; what was there before is untouched.</exception>
    public void Add(string path, ReadOnlySpan<byte> content)
    {
        string file = Inside(path);
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            using (FileStream output = new(file, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1))
                output.Write(content);
            _hashes.Add(path, Convert.ToHexStringLower(SHA256.HashData(content)));
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            throw Refused($"{_shown.TrimEnd('/')}/{path}", broken);
        }
    }

    public void Add(string path, string text) => Add(path, Encoding.UTF8.GetBytes(text));

    /// <summary>Takes up a file that another part of the program wrote into <see cref="Temporary"/>.</summary>
    public void Take(string path)
    {
        using FileStream file = File.OpenRead(Inside(path));
        _hashes.Add(path, Convert.ToHexStringLower(SHA256.HashData(file)));
    }

    /// <summary>The new folder takes the place of the one before.</summary>
    /// <exception cref="CallException">It cannot; what was there before is there still.</exception>
    public void Commit()
    {
        var list = new StringBuilder();
        foreach ((string path, string hash) in _hashes)
            list.Append(hash).Append("  ").Append(path).Append('\n');
        try
        {
            File.WriteAllText(Path.Combine(_temporary, ContentsName), list.ToString());

            // While this one was made, somebody may have put something into the folder that it replaces.
            CheckIsOurs(_shown, _folder);
            FolderSwap.Place(_temporary, _folder);
            _isPlaced = true;
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            throw Refused(_shown, broken);
        }
    }

    /// <summary>Removes what did not take its place.</summary>
    public void Dispose()
    {
        if (!_isPlaced && Directory.Exists(_temporary))
            Directory.Delete(_temporary, recursive: true);
    }

    private static CallException Refused(string target, Exception broken) =>
        new($"'{target}' cannot be written: {(broken is UnauthorizedAccessException ? "you may not write there" : "the file system refuses it")}");

    /// <summary>A path of the new folder. Names are made by the program, and none may lead out of it.</summary>
    private string Inside(string path)
    {
        string full = Path.GetFullPath(Path.Combine(_temporary, path));
        return full.StartsWith(_temporary + Path.DirectorySeparatorChar, StringComparison.Ordinal) ? full
            : throw new CallException($"'{path}' would be written outside '{_shown}'");
    }

    private static void CheckIsOurs(string target, string folder)
    {
        if (!Directory.Exists(folder))
            return;
        string[] files = [.. Directory.EnumerateFileSystemEntries(folder, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 })
            .Where(e => !Directory.Exists(e) || new DirectoryInfo(e).LinkTarget is not null)
            .Select(f => Path.GetRelativePath(folder, f).Replace(Path.DirectorySeparatorChar, '/')).Order(StringComparer.Ordinal)];
        if (files.Length == 0)
            return;
        Dictionary<string, string> listed = Listed(Path.Combine(folder, ContentsName));
        foreach (string file in files)
        {
            if (file == ContentsName && listed.Count > 0)
                continue;
            if (!listed.TryGetValue(file, out string? hash))
            {
                throw new CallException($"'{target}' holds '{file}', which is no part of a report of this program; "
                    + "move it away, or name another folder: the folder of a report is replaced as a whole");
            }

            using FileStream content = File.OpenRead(Path.Combine(folder, file));
            if (Convert.ToHexStringLower(SHA256.HashData(content)) != hash)
                throw new CallException($"'{target}' holds '{file}', which was changed since this program wrote it; move it away, or name another folder: the folder of a report is replaced as a whole");
        }
    }

    private static Dictionary<string, string> Listed(string contents)
    {
        const int hashLength = 64;
        var listed = new Dictionary<string, string>(StringComparer.Ordinal);
        if (!File.Exists(contents))
            return listed;
        foreach (string line in File.ReadLines(contents))
        {
            if (line.Length > hashLength + 2 && line[hashLength] == ' ' && line[hashLength + 1] == ' ')
                listed[line[(hashLength + 2)..]] = line[..hashLength];
        }

        return listed;
    }
}
