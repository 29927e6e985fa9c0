namespace PolarityMap.Documents.Text;

/// <summary>Finds the word that was probably meant.</summary>
public static class NearestWord
{
    /// <summary>Longer words are not compared: they are no typing slips, and the work grows with the square of the length.</summary>
    public const int LongestWord = 100;

    /// <summary>
    /// The candidate nearest to a word, upper and lower case alike, or null when none is near enough. Near enough is about a
    /// third of the word's letters: 1 up to 4 letters, 2 up to 7, 3 up to 10. Of equally near ones the first wins.
    /// </summary>
    public static string? Find(string word, IEnumerable<string> candidates)
    {
        if (word.Length is 0 or > LongestWord)
            return null;

        var limit = Math.Max(1, (word.Length + 1) / 3);
        string? nearest = null;
        foreach (var candidate in candidates)
        {
            if (candidate.Length > LongestWord || Math.Abs(candidate.Length - word.Length) > limit)
                continue;

            // A candidate that shares no letter at all with the word is no slip of it.
            var distance = Distance(word, candidate);
            if (distance <= limit && distance < Math.Max(word.Length, candidate.Length))
            {
                nearest = candidate;
                limit = distance - 1;
                if (distance == 0)
                    break;
            }
        }

        return nearest;
    }

    /// <summary>
    /// The optimal string alignment distance, upper and lower case alike: the fewest insertions, deletions, replacements and
    /// swaps of neighbours, with no letter edited twice.
    /// </summary>
    public static int Distance(string left, string right)
    {
        var beforeLast = new int[right.Length + 1];
        var last = new int[right.Length + 1];
        var current = new int[right.Length + 1];
        for (var j = 0; j <= right.Length; j++)
            last[j] = j;

        for (var i = 1; i <= left.Length; i++)
        {
            current[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var cost = Same(left[i - 1], right[j - 1]) ? 0 : 1;
                var best = Math.Min(Math.Min(last[j] + 1, current[j - 1] + 1), last[j - 1] + cost);
                if (i > 1 && j > 1 && Same(left[i - 1], right[j - 2]) && Same(left[i - 2], right[j - 1]))
                    best = Math.Min(best, beforeLast[j - 2] + 1);
                current[j] = best;
            }

            (beforeLast, last, current) = (last, current, beforeLast);
        }

        return last[right.Length];
    }

    private static bool Same(char left, char right) =>
        left == right || char.ToUpperInvariant(left) == char.ToUpperInvariant(right);
}
