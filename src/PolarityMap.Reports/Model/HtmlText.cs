using System.Text;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Reports.Model;

/// <summary>
/// Makes any text fit to stand between tags and inside quoted attributes, as what it is. The one place where text is escaped:
/// a page is handed no other.
/// </summary>
public static class HtmlText
{
    /// <summary>Begins a run whose direction follows its first letter and touches nothing around it.</summary>
    private const char FirstStrongIsolate = '\u2068';

    private const char PopDirectionalIsolate = '\u2069';

    /// <summary>
    /// The text with markup as text, and with every run of letters that are written from right to left kept to itself, so that
    /// it cannot reorder the numbers and words beside it. Characters that turn the direction are dropped.
    /// </summary>
    public static string Of(string text)
    {
        string clean = CleanText.Of(text);
        int first = 0;
        while (first < clean.Length && IsPlain(clean[first]))
            first++;
        if (first == clean.Length)
            return clean;
        var html = new StringBuilder(clean.Length + 16).Append(clean, 0, first);
        for (int i = first; i < clean.Length;)
        {
            if (!IsRightToLeft(clean, i))
            {
                Append(html, clean[i++]);
                continue;
            }

            int end = EndOfRun(clean, i);
            html.Append(FirstStrongIsolate);
            while (i < end)
                Append(html, clean[i++]);
            html.Append(PopDirectionalIsolate);
        }

        return html.ToString();
    }

    /// <summary>Appends a text in the same way.</summary>
    internal static StringBuilder AppendText(this StringBuilder html, string text) => html.Append(Of(text));

    private static bool IsPlain(char c) => c < '\u0590' && c is not ('&' or '<' or '>' or '"' or '\'' or '`');

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

    /// <summary>The end of letters from right to left that at most spaces part.</summary>
    private static int EndOfRun(string text, int start)
    {
        int end = start;
        for (int i = start; i < text.Length; i++)
        {
            if (IsRightToLeft(text, i))
                end = i + 1;
            else if (text[i] != ' ')
                break;
        }

        return end;
    }

    /// <summary>True in the blocks whose letters are written from right to left: Hebrew to Arabic Extended, their forms, and planes 1's own.</summary>
    private static bool IsRightToLeft(string text, int at) => text[at] switch
    {
        (>= '\u0590' and <= '\u08FF') or (>= '\uFB1D' and <= '\uFDFF') or (>= '\uFE70' and <= '\uFEFE') => true,
        (>= '\uD802' and <= '\uD803') or (>= '\uD83A' and <= '\uD83B') => true,
        >= '\uDC00' and <= '\uDFFF' => at > 0 && text[at - 1] is (>= '\uD802' and <= '\uD803') or (>= '\uD83A' and <= '\uD83B'),
        _ => false,
    };
}
