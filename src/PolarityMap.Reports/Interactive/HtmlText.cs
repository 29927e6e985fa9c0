using System.Text;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Reports.Interactive;

/// <summary>Puts any text into HTML as text, in content as in attributes in double quotes.</summary>
internal static class HtmlText
{
    /// <summary>Appends the text, cleaned (see <see cref="CleanText"/>) and with markup characters escaped.</summary>
    internal static StringBuilder AppendText(this StringBuilder html, string text)
    {
        ReadOnlySpan<char> rest = CleanText.Of(text);
        for (int at = rest.IndexOfAny("&<>\"'"); at >= 0; at = rest.IndexOfAny("&<>\"'"))
        {
            html.Append(rest[..at]).Append(rest[at] switch
            {
                '&' => "&amp;",
                '<' => "&lt;",
                '>' => "&gt;",
                '"' => "&quot;",
                _ => "&#39;",
            });
            rest = rest[(at + 1)..];
        }

        return html.Append(rest);
    }
}
