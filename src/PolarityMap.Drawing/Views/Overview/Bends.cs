namespace PolarityMap.Drawing.Views.Overview;

/// <summary>The upright part of a stretch: from the height it comes at to the height it goes on at.</summary>
/// <param name="Place">Its place from the left among the upright parts of its gutter.</param>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
internal readonly record struct Upright(int Place, double From, double To);

/// <summary>
/// Leads the stretches of one gutter that do not run straight: level, upright, level, so that lines only cross at right angles and
/// never lie on each other. Where two change places, one of them goes by way of a height between (channel routing; own reasoning).
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
        var late = new List<(Segment Segment, double Between, double To)>();
        var open = new List<(Segment Segment, double From, double To)>(bent);
        while (open.Count > 0)
        {
            // The next may be one at whose height no other that is still open arrives from its left.
            int next = open.FindIndex(b => !open.Exists(o => o.Segment != b.Segment && Math.Abs(o.From - b.To) < Near));
            if (next < 0)
            {
                (Segment segment, double from, double to) = open[0];
                double between = Free(taken, from, to);
                taken.Add(between);
                Add(segment, from, between);
                late.Add((segment, between, to));
                open.RemoveAt(0);
                continue;
            }

            (Segment straight, double start, double end) = open[next];
            Add(straight, start, end);
            open.RemoveAt(next);
        }

        foreach ((Segment segment, double between, double to) in late)
            Add(segment, between, to);
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
