using System.Text;

namespace PolarityMap.Drawing.Scene;

/// <summary>
/// Keeps letters that are written from right to left to themselves. Next to them the figures and strokes of an address would
/// change places: <c>PART/1</c> with such a part would be shown as <c>1/PART</c>.
/// </summary>
public static class ReadingOrder
{
    /// <summary>Begins a run whose direction follows its first letter and touches nothing around it.</summary>
    private const char FirstStrongIsolate = '\u2068';

    private const char PopDirectionalIsolate = '\u2069';

    /// <summary>The text with every run of such letters, and the spaces inside it, between isolating characters, which have no width.</summary>
    public static string Isolated(string text)
    {
        if (text.AsSpan().IndexOfAnyInRange('\u0590', '\uFEFE') < 0)
            return text;
        var output = new StringBuilder(text.Length + 8);
        for (int i = 0; i < text.Length;)
        {
            if (!IsRightToLeft(text, i))
            {
                output.Append(text[i++]);
                continue;
            }

            int end = EndOfRun(text, i);
            output.Append(FirstStrongIsolate).Append(text, i, end - i).Append(PopDirectionalIsolate);
            i = end;
        }

        return output.ToString();
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

    /// <summary>True in the blocks of such letters: Hebrew to Arabic Extended, their other forms, and those of the second plane.</summary>
    private static bool IsRightToLeft(string text, int at) => text[at] switch
    {
        (>= '\u0590' and <= '\u08FF') or (>= '\uFB1D' and <= '\uFDFF') or (>= '\uFE70' and <= '\uFEFE') => true,
        (>= '\uD802' and <= '\uD803') or (>= '\uD83A' and <= '\uD83B') => true,
        >= '\uDC00' and <= '\uDFFF' => at > 0 && text[at - 1] is (>= '\uD802' and <= '\uD803') or (>= '\uD83A' and <= '\uD83B'),
        _ => false,
    };
}
