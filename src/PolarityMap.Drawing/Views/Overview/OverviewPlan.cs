using PolarityMap.Core.Checks;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>A sheet and what stands on it.</summary>
internal sealed record OverviewFit(SheetFormat Format, Chart Chart, Grid Grid, Rails Rails, OverviewWords Words, Placement Placement, IReadOnlyList<FootLine> Foot, OnSheet On);

/// <summary>Finds the smallest sheet for an overview.</summary>
internal sealed class OverviewPlan
{
    /// <summary>Free room around the drawing.</summary>
    private const double Around = 4;

    /// <summary>A sheet of less than this carries no overview.</summary>
    private const double LeastSide = 190;

    private readonly ViewInput _input;
    private readonly Stops _stops;
    private readonly int[] _ranks;
    private readonly Layout?[] _layouts = new Layout?[2];

    public OverviewPlan(ViewInput input)
    {
        _input = input;
        _stops = Stops.Of(input.Traced, input.Selection.Strands);
        _ranks = StopRanks.Of(_stops);
    }

    /// <summary>The first sheet of the choice that takes the drawing, or null.</summary>
    public OverviewFit? Fit() => Fit(byName: true, low: false) ?? Fit(byName: true, low: true) ?? Fit(byName: false, low: false) ?? Fit(byName: false, low: true);

    /// <summary>A sheet as large as the drawing, which never shrinks.</summary>
    public OverviewFit Grown()
    {
        Layout layout = Made(byName: true);
        Placement placement = layout.Placed(0, double.PositiveInfinity);
        double width = Math.Max(SheetFormat.A3Landscape.WidthMm, Math.Ceiling(placement.TotalWidth + (2 * Around) + 30));
        SheetFrame wide = SheetFrame.For(SheetFormat.Custom(width, SheetFormat.A3Landscape.HeightMm), new TitleBlock());
        double room = wide.Free.Height - FootHeight(layout, wide);
        double height = Math.Max(SheetFormat.A3Landscape.HeightMm, Math.Ceiling(SheetFormat.A3Landscape.HeightMm - room + placement.TotalHeight + (2 * Around)));
        return layout.Fit(SheetFormat.Custom(width, height), placement);
    }

    /// <summary>The chosen strands of each network, and at last those of none. A strand of several is of the first.</summary>
    public IReadOnlyList<IReadOnlyList<int>> StrandsByNetwork()
    {
        StopNetworks networks = StopNetworks.Of(_input.Traced, _stops);
        int count = _input.Traced.Plant.Networks.Count;
        var strands = new List<int>[count + 1];
        for (int n = 0; n <= count; n++)
            strands[n] = [];
        for (int s = 0; s < _input.Selection.Strands.Count; s++)
            strands[networks.FirstOf(s) is >= 0 and int n ? n : count].Add(_input.Selection.Strands[s]);
        return strands;
    }

    private OverviewFit? Fit(bool byName, bool low)
    {
        Layout? layout = null;
        foreach (SheetFormat format in _input.Paper.Formats)
        {
            if (Math.Min(format.WidthMm, format.HeightMm) < LeastSide)
                continue;
            layout ??= Made(byName);
            SheetFrame frame = SheetFrame.For(format, new TitleBlock());
            double width = frame.Free.Width - (2 * Around);
            double height = frame.Free.Height - FootHeight(layout, frame) - (2 * Around);
            foreach (bool folded in (ReadOnlySpan<bool>)[false, true])
            {
                for (int level = 0; level < Measures.Rooms.Count; level++)
                {
                    if (Measures.Rooms[level].IsLow != low || layout.Heights(level).Height > height)
                        continue;
                    Placement placement = layout.Placed(level, folded ? width : double.PositiveInfinity);
                    if (placement.TotalWidth <= width && placement.TotalHeight <= height)
                        return layout.Fit(format, placement);
                }
            }
        }

        return null;
    }

    private Layout Made(bool byName) => _layouts[byName ? 1 : 0] ??= new Layout(_input, ChartBuilder.Make(_input, _stops, _ranks, byName));

    private static double FootHeight(Layout layout, SheetFrame frame) =>
        OverviewLegend.FootHeight(frame, layout.Foot, frame.Free.Width, layout.On(null));

    /// <summary>A chart whose order is settled, to be tried on sheets.</summary>
    private sealed class Layout
    {
        private readonly ViewInput _input;
        private readonly Chart _chart;
        private readonly Grid _grid;
        private readonly Rails _rails;
        private readonly OverviewWords _words;
        private readonly Heights?[] _heights = new Heights?[Measures.Rooms.Count];

        public Layout(ViewInput input, Chart chart)
        {
            _input = input;
            _chart = chart;
            _grid = Grid.Of(chart);
            _rails = Rails.Of(_grid);
            _words = new OverviewWords(input.Traced);
            Foot = OverviewLegend.Lines(input.Traced.Plant, chart, input.Findings);
        }

        public IReadOnlyList<FootLine> Foot { get; }

        public Heights Heights(int level) => _heights[level] ??= new Heights(_chart, _grid, _rails, _words, Measures.Rooms[level]);

        public Placement Placed(int level, double widest) => new(_grid, _rails, Heights(level), widest);

        public OverviewFit Fit(SheetFormat format, Placement placement) =>
            new(format, _chart, _grid, _rails, _words, placement, Foot, On(placement));

        /// <summary>True when an upright part has other lines beside it, which it may cross.</summary>
        private bool HasCrossings(Placement placement)
        {
            for (int g = 0; g < placement.Bends.Length; g++)
            {
                if (placement.Bends[g].Count > 0 && _grid.Gutters[g].Count > 1)
                    return true;
            }

            return false;
        }

        /// <summary>What the legend has to explain; before the drawing is placed, whatever it may have to.</summary>
        public OnSheet On(Placement? placement)
        {
            bool open = false, rooms = false, slash = false;
            bool errors = _input.Findings.Any(f => f.Rule.Severity == Severity.Error);
            bool warnings = _input.Findings.Any(f => f.Rule.Severity == Severity.Warning);
            foreach (List<BoxGroup> column in _chart.Columns)
            {
                foreach (BoxGroup box in column)
                {
                    open |= box.Sort is not (BoxSort.Part or BoxSort.Joint);
                    rooms |= box.Sort == BoxSort.Part && _input.Traced.Plant.Parts[box.Parts[0]].Room is { Length: > 0 };
                }
            }

            foreach (LineGroup line in _chart.Lines)
                slash |= line.Cables.Count > 0;
            Colour? colour = null;
            foreach (int network in _rails.Networks.Keys)
                colour ??= NetworkColours.Of(_input.Traced.Plant.Networks[network]);
            bool crossings = placement is null || HasCrossings(placement);
            return new OnSheet(slash, colour, placement is null or { BandCount: > 1 }, open, crossings, errors, warnings, rooms);
        }
    }
}
