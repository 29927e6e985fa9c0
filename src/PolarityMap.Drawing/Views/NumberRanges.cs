using System.Text;

namespace PolarityMap.Drawing.Views;

/// <summary>Numbers in words, with runs of them as ranges.</summary>
internal static class NumberRanges
{
    /// <summary>For example <c>strands 1 to 8, 11, 13 to 20</c>.</summary>
    /// <param name="noun">What is numbered, in the singular.</param>
    /// <param name="sorted">The numbers, rising.</param>
    public static string Words(string noun, IReadOnlyList<int> sorted) => $"{noun}{(sorted.Count == 1 ? "" : "s")} {Of(sorted)}";

    /// <summary>For example <c>1 to 8, 11, 13 to 20</c>.</summary>
    public static string Of(IReadOnlyList<int> sorted)
    {
        var words = new StringBuilder();
        for (int i = 0; i < sorted.Count; i++)
        {
            int from = i;
            while (i + 1 < sorted.Count && sorted[i + 1] == sorted[i] + 1)
                i++;
            if (words.Length > 0)
                words.Append(", ");
            words.Append(sorted[from]);
            if (i > from)
                words.Append(i == from + 1 ? ", " : " to ").Append(sorted[i]);
        }

        return words.ToString();
    }
}
