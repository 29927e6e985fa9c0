using System.Buffers;

namespace PolarityMap.Documents.Tables;

/// <summary>
/// Keeps text of a CSV from becoming a formula in a spreadsheet program. CSV has no types, so a text that begins with
/// <c>= + - @</c>, tab, CR or LF, or with a full-width form of the four marks, gets an apostrophe before it, which such programs
/// take for "text" (the advice of OWASP on CSV injection). A text whose apostrophes would be mistaken for such gets one more, so that
/// taking one away gives every text back.
/// </summary>
public static class FormulaGuard
{
    private static readonly SearchValues<char> s_dangerous = SearchValues.Create("=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20");

    /// <summary>True when the text is written with an apostrophe before it.</summary>
    public static bool Needs(string text)
    {
        ReadOnlySpan<char> rest = text.AsSpan().TrimStart('\'');
        return rest.Length > 0 && s_dangerous.Contains(rest[0]);
    }

    /// <summary>The text as it is written.</summary>
    public static string Guard(string text) => Needs(text) ? "'" + text : text;

    /// <summary>The text that was meant; the inverse of <see cref="Guard"/>.</summary>
    public static string Unguard(string written) => written.Length > 1 && written[0] == '\'' && Needs(written) ? written[1..] : written;
}
