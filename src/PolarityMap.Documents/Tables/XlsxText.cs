using System.Globalization;
using System.Text;

namespace PolarityMap.Documents.Tables;

/// <summary>
/// Texts inside a workbook. What XML cannot hold stands as <c>_xHHHH_</c> (ECMA-376 part 1, ST_Xstring), and so does the mark that
/// begins such a text where it is meant as it stands.
/// </summary>
internal static class XlsxText
{
    public static string Escape(string text)
    {
        int at = 0;
        while (at < text.Length && !NeedsEscape(text, at))
            at++;
        if (at == text.Length)
            return text;
        var escaped = new StringBuilder(text, 0, at, text.Length + 16);
        for (; at < text.Length; at++)
        {
            if (NeedsEscape(text, at))
                escaped.Append(CultureInfo.InvariantCulture, $"_x{(int)text[at]:X4}_");
            else
                escaped.Append(text[at]);
        }

        return escaped.ToString();
    }

    /// <summary>The inverse of <see cref="Escape"/>.</summary>
    public static string Unescape(string text)
    {
        int at = text.IndexOf("_x", StringComparison.Ordinal);
        if (at < 0)
            return text;
        var plain = new StringBuilder(text.Length);
        int from = 0;
        for (; at >= 0; at = text.IndexOf("_x", Math.Max(at + 1, from), StringComparison.Ordinal))
        {
            if (!IsEscape(text, at, out char character))
                continue;
            plain.Append(text, from, at - from).Append(character);
            from = at + 7;
            if (from > text.Length - 2)
                break;
        }

        return plain.Append(text, from, text.Length - from).ToString();
    }

    private static bool NeedsEscape(string text, int at)
    {
        char c = text[at];
        return c switch
        {
            '_' => IsEscape(text, at, out _),
            '\t' or '\n' => false,
            < ' ' or '\uFFFE' or '\uFFFF' => true,
            >= '\uD800' and <= '\uDBFF' => at + 1 >= text.Length || !char.IsLowSurrogate(text[at + 1]),
            >= '\uDC00' and <= '\uDFFF' => at == 0 || !char.IsHighSurrogate(text[at - 1]),
            _ => false,
        };
    }

    private static bool IsEscape(string text, int at, out char character)
    {
        character = '\0';
        if (at + 7 > text.Length || text[at + 1] != 'x' || text[at + 6] != '_'
            || !ushort.TryParse(text.AsSpan(at + 2, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out ushort code))
            return false;
        character = (char)code;
        return true;
    }
}
