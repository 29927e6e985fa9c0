namespace PolarityMap.Drawing.Views.Overview;

/// <summary>
/// The column of every node in the order of flow: the longest path to it. An edge that would close a circle is left out. Time is
/// linear in nodes and edges, and nothing recurses, as chains may be long.
/// </summary>
internal sealed class StopRanks
{
    private readonly List<(int From, int To)> _edges = [];
    private readonly HashSet<long> _known = [];
    private readonly List<int> _order = [];
    private readonly bool[] _seen;
    private readonly int[] _first;
    private readonly int[] _next;

    private StopRanks(Stops stops)
    {
        _seen = new bool[stops.NodeCount];
        for (int s = 0; s + 1 < stops.Starts.Count; s++)
        {
            for (int i = stops.Starts[s]; i < stops.Starts[s + 1]; i++)
            {
                See(stops.Nodes[i]);
                if (i > stops.Starts[s])
                    AddEdge(stops.Nodes[i - 1], stops.Nodes[i]);
            }
        }

        foreach ((int left, int right) in stops.FaceToFace)
        {
            if (_seen[left] && _seen[right])
                AddEdge(left, right);
        }

        // Edges in the order of their left nodes: those of node n lie from _first[n] to before _first[n + 1].
        _first = new int[stops.NodeCount + 1];
        _next = new int[_edges.Count];
        foreach ((int from, _) in _edges)
            _first[from + 1]++;
        for (int n = 0; n < stops.NodeCount; n++)
            _first[n + 1] += _first[n];
        int[] free = [.. _first];
        foreach ((int from, int to) in _edges)
            _next[free[from]++] = to;
    }

    /// <summary>The rank of each node, from 0; -1 for one that no chosen strand comes to.</summary>
    public static int[] Of(Stops stops) => new StopRanks(stops).Rank();

    private void See(int node)
    {
        if (_seen[node])
            return;
        _seen[node] = true;
        _order.Add(node);
    }

    private void AddEdge(int from, int to)
    {
        if (from != to && _known.Add(((long)from << 32) | (uint)to))
            _edges.Add((from, to));
    }

    private int[] Rank()
    {
        List<int> sorted = Sorted();
        var place = new int[_seen.Length];
        var rank = new int[_seen.Length];
        var hasBefore = new bool[_seen.Length];
        Array.Fill(rank, -1);
        for (int i = 0; i < sorted.Count; i++)
        {
            place[sorted[i]] = i;
            rank[sorted[i]] = 0;
        }

        foreach (int node in sorted)
        {
            for (int e = _first[node]; e < _first[node + 1]; e++)
            {
                if (place[_next[e]] <= place[node])
                    continue;
                hasBefore[_next[e]] = true;
                rank[_next[e]] = Math.Max(rank[_next[e]], rank[node] + 1);
            }
        }

        // What nothing comes before moves right, next to what it is joined to.
        foreach (int node in sorted)
        {
            int least = int.MaxValue;
            for (int e = _first[node]; e < _first[node + 1]; e++)
            {
                if (place[_next[e]] > place[node])
                    least = Math.Min(least, rank[_next[e]]);
            }

            if (!hasBefore[node] && least < int.MaxValue)
                rank[node] = least - 1;
        }

        return rank;
    }

    /// <summary>Nodes so that each comes after those before it, as far as circles allow.</summary>
    private List<int> Sorted()
    {
        var done = new bool[_seen.Length];
        var at = new int[_seen.Length];
        var finished = new List<int>(_order.Count);
        var stack = new Stack<int>();
        foreach (int root in _order)
        {
            if (done[root])
                continue;
            done[root] = true;
            stack.Push(root);
            while (stack.TryPeek(out int node))
            {
                int edge = _first[node] + at[node]++;
                if (edge >= _first[node + 1])
                    finished.Add(stack.Pop());
                else if (!done[_next[edge]])
                {
                    done[_next[edge]] = true;
                    stack.Push(_next[edge]);
                }
            }
        }

        finished.Reverse();
        return finished;
    }
}
