namespace PolarityMap.Documents.Text;

/// <summary>Translates an index of a text into a place. LF, CR LF and a lone CR each end a line, as in YAML.</summary>
public static class SourceLines
{
    /// <summary>The place of a character; an index past the end means the end of the text.</summary>
    public static SourcePlace PlaceAt(ReadOnlySpan<char> text, int index, string fileName)
    {
        var before = text[..Math.Clamp(index, 0, text.Length)];
        var line = 1;
        var lineStart = 0;
        while (true)
        {
            var found = before[lineStart..].IndexOfAny('\r', '\n');
            if (found < 0)
                break;

            var at = lineStart + found;
            if (text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n')
            {
                // Between CR and LF one is still on the line that they end.
                if (at + 1 >= before.Length)
                    break;
                at++;
            }

            line++;
            lineStart = at + 1;
        }

        return new SourcePlace(fileName, line, before.Length - lineStart + 1);
    }

    /// <summary>The index of the first character of the line that holds an index.</summary>
    public static int LineStart(ReadOnlySpan<char> text, int index) =>
        text[..Math.Clamp(index, 0, text.Length)].LastIndexOfAny('\r', '\n') + 1;

    /// <summary>The line that holds an index, without its line break.</summary>
    public static ReadOnlySpan<char> LineAt(ReadOnlySpan<char> text, int index)
    {
        var start = LineStart(text, index);
        var length = text[start..].IndexOfAny('\r', '\n');
        return length < 0 ? text[start..] : text.Slice(start, length);
    }
}
