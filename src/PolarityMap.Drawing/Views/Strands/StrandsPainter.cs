using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Draws one sheet of a placed layout: on what the layout shows by itself the strands with their colours and labels, the names of
/// parts, the marks of other sheets, and what was found.
/// </summary>
/// <param name="sheetful">What is laid out and placed.</param>
/// <param name="page">Which of its sheets.</param>
/// <param name="place">That sheet's place in the set.</param>
/// <param name="scope">How much of it, and under which names.</param>
internal sealed class StrandsPainter(Sheetful sheetful, int page, SheetPlace place, PaintScope scope)
{
    /// <summary>Room at the right for the marks of findings.</summary>
    public const double MarkWidth = 13;

    /// <summary>From a label's end to its first tick.</summary>
    private const double TickLead = 1.3;

    private readonly TracedPlant _traced = sheetful.Input.Traced;
    private readonly SheetText _text = sheetful.Text;
    private readonly Dictionary<int, Finding> _findingOf = FindingByStrand(sheetful.Input.Findings);
    private readonly List<SceneElement> _strands = [];
    private readonly HashSet<int> _drawn = [];
    private readonly List<SceneElement> _marks = [];
    private readonly List<SheetLink> _links = [];

    /// <summary>Keys, arrowheads and dots that were painted, for the legend.</summary>
    public SheetSigns KeySigns { get; private set; }

    /// <summary>Where a click leads, once painted.</summary>
    public IReadOnlyList<SheetLink> Links => _links;

    /// <summary>The layers in drawing order.</summary>
    public IReadOnlyList<SceneGroup> Paint()
    {
        PaintedLayout painted = sheetful.Painted(page, scope);
        KeySigns = painted.KeySigns;
        // Strands with a finding are drawn last, so that nothing covers them.
        foreach (Way way in InDrawingOrder(painted.Ranks))
        {
            if (painted.Paths[way.Number] is { } paths)
                AddStrand(way, paths);
        }

        _marks.Add(painted.Signs);
        var strandLabels = new List<Label>(painted.Labels.Count + painted.Cuts.Count);
        foreach (LabelPlace label in painted.Labels)
            AddLabel(label, strandLabels);
        foreach (CutPlace cut in painted.Cuts)
            AddReference(cut, strandLabels);
        var names = new List<Label>(painted.Names.Count);
        foreach (NamePlace name in painted.Names)
            names.Add(sheetful.NameAt(name));
        if (sheetful.Input.Findings.Count > 0)
        {
            foreach (EndPlace end in painted.Ends)
                AddFinding(end);
            var faults = new FaultPainter(sheetful, page, scope);
            faults.Paint();
            _marks.AddRange(faults.Signs);
            strandLabels.AddRange(faults.Codes);
        }

        return
        [
            painted.Boxes,
            new SceneGroup("strands", _strands),
            painted.Expected,
            painted.Outlines,
            new SceneGroup("labels", [painted.Cells, painted.Words, .. LabelStyles.SideBySide(strandLabels), .. LabelStyles.SideBySide(names)]),
            new SceneGroup("findings", _marks),
        ];
    }

    private IEnumerable<Way> InDrawingOrder(int[]? ranks)
    {
        List<Way> ways = sheetful.Layout.Ways;
        if (ranks is not null)
            return ways.OrderBy(w => _findingOf.ContainsKey(sheetful.StrandOf(w))).ThenBy(w => ranks[w.Number]).ThenBy(NumberOf);
        bool isInOrder = _findingOf.Count == 0;
        for (int i = 1; i < ways.Count && isInOrder; i++)
            isInOrder = NumberOf(ways[i - 1]) <= NumberOf(ways[i]);
        return isInOrder ? ways : ways.OrderBy(w => _findingOf.ContainsKey(sheetful.StrandOf(w))).ThenBy(NumberOf);
    }

    private int NumberOf(Way way) => _traced.NumberOf(sheetful.StrandOf(way));

