namespace PolarityMap.Core.Remedies;

/// <summary>
/// Chooses sets that together clear as many findings as can be: again and again the one that clears most for the number of its
/// changes, of equals the one with the least work. So one trunk comes before twelve cords.
/// </summary>
internal static class Cover
{
    /// <summary>A set that may be chosen.</summary>
    /// <param name="Changes">Its changes.</param>
    /// <param name="Clears">The findings that it clears, of those that are asked for.</param>
    public sealed record Choice(IReadOnlyList<Change> Changes, IReadOnlyCollection<int> Clears)
    {
        public int Weight { get; } = Changes.Sum(c => c.Weight);

        public int Minutes { get; } = Changes.Sum(c => c.Minutes);
    }

    /// <summary>The chosen sets in the order of choice.</summary>
    public static List<Choice> Of(IReadOnlyList<Choice> choices)
    {
        // How many findings each choice would still clear is kept up to date, so that choosing among thousands stays cheap.
        var gains = new int[choices.Count];
        var with = new Dictionary<int, List<int>>();
        for (int i = 0; i < choices.Count; i++)
        {
            gains[i] = choices[i].Clears.Count;
            foreach (int finding in choices[i].Clears)
            {
                if (!with.TryGetValue(finding, out List<int>? list))
                    with[finding] = list = [];
                list.Add(i);
            }
        }

        var chosen = new List<Choice>();
        while (Best(choices, gains) is >= 0 and int best)
        {
            Choice choice = choices[best];
            gains[best] = 0;
            if (!GoesWith(choice, chosen))
                continue;
            chosen.Add(choice);
            foreach (int finding in choice.Clears)
            {
                if (!with.Remove(finding, out List<int>? others))
                    continue;
                foreach (int other in others)
                    gains[other] = Math.Max(0, gains[other] - 1);
            }
        }

        return chosen;
    }

    /// <summary>The choice that clears most for its changes, or -1 when none clears anything more.</summary>
    private static int Best(IReadOnlyList<Choice> choices, int[] gains)
    {
        int best = -1;
        for (int i = 0; i < gains.Length; i++)
        {
            if (gains[i] > 0 && (best < 0 || IsBetter(choices[i], gains[i], choices[best], gains[best])))
                best = i;
        }

        return best;
    }

    private static bool IsBetter(Choice a, int gainOfA, Choice b, int gainOfB)
    {
        long one = (long)gainOfA * b.Weight, other = (long)gainOfB * a.Weight;
        if (one != other)
            return one > other;
        return a.Minutes != b.Minutes ? a.Minutes < b.Minutes : a.Weight < b.Weight;
    }

    private static bool GoesWith(Choice choice, List<Choice> chosen)
    {
        foreach (Choice other in chosen)
        {
            foreach (Change change in choice.Changes)
            {
                if (!other.Changes.All(o => o.Id == change.Id || o.GoesWith(change)))
                    return false;
            }
        }

        return true;
    }
}
