namespace PolarityMap.Drawing.Views.Overview;

/// <summary>How high everything is with its words broken to certain widths, and where it stands.</summary>
internal sealed class Heights
{
    private const int Passes = 4;

    private readonly Grid _grid;
    private readonly Rails _rails;
    private readonly Room _room;
    private readonly double[] _at;
    private readonly List<(int Height, double Apart)>[] _above;
    private readonly List<(int Height, double Apart)>[] _below;
    private readonly Dictionary<BoxGroup, TextBlock> _boxText = [];
    private readonly Dictionary<BoxGroup, IReadOnlyList<FaultLine>> _faults = [];
    private readonly Dictionary<LineGroup, TextBlock> _lineText = [];
    private readonly Dictionary<int, TextBlock> _networkText = [];
    private readonly Dictionary<Item, double> _pads = [];

    public Heights(Chart chart, Grid grid, Rails rails, OverviewWords words, Room room)
    {
        _room = room;
        _grid = grid;
        _rails = rails;
        _at = new double[rails.Count];
        _above = new List<(int, double)>[rails.Count];
        _below = new List<(int, double)>[rails.Count];
        foreach (List<BoxGroup> column in chart.Columns)
        {
            foreach (BoxGroup box in column)
            {
                _boxText[box] = new TextBlock(words.Of(box), room.Box, room.IsLow);
                _faults[box] = FaultLine.Of(box.Faults, room.Box);
            }
        }

        foreach (LineGroup line in chart.Lines)
            _lineText[line] = new TextBlock(words.Of(line), room.Line, room.IsLow);
        foreach (int network in rails.Networks.Keys)
            _networkText[network] = words.Network(network, chart.StrandsOfNetwork.GetValueOrDefault(network));
        foreach (List<Item> column in grid.Columns)
        {
            foreach (Item item in column)
                _pads[item] = PadOf(item);
        }

        Settle();
        Centre();
        Frame();
    }

    /// <summary>Height of the whole.</summary>
    public double Height { get; private set; }

    public TextBlock Text(BoxGroup box) => _boxText[box];

    public IReadOnlyList<FaultLine> Faults(BoxGroup box) => _faults[box];

    public TextBlock Text(LineGroup line) => _lineText[line];

    public TextBlock Text(int network) => _networkText[network];

    /// <summary>Height of a stretch at its left end.</summary>
    public double Left(Segment segment) => _at[_rails.LeftOf(segment)];

    /// <summary>Height of a stretch at its right end.</summary>
    public double Right(Segment segment) => _at[_rails.RightOf(segment)];

    /// <summary>Where a box begins and ends.</summary>
    public (double Top, double Bottom) Of(Item item)
    {
        double top = double.MaxValue, bottom = double.MinValue;
        foreach (Segment segment in item.Left)
            (top, bottom) = (Math.Min(top, Right(segment)), Math.Max(bottom, Right(segment)));
        foreach (Segment segment in item.Right)
            (top, bottom) = (Math.Min(top, Left(segment)), Math.Max(bottom, Left(segment)));
        if (item.Left.Count + item.Right.Count == 0)
            top = bottom = _at[_rails.LoneOf(item)];
        return (top - _pads[item], bottom + _pads[item]);
    }

    /// <summary>Where the rows of a network begin and end.</summary>
    public (double Top, double Bottom) RowsOf(int network)
    {
        double top = double.MaxValue, bottom = double.MinValue;
        foreach (List<Item> column in _grid.Columns)
        {
            foreach (Item item in column)
            {
                if (item is not { Box: not null, Networks: [var own] } || own != network)
                    continue;
                (double itemTop, double itemBottom) = Of(item);
                (top, bottom) = (Math.Min(top, itemTop), Math.Max(bottom, itemBottom));
            }
        }

        // The words at the left may be higher than the rows.
        double middle = (top + bottom) / 2;
        double half = Math.Max(bottom - top, _networkText[network].Height) / 2;
        return (middle - half, middle + half);
    }

    /// <summary>Height of what stands in a box: its words and the faults that end there.</summary>
    public double Inside(BoxGroup box)
    {
        double faults = 0;
        foreach (FaultLine line in _faults[box])
            faults += line.Height;
        return _boxText[box].Height + faults;
    }

    /// <summary>Room above the first and below the last stretch at a box, so that its words go in.</summary>
    private double PadOf(Item item)
    {
        if (item.Box is not { } box)
            return Measures.Pitch / 2;
        double left = Math.Max(0, item.Left.Count - 1) * Measures.Pitch;
        double right = 0;
        for (int i = 1; i < item.Right.Count; i++)
            right += WordsApart(item.Right[i - 1], item.Right[i]);
        double needed = Inside(box) + (2 * _room.Margin);
        return Math.Max(Measures.Pitch / 2, (needed - Math.Max(left, right)) / 2);
    }

