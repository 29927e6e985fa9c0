using System.Buffers;
using System.Globalization;

namespace PolarityMap.Documents.Text;

/// <summary>
/// Characters that no document may hold: control characters other than tab, LF and CR; line and paragraph separators, which
/// some readers count as line breaks and others do not; byte order marks inside the text; and the bidirectional override and
/// isolate characters, which can make a name read as another.
/// </summary>
public static class ForbiddenCharacters
{
    /// <summary>After this many in one text the rest are not reported.</summary>
    private const int MostReported = 10;

    private static readonly SearchValues<char> Set = SearchValues.Create(Collect());

    /// <summary>Reports the forbidden characters of a text, the first few of them with their places.</summary>
    /// <returns>True when there are none.</returns>
    public static bool Check(ReadOnlySpan<char> text, string fileName, ProblemList problems)
    {
        var at = IndexIn(text);
        for (var reported = 0; at >= 0 && reported < MostReported; reported++)
        {
            problems.Add(SourceLines.PlaceAt(text, at, fileName), Describe(text[at]));
            var next = IndexIn(text[(at + 1)..]);
            if (next < 0)
                return false;
            at += 1 + next;
        }

        return at < 0;
    }

    /// <summary>The index of the first forbidden character or unpaired surrogate, or -1.</summary>
    public static int IndexIn(ReadOnlySpan<char> text)
    {
        var forbidden = text.IndexOfAny(Set);
        var end = forbidden < 0 ? text.Length : forbidden;
        var from = 0;
        while (true)
        {
            var found = text[from..end].IndexOfAnyInRange('\uD800', '\uDFFF');
            if (found < 0)
                return forbidden;
            from += found;
            if (!char.IsHighSurrogate(text[from]) || from + 1 >= text.Length || !char.IsLowSurrogate(text[from + 1]))
                return from;
            from += 2;
        }
    }

    /// <summary>What is wrong with a forbidden character and what to do.</summary>
    public static string Describe(char character)
    {
        var code = "U+" + ((int)character).ToString("X4", CultureInfo.InvariantCulture);
        return character switch
        {
            '\0' => "there is a NUL character (U+0000) here; delete it, or if the file is UTF-16 save the file as UTF-8",
            '\u2028' or '\u2029' => $"there is a line separator ({code}) here; use an ordinary line break",
            '\uFEFF' => $"there is a byte order mark ({code}) inside the text; delete it",
            >= '\u202A' and <= '\u202E' or >= '\u2066' and <= '\u2069' =>
                $"{code} changes the direction in which text is shown and can make a name read as another; delete it",
            >= '\uD800' and <= '\uDFFF' => $"{code} is half of a character; type the character again",
            '\uFFFE' or '\uFFFF' => $"{code} is not a character; delete it",
            _ => $"there is a control character ({code}) here; delete it",
        };
    }

    private static char[] Collect()
    {
        var all = new List<char>(80);
        Range(all, '\u0000', '\u0008');
        Range(all, '\u000B', '\u000C');
        Range(all, '\u000E', '\u001F');
        Range(all, '\u007F', '\u009F');
        Range(all, '\u2028', '\u202E');
        Range(all, '\u2066', '\u2069');
        Range(all, '\uFEFF', '\uFEFF');
        Range(all, '\uFFFE', '\uFFFF');
        return [.. all];
    }

    private static void Range(List<char> all, char first, char last)
    {
        for (int code = first; code <= last; code++)
            all.Add((char)code);
    }
}
