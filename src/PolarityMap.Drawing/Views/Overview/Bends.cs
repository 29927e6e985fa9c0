namespace PolarityMap.Drawing.Views.Overview;

/// <summary>The upright part of a stretch: from the height it comes at to the height it goes on at.</summary>
/// <param name="Place">Its place from the left among the upright parts of its gutter.</param>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
internal readonly record struct Upright(int Place, double From, double To);

/// <summary>
/// Leads the stretches of one gutter that do not run straight: level, upright, level, so that lines only cross at right angles and
/// never lie on each other. Where two change places, one of them goes by way of a height between (channel routing; from memory).
/// </summary>
internal sealed class Bends
{
    /// <summary>Level parts nearer than this to each other may not overlap.</summary>
    private const double Near = 2;

    private readonly Dictionary<Segment, List<Upright>> _uprights = [];

    private Bends()
    {
    }

    /// <summary>Number of places for upright parts.</summary>
    public int Count { get; private set; }

    /// <summary>The upright parts of a stretch from the left; none where it runs straight.</summary>
    public IReadOnlyList<Upright> Of(Segment segment) => _uprights.TryGetValue(segment, out List<Upright>? list) ? list : [];

    public static Bends Make(IReadOnlyList<Segment> gutter, Heights heights)
    {
        var bends = new Bends();
        var bent = new List<(Segment Segment, double From, double To)>();
        foreach (Segment segment in gutter)
        {
            double from = heights.Left(segment), to = heights.Right(segment);
            if (Math.Abs(from - to) > 0.01)
                bent.Add((segment, from, to));
        }

        if (bent.Count == 0)
            return bends;

        // Those that go up come first from above, those that go down first from below: then they keep clear of each other.
        bent.Sort(static (a, b) => Key(a).CompareTo(Key(b)));
        var taken = new List<double>();
        foreach (Segment segment in gutter)
        {
            taken.Add(heights.Left(segment));
            taken.Add(heights.Right(segment));
        }

        bends.Lead(bent, taken);
        return bends;
    }

    private static (int, double) Key((Segment Segment, double From, double To) bent) =>
        bent.To < bent.From ? (0, bent.From) : (1, -bent.From);

    private void Lead(List<(Segment Segment, double From, double To)> bent, List<double> taken)
    {
        // An upright part comes after the one of a stretch that arrives from the left at the height where it leaves to the right.
        int[] first = First(bent);
        var after = new List<int>[bent.Count];
        for (int i = 0; i < first.Length; i++)
            after[i] = [];
        var ready = new PriorityQueue<int, int>();
        for (int i = 0; i < first.Length; i++)
        {
            if (first[i] < 0)
                ready.Enqueue(i, i);
            else
                after[first[i]].Add(i);
        }

        var done = new bool[bent.Count];
        var late = new List<(Segment Segment, double Between, double To)>();
        for (int next = 0; next < bent.Count;)
        {
            if (!ready.TryDequeue(out int taking, out _))
            {
                // All that are left wait for each other: one goes to a height between, and on from there when all others are led.
                while (next < bent.Count && done[next])
                    next++;
                if (next == bent.Count)
                    break;
                (Segment segment, double from, double to) = bent[next];
                double between = Free(taken, from, to);
                taken.Add(between);
                Add(segment, from, between);
                late.Add((segment, between, to));
                Release(next);
            }
            else if (!done[taking])
            {
                Add(bent[taking].Segment, bent[taking].From, bent[taking].To);
                Release(taking);
            }
        }

        foreach ((Segment segment, double between, double to) in late)
            Add(segment, between, to);

        void Release(int index)
        {
            done[index] = true;
            foreach (int other in after[index])
                ready.Enqueue(other, other);
        }
    }

    /// <summary>For each stretch the one that has to be upright before it, or -1. Heights at one side lie farther apart than <see cref="Near"/>.</summary>
    private static int[] First(List<(Segment Segment, double From, double To)> bent)
    {
        var byFrom = new int[bent.Count];
        var heights = new double[bent.Count];
        for (int i = 0; i < byFrom.Length; i++)
            (byFrom[i], heights[i]) = (i, bent[i].From);
        Array.Sort(heights, byFrom);
        var first = new int[bent.Count];
        for (int i = 0; i < first.Length; i++)
        {
            first[i] = -1;
            int at = Array.BinarySearch(heights, bent[i].To - Near);
            for (at = at < 0 ? ~at : at; at < heights.Length && heights[at] < bent[i].To + Near; at++)
            {
                if (byFrom[at] != i)
                    first[i] = byFrom[at];
            }
        }

        return first;
    }

    private void Add(Segment segment, double from, double to)
    {
        if (!_uprights.TryGetValue(segment, out List<Upright>? list))
            _uprights[segment] = list = [];
        list.Add(new Upright(Count++, from, to));
    }

    /// <summary>A height between two where the most room is.</summary>
    private static double Free(List<double> taken, double from, double to)
    {
        (double low, double high) = (Math.Min(from, to), Math.Max(from, to));
        var between = new List<double>(taken.FindAll(t => t >= low && t <= high)) { low, high };
        between.Sort();
        double best = (low + high) / 2, room = 0;
        for (int i = 1; i < between.Count; i++)
        {
            if (between[i] - between[i - 1] <= room)
                continue;
            room = between[i] - between[i - 1];
            best = (between[i] + between[i - 1]) / 2;
        }

        return best;
    }
}
