using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Strands laid out and placed on paper: on one sheet, or, where not even the strands of one port fit, on several that follow
/// each other.
/// </summary>
internal sealed class Sheetful
{
    private readonly Sheetful? _model;
    private PaintedLayout? _painted;

    private Sheetful(ViewInput input, Layout layout, SheetText text, SheetNotes notes, SheetFormat format, Placement placement, double marks, double below)
    {
        Notes = notes with { Signs = notes.Signs | (placement.Bands > placement.Pages ? SheetSigns.Rings : 0) | (placement.Pages > 1 ? SheetSigns.Cuts : 0) };
        Input = input;
        Layout = layout;
        Text = text;
        Format = format;
        Placement = placement;
        Marks = marks;
        Area free = SheetFrame.FreeOf(format);
        double spare = free.Width - placement.Width - marks;
        double words = input.Findings.Where(f => f.Strands.Count > 0).Select(f => SheetText.Width(f.Rule.Title) + 2).DefaultIfEmpty(0).Max();
        if (words > 0 && words <= spare - (2 * Draft.Clear) && placement.Bands == 1)
        {
            HasRoomForWords = true;
            Marks = marks += words;
        }

        FootHeight = Legend.FootHeight(format, Notes);
        double room = free.Height - FootHeight - placement.Height - below;
        OriginX = Math.Round(free.X + Math.Max(0, (free.Width - placement.Width - marks) / 2), 1);
        OriginY = Math.Round(free.Y + Math.Max(1, room * 0.4), 1);
    }

    private Sheetful(Sheetful model, ViewInput input, SheetNotes notes, Cast cast)
    {
        _model = model;
        model.IsModel = true;
        Input = input;
        Layout = model.Layout;
        Text = model.Text;
        Notes = notes;
        FootHeight = model.FootHeight;
        Format = model.Format;
        Placement = model.Placement;
        Marks = model.Marks;
        OriginX = model.OriginX;
        OriginY = model.OriginY;
        Cast = cast;
    }

    /// <summary>The input narrowed to the strands here.</summary>
    public ViewInput Input { get; }

    public Layout Layout { get; }

    public SheetText Text { get; }

    /// <summary>What stands at its foot.</summary>
    public SheetNotes Notes { get; }

    /// <summary>Height of what stands at its foot.</summary>
    public double FootHeight { get; }

    public SheetFormat Format { get; }

    public Placement Placement { get; }

    /// <summary>Room at the right for signs, open ends and the marks of other sheets.</summary>
    public double Marks { get; }

    /// <summary>True when the words of a finding fit beside its sign.</summary>
    public bool HasRoomForWords { get; }

    public double OriginX { get; private set; }

    public double OriginY { get; private set; }

    /// <summary>Who stands in a layout that was made for others; null where it is its own.</summary>
    private Cast? Cast { get; }

    /// <summary>The strand of a way.</summary>
    public int StrandOf(Way way) => Cast is null ? way.Strand : Cast.Strands[way.Number];

    /// <summary>The part of a box.</summary>
    public int PartOf(Node node) => Cast is null ? node.Part : Cast.Parts[node.Number];

    /// <summary>The port of a row of a box.</summary>
    public PortRef PortOf(Node node, Row row) => row.Port.Ref with { Part = PartOf(node) };

    /// <summary>True when other sheets take over its layout.</summary>
    public bool IsModel { get; private set; }

    /// <summary>What a sheet of the layout shows, whoever stands in it; of a layout that several sheets share it is painted once.</summary>
    public PaintedLayout Painted(int page, PaintScope scope)
    {
        if (_model is not null)
            return _model.Painted(page, scope);
        return IsModel ? _painted ??= new LayoutPainter(this, page, scope).Paint() : new LayoutPainter(this, page, scope).Paint();
    }

    /// <summary>A name as it is for who stands there.</summary>
    public Label NameAt(NamePlace name)
    {
        if (Cast is null)
            return name.Model;
        int part = PartOf(name.Node);
        if (name.Row is { } row)
            return name.Model with { Text = Input.Traced.Plant.Address(Text.Hops.Ports.Of(PortOf(name.Node, row)).Mating!.Through!.Value) };
        return name.Model with { Text = name.IsInside ? Text.Inside(name.Node, part) : Text.Name(part) };
    }

    /// <summary>
    /// The same layout for other strands that run alike through parts that are alike, with names of the same widths and nothing
    /// found; null where the words at the foot take another height.
    /// </summary>
    public Sheetful? WithCast(StrandHops hops, ViewInput input, IReadOnlyList<Piece> pieces, Cast cast)
    {
        SheetNotes notes = Notes with { Sample = SampleOf(hops, pieces), Words = [.. SheetRemarks.Of(input)] };
        return Legend.FootHeight(Format, notes) == FootHeight ? new Sheetful(this, input, notes, cast) : null;
    }

