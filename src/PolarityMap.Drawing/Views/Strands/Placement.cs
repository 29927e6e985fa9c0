using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Where a column's boxes and their parts lie, from left to right.</summary>
internal sealed class ColumnPlace(ColumnSize size)
{
    /// <summary>Left edge, from the left end of its band.</summary>
    public double X { get; set; }

    public double Width { get; set; }

    /// <summary>The band it is in, from 0 at the top; a drawing that is not folded has one.</summary>
    public int Band { get; set; }

    /// <summary>The sheet that its band is on, from 0; bands that one sheet does not take go on on the next.</summary>
    public int Page { get; set; }

    /// <inheritdoc cref="ColumnSize.LeftCell"/>
    public double LeftCell => size.LeftCell;

    /// <inheritdoc cref="ColumnSize.LeftWords"/>
    public double LeftWords => size.LeftWords;

    public double RightCell => size.RightCell;

    public double RightWords => size.RightWords;

    public ColumnText Text => size.Text;

    public double Right => X + Width;

    /// <summary>Left end of the stretch in which strands cross inside the boxes.</summary>
    public double InsideFrom => X + LeftCell + LeftWords + Text.InsideWidth;

    /// <summary>Right end of that stretch.</summary>
    public double InsideTo => Right - RightCell - RightWords;

    /// <summary>Room for the lines above a box; captions may stand out a little over a narrow one.</summary>
    public double TextWidth => Math.Max(Width, LeastTextWidth);

    /// <summary>Room for the lines above the narrowest box.</summary>
    public const double LeastTextWidth = 15;
}

/// <summary>Where a gutter's labels and its crossing lie.</summary>
/// <param name="ArrowLeft">Room for arrowheads at its left edge.</param>
/// <param name="ArrowRight">Room for arrowheads at its right edge.</param>
/// <param name="Label">Room for one label.</param>
/// <param name="Crossing">Room for a crossing between two labels; 0 where every strand runs straight and one label will do.</param>
internal sealed record GutterPlace(double ArrowLeft, double ArrowRight, double Label, double Crossing)
{
    /// <inheritdoc cref="GutterSize.Adapters"/>
    public double Adapters { get; init; }

    public double Width => ArrowLeft + ArrowRight + (Crossing > 0 ? (2 * Label) + Crossing : Label);

    /// <summary>Room that the gutter takes at the end of a band and again at the start of the next, with a mark of a width at its end.</summary>
    public double HalfWidth(double mark) => Math.Max(ArrowLeft, ArrowRight) + Label + mark;
}

/// <summary>
/// Turns slots and columns into millimetres. A drawing wider than its sheet is folded: it goes on in a further band below, or
/// on the next sheet, and every strand repeats its label where it leaves one band and enters the next.
/// </summary>
internal sealed class Placement
{
    private readonly LayoutSizes _sizes;
    private readonly double _stage;
    private readonly double _widest;
    private readonly double _mark;
    private readonly double[] _y;

    /// <param name="sizes">What the layout takes.</param>
    /// <param name="stage">Horizontal room for one exchange of neighbours.</param>
    /// <param name="widest">The widest a band may be.</param>
    /// <param name="highest">The height of a sheet's drawing space, where bands may go on on the next sheet.</param>
    public Placement(LayoutSizes sizes, double stage, double widest = double.PositiveInfinity, double highest = double.PositiveInfinity)
    {
        _sizes = sizes;
        _stage = stage;
        _widest = widest;
        _mark = double.IsFinite(highest) ? CutMarks.Width : RingWidth;
        _y = new double[sizes.Layout.SlotCount];
        Columns = new ColumnPlace[sizes.Columns.Length];
        Gutters = new GutterPlace[sizes.Gutters.Length];
        SetWidths();
        Fold();
        var textWidths = new double[Columns.Length];
        for (int c = 0; c < textWidths.Length; c++)
            textWidths[c] = Columns[c].TextWidth;
        BandHeight = sizes.SetHeights(_y, textWidths);
        BandsOfPage = double.IsFinite(highest) ? Math.Max(1, (int)((highest + Measures.BandGap) / (BandHeight + Measures.BandGap))) : Bands;
        foreach (ColumnPlace column in Columns)
            column.Page = column.Band / BandsOfPage;
    }

    /// <summary>Horizontal room for one exchange of neighbours.</summary>
    public double Stage => _stage;

    /// <summary>Room for the ring of a strand that goes on in the next band.</summary>
    private const double RingWidth = Marks.ArrowLength + 1;

    public ColumnPlace[] Columns { get; }

    public GutterPlace[] Gutters { get; }

    /// <inheritdoc cref="LayoutSizes.IsTight"/>
    public bool IsTight => _sizes.IsTight;

    /// <inheritdoc cref="LayoutSizes.LeftMargin"/>
    private double LeftMargin => _sizes.LeftMargin;

    /// <summary>Width of the widest band, left margin included.</summary>
    public double Width { get; private set; }

    /// <summary>Number of bands.</summary>
    public int Bands => Columns.Length == 0 ? 1 : Columns[^1].Band + 1;

