using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Ranks parts by the longest path to each: the columns they stand in. The parts of a sheet are numbered in the order in which
/// they are met, so that all is kept in arrays; one object serves all sheets of a planning, one after the other.
/// </summary>
/// <param name="partCount">Number of parts of the plant.</param>
internal sealed class ColumnRanks(int partCount)
{
    // A part's number on the sheet, from 1; 0 while it is not on it.
    private readonly int[] _numberOf = new int[partCount];
    private readonly List<int> _parts = [];
    private readonly List<List<int>> _next = [];
    private readonly List<Node?> _nodes = [];
    private int[] _rank = [];
    private int[] _place = [];

    /// <summary>The last box made for a part of the sheet.</summary>
    public ref Node? NodeOf(int part) => ref System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_nodes)[_numberOf[part] - 1];

    /// <summary>The number of a part of the sheet, from 0.</summary>
    public int NumberOf(int part) => _numberOf[part] - 1;

    /// <summary>The column of a part of the sheet.</summary>
    public int RankOf(int part) => _rank[_numberOf[part] - 1];

    /// <summary>Forgets the sheet before.</summary>
    public void Clear()
    {
        foreach (int part in _parts)
            _numberOf[part] = 0;
        _parts.Clear();
        _nodes.Clear();
    }

    /// <summary>Takes in the way of a strand.</summary>
    public void Add(ReadOnlySpan<Hop> way)
    {
        int before = -1;
        foreach (Hop hop in way)
        {
            int here = Number(hop.Part);
            if (before >= 0 && here != before)
                Follow(before, here);
            before = here;
        }
    }

    /// <summary>
    /// The longest path to each part; an edge that would close a circle is left out. A mating that cannot be made joins no
    /// strand, and its parts stand side by side all the same.
    /// </summary>
    public void Rank(RefusedMatings refused)
    {
        int count = _parts.Count;
        for (int part = 0; part < count && refused.All.Count > 0; part++)
        {
            foreach (Mating mating in refused.From(_parts[part]))
            {
                if (mating.A.Part != mating.B.Part && _numberOf[mating.B.Part] > 0)
                    Follow(part, _numberOf[mating.B.Part] - 1);
            }
        }

        if (_rank.Length < count)
        {
            _rank = new int[2 * count];
            _place = new int[2 * count];
        }

        int[] sorted = Sorted();
        for (int i = 0; i < count; i++)
        {
            _place[sorted[i]] = i;
            _rank[i] = 0;
        }

        var hasBefore = new bool[count];
        foreach (int part in sorted)
        {
            foreach (int after in _next[part])
            {
                if (_place[after] <= _place[part])
                    continue;
                hasBefore[after] = true;
                _rank[after] = Math.Max(_rank[after], _rank[part] + 1);
            }
        }

        // What nothing comes before moves right, next to what it is joined to.
        foreach (int part in sorted)
        {
            if (hasBefore[part])
                continue;
            int least = int.MaxValue;
            foreach (int after in _next[part])
            {
                if (_place[after] > _place[part])
                    least = Math.Min(least, _rank[after]);
            }

            if (least < int.MaxValue)
                _rank[part] = least - 1;
        }
    }

    private int Number(int part)
    {
        if (_numberOf[part] > 0)
            return _numberOf[part] - 1;
        int number = _parts.Count;
        _parts.Add(part);
        _nodes.Add(null);
        _numberOf[part] = number + 1;
        if (_next.Count == number)
            _next.Add([]);
        else
            _next[number].Clear();
        return number;
    }

    private void Follow(int before, int after)
    {
        List<int> next = _next[before];

        // Strands side by side take the same step most often.
        if ((next.Count == 0 || next[^1] != after) && !next.Contains(after))
            next.Add(after);
    }

    /// <summary>Parts so that each comes after those before it, as far as circles allow. No recursion: chains may be long.</summary>
    private int[] Sorted()
    {
        int count = _parts.Count;
        var done = new bool[count];
        var sorted = new int[count];
        int free = count;
        var stack = new Stack<(int Part, int Child)>();
        for (int root = 0; root < count; root++)
        {
            if (done[root])
                continue;
            done[root] = true;
            stack.Push((root, 0));
            while (stack.Count > 0)
            {
                (int part, int child) = stack.Pop();
                if (child == _next[part].Count)
                {
                    sorted[--free] = part;
                    continue;
                }

                stack.Push((part, child + 1));
                int after = _next[part][child];
                if (!done[after])
                {
                    done[after] = true;
                    stack.Push((after, 0));
                }
            }
        }

        return sorted;
    }
}