    /// <summary>The same at another place, where it is not alone on its sheet.</summary>
    public Sheetful At(double x, double y)
    {
        OriginX = Math.Round(x, 1);
        OriginY = Math.Round(y, 1);
        return this;
    }

    /// <summary>True where very many strands cross in little room.</summary>
    public bool IsCrowded => Placement.Stage < Measures.RoomyStage && DrawingOrder.NeedsRoom(Layout);

    /// <summary>Where strands are cut that go on on other sheets.</summary>
    public CutRegister Cuts { get; private set; } = new();

    /// <summary>Its first sheet, counted within the view from 0.</summary>
    public int FirstSheet { get; private set; }

    /// <summary>
    /// The strands on the first of the papers that takes them on one sheet, narrowing the crossings and then folding before the
    /// next paper is tried; null when none does.
    /// </summary>
    /// <param name="hops">Visits of strands to parts.</param>
    /// <param name="input">What is drawn.</param>
    /// <param name="pieces">The strands.</param>
    /// <param name="names">Names where parts stand for several.</param>
    /// <param name="papers">The papers to try.</param>
    /// <param name="below">Height to leave free below the drawing.</param>
    public static Sheetful? OnOneSheet(StrandHops hops, ViewInput input, IReadOnlyList<Piece> pieces, SheetNames names, IReadOnlyList<SheetFormat> papers, double below = 0)
    {
        if (ColumnPlan.Make(hops, pieces, HighestOf(papers) - below) is not { } layout)
            return null;
        var draft = new Draft(hops, input, layout, pieces, names);
        foreach (SheetFormat paper in papers)
        {
            // The smallest sheet takes only what needs no fold; an upright one is there for drawings that are folded.
            ReadOnlySpan<bool> folds = paper == SheetFormat.A5Landscape ? [false] : paper.IsLandscape ? [false, true] : [true];
            if (OnPaper(draft, paper, folds, below) is { } sheet)
                return sheet;
        }

        return null;
    }

    private static Sheetful? OnPaper(Draft draft, SheetFormat paper, ReadOnlySpan<bool> folds, double below)
    {
        foreach (bool folded in folds)
        {
            Area room = draft.Room(paper, folded ? SheetSigns.Rings : SheetSigns.None);
            foreach (LayoutSizes sizes in draft.RoomyThenTight)
            {
                foreach (double stage in Measures.Stages)
                {
                    var placement = new Placement(sizes, stage, folded ? room.Width : double.PositiveInfinity);
                    if (placement.Width <= room.Width && placement.Height <= room.Height - below)
                        return draft.On(paper, placement, below);

                    // Narrower columns wrap more words and folding adds bands: neither makes a band that is too high any lower.
                    if (placement.BandHeight > room.Height - below)
                        return null;
                }
            }
        }

        return null;
    }

    /// <summary>The most height that a drawing has on any of the papers.</summary>
    private static double HighestOf(IReadOnlyList<SheetFormat> papers)
    {
        double highest = 0;
        foreach (SheetFormat paper in papers)
            highest = Math.Max(highest, SheetFrame.FreeOf(paper).Height - Legend.LeastFootHeight - Draft.Clear);
        return highest;
    }

    /// <summary>The strands on as many sheets of a paper as they need; null when a single column is wider or higher than it.</summary>
    public static Sheetful? OnSeveralSheets(StrandHops hops, ViewInput input, IReadOnlyList<Piece> pieces, SheetNames names, SheetFormat paper)
    {
        var draft = new Draft(hops, input, ColumnPlan.Make(hops, pieces), pieces, names);
        Area room = draft.Room(paper, SheetSigns.Rings | SheetSigns.Cuts);
        foreach (double stage in Measures.Stages)
        {
            var placement = new Placement(draft.Sizes, stage, room.Width, room.Height);
            if (placement.Width <= room.Width && placement.Height <= room.Height)
                return draft.On(paper, placement);
        }

        return null;
    }

    /// <summary>The strands on one sheet as large as they need; nothing shrinks.</summary>
    public static Sheetful OnItsOwnSheet(StrandHops hops, ViewInput input, IReadOnlyList<Piece> pieces, SheetNames names, double below = 0)
    {
        var draft = new Draft(hops, input, ColumnPlan.Make(hops, pieces), pieces, names);
        var placement = new Placement(draft.Sizes, Measures.Stages[^1]);
        double width = Math.Ceiling(Math.Max(placement.Width + draft.Marks + 40, 420));
        double foot = Legend.FootHeight(SheetFormat.Custom(width, 297), draft.Notes);
        return draft.On(SheetFormat.Custom(width, Math.Ceiling(Math.Max(placement.Height + below + foot + 65, 297))), placement, below);
    }

