using PolarityMap.Documents;

namespace PolarityMap.Cli.Input;

/// <summary>Reads documents from files, never more of one than is accepted.</summary>
internal sealed class FileSource(CommandContext context) : IDocumentSource
{
    /// <summary>The most bytes read at once. A short document takes no more memory than it needs.</summary>
    private const int LargestChunk = 64 * 1024;

    /// <summary>Some files do not know their length.</summary>
    private const int SmallestChunk = 4 * 1024;

    public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why) =>
        TryReadAt(path, context.FullPath(path), maxBytes, out bytes, out why);

    public bool TryReadInside(string folder, string path, int maxBytes, out byte[] bytes, out string why)
    {
        bytes = [];
        string? file;
        try
        {
            string? root = RealPath.Of(context.FullPath(folder));
            file = RealPath.Of(context.FullPath(path));
            if (root is null || file is null)
            {
                why = $"'{path}' is a link that leads nowhere";
                return false;
            }

            if (!file.StartsWith(Path.EndsInDirectorySeparator(root) ? root : root + Path.DirectorySeparatorChar, StringComparison.Ordinal))
            {
                why = $"'{path}' is a link that leaves the folder of this document; expected a file inside the folder, or the flag {PlantDocument.AllowOutsideFlag} if that is meant";
                return false;
            }
        }
        catch (IOException)
        {
            why = $"'{path}' cannot be read: the file system refuses it";
            return false;
        }
        catch (UnauthorizedAccessException)
        {
            why = $"'{path}' may not be read";
            return false;
        }

        // What was proved to lie inside is what is opened.
        return TryReadAt(path, file, maxBytes, out bytes, out why);
    }

    private static bool TryReadAt(string path, string full, int maxBytes, out byte[] bytes, out string why)
    {
        bytes = [];
        why = "";
        try
        {
            if (Directory.Exists(full))
            {
                why = $"'{path}' is a folder; name a document in it";
                return false;
            }

            // A pipe has no length, so the limit holds while reading as well.
            using var file = new FileStream(full, FileMode.Open, FileAccess.Read, FileShare.Read, 1);
            if (file.CanSeek && file.Length > maxBytes)
            {
                why = $"'{path}' is larger than {maxBytes / 1024 / 1024} MiB; a plant that large is better split into several documents";
                return false;
            }

            using var buffer = new MemoryStream(file.CanSeek ? (int)file.Length : 0);
            byte[] chunk = new byte[file.CanSeek ? (int)Math.Clamp(file.Length + 1, SmallestChunk, LargestChunk) : LargestChunk];
            int read;
            while ((read = file.Read(chunk)) > 0)
            {
                if (buffer.Length + read > maxBytes)
                {
                    why = $"'{path}' is larger than {maxBytes / 1024 / 1024} MiB";
                    return false;
                }

                buffer.Write(chunk, 0, read);
            }

            bytes = buffer.ToArray();
            return true;
        }
        catch (FileNotFoundException)
        {
            why = Missing(path, full);
        }
        catch (DirectoryNotFoundException)
        {
            why = $"there is no file '{path}': its folder does not exist";
        }
        catch (UnauthorizedAccessException)
        {
            why = $"'{path}' may not be read";
        }
        catch (IOException)
        {
            why = $"'{path}' cannot be read: the file system refuses it";
        }

        return false;
    }

    private static string Missing(string path, string full)
    {
        string? near = null;
        try
        {
            string folder = Path.GetDirectoryName(full) is { Length: > 0 } f ? f : ".";
            near = Documents.Text.NearestWord.Find(Path.GetFileName(full), Directory.EnumerateFiles(folder).Take(1000).Select(Path.GetFileName)!);
        }
        catch (IOException)
        {
            return $"there is no file '{path}'";
        }
        catch (UnauthorizedAccessException)
        {
            return $"there is no file '{path}'";
        }

        return near is null ? $"there is no file '{path}'" : $"there is no file '{path}'; did you mean '{near}'?";
    }
}
