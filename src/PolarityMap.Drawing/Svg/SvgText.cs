using System.Text;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Svg;

/// <summary>Makes any text safe inside XML and HTML, in content as in quoted attributes.</summary>
internal static class SvgText
{
    /// <summary>Appends the text, cleaned (see <see cref="CleanText"/>) and with markup characters escaped.</summary>
    internal static void Append(StringBuilder output, string text)
    {
        text = CleanText.Of(text);
        int start = 0;
        for (int i = 0; i < text.Length; i++)
        {
            string? escaped = text[i] switch
            {
                '&' => "&amp;",
                '<' => "&lt;",
                '>' => "&gt;",
                '"' => "&quot;",
                _ => null,
            };
            if (escaped is null)
                continue;
            output.Append(text, start, i - start).Append(escaped);
            start = i + 1;
        }

        output.Append(text, start, text.Length - start);
    }
}