    private double WordsApart(Segment upper, Segment lower) => Math.Max(
        Measures.Pitch,
        (upper.HasWords ? Measures.Below + _lineText[upper.Line].Height : 0) + (lower.HasWords ? Measures.Above : 0) + 1.5);

    private double Apart(Below edge) => edge.Apart switch
    {
        Overview.Apart.Items => _pads[edge.UpperItem!] + _pads[edge.LowerItem!] + Between(edge.UpperItem!, edge.LowerItem!),
        Overview.Apart.Words => WordsApart(edge.UpperStretch!, edge.LowerStretch!),
        Overview.Apart.Stretches => Measures.Pitch,
        Overview.Apart.NetworkTop => _pads[edge.LowerItem!],
        Overview.Apart.NetworkBottom => _pads[edge.UpperItem!] + _room.NetworkGap,
        _ => NetworkHeight(edge.Upper) + _room.NetworkGap,
    };

    private double Between(Item upper, Item lower) =>
        upper.Box is null || lower.Box is null ? 1 : upper.Networks.SequenceEqual(lower.Networks) ? _room.Gap : _room.NetworkGap;

    private double NetworkHeight(int top)
    {
        foreach ((int network, int height) in _rails.Networks)
        {
            if (_rails.Find(height) == _rails.Find(top))
                return _networkText[network].Height;
        }

        return 0;
    }

    /// <summary>Puts everything as high as what is above it lets it.</summary>
    private void Settle()
    {
        for (int h = 0; h < _at.Length; h++)
        {
            _above[h] = [];
            _below[h] = [];
        }

        foreach (Below edge in _rails.Edges)
        {
            (int upper, int lower, double apart) = (_rails.Find(edge.Upper), _rails.Find(edge.Lower), Apart(edge));
            _above[lower].Add((upper, apart));
            _below[upper].Add((lower, apart));
        }

        foreach (int h in _rails.Order)
        {
            foreach ((int upper, double apart) in _above[h])
                _at[h] = Math.Max(_at[h], _at[upper] + apart);
        }
    }

    /// <summary>Moves the only stretch at one side of a box towards the middle of those at its other side.</summary>
    private void Centre()
    {
        var sum = new double[_at.Length];
        var count = new int[_at.Length];
        for (int pass = 0; pass < Passes; pass++)
        {
            Array.Clear(sum);
            Array.Clear(count);
            foreach (List<Item> column in _grid.Columns)
            {
                foreach (Item item in column)
                {
                    if (item.Left.Count == 1 && item.Right.Count > 1)
                        Pull(_rails.RightOf(item.Left[0]), (Left(item.Right[0]) + Left(item.Right[^1])) / 2);
                    if (item.Right.Count == 1 && item.Left.Count > 1)
                        Pull(_rails.LeftOf(item.Right[0]), (Right(item.Left[0]) + Right(item.Left[^1])) / 2);
                }
            }

            for (int i = _rails.Order.Count - 1; i >= 0; i--)
            {
                int h = _rails.Order[i];
                if (count[h] > 0)
                    Move(h, sum[h] / count[h]);
            }
        }

        void Pull(int height, double to)
        {
            sum[height] += to;
            count[height]++;
        }
    }

    private void Move(int height, double to)
    {
        double least = double.MinValue, most = double.MaxValue;
        foreach ((int upper, double apart) in _above[height])
            least = Math.Max(least, _at[upper] + apart);
        foreach ((int lower, double apart) in _below[height])
            most = Math.Min(most, _at[lower] - apart);
        _at[height] = Math.Max(least, Math.Min(most, to));
    }

    /// <summary>Moves everything down so that it begins at 0, and measures it.</summary>
    private void Frame()
    {
        double top = double.MaxValue, bottom = 0;
        foreach (List<Item> column in _grid.Columns)
        {
            foreach (Item item in column)
            {
                (double itemTop, double itemBottom) = Of(item);
                (top, bottom) = (Math.Min(top, itemTop), Math.Max(bottom, itemBottom));
                foreach (Segment segment in item.Right)
                {
                    top = Math.Min(top, Left(segment) - Measures.Above);
                    if (segment.HasWords)
                        bottom = Math.Max(bottom, Left(segment) + Measures.Below + _lineText[segment.Line].Height);
                }
            }
        }

        foreach (int network in _rails.Networks.Keys)
        {
            (double rowsTop, double rowsBottom) = RowsOf(network);
            (top, bottom) = (Math.Min(top, rowsTop), Math.Max(bottom, rowsBottom));
        }

        for (int h = 0; h < _at.Length; h++)
            _at[h] -= top;
        Height = bottom - top;
    }
}