    /// <summary>Takes its place among the sheets of the view, and tells where its strands are cut.</summary>
    public void Settle(int firstSheet, CutRegister cuts)
    {
        FirstSheet = firstSheet;
        Cuts = cuts;
        foreach (Way way in Layout.Ways)
        {
            if (way.ComesIn)
                cuts.Arrives(new Cut(way.Strand, way.Piece.First - 1), SheetOf(way.FirstColumn), ZoneOf(Placement.Columns[way.FirstColumn].X, way.Passages[0].In!));
            if (way.GoesOn)
                cuts.Leaves(new Cut(way.Strand, way.Piece.First + way.Piece.Count - 1), SheetOf(way.LastColumn), ZoneOf(Placement.Columns[way.LastColumn].Right, way.Passages[^1].Out!));
            for (int c = way.FirstColumn; c < way.LastColumn && Placement.Pages > 1; c++)
            {
                if (Placement.Columns[c].Page == Placement.Columns[c + 1].Page)
                    continue;
                var cut = Cut.AfterColumn(way.Strand, c);
                cuts.Leaves(cut, SheetOf(c), ZoneOf(Placement.Columns[c].Right, way.Passages[c - way.FirstColumn].Out!));
                cuts.Arrives(cut, SheetOf(c + 1), ZoneOf(Placement.Columns[c + 1].X, way.Passages[c + 1 - way.FirstColumn].In!));
            }
        }
    }

    private int SheetOf(int column) => FirstSheet + Placement.Columns[column].Page;

    private string ZoneOf(double x, Row row) => SheetZones.At(Format, OriginX + x, OriginY + Placement.Y(row));

    /// <summary>The seventh strand where there is one, else the first.</summary>
    private static SampleStrand SampleOf(StrandHops hops, IReadOnlyList<Piece> pieces)
    {
        const int wanted = 7;
        int strand = pieces[0].Strand;
        foreach (Piece piece in pieces)
        {
            if (hops.Traced.NumberOf(piece.Strand) == wanted)
                strand = piece.Strand;
        }

        StrandLabels.Entry label = hops.Labels.Of(strand);
        return new SampleStrand(hops.Traced.NumberOf(strand), label.Colour, label.Cable is { } cable ? hops.Traced.Plant.Parts[cable].Name : null);
    }

    /// <summary>A layout that is not yet on paper.</summary>
    private sealed class Draft
    {
        /// <summary>Height that stays free above and below the drawing, and width beside it; where something was found, at each side of it.</summary>
        public const double Clear = 2;

        private LayoutSizes? _tight;

        public Draft(StrandHops hops, ViewInput input, Layout layout, IReadOnlyList<Piece> pieces, SheetNames names)
        {
            Input = input;
            Layout = layout;
            SlotPlan.Make(hops, Layout);
            Layout.Expected = ExpectedWays.Of(hops, input, Layout);
            Layout.IsMarked = input.Findings.Count > 0;
            Layout.Faults = FaultSigns.Of(input, Layout);
            Text = new SheetText(hops, names);
            Sizes = new LayoutSizes(layout, Text);
            Notes = new SheetNotes(input.Findings, SampleOf(hops, pieces), SheetSignsOf.Layout(hops, input, Layout), [.. names.Notes, .. SheetRemarks.Of(input), .. SheetRemarks.DrawnTwice(input.Traced.Plant, Layout)]) { Ghosted = ExpectedWays.Shown(input, Layout) };
            double open = 0;
            foreach (Way way in Layout.Ways)
            {
                if (way.LastColumn + 1 != Layout.Columns.Count || way.Passages[^1].Out is null)
                    continue;
                if (way.GoesOn)
                    Marks = Math.Max(Marks, CutMarks.Room(Text, way.Strand));
                else
                    open = Math.Max(open, OpenEnds.Length(Text, way, way.Passages[^1].Out!));
            }

            bool found = input.Findings.Any(f => f.Strands.Count > 0);
            Marks = Math.Max(Marks, found ? StrandsPainter.MarkWidth + Math.Max(0, open - Measures.Stub) : open > 0 ? open + 1 : 0);
        }

        public ViewInput Input { get; }

        public Layout Layout { get; }

        public SheetText Text { get; }

        public LayoutSizes Sizes { get; }

        /// <summary>The sizes, and where something was found also those that do without what can be spared rather than be folded.</summary>
        public IReadOnlyList<LayoutSizes> RoomyThenTight => Layout.IsMarked ? [Sizes, _tight ??= new LayoutSizes(Layout, Text, isTight: true)] : [Sizes];

        public SheetNotes Notes { get; }

        /// <summary>Room at the right for signs, open ends and the marks of other sheets.</summary>
        public double Marks { get; }

        /// <summary>The room of a sheet for boxes and strands.</summary>
        public Area Room(SheetFormat paper, SheetSigns further)
        {
            Area free = SheetFrame.FreeOf(paper);
            return free with { Width = free.Width - Marks - (Layout.IsMarked ? 2 * Clear : Clear), Height = free.Height - Legend.FootHeight(paper, Notes with { Signs = Notes.Signs | further }) - Clear };
        }

        public Sheetful On(SheetFormat paper, Placement placement, double below = 0) => new(Input, Layout, Text, Notes, paper, placement, Marks, below);
    }
}
