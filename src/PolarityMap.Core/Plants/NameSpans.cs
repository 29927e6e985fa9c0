namespace PolarityMap.Core.Plants;

/// <summary>Many names in few words: names that count up together are told by the first and the last, such as <c>DC1 … DC16</c>.</summary>
public static class NameSpans
{
    /// <summary>The most spans written out; what follows is counted.</summary>
    private const int MostSpans = 4;

    /// <summary>The least names that the first and the last stand for; two are written out.</summary>
    private const int LeastNames = 3;

    /// <summary>Names in their order, in spans.</summary>
    public static string Of(IReadOnlyList<string> names)
    {
        var spans = new List<string>();
        int start = 0;
        while (start < names.Count && spans.Count < MostSpans)
        {
            int end = EndOfSpan(names, start);
            if (end - start + 1 >= LeastNames)
            {
                spans.Add($"{names[start]} … {names[end]}");
                start = end + 1;
            }
            else
            {
                spans.Add(names[start++]);
            }
        }

        return string.Join(", ", spans) + (start < names.Count ? $" and {names.Count - start} more" : "");
    }

    /// <summary>The last name that goes on counting as the first two do.</summary>
    private static int EndOfSpan(IReadOnlyList<string> names, int start)
    {
        int end = start;
        ulong rising = 0;
        while (end + 1 < names.Count && Step(names[end], names[end + 1]) is var step && step != 0 && (end == start || step == rising))
        {
            rising = step;
            end++;
        }

        return end;
    }

    /// <summary>Which of the numbers in a name are one higher in the next, one bit each; 0 when the next does not follow the first.</summary>
    private static ulong Step(string name, string next)
    {
        ulong rising = 0;
        int i = 0, j = 0, number = 0;
        while (i < name.Length && j < next.Length)
        {
            if (!char.IsAsciiDigit(name[i]) || !char.IsAsciiDigit(next[j]))
            {
                if (name[i++] != next[j++])
                    return 0;
                continue;
            }

            if (!TakeNumber(name, ref i, out long here) || !TakeNumber(next, ref j, out long there) || number > 63 || there - here is not (0 or 1))
                return 0;
            rising |= (ulong)(there - here) << number++;
        }

        return i == name.Length && j == next.Length ? rising : 0;
    }

    private static bool TakeNumber(string text, ref int at, out long number)
    {
        int start = at;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
            at++;
        return long.TryParse(text.AsSpan(start, at - start), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out number);
    }
}
