namespace PolarityMap.Drawing.Svg;

/// <summary>Makes any text safe inside XML and HTML, in content as in quoted attributes.</summary>
internal static class SvgText
{
    private const string Replacement = "\uFFFD";

    /// <summary>
    /// Appends the text with markup characters escaped. Line breaks and tabs become spaces. Characters that XML 1.0
    /// or HTML forbids become U+FFFD. Characters that turn the reading direction are dropped, so that a name cannot
    /// disguise its neighbours.
    /// </summary>
    internal static void Append(Utf8Text output, string text)
    {
        int start = 0;
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (c is >= ' ' and < '\u007F' and not ('&' or '<' or '>' or '"'))
                continue;
            if (char.IsHighSurrogate(c) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                // The last two code points of every plane are no characters.
                if ((char.ConvertToUtf32(c, text[i + 1]) & 0xFFFE) == 0xFFFE)
                {
                    output.Append(text.AsSpan(start, i - start)).Append(Replacement);
                    start = i + 2;
                }

                i++;
                continue;
            }

            if (IsPlain(c))
                continue;
            output.Append(text.AsSpan(start, i - start));
            start = i + 1;
            AppendSpecial(output, c);
        }

        output.Append(text.AsSpan(start));
    }

    private static bool IsPlain(char c) => c switch
    {
        <= '\u009F' => c is >= ' ' and < '\u007F' and not ('&' or '<' or '>' or '"'),
        '\u2028' or '\u2029' => false,
        >= '\uD800' and <= '\uDFFF' => false,
        >= '\uFDD0' and <= '\uFDEF' => false,
        >= '\uFFFE' => false,
        _ => !TurnsDirection(c),
    };

    private static bool TurnsDirection(char c) =>
        c is '\u061C' or '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');

    private static void AppendSpecial(Utf8Text output, char c)
    {
        switch (c)
        {
            case '&':
                output.Append("&amp;"u8);
                break;
            case '<':
                output.Append("&lt;"u8);
                break;
            case '>':
                output.Append("&gt;"u8);
                break;
            case '"':
                output.Append("&quot;"u8);
                break;
            case '\t' or '\n' or '\r' or '\u0085' or '\u2028' or '\u2029':
                output.Append((byte)' ');
                break;
            default:
                if (!TurnsDirection(c))
                    output.Append(Replacement);
                break;
        }
    }
}