    /// <summary>For each strand the finding that its far end shows.</summary>
    public static Dictionary<int, Finding> FindingByStrand(IReadOnlyList<Finding> findings)
    {
        var map = new Dictionary<int, Finding>();
        foreach (Finding finding in findings)
        {
            // A place that is pointed at is no fault of the strand.
            if (finding.Rule.Severity == Severity.Note)
                continue;
            foreach (int strand in finding.Strands)
                map.TryAdd(strand, finding);
        }

        return map;
    }

    private int StrandOf(int way) => sheetful.StrandOf(sheetful.Layout.Ways[way]);

    private void AddStrand(Way way, WayPaths paths)
    {
        int strand = sheetful.StrandOf(way);
        FibreColour colour = _text.Colour(strand);
        int number = _traced.NumberOf(strand);
        ReadOnlySpan<int> positions = _traced.Strands[strand];
        string name = $"Strand {number}, {colour.Name}, {HopLine.EndWord(_traced, positions[0])} of {_traced.Address(positions[0])} to {HopLine.EndWord(_traced, positions[^1])} of {_traced.Address(positions[^1])}";
        string? description = _findingOf.TryGetValue(strand, out Finding? finding) ? $"{finding.Rule.Code} {finding.Rule.Title}: {finding.Message}" : null;

        // A strand that comes to a sheet twice has two groups.
        string again = _drawn.Add(strand) ? "" : $"-{way.Piece.First}";
        SceneElement[] children = paths.In(StrandColours.Drawn(colour), finding is not null);
        _strands.Add(new SceneGroup($"{scope.IdPrefix}strand-{number}{again}", GroupRole.GraphicsSymbol, name, description, children));
    }

    /// <summary>The strand's label, and behind it a tick for each tracer of its colour.</summary>
    private void AddLabel(LabelPlace at, List<Label> labels)
    {
        StrandLabels.Entry label = _text.Hops.Labels.Of(StrandOf(at.Way));
        labels.Add(new Label(at.X, at.Y + (CapHeights.Strand / 2), label.Text, CapHeights.Strand, Anchor.Middle, Palette.Ink, Underlay.Paper) { Spot = at.Spot });
        int tracers = label.Colour.Tracers;
        if (tracers > 0)
            _marks.Add(Marks.Ticks(at.X + (label.TextWidth / 2) + TickLead + ((tracers - 1) / 2.0), at.Y, tracers));
    }

    /// <summary>Sheet and zone of the other end of a strand that is cut here, with a link to it.</summary>
    private void AddReference(CutPlace at, List<Label> labels)
    {
        if ((at.Leaves ? sheetful.Cuts.After(at.Cut) : sheetful.Cuts.Before(at.Cut)) is not { } end)
            return;
        int sheet = place.Sheet + end.Sheet - sheetful.FirstSheet - page;
        string words = at.Leaves ? CutMarks.Leaving(sheet, end.Zone) : CutMarks.Arriving(sheet, end.Zone);
        var label = Label.CentredOn(at.X, at.Y, words, CapHeights.Strand, at.Leaves ? Anchor.Start : Anchor.End, Palette.Ink);
        labels.Add(label);
        Area extent = label.Extent();
        _links.Add(new SheetLink(new Area(extent.X, extent.Y - 0.8, extent.Width, extent.Height + 1.6), sheet));
    }

    /// <summary>The sign of what was found on a strand, at its end.</summary>
    private void AddFinding(EndPlace end)
    {
        if (!_findingOf.TryGetValue(StrandOf(end.Way), out Finding? finding))
            return;
        _marks.Add(FindingMarks.Of(finding.Rule.Severity, end.X + 3.2, end.Y, 4));
        if (end.HasRoom)
            _marks.Add(Label.CentredOn(end.X + 6, end.Y, sheetful.HasRoomForWords && end.IsLast ? $"{finding.Rule.Code} {finding.Rule.Title}" : finding.Rule.Code, CapHeights.Strand, Anchor.Start, Palette.Ink));
    }
}
