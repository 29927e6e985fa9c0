namespace PolarityMap.Cli.Input;

/// <summary>Paths with every link on the way followed.</summary>
internal static class RealPath
{
    /// <summary>Links followed before a path counts as one that goes round in circles, as many as the usual systems follow.</summary>
    private const int MostLinks = 40;

    /// <summary>
    /// Where a path leads in the end. What is missing keeps its name, so that opening it says that it is missing. Null when
    /// links lead in a circle.
    /// </summary>
    /// <exception cref="IOException">The file system refuses.</exception>
    /// <exception cref="UnauthorizedAccessException">A folder on the way may not be read.</exception>
    public static string? Of(string path)
    {
        string full = Path.GetFullPath(path);
        string root = Path.GetPathRoot(full)!;
        var ahead = new Stack<string>(Steps(full[root.Length..]).Reverse());
        string real = root;
        int links = 0;
        while (ahead.TryPop(out string? step))
        {
            string next = Path.Combine(real, step);
            if (new FileInfo(next).LinkTarget is not { } target)
            {
                real = next;
                continue;
            }

            if (++links > MostLinks)
                return null;

            // The target's own steps may be links as well, so it is walked from its root.
            string whole = Path.GetFullPath(Path.Combine(real, target));
            real = Path.GetPathRoot(whole)!;
            foreach (string further in Steps(whole[real.Length..]).Reverse())
                ahead.Push(further);
        }

        return real;
    }

    private static IEnumerable<string> Steps(string path) =>
        path.Split([Path.DirectorySeparatorChar, Path.AltDirectorySeparatorChar], StringSplitOptions.RemoveEmptyEntries);
}
