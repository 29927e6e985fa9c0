namespace PolarityMap.Cli.Output;

/// <summary>A file's path as a reference by which a log names it: relative as the user wrote it, or absolute.</summary>
internal static class SarifUri
{
    /// <summary>Whatever is not allowed in a path of a reference (RFC 3986) is percent-encoded, colons of a relative one too.</summary>
    public static string Of(string path)
    {
        if (Path.IsPathFullyQualified(path))
            return new Uri(path).AbsoluteUri;
        string own = Path.DirectorySeparatorChar == '/' ? path : path.Replace(Path.DirectorySeparatorChar, '/');
        return string.Join('/', own.Split('/').Select(Uri.EscapeDataString));
    }
}
