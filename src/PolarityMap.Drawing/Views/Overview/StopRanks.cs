namespace PolarityMap.Drawing.Views.Overview;

/// <summary>
/// The column of every node in the order of flow: the longest path to it. Time is linear in nodes and edges, and nothing recurses,
/// as chains may be long. Where strands run in circles, as round a ring of switches, the order is chosen against which the fewest
/// run; those of them that run against most of it are told from their other ends; an edge that is left against it is left out.
/// </summary>
internal sealed class StopRanks
{
    private readonly Stops _stops;
    private readonly List<(int From, int To)> _edges = [];
    private readonly List<int> _strandsOf = [];
    private readonly Dictionary<long, int> _known = [];
    private readonly List<int> _order = [];
    private readonly bool[] _seen;
    private readonly int[] _first;
    private readonly int[] _next;

    private StopRanks(Stops stops)
    {
        _stops = stops;
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

    /// <summary>The rank of each node, from 0; -1 for one that no chosen strand comes to. Strands may be told from their other ends then.</summary>
    public static int[] Of(Stops stops)
    {
        var ranks = new StopRanks(stops);
        int[] place = PlacesOf(ranks.Sorted(), stops.NodeCount);
        if (ranks.GoesBack(place))
        {
            place = PlacesOf(ranks.Greedy(), stops.NodeCount);
            if (ranks.TurnStrands(place))
                ranks = new StopRanks(stops);
        }

        return ranks.Rank(place);
    }

    private static int[] PlacesOf(List<int> sorted, int count)
    {
        var place = new int[count];
        for (int i = 0; i < sorted.Count; i++)
            place[sorted[i]] = i;
        return place;
    }

    private void See(int node)
    {
        if (_seen[node])
            return;
        _seen[node] = true;
        _order.Add(node);
    }

    private void AddEdge(int from, int to)
    {
        if (from == to)
            return;
        long key = ((long)from << 32) | (uint)to;
        if (_known.TryGetValue(key, out int edge))
        {
            _strandsOf[edge]++;
            return;
        }

        _known[key] = _edges.Count;
        _edges.Add((from, to));
        _strandsOf.Add(1);
    }

    private bool GoesBack(int[] place)
    {
        foreach ((int from, int to) in _edges)
        {
            if (place[to] < place[from])
                return true;
        }

        return false;
    }

    /// <summary>Turns the strands that run against an order more than along it. True when there was one.</summary>
    private bool TurnStrands(int[] place)
    {
        bool turned = false;
        for (int s = 0; s + 1 < _stops.Starts.Count; s++)
        {
            int along = 0;
            for (int i = _stops.Starts[s] + 1; i < _stops.Starts[s + 1]; i++)
                along += Math.Sign(place[_stops.Nodes[i]] - place[_stops.Nodes[i - 1]]);
            if (along >= 0)
                continue;
            _stops.Turn(s);
            turned = true;
        }

        return turned;
    }

    /// <summary>
    /// An order that few strands run against: what nothing comes before goes to the front, what nothing comes after to the back,
    /// and in between the node that the most strands leave (greedy feedback arc set; from memory).
    /// </summary>
    private List<int> Greedy()
    {
        var surplus = new int[_seen.Length];
        var before = new int[_seen.Length];
        var after = new int[_seen.Length];
        var neighbours = new List<(int Node, int Strands, bool IsAfter)>[_seen.Length];
        foreach (int node in _order)
            neighbours[node] = [];
        for (int e = 0; e < _edges.Count; e++)
        {
            (int from, int to) = _edges[e];
            neighbours[from].Add((to, _strandsOf[e], true));
            neighbours[to].Add((from, _strandsOf[e], false));
            surplus[from] += _strandsOf[e];
            surplus[to] -= _strandsOf[e];
            after[from]++;
            before[to]++;
        }

        var front = new List<int>(_order.Count);
        var back = new List<int>();
        var done = new bool[_seen.Length];
        var sources = new Queue<int>(_order.Where(n => before[n] == 0));
        var sinks = new Queue<int>(_order.Where(n => after[n] == 0 && before[n] > 0));

        // Of equal ones the first, so that the order follows the document.
        var rest = new PriorityQueue<int, (int Surplus, int Node)>();
        foreach (int node in _order)
            rest.Enqueue(node, (-surplus[node], node));
        while (front.Count + back.Count < _order.Count)
        {
            if (sources.TryDequeue(out int node))
                Take(node, front);
            else if (sinks.TryDequeue(out node))
                Take(node, back);
            else if (rest.TryDequeue(out node, out (int Surplus, int Node) key) && key.Surplus == -surplus[node])
                Take(node, front);
        }

        back.Reverse();
        front.AddRange(back);
        return front;

        void Take(int node, List<int> list)
        {
            if (done[node])
                return;
            done[node] = true;
            list.Add(node);
            foreach ((int other, int strands, bool isAfter) in neighbours[node])
            {
                if (done[other])
                    continue;
                surplus[other] += isAfter ? strands : -strands;
                if (isAfter && --before[other] == 0)
                    sources.Enqueue(other);
                if (!isAfter && --after[other] == 0)
                    sinks.Enqueue(other);
                rest.Enqueue(other, (-surplus[other], other));
            }
        }
    }

    private int[] Rank(int[] place)
    {
        var sorted = new int[_order.Count];
        var rank = new int[_seen.Length];
        var hasBefore = new bool[_seen.Length];
        Array.Fill(rank, -1);
        foreach (int node in _order)
        {
            sorted[place[node]] = node;
            rank[node] = 0;
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
