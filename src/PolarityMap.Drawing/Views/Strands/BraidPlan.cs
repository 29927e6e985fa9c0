namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Plans how strands are led from one order to another. Every strand waits in its row, runs once at the common slope to its new row, and
/// goes on: it never turns back. Which starts when follows from three rules: of two strands that run the same way and must
/// cross, the one that runs past starts first and passes the other while that one waits; of two that keep their order, the
/// one in front leaves first; and nobody arrives in a row before the strand that was there has left. So every pair that must
/// cross crosses once and no other pair does, at an angle of the slope or twice that, each crossing at a place of its own.
/// </summary>
/// <remarks>
/// The rules are difference constraints on the starts, solved by relaxation. Where they contradict each other (a long cycle can
/// do that) or crowd the crossings, the strands are exchanged neighbour by neighbour instead, by odd-even transposition, which
/// has as few crossings and never crowds them, though strands may turn back.
/// </remarks>
internal sealed class BraidPlan
{
    /// <summary>More strands than this are exchanged neighbour by neighbour at once: the rules grow with their square.</summary>
    private const int MostByRules = 64;

    private readonly double[][] _rows;
    private int[]? _passed;

    private BraidPlan(double[][] rows) => _rows = rows;

    /// <summary>The plan for any number of strands that keep their order.</summary>
    public static BraidPlan Straight { get; } = new([]);

    /// <summary>Number of stages, each the room to run past one row; none where no two strands cross.</summary>
    public int Stages => (_rows.Length == 0 ? 0 : _rows[0].Length - 1) / 2;

    /// <summary>A strand's row at each moment 0, 0.5, 1, … of the stages, counted among the strands; a half lies between two rows.</summary>
    public double[] RowsOf(int strand) => _rows.Length == 0 ? [strand] : _rows[strand];

    /// <summary>
    /// For each strand how many others it runs past while they wait, less those that run past it; none where no two strands cross.
    /// Who runs past others is best drawn over them: a level line is easily followed below a running one, not the other way round.
    /// </summary>
    public ReadOnlySpan<int> Passed => _passed ??= CountPassed();

    /// <summary>True when a strand runs past at least so many others at once.</summary>
    public bool IsGreat(int many)
    {
        foreach (int passed in Passed)
        {
            if (passed >= many)
                return true;
        }

        return false;
    }

    /// <summary>True for a strand that runs down.</summary>
    public bool RunsDown(int strand) => _rows.Length > 0 && _rows[strand][^1] > _rows[strand][0];

    /// <summary>Plans for strands that enter in the order of their index.</summary>
    /// <param name="right">For each strand its place at the right; only the order counts.</param>
    public static BraidPlan Of(int[] right)
    {
        var byRight = new int[right.Length];
        Order(right, byRight);
        return OfOrder(byRight);
    }

    /// <summary>Plans for strands that enter in the order of their index and leave in the given one.</summary>
    public static BraidPlan OfOrder(ReadOnlySpan<int> byRight)
    {
        var target = new int[byRight.Length];
        bool straight = true;
        for (int k = 0; k < target.Length; k++)
        {
            target[byRight[k]] = k;
            straight &= byRight[k] == k;
        }

        return straight ? Straight : new BraidPlan((target.Length <= MostByRules ? Uncrowded(target) : null) ?? Exchanges(target));
    }

    /// <summary>The indices of places in the order of the places; of equal ones the first comes first.</summary>
    public static void Order(ReadOnlySpan<int> places, Span<int> order)
    {
        bool sorted = true;
        for (int i = 0; i < places.Length; i++)
        {
            order[i] = i;
            sorted &= i == 0 || places[i] >= places[i - 1];
        }

        if (sorted)
            return;
        var keys = new long[places.Length];
        for (int i = 0; i < keys.Length; i++)
            keys[i] = ((long)places[i] << 32) | (uint)i;
        Array.Sort(keys);
        for (int i = 0; i < keys.Length; i++)
            order[i] = (int)keys[i];
    }

    /// <summary>
    /// Runs without a crowd: where three crossings would fall together, one of their strands
    /// starts later. Null where that does not help, or where the rules contradict each other.
    /// </summary>
    private static double[][]? Uncrowded(int[] target)
    {
        const int mostTries = 60;
        var earliest = new int[target.Length];
        for (int attempt = 0; attempt < mostTries; attempt++)
        {
            if (Starts(target, earliest) is not { } starts)
                return null;
            double[][] rows = Runs(target, starts);
            List<int> crowd = Crowd(Crossings(target, rows));
            if (crowd.Count == 0)
                return rows;
            int late = crowd.Where(i => target[i] != i).MaxBy(i => starts[i]);
            earliest[late] = starts[late] + 2;
        }

        return null;
    }

    private int[] CountPassed()
    {
        int[] target = [.. _rows.Select(r => (int)r[^1])];
        var passed = new int[_rows.Length];
        foreach ((double moment, _, int first, int second) in Crossings(target, _rows))
        {
            int m = (int)Math.Ceiling(moment);
            int runs = Runs(first, m) - Runs(second, m);
            passed[first] += runs;
            passed[second] -= runs;
        }

        return passed;

        int Runs(int strand, int m) => _rows[strand][m] != _rows[strand][m - 1] ? 1 : 0;
    }

