namespace PolarityMap.Drawing.Views.Overview;

/// <summary>Where columns and gutters stand, in one band or in several, one below the other.</summary>
internal sealed class Placement
{
    private readonly Grid _grid;
    private readonly double[] _word;

    /// <param name="grid">Columns of boxes.</param>
    /// <param name="rails">The networks that have rows.</param>
    /// <param name="heights">How high everything is.</param>
    /// <param name="widest">The width at which a new band begins; infinite for one band.</param>
    public Placement(Grid grid, Rails rails, Heights heights, double widest)
    {
        _grid = grid;
        Heights = heights;
        X = new double[grid.Columns.Length];
        Width = new double[grid.Columns.Length];
        Band = new int[grid.Columns.Length];
        Bends = new Bends[grid.Gutters.Length];
        _word = new double[grid.Gutters.Length];
        foreach (int network in rails.Networks.Keys)
            NetworkWidth = Math.Max(NetworkWidth, heights.Text(network).Width + NetworkBar + 4);
        for (int c = 0; c < Width.Length; c++)
            Width[c] = ColumnWidth(c);
        for (int g = 0; g < _word.Length; g++)
        {
            Bends[g] = Overview.Bends.Make(grid.Gutters[g], heights);
            foreach (Segment segment in grid.Gutters[g])
            {
                if (segment.HasWords)
                    _word[g] = Math.Max(_word[g], Math.Max(heights.Text(segment.Line).Width, SlashWidth(segment.Line)));
            }
        }

        Fold(widest);
    }

    /// <summary>Room of the bar beside a network's name.</summary>
    public const double NetworkBar = 3.4;

    public Heights Heights { get; }

    /// <summary>Left edge of each column.</summary>
    public double[] X { get; }

    /// <summary>Width of each column.</summary>
    public double[] Width { get; }

    /// <summary>The band of each column.</summary>
    public int[] Band { get; }

    public Bends[] Bends { get; }

    /// <summary>Room of the networks' names at the left of each band; 0 without networks.</summary>
    public double NetworkWidth { get; }

    public int BandCount { get; private set; }

    public double TotalWidth { get; private set; }

    public double TotalHeight => (BandCount * Heights.Height) + ((BandCount - 1) * Measures.BandGap);

    /// <summary>Top of a band.</summary>
    public double TopOf(int band) => band * (Heights.Height + Measures.BandGap);

    public bool IsFoldAfter(int column) => column + 1 < Band.Length && Band[column] != Band[column + 1];

    /// <summary>Where the words of a gutter begin.</summary>
    public double WordX(int gutter) => X[gutter] + Width[gutter] + Measures.Lead;

    /// <summary>Where an upright part stands in a gutter.</summary>
    public double BendX(int gutter, int place) => WordX(gutter) + _word[gutter] + Measures.Lead + (place * Measures.Bend);

    /// <summary>Middle of the circle at the end of a band.</summary>
    public double RingAfter(int gutter) => WordX(gutter) + _word[gutter] + Measures.Lead + Measures.Ring;

    /// <summary>Middle of the circle at the start of a band.</summary>
    public double RingBefore(int column) => X[column] - Measures.Lead - Measures.Ring;

    /// <summary>Room that a line's slash and its number take.</summary>
    public static double SlashWidth(LineGroup line) => 3.4 + Strands.SheetText.Width(OverviewWords.Fibres(line));

    private double ColumnWidth(int column)
    {
        double width = 0;
        foreach (Item item in _grid.Columns[column])
        {
            if (item.Box is not { } box)
                continue;
            width = Math.Max(width, Heights.Text(box).Width);
            foreach (FaultLine line in Heights.Faults(box))
                width = Math.Max(width, line.Width);
        }

        return width + (2 * Measures.Margin);
    }

    private double GutterWidth(int gutter) =>
        (2 * Measures.Lead) + _word[gutter] + (Bends[gutter].Count * Measures.Bend);

    private double FoldWidth(int gutter) => (2 * Measures.Lead) + _word[gutter] + (2 * Measures.Ring);

    /// <summary>Sets columns side by side, and starts a new band where the next column would not fit.</summary>
    private void Fold(double widest)
    {
        int band = 0;
        for (int first = 0; first < Width.Length; band++)
        {
            int end = first + 1;
            while (end < Width.Length && BandWidth(first, end + 1) <= widest)
                end++;
            double x = Start(first);
            for (int c = first; c < end; c++)
            {
                X[c] = x;
                Band[c] = band;
                x += Width[c] + (c + 1 < end ? GutterWidth(c) : 0);
            }

            TotalWidth = Math.Max(TotalWidth, BandWidth(first, end));
            first = end;
        }

        BandCount = band;
    }

    private double Start(int first) => NetworkWidth + (first == 0 ? 0 : (2 * Measures.Ring) + Measures.Lead);

    /// <summary>Width of a band of the columns from one to before another.</summary>
    private double BandWidth(int first, int end)
    {
        double width = Start(first);
        for (int c = first; c < end; c++)
            width += Width[c] + (c + 1 < end ? GutterWidth(c) : 0);
        return width + (end < Width.Length ? FoldWidth(end - 1) : 0);
    }
}
