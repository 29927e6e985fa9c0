using System.Buffers;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Svg;

/// <summary>Makes any text safe inside XML and HTML, in content as in quoted attributes.</summary>
internal static class SvgText
{
    /// <summary>The longest text that is looked at for plainness first.</summary>
    private const int MostPlain = 128;

    /// <summary>What nothing has to be done to.</summary>
    private static readonly SearchValues<char> s_plain = SearchValues.Create(
        [.. Enumerable.Range(' ', '~' - ' ' + 1).Select(c => (char)c).Except("&<>\"")]);

    /// <summary>Appends the text, cleaned (see <see cref="CleanText"/>), in reading order (see <see cref="ReadingOrder"/>) and with markup characters escaped.</summary>
    internal static void Append(Utf8Text output, string text)
    {
        // Most texts are a few plain letters and figures, which go out as they are.
        if (text.Length <= MostPlain && !text.AsSpan().ContainsAnyExcept(s_plain))
        {
            Span<byte> room = output.Reserve(MostPlain);
            for (int i = 0; i < text.Length; i++)
                room[i] = (byte)text[i];
            output.Advance(text.Length);
            return;
        }

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