    /// <summary>Number of bands that one sheet takes.</summary>
    public int BandsOfPage { get; }

    /// <summary>Number of sheets.</summary>
    public int Pages => (Bands + BandsOfPage - 1) / BandsOfPage;

    /// <summary>Height of one band, from the top of the column heads to below the last box.</summary>
    public double BandHeight { get; }

    /// <summary>Height of the bands of the fullest sheet.</summary>
    public double Height => (Math.Min(Bands, BandsOfPage) * (BandHeight + Measures.BandGap)) - Measures.BandGap;

    /// <summary>Height of a row's middle.</summary>
    public double Y(Row row) => _y[row.Slot] + BandTop(row.Column);

    public double Top(Node node) => _y[node.FirstSlot] + BandTop(node.Column) - (Measures.Pitch / 2) + Measures.Inset;

    public double Bottom(Node node) => _y[node.LastSlot] + BandTop(node.Column) + (Measures.Pitch / 2) - Measures.Inset;

    /// <summary>True when the drawing is folded after this column.</summary>
    public bool IsFoldAfter(int column) => column + 1 < Columns.Length && Columns[column + 1].Band > Columns[column].Band;

    private double BandTop(int column) => Columns[column].Band % BandsOfPage * (BandHeight + Measures.BandGap);

    /// <summary>
    /// Whether a mating shows its keys itself: always between large boxes; between small ones only where it differs from most
    /// of its gutter.
    /// </summary>
    public bool HasOwnKeys(Node left, Node right, Mating mating) =>
        (!left.NameInside && !right.NameInside) || mating.Keys != _sizes.Keys.Of(left.Column);

    /// <summary>A crossing at the heights of this placement.</summary>
    public Braid At(Crossing crossing) => crossing.Rows.Count == 0 ? crossing.At(_y, 0, 0)
        : crossing.At(_y, BandTop(crossing.Rows[0].Left.Column), BandTop(crossing.Rows[0].Right.Column));

    private void SetWidths()
    {
        for (int c = 0; c < Columns.Length; c++)
        {
            ColumnSize size = _sizes.Columns[c];
            double middle = size.HasInside ? 6 : 0;
            foreach (CrossingSize crossing in size.Crossings)
                middle = Math.Max(middle, crossing.Room(_stage));
            double width = size.LeftCell + size.LeftWords + size.Text.InsideWidth + middle + size.RightWords + size.RightCell;
            Columns[c] = new ColumnPlace(size) { Width = Measures.Tenths(Math.Max(width, size.LeastWidth)) };
        }

        for (int c = 0; c < Gutters.Length; c++)
        {
            GutterSize size = _sizes.Gutters[c];
            Gutters[c] = new GutterPlace(size.ArrowLeft, size.ArrowRight, size.Label, size.Crossing(_stage)) { Adapters = size.Adapters };
        }
    }

    /// <summary>
    /// Sets columns side by side, and starts a new band where the next column would not fit; rather one or two columns earlier
    /// than across a crossing.
    /// </summary>
    private void Fold()
    {
        const int mostBack = 2;
        int band = 0;
        Width = 0;
        for (int first = 0; first < Columns.Length;)
        {
            int end = first + 1;
            while (end < Columns.Length && BandWidth(first, end + 1) <= _widest)
                end++;
            for (int back = 1; end < Columns.Length && back <= mostBack && end - back > first; back++)
            {
                if (Gutters[end - back - 1].Crossing > 0 || Gutters[end - 1].Crossing == 0)
                    continue;
                end -= back;
            }

            double x = first == 0 ? LeftMargin : Measures.Tenths(Gutters[first - 1].HalfWidth(_mark));
            for (int c = first; c < end; c++)
            {
                Columns[c].X = x;
                Columns[c].Band = band;
                x += Columns[c].Width + (c + 1 < end ? Gutters[c].Width : 0);
            }

            Width = Math.Max(Width, x + (end < Columns.Length ? Gutters[end - 1].HalfWidth(_mark) : 0));
            first = end;
            band++;
        }
    }

    /// <summary>Width of a band of the columns from one to before another.</summary>
    private double BandWidth(int first, int end)
    {
        double width = first == 0 ? LeftMargin : Gutters[first - 1].HalfWidth(_mark);
        for (int c = first; c < end; c++)
            width += Columns[c].Width + (c + 1 < end ? Gutters[c].Width : 0);
        return width + (end < Columns.Length ? Gutters[end - 1].HalfWidth(_mark) : 0);
    }

    /// <summary>
    /// The stretch from one x to another in which a braid runs: in the middle, no longer than it needs, so that a small crossing
    /// in a wide box is not flat. Without a crossing the whole stretch.
    /// </summary>
    public (double From, double To) Stretch(Braid braid, double x0, double x1)
    {
        double spare = braid.Stages == 0 ? 0 : Math.Max(0, x1 - x0 - (braid.Stages * braid.StageFor(_stage)));
        return (x0 + (spare / 2), x1 - (spare / 2));
    }
}
