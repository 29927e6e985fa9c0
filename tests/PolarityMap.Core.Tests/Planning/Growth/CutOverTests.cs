using CsCheck;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Planning.Growth;
using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Core.Tests.Planning.Growth;

/// <summary>No order of work leaves links dark for fewer steps: held against every order there is, in small cases.</summary>
public sealed class CutOverTests
{
    [Fact]
    public void No_order_has_fewer_dark_link_steps() => Gen.Int[0, 1_000_000].Array[24].Sample(
        static lots =>
        {
            Case c = Make(lots);
            Assert.Equal(Fewest(c), Planned(c));
        },
        iter: 300);

    [Fact]
    public void Two_links_that_change_places_go_over_together_and_a_chain_goes_one_by_one()
    {
        Case swap = Of([(0, 1), (1, 0)]), chain = Of([(0, 1), (1, 2), (2, 3)]);
        Assert.Equal([2], Groups(swap).Select(g => g.Links.Count));
        Assert.Equal([[2], [1], [0]], Groups(chain).Select(g => g.Links));
    }

    /// <summary>Links of one or two joints each, before and after; joints of two links may be one. Ports are taken by one joint at a time.</summary>
    private static Case Make(int[] lots)
    {
        int next = 0, count = 1 + (lots[next++] % 4);
        int Draw(int most) => lots[next++ % lots.Length] % most;
        List<int> from = [0, 1, 2, 3], to = [0, 1, 2, 3, 4];
        var moves = new List<(int, int)>();
        for (int i = 0; i < count; i++)
        {
            int f = from[Draw(from.Count)], t = to[Draw(to.Count)];
            from.Remove(f);
            to.Remove(t);
            moves.Add((f, t));
        }

        Case c = Of(moves);
        if (count > 1 && Draw(3) == 0)
        {
            // Two links share an array connector that is changed as well.
            Joint old = J(100, 101), made = J(100, 102);
            c = c with
            {
                Opened = [.. c.Opened, old],
                Made = [.. c.Made, made],
                Links = [.. c.Links.Select((l, i) => i < 2 ? (l.Link, l.Before.Append(old).ToHashSet(), l.After.Append(made).ToHashSet()) : l)],
            };
        }

        return c;
    }

    /// <summary>Each link is a cord at a port of a switch, from the one port of a panel to the other.</summary>
    private static Case Of(IReadOnlyList<(int From, int To)> moves)
    {
        var links = moves.Select((m, i) => (i, new HashSet<Joint> { J(i + 50, m.From) }, new HashSet<Joint> { J(i + 50, m.To) })).ToList();
        var before = links.SelectMany(l => l.Item2).ToHashSet();
        var after = links.SelectMany(l => l.Item3).ToHashSet();
        return new Case([.. before.Where(j => !after.Contains(j))], [.. after.Where(j => !before.Contains(j))], [.. links.Where(l => !l.Item2.SetEquals(l.Item3))]);
    }

    private static Joint J(int a, int b) => new(new PortRef(a, 0), new PortRef(b, 0), Keying.Aligned);

    private static IReadOnlyList<CutOver> Groups(Case c) => new CutOvers(c.Opened, c.Made, c.Links, [], []).Groups;

    private static int Planned(Case c)
    {
        var cuts = new CutOvers(c.Opened, c.Made, c.Links, [], []);
        HashSet<Joint> there = [.. c.Opened];
        int dark = 0;
        foreach (CutOver cut in cuts.Groups.Prepend(cuts.First))
        {
            there.ExceptWith(cut.Opened);
            dark += Dark(c, there);
            foreach (Joint joint in cut.Made)
                Assert.DoesNotContain(there, j => j.Ports.Intersect(joint.Ports).Any());
            there.UnionWith(cut.Made);
            Assert.Equal(0, Dark(c, there));
        }

        Assert.Empty(cuts.Last);
        Assert.True(there.SetEquals(c.Made));
        return dark;
    }

    /// <summary>Links that neither their old nor their new joints carry.</summary>
    private static int Dark(Case c, HashSet<Joint> there) => c.Links.Count(l =>
        !l.Before.All(j => there.Contains(j) || !c.Opened.Contains(j)) && !l.After.All(j => there.Contains(j) || !c.Made.Contains(j)));

    /// <summary>The least sum of dark links over all orders of steps, each of which opens some joints and then makes some (shortest way, after Dijkstra).</summary>
    private static int Fewest(Case c)
    {
        int all = c.Opened.Count + c.Made.Count, end = (1 << all) - 1;
        var least = new Dictionary<int, int> { [0] = 0 };
        var queue = new PriorityQueue<int, int>([(0, 0)]);
        while (queue.TryDequeue(out int state, out int cost))
        {
            if (state == end)
                return cost;
            if (cost > least[state])
                continue;
            int left = end & ~state;
            for (int step = left; step > 0; step = (step - 1) & left)
            {
                HashSet<Joint> there = There(c, state | (step & ((1 << c.Opened.Count) - 1)));
                int dark = Dark(c, there);
                IEnumerable<Joint> made = c.Made.Where((_, m) => (step >> (c.Opened.Count + m) & 1) == 1);
                if (!made.All(m => Fits(there, m)))
                    continue;
                int next = state | step, sum = cost + Math.Max(dark, Dark(c, There(c, next)));
                if (least.TryGetValue(next, out int known) && known <= sum)
                    continue;
                least[next] = sum;
                queue.Enqueue(next, sum);
            }
        }

        throw new InvalidOperationException("the end is never reached");
    }

    private static bool Fits(HashSet<Joint> there, Joint joint) => !there.Any(j => j.Ports.Intersect(joint.Ports).Any());

    private static HashSet<Joint> There(Case c, int state) =>
        [.. c.Opened.Where((_, o) => (state >> o & 1) == 0), .. c.Made.Where((_, m) => (state >> (c.Opened.Count + m) & 1) == 1)];

    private sealed record Case(IReadOnlyList<Joint> Opened, IReadOnlyList<Joint> Made, IReadOnlyList<(int Link, HashSet<Joint> Before, HashSet<Joint> After)> Links);
}