    /// <summary>Where strands cross: the moment, in half stages, the row, and the two strands.</summary>
    private static List<(double Moment, double Row, int First, int Second)> Crossings(int[] target, double[][] rows)
    {
        var crossings = new List<(double, double, int, int)>();
        for (int i = 0; i < target.Length; i++)
        {
            for (int j = i + 1; j < target.Length; j++)
            {
                if (target[i] < target[j])
                    continue;
                int m = 1;
                while (rows[i][m] < rows[j][m])
                    m++;
                double before = rows[j][m - 1] - rows[i][m - 1];
                double after = rows[i][m] - rows[j][m];
                double share = before / (before + after);
                crossings.Add((m - 1 + share, rows[i][m - 1] + (share * (rows[i][m] - rows[i][m - 1])), i, j));
            }
        }

        return crossings;
    }

    /// <summary>The strands of the first place where three crossings lie within 2.5 mm on the narrowest sheet; empty without one.</summary>
    private static List<int> Crowd(List<(double Moment, double Row, int First, int Second)> crossings)
    {
        double half = Measures.Stages[^1] / 2;
        crossings.Sort();
        for (int a = 0; a < crossings.Count; a++)
        {
            var near = new List<int>();
            for (int b = a; b < crossings.Count && (crossings[b].Moment - crossings[a].Moment) * half <= Measures.Crowded; b++)
                Add(a, b, near);
            for (int b = a - 1; b >= 0 && (crossings[a].Moment - crossings[b].Moment) * half <= Measures.Crowded; b--)
                Add(a, b, near);
            if (near.Count >= 3)
                return [.. near.SelectMany(c => new[] { crossings[c].First, crossings[c].Second })];
        }

        return [];

        void Add(int a, int b, List<int> near)
        {
            double x = (crossings[b].Moment - crossings[a].Moment) * half;
            double y = (crossings[b].Row - crossings[a].Row) * Measures.Pitch;
            if ((x * x) + (y * y) <= Measures.Crowded * Measures.Crowded)
                near.Add(b);
        }
    }

    /// <summary>
    /// When each strand starts, in stages and not before <paramref name="earliest"/>; null where the rules contradict each other.
    /// </summary>
    private static int[]? Starts(int[] target, int[] earliest)
    {
        int n = target.Length;
        var occupant = new int[n];
        for (int i = 0; i < n; i++)
            occupant[i] = i;
        // starts[After] >= starts[Before] + Gap.
        var rules = new List<(int Before, int After, int Gap)>();
        for (int i = 0; i < n; i++)
        {
            int way = Math.Sign(target[i] - i);
            if (way == 0)
                continue;
            int length = Math.Abs(target[i] - i);

            // Whoever was in the row where it arrives, and runs the other way, has left by then.
            int there = occupant[target[i]];
            if (Math.Sign(target[there] - there) == -way)
                rules.Add((there, i, 1 - length));
            for (int ahead = i + way; ahead >= 0 && ahead < n && Math.Abs(ahead - i) <= length; ahead += way)
            {
                if (Math.Sign(target[ahead] - ahead) != way)
                    continue;
                int distance = Math.Abs(ahead - i);
                if ((target[ahead] - target[i]) * way < 0)
                    rules.Add((i, ahead, distance + 1));
                else
                    rules.Add((ahead, i, 1 - distance));
            }
        }

        // Strands that run down start at even moments from an even row, those that run up at odd ones: two that meet then meet
        // between rows, never in the row of a third that waits.
        int Even(int strand, int start) => start + ((start ^ strand ^ (target[strand] > strand ? 0 : 1)) & 1);
        var starts = new int[n];
        for (int i = 0; i < n; i++)
            starts[i] = Even(i, earliest[i]);
        for (int round = 0; round < 3 * (n + 1); round++)
        {
            bool changed = false;
            foreach ((int before, int after, int gap) in rules)
            {
                if (starts[after] >= starts[before] + gap)
                    continue;
                starts[after] = Even(after, starts[before] + gap);
                changed = true;
            }

            if (!changed)
                return starts;
        }

        return null;
    }

    private static double[][] Runs(int[] target, int[] starts)
    {
        int length = 0;
        for (int i = 0; i < target.Length; i++)
        {
            if (target[i] != i)
                length = Math.Max(length, starts[i] + Math.Abs(target[i] - i));
        }

        var rows = new double[target.Length][];
        for (int i = 0; i < target.Length; i++)
        {
            rows[i] = new double[(2 * length) + 1];
            for (int m = 0; m < rows[i].Length; m++)
            {
                double run = Math.Clamp((m / 2.0) - starts[i], 0, Math.Abs(target[i] - i));
                rows[i][m] = i + (Math.Sign(target[i] - i) * run);
            }
        }

        return rows;
    }

    /// <summary>Odd-even transposition: every stage exchanges neighbours that stand in the wrong order.</summary>
    private static double[][] Exchanges(int[] target)
    {
        int n = target.Length;
        int[] order = [.. Enumerable.Range(0, n)];
        var rows = Enumerable.Range(0, n).Select(i => new List<double> { i }).ToArray();
        for (int round = 0; round < n + 1; round++)
        {
            var before = (int[])order.Clone();
            for (int k = round & 1; k + 1 < n; k += 2)
            {
                if (target[order[k]] > target[order[k + 1]])
                    (order[k], order[k + 1]) = (order[k + 1], order[k]);
            }

            if (order.SequenceEqual(before))
                continue;
            for (int k = 0; k < n; k++)
            {
                List<double> own = rows[order[k]];
                own.Add((own[^1] + k) / 2);
                own.Add(k);
            }
        }

        return [.. rows.Select(r => r.ToArray())];
    }
}
