namespace PolarityMap.Drawing.Views.Overview;

/// <summary>What keeps two heights apart.</summary>
internal enum Apart
{
    /// <summary>One box or passing line stands above another.</summary>
    Items,

    /// <summary>Two stretches leave columns one above the other, with the words below the upper one.</summary>
    Words,

    /// <summary>Two stretches arrive at one box.</summary>
    Stretches,

    /// <summary>A network's rows begin above its boxes.</summary>
    NetworkTop,

    /// <summary>A network's boxes stand above the next network's rows.</summary>
    NetworkBottom,

    /// <summary>One network's rows follow the other's.</summary>
    Networks,
}

/// <summary>A height that lies below another, by a distance that the words of the two decide.</summary>
internal readonly record struct Below(int Upper, int Lower, Apart Apart, Item? UpperItem, Item? LowerItem, Segment? UpperStretch, Segment? LowerStretch);

/// <summary>
/// Heights that a drawing has to choose, and which lies below which. Ends of stretches that can have the same height share one, so
/// that a line runs straight unless the order of the boxes forbids it.
/// </summary>
internal sealed class Rails
{
    private readonly Grid _grid;
    private readonly Dictionary<Segment, (int Left, int Right)> _ends = [];
    private readonly Dictionary<Item, int> _lone = [];
    private readonly SortedDictionary<int, int> _networks = [];
    private readonly List<int> _parent = [];
    private readonly List<List<int>> _below = [];
    private readonly List<Below> _edges = [];
    private readonly int[] _stamp;
    private int _stamped;

    private Rails(Grid grid)
    {
        _grid = grid;
        foreach (List<Segment> gutter in grid.Gutters)
        {
            foreach (Segment segment in gutter)
                _ends[segment] = (New(), New());
        }

        foreach (List<Item> column in grid.Columns)
        {
            foreach (Item item in column)
            {
                if (item.Box is null)
                    Unite(_ends[item.Left[0]].Right, _ends[item.Right[0]].Left);
                else if (item.Left.Count + item.Right.Count == 0)
                    _lone[item] = New();
                if (item is { Box: not null, Networks: [var network] })
                    _networks.TryAdd(network, -1);
            }
        }

        foreach (int network in new List<int>(_networks.Keys))
            _networks[network] = New();
        _stamp = new int[_parent.Count];
        AddEdges();
        Straighten();
        Order = Sorted();
    }

    /// <summary>Number of heights, those that share one counted too.</summary>
    public int Count => _parent.Count;

    public IReadOnlyList<Below> Edges => _edges;

    /// <summary>The heights that stand for all, each after those above it.</summary>
    public IReadOnlyList<int> Order { get; }

    /// <summary>The networks that have boxes of their own, and the heights at which their rows begin.</summary>
    public IReadOnlyDictionary<int, int> Networks => _networks;

    public static Rails Of(Grid grid) => new(grid);

    /// <summary>The height that stands for one.</summary>
    public int Find(int height)
    {
        while (_parent[height] != height)
            height = _parent[height] = _parent[_parent[height]];
        return height;
    }

    public int LeftOf(Segment segment) => Find(_ends[segment].Left);

    public int RightOf(Segment segment) => Find(_ends[segment].Right);

    /// <summary>The height of a box that no stretch is at.</summary>
    public int LoneOf(Item item) => Find(_lone[item]);

    private int New()
    {
        _parent.Add(_parent.Count);
        _below.Add([]);
        return _parent.Count - 1;
    }

    private void Unite(int a, int b)
    {
        a = Find(a);
        b = Find(b);
        if (a == b)
            return;
        if (_below[a].Count < _below[b].Count)
            (a, b) = (b, a);
        _parent[b] = a;
        _below[a].AddRange(_below[b]);
        _below[b].Clear();
    }

    private void AddEdge(int upper, int lower, Apart apart, Item? upperItem = null, Item? lowerItem = null, Segment? upperStretch = null, Segment? lowerStretch = null)
    {
        _edges.Add(new Below(upper, lower, apart, upperItem, lowerItem, upperStretch, lowerStretch));
        _below[Find(upper)].Add(lower);
    }

    private void AddEdges()
    {
        foreach (List<Item> column in _grid.Columns)
        {
            Segment? before = null;
            for (int i = 0; i < column.Count; i++)
            {
                Item item = column[i];
                for (int k = 1; k < item.Left.Count; k++)
                    AddEdge(_ends[item.Left[k - 1]].Right, _ends[item.Left[k]].Right, Apart.Stretches, item, item);
                foreach (Segment segment in item.Right)
                {
                    if (before is not null)
                        AddEdge(_ends[before].Left, _ends[segment].Left, Apart.Words, null, null, before, segment);
                    before = segment;
                }

                if (i > 0)
                    AddItemEdges(column[i - 1], item);
                AddNetworkEdges(item);
            }
        }

        int above = -1;
        foreach ((_, int top) in _networks)
        {
            if (above >= 0)
                AddEdge(above, top, Apart.Networks);
            above = top;
        }
    }

