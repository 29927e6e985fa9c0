using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Svg;

/// <summary>Makes any text safe inside XML and HTML, in content as in quoted attributes.</summary>
internal static class SvgText
{
    /// <summary>Appends the text, cleaned (see <see cref="CleanText"/>), in reading order (see <see cref="ReadingOrder"/>) and with markup characters escaped.</summary>
    internal static void Append(Utf8Text output, string text)
    {
        ReadOnlySpan<char> rest = ReadingOrder.Isolated(CleanText.Of(text));
        for (int at = rest.IndexOfAny("&<>\""); at >= 0; at = rest.IndexOfAny("&<>\""))
        {
            output.Append(rest[..at]).Append(rest[at] switch
            {
                '&' => "&amp;"u8,
                '<' => "&lt;"u8,
                '>' => "&gt;"u8,
                _ => "&quot;"u8,
            });
            rest = rest[(at + 1)..];
        }

        output.Append(rest);
    }
}
