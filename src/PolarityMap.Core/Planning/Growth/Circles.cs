namespace PolarityMap.Core.Planning.Growth;

/// <summary>Orders things that wait for each other; those that wait in a circle stand together (strong components, after Tarjan).</summary>
internal static class Circles
{
    /// <param name="after">For each thing those that go before it.</param>
    /// <returns>The circles, each after all that it waits for; of several that may come next the one with the smallest number.</returns>
    public static List<List<int>> InOrder(IReadOnlyList<IReadOnlySet<int>> after)
    {
        int[] circle = Components(after);
        int count = circle.Length == 0 ? 0 : circle.Max() + 1;
        var members = Enumerable.Range(0, count).Select(_ => new List<int>()).ToList();
        for (int n = 0; n < circle.Length; n++)
            members[circle[n]].Add(n);
        var waits = members.Select((m, c) => m.SelectMany(n => after[n]).Select(n => circle[n]).Where(o => o != c).ToHashSet()).ToList();
        var next = Enumerable.Range(0, count).Select(_ => new List<int>()).ToList();
        for (int c = 0; c < count; c++)
        {
            foreach (int o in waits[c])
                next[o].Add(c);
        }

        int[] left = [.. waits.Select(w => w.Count)];
        var ready = new PriorityQueue<int, int>(Enumerable.Range(0, count).Where(c => left[c] == 0).Select(c => (c, members[c][0])));
        var order = new List<List<int>>();
        while (ready.TryDequeue(out int c, out _))
        {
            order.Add(members[c]);
            foreach (int n in next[c])
            {
                if (--left[n] == 0)
                    ready.Enqueue(n, members[n][0]);
            }
        }

        return order;
    }

    /// <summary>For each thing the number of its circle. Without recursion, since chains may be as long as a plant has links.</summary>
    private static int[] Components(IReadOnlyList<IReadOnlySet<int>> after)
    {
        int n = after.Count, found = 0, circles = 0;
        int[] number = new int[n], low = new int[n], circle = new int[n];
        Array.Fill(circle, -1);
        var path = new Stack<int>();
        var work = new Stack<(int Node, IEnumerator<int> Next)>();
        for (int start = 0; start < n; start++)
        {
            if (number[start] > 0)
                continue;
            work.Push((start, after[start].Order().GetEnumerator()));
            number[start] = low[start] = ++found;
            path.Push(start);
            while (work.Count > 0)
            {
                (int node, IEnumerator<int> next) = work.Peek();
                if (next.MoveNext())
                {
                    int to = next.Current;
                    if (number[to] == 0)
                    {
                        number[to] = low[to] = ++found;
                        path.Push(to);
                        work.Push((to, after[to].Order().GetEnumerator()));
                    }
                    else if (circle[to] < 0)
                    {
                        low[node] = Math.Min(low[node], number[to]);
                    }

                    continue;
                }

                work.Pop();
                if (work.TryPeek(out (int Node, IEnumerator<int> Next) parent))
                    low[parent.Node] = Math.Min(low[parent.Node], low[node]);
                if (low[node] != number[node])
                    continue;
                int member;
                do
                {
                    member = path.Pop();
                    circle[member] = circles;
                }
                while (member != node);
                circles++;
            }
        }

        return circle;
    }
}