    private void AddItemEdges(Item upper, Item lower)
    {
        foreach (int u in Bottoms(upper))
        {
            foreach (int l in Tops(lower))
                AddEdge(u, l, Apart.Items, upper, lower);
        }
    }

    private void AddNetworkEdges(Item item)
    {
        if (item.Networks is not [var network] || !_networks.TryGetValue(network, out int top))
            return;
        foreach (int height in Tops(item))
            AddEdge(top, height, Apart.NetworkTop, null, item);
        if (NextNetwork(network) is not { } next)
            return;
        foreach (int height in Bottoms(item))
            AddEdge(height, next, Apart.NetworkBottom, item);
    }

    private int? NextNetwork(int network)
    {
        foreach ((int other, int top) in _networks)
        {
            if (other > network)
                return top;
        }

        return null;
    }

    private IEnumerable<int> Tops(Item item)
    {
        if (item.Left.Count > 0)
            yield return _ends[item.Left[0]].Right;
        if (item.Right.Count > 0)
            yield return _ends[item.Right[0]].Left;
        if (_lone.TryGetValue(item, out int lone))
            yield return lone;
    }

    private IEnumerable<int> Bottoms(Item item)
    {
        if (item.Left.Count > 0)
            yield return _ends[item.Left[^1]].Right;
        if (item.Right.Count > 0)
            yield return _ends[item.Right[^1]].Left;
        if (_lone.TryGetValue(item, out int lone))
            yield return lone;
    }

    /// <summary>Lets ends share a height where nothing forbids it: both ends of a stretch, and opposite ends at a box.</summary>
    private void Straighten()
    {
        foreach (bool single in (ReadOnlySpan<bool>)[true, false])
        {
            foreach (List<Segment> gutter in _grid.Gutters)
            {
                foreach (Segment segment in gutter)
                {
                    if ((segment.From.Right.Count == 1 && segment.To.Left.Count == 1) == single)
                        TryUnite(_ends[segment].Left, _ends[segment].Right);
                }
            }
        }

        AlignNetworks();
        foreach (List<Item> column in _grid.Columns)
        {
            foreach (Item item in column)
            {
                if (item.Box is null)
                    continue;
                int left = item.Left.Count, right = item.Right.Count;
                for (int k = 0; left == right && k < left; k++)
                    TryUnite(_ends[item.Left[k]].Right, _ends[item.Right[k]].Left);
                if (left == 1 && right > 1 && right % 2 == 1)
                    TryUnite(_ends[item.Left[0]].Right, _ends[item.Right[right / 2]].Left);
                if (right == 1 && left > 1 && left % 2 == 1)
                    TryUnite(_ends[item.Left[left / 2]].Right, _ends[item.Right[0]].Left);
            }
        }
    }

    /// <summary>Lets the boxes of a network stand at one height from left to right, also beyond a box that it shares.</summary>
    private void AlignNetworks()
    {
        var heights = new Dictionary<int, int>();
        foreach (List<Item> column in _grid.Columns)
        {
            for (int i = 0; i < column.Count; i++)
            {
                if (column[i] is not { Box: not null, Networks: [var network] } item || IsOf(column, i - 1, network) || IsOf(column, i + 1, network))
                    continue;
                int own = item.Left.Count == 1 ? _ends[item.Left[0]].Right : item.Right.Count == 1 ? _ends[item.Right[0]].Left : -1;
                if (own < 0)
                    continue;
                if (heights.TryGetValue(network, out int height))
                    TryUnite(height, own);
                else
                    heights[network] = own;
            }
        }

        static bool IsOf(List<Item> column, int index, int network) =>
            index >= 0 && index < column.Count && column[index].Networks is [var own] && own == network;
    }

    private void TryUnite(int a, int b)
    {
        a = Find(a);
        b = Find(b);
        if (a != b && !Reaches(a, b) && !Reaches(b, a))
            Unite(a, b);
    }

    private bool Reaches(int upper, int lower)
    {
        _stamped++;
        var stack = new Stack<int>();
        stack.Push(upper);
        while (stack.TryPop(out int height))
        {
            foreach (int below in _below[height])
            {
                int next = Find(below);
                if (next == lower)
                    return true;
                if (_stamp[next] == _stamped)
                    continue;
                _stamp[next] = _stamped;
                stack.Push(next);
            }
        }

        return false;
    }

    private List<int> Sorted()
    {
        var above = new int[Count];
        for (int h = 0; h < Count; h++)
        {
            foreach (int below in _below[h])
                above[Find(below)]++;
        }

        var order = new List<int>(Count);
        for (int h = 0; h < Count; h++)
        {
            if (Find(h) == h && above[h] == 0)
                order.Add(h);
        }

        for (int i = 0; i < order.Count; i++)
        {
            foreach (int below in _below[order[i]])
            {
                if (--above[Find(below)] == 0)
                    order.Add(Find(below));
            }
        }

        return order;
    }
}
