using PolarityMap.Core.Checks;
using PolarityMap.Core.Remedies;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Tests.Remedies;

/// <summary>The remedies of a plant by trying every set of changes there is, each by a full check of the plant that it makes.</summary>
internal static class TriedAll
{
    /// <summary>For each finding the sets that clear it, raise none and lose no link, the least of them: see <see cref="Least"/>.</summary>
    public static IReadOnlyList<IReadOnlyList<Change[]>> Remedies(CheckReport before, IReadOnlyList<Change> pool, int most)
    {
        HashSet<string>[] subjects = [.. before.Findings.Select(f => Sameness.Subjects(before, f))];
        HashSet<string> known = [.. subjects.SelectMany(s => s)];
        var found = new List<Change[]>[subjects.Length];
        for (int i = 0; i < found.Length; i++)
            found[i] = [];
        var context = new ChangeContext(before.Context);
        foreach (Change[] set in Sets(pool, most))
        {
            if (context.Build(set) is not { } plant)
                continue;
            CheckReport after = CheckReport.Of(TracedPlant.Of(plant));
            HashSet<string> now = [.. after.Findings.SelectMany(f => Sameness.Subjects(after, f))];
            if (!now.IsSubsetOf(known) || LosesLink(before, after))
                continue;
            for (int i = 0; i < subjects.Length; i++)
            {
                if (!subjects[i].Overlaps(now))
                    found[i].Add(set);
            }
        }

        return [.. found.Select(Least)];
    }

    /// <summary>Every set of one to so many changes that go together.</summary>
    public static IEnumerable<Change[]> Sets(IReadOnlyList<Change> pool, int most)
    {
        for (int i = 0; i < pool.Count; i++)
        {
            foreach (Change[] set in Grown([pool[i]], pool, i + 1, most))
                yield return set;
        }
    }

    private static IEnumerable<Change[]> Grown(Change[] set, IReadOnlyList<Change> pool, int from, int most)
    {
        yield return set;
        for (int i = from; i < pool.Count && set.Length < most; i++)
        {
            if (!set.All(c => c.GoesWith(pool[i])))
                continue;
            foreach (Change[] more in Grown([.. set, pool[i]], pool, i + 1, most))
                yield return more;
        }
    }

    /// <summary>Those that hold no smaller one, and of more changes only those that are less work than all of fewer.</summary>
    private static List<Change[]> Least(List<Change[]> sets)
    {
        var kept = new List<Change[]>();
        for (int size = 1; size <= 3; size++)
        {
            int limit = kept.Count == 0 ? int.MaxValue : kept.Min(Minutes);
            Change[][] smaller = [.. kept];
            kept.AddRange(sets.Where(s => s.Length == size && Minutes(s) < limit && !smaller.Any(k => k.All(c => s.Any(o => o.Id == c.Id)))));
        }

        return kept;
    }

    private static int Minutes(Change[] set) => set.Sum(c => c.Minutes);

    private static bool LosesLink(CheckReport before, CheckReport after) =>
        before.Context.Outcomes.All.Zip(after.Context.Outcomes.All).Any(o => o.First.IsProven && !o.Second.IsProven);
}
