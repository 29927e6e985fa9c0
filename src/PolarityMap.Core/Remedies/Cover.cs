namespace PolarityMap.Core.Remedies;

/// <summary>
/// Chooses sets that together clear as many findings as can be, with few changes, and of these with little work: again and again
/// the one that clears most for the number of its changes. So one trunk comes before twelve cords. What clears most by itself is
/// not always part of the best choice, so each of those that clear most is tried as the first.
/// </summary>
internal static class Cover
{
    /// <summary>How many sets are tried as the first of a choice.</summary>
    private const int MostFirsts = 8;

    /// <summary>Among more sets than these only the usual first is tried.</summary>
    private const int ManyChoices = 2000;

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
        List<Choice> best = Greedy(choices, -1);
        if (choices.Count > ManyChoices)
            return best;
        foreach (int first in Enumerable.Range(0, choices.Count).Where(i => choices[i].Clears.Count > 1).OrderByDescending(i => choices[i].Clears.Count).ThenBy(i => choices[i].Weight).Take(MostFirsts))
        {
            List<Choice> other = Greedy(choices, first);
            if (Rank(other).CompareTo(Rank(best)) < 0)
                best = other;
        }

        return best;
    }

    /// <summary>The most findings cleared, then the fewest changes, then the least work: the smaller the better.</summary>
    private static (int, int, int) Rank(List<Choice> chosen) =>
        (-chosen.SelectMany(c => c.Clears).Distinct().Count(), chosen.Sum(c => c.Weight), chosen.Sum(c => c.Minutes));

    /// <param name="choices">What may be chosen.</param>
    /// <param name="first">The one to begin with, or -1 for the one that clears most for its changes.</param>
    private static List<Choice> Greedy(IReadOnlyList<Choice> choices, int first)
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
        var taken = new Occupied();
        while ((first >= 0 ? first : Best(choices, gains)) is >= 0 and int best)
        {
            first = -1;
            Choice choice = choices[best];
            gains[best] = 0;
            if (!choice.Changes.All(taken.LeavesRoomFor))
                continue;
            chosen.Add(choice);
            foreach (Change change in choice.Changes)
                taken.Add(change);
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
}
