using System.Buffers;
using System.Text;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Reports.Model;

/// <summary>
/// Makes any text fit to stand between tags and inside quoted attributes, as what it is. The one place where text is escaped:
/// a page is handed no other.
/// </summary>
public static class HtmlText
{
    private static readonly SearchValues<char> s_marks = SearchValues.Create("&<>\"'`");

    /// <summary>
    /// The text with markup as text. Characters that turn the reading direction are dropped, and letters from right to left are
    /// kept to themselves (see <see cref="ReadingOrder"/>).
    /// </summary>
    public static string Of(string text)
    {
        string clean = ReadingOrder.Isolated(CleanText.Of(text));
        int first = clean.AsSpan().IndexOfAny(s_marks);
        if (first < 0)
            return clean;
        var html = new StringBuilder(clean.Length + 16).Append(clean, 0, first);
        for (int i = first; i < clean.Length; i++)
            Append(html, clean[i]);
        return html.ToString();
    }

    /// <summary>Appends a text in the same way.</summary>
    internal static StringBuilder AppendText(this StringBuilder html, string text) => html.Append(Of(text));

    private static void Append(StringBuilder html, char c)
    {
        _ = c switch
        {
            '&' => html.Append("&amp;"),
            '<' => html.Append("&lt;"),
            '>' => html.Append("&gt;"),
            '"' => html.Append("&quot;"),
            '\'' => html.Append("&#39;"),
            '`' => html.Append("&#96;"),
            _ => html.Append(c),
        };
    }
}
