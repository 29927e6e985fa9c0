namespace PolarityMap.Documents.Yaml;

/// <summary>Recognises <c>key:value</c>, written without the space that makes it an entry.</summary>
internal static class MissingSpace
{
    /// <summary>The index of the colon, or -1.</summary>
    public static int IndexIn(ReadOnlySpan<char> text)
    {
        var colon = text.IndexOf(':');
        if (colon < 1 || colon + 1 >= text.Length || text[colon + 1] is ' ' or '\t')
            return -1;

        // An address of the web is no entry, and neither is a position of a port, whose part and port come before it.
        if (text[colon + 1] == '/' || text[..colon].IndexOfAny('/', '#') >= 0)
            return -1;
        foreach (var character in text[..colon])
        {
            if (!char.IsLetterOrDigit(character) && character is not (' ' or '-' or '_' or '.' or '[' or ']' or '"' or '\''))
                return -1;
        }

        return colon;
    }
}
