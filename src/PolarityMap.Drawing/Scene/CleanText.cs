using System.Text;

namespace PolarityMap.Drawing.Scene;

/// <summary>Makes any text fit to be set on a sheet, in whatever form the sheet is written.</summary>
public static class CleanText
{
    private const char Replacement = '\uFFFD';

    /// <summary>
    /// The text with line breaks and tabs as spaces, and with U+FFFD for each character that XML 1.0 or HTML forbids.
    /// Characters that turn the reading direction are dropped, so that a name cannot disguise its neighbours.
    /// </summary>
    public static string Of(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] is < ' ' or >= '\u007F')
                return Rewritten(text, i);
        }

        return text;
    }

    private static string Rewritten(string text, int from)
    {
        var output = new StringBuilder(text.Length).Append(text, 0, from);
        for (int i = from; i < text.Length; i++)
        {
            char c = text[i];
            if (char.IsHighSurrogate(c) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                // The last two code points of every plane are no characters.
                if ((char.ConvertToUtf32(c, text[i + 1]) & 0xFFFE) == 0xFFFE)
                    output.Append(Replacement);
                else
                    output.Append(c).Append(text[i + 1]);
                i++;
            }
            else if (c is '\t' or '\n' or '\r' or '\u0085' or '\u2028' or '\u2029')
            {
                output.Append(' ');
            }
            else if (!TurnsDirection(c))
            {
                output.Append(IsForbidden(c) ? Replacement : c);
            }
        }

        return output.ToString();
    }

    private static bool IsForbidden(char c) => c
        is < ' ' or (>= '\u007F' and <= '\u009F') or (>= '\uD800' and <= '\uDFFF') or (>= '\uFDD0' and <= '\uFDEF') or >= '\uFFFE';

    private static bool TurnsDirection(char c) =>
        c is '\u061C' or '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
