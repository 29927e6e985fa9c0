namespace PolarityMap.Drawing.Views.Strands;

/// <summary>The order of names in which 2 comes before 10.</summary>
internal static class NaturalOrder
{
    public static int Compare(string left, string right)
    {
        int i = 0, j = 0;
        while (i < left.Length && j < right.Length)
        {
            if (!char.IsAsciiDigit(left[i]) || !char.IsAsciiDigit(right[j]))
            {
                if (left[i] != right[j])
                    return left[i].CompareTo(right[j]);
                i++;
                j++;
                continue;
            }

            ReadOnlySpan<char> a = Digits(left, ref i);
            ReadOnlySpan<char> b = Digits(right, ref j);
            int order = a.Length != b.Length ? a.Length.CompareTo(b.Length) : a.SequenceCompareTo(b);
            if (order != 0)
                return order;
        }

        return (left.Length - i).CompareTo(right.Length - j);
    }

    /// <summary>The digits at an index without leading zeros; the index moves past them.</summary>
    private static ReadOnlySpan<char> Digits(string text, ref int index)
    {
        int from = index;
        while (index < text.Length && char.IsAsciiDigit(text[index]))
            index++;
        return text.AsSpan(from, index - from).TrimStart('0');
    }
}
