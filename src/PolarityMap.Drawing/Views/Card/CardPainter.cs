using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>Draws cards onto the layers of a sheet.</summary>
/// <param name="traced">The traced plant.</param>
/// <param name="notes">Which strands have a finding.</param>
internal sealed class CardPainter(TracedPlant traced, CardNotes notes)
{
    private readonly List<SceneElement> _outlines = [];
    private readonly List<SceneElement> _boxes = [];
    private readonly List<SceneElement> _strands = [];
    private readonly List<SceneElement> _hops = [];
    private readonly List<SceneElement> _words = [];

    /// <summary>The layers in drawing order.</summary>
    public IReadOnlyList<SceneGroup> Layers =>
    [
        new SceneGroup("sheet", _outlines),
        new SceneGroup("parts", _boxes),
        new SceneGroup("strands", _strands),
        new SceneGroup("hops", _hops),
        new SceneGroup("words", _words),
    ];

    /// <summary>Adds marks to the lowest layer.</summary>
    public void AddMarks(IEnumerable<SceneElement> marks) => _outlines.AddRange(marks);

    /// <summary>Draws a card with its top left corner at a place of the sheet.</summary>
    /// <param name="page">The card.</param>
    /// <param name="left">Left edge of the card, mm.</param>
    /// <param name="top">Its top edge.</param>
    /// <param name="sheet">Which sheet of the set, in words; empty where there is one.</param>
    /// <param name="idPrefix">What its ids begin with, so that several cards go on a sheet.</param>
    public void Paint(CardPage page, double left, double top, string sheet, string idPrefix)
    {
        const double border = CardMeasures.Border;
        _outlines.Add(new Box(left + border, top + border, page.Format.WidthMm - (2 * border), page.Format.HeightMm - (2 * border), 1.5, Palette.Ink, LineWidths.Inner));
        Area inside = CardMeasures.Inside(page.Format);
        double x = left + inside.X, y = top + inside.Y;
        _words.Add(new SceneGroup(idPrefix + "head", page.Heading.Draw(x, y, page.CardWords, sheet)));
        y += page.Heading.Height;
        if (page.Findings.Height > 0)
            _words.Add(new SceneGroup(idPrefix + "findings", page.Findings.Draw(x, y)));
        y += page.Findings.Height + 0.6;
        y = new StripPainter(this, page, x, y, top + inside.Bottom - page.Foot.Height, idPrefix).Paint();
        if (page.Ends.Count > 0)
            _words.Add(new SceneGroup(idPrefix + "ends", Ends(page.Ends, x, y)));
        _words.Add(new SceneGroup(idPrefix + "foot", page.Foot.Draw(x, top + inside.Bottom)));
    }

    private static List<SceneElement> Ends(IReadOnlyList<string> lines, double x, double y)
    {
        double middle = y + 0.8 + (CardMeasures.Line / 2);
        var elements = new List<SceneElement>(lines.Count);
        foreach (string line in lines)
        {
            elements.Add(Label.CentredOn(x, middle, line, CapHeights.Strand, Anchor.Start, Palette.Ink));
            middle += CardMeasures.Line;
        }

        return elements;
    }

    /// <summary>Draws the rows of one card.</summary>
    private sealed class StripPainter(CardPainter owner, CardPage page, double left, double top, double foot, string idPrefix)
    {
        private const double RingRadius = 1.1;

        private readonly CardStrip _strip = page.Strip;
        private readonly TracedPlant _traced = owner.TracedPlant;
        private readonly Dictionary<int, List<Point>> _ways = [];
        private readonly Dictionary<int, List<Route>> _routes = [];
        private readonly List<SceneElement> _marks = [];
        private readonly double _slack = Slack(page, foot - top);

        /// <summary>How much wider each gap of the card is, so that the strands are seen better.</summary>
        private static double Slack(CardPage page, double room)
        {
            int gaps = 0;
            room -= CardLayout.EndHeight(page.Ends.Count);
            if (page.From < page.To)
                room -= (page.Continues ? CardMeasures.Stub : 0) + (page.GoesOn ? CardMeasures.Stub : 0);
            for (int i = page.From; i < page.To; i++)
            {
                room -= page.Strip.Rows[i].Height;
                gaps += page.Strip.Rows[i].Below > 0 ? 1 : 0;
            }

            return gaps == 0 ? 0 : Math.Clamp((room - 1) / gaps, 0, CardMeasures.MostSlack);
        }

        /// <summary>Draws them and returns where they end.</summary>
        public double Paint()
        {
            double y = top;
            if (page.Continues && page.From < page.To)
                y = PaintTurn(y, page.From, $"from card {page.Number - 1}", isTop: true);
            for (int i = page.From; i < page.To; i++)
                y = PaintRow(i, y);
            if (page.GoesOn && page.From < page.To)
                y = PaintTurn(y, page.To, $"goes on on card {page.Number + 1}", isTop: false);
            foreach (Trail trail in _strip.Trails)
                PaintStrand(trail);
            owner._hops.Add(new SceneGroup(idPrefix + "marks", _marks));
            return y;
        }

        private double X(int column) => left + _strip.ColumnX(column);

        /// <summary>The rings where strands come from the card before or go on to the next.</summary>
        private double PaintTurn(double y, int next, string words, bool isTop)
        {
            double ring = isTop ? y + RingRadius + 0.3 : y + CardMeasures.Stub - RingRadius - 0.6;
            bool any = false;
            foreach (Visit visit in _strip.Rows[next].Row.Visits)
            {
                if (visit.ComesFromAfar || visit.IsFirst)
                    continue;
                any = true;
                double x = X(visit.Enters);
                if (isTop)
                    Begin(visit.Trail, x, ring);
                else
                    End(visit.Trail, x, ring);
                _marks.Add(Ring(x, ring));
                _marks.Add(Label.CentredOn(x + CardMeasures.LabelLead, ring, visit.Trail.Label, CapHeights.Strand, Anchor.Start, Palette.Ink));
            }

            if (any || !isTop)
                _marks.Add(Label.CentredOn(left + _strip.TextX, ring, words, CapHeights.Strand, Anchor.Start, Palette.Ink));
            return y + CardMeasures.Stub;
        }

        private double PaintRow(int index, double y)
        {
            MeasuredRow measured = _strip.Rows[index];
            CardRow row = measured.Row;
            Part part = _traced.Plant.Parts[row.Part];
            var elements = new List<SceneElement>();
            if (measured.Above > 0)
                PaintAbove(measured, y, elements);
            double box = y + measured.Above;
            double bottom = box + measured.Box;
            PaintBox(measured, part, box, elements);
            foreach (Visit visit in row.Visits)
                PaintVisit(measured, visit, box, bottom, elements);
            double below = measured.Below > 0 ? measured.Below + _slack : 0;
            if (below > 0)
                PaintGap(measured, bottom, below, elements);

            owner._hops.Add(new SceneGroup($"{idPrefix}hop-{index + 1}", GroupRole.GraphicsObject, HopWords.Of(_traced, _strip, measured.Row, index), null, elements));
            return bottom + below;
        }

        private void PaintAbove(MeasuredRow measured, double y, List<SceneElement> elements)
        {
            foreach (Visit visit in measured.Row.Visits)
            {
                if (!visit.ComesFromAfar && !(visit.IsFirst && visit.Hop.In >= 0))
                    continue;
                double x = X(visit.Enters);
                double start = y + 1.4;
                Begin(visit.Trail, x, start);
                elements.Add(visit.ComesFromAfar || visit.Trail.IsLoop ? Ring(x, start) : Bar(x, start));
                elements.Add(Label.CentredOn(x + CardMeasures.LabelLead, y + (CardMeasures.Stub / 2), visit.Trail.Label, CapHeights.Strand, Anchor.Start, Palette.Ink));
            }

            measured.Head.Append(left + _strip.TextX, y + ((CardMeasures.Stub - CardMeasures.Line) / 2), elements);
        }

        private void PaintBox(MeasuredRow measured, Part part, double y, List<SceneElement> elements)
        {
            var outline = new Box(left, y, _strip.Width, measured.Box, 0.8, Palette.Ink, part.Shape.IsCable ? LineWidths.Inner : LineWidths.Outline);
            owner._boxes.Add(outline with { Stroke = null, Fill = Palette.PartFill });
            elements.Add(outline);
            double x = left + _strip.TextX;
            double baseline = y + ((measured.Box - measured.TextHeight) / 2) + MeasuredRow.FirstBaseline;
            for (int i = 0; i < measured.Names.Count; i++)
            {
                elements.Add(new Label(x, baseline, measured.Names[i], CapHeights.Part, Anchor.Start, Palette.Ink));
                if (i == measured.Names.Count - 1 && measured.RoomBeside.Length > 0)
                    elements.Add(new Label(left + _strip.TextX + _strip.TextWidth, baseline, measured.RoomBeside, CapHeights.Strand, Anchor.End, Palette.Ink));
                baseline += i == measured.Names.Count - 1 ? CardMeasures.Line : CardMeasures.NameLine;
            }

            foreach (string line in measured.Lines)
            {
                elements.Add(new Label(x, baseline, line, CapHeights.Strand, Anchor.Start, Palette.Ink));
                baseline += CardMeasures.Line;
            }
        }

        private void PaintVisit(MeasuredRow measured, Visit visit, double box, double bottom, List<SceneElement> elements)
        {
            Hop hop = visit.Hop;
            if (hop.In >= 0)
            {
                double middle = box + (CardMeasures.Cell / 2);
                PaintCell(X(visit.Enters), middle, hop.In, elements);
                Pass(visit.Trail, X(visit.Enters), box + CardMeasures.Cell);
                if (hop.Out < 0)
                    PaintInnerEnd(visit, box + CardMeasures.Cell, elements);
            }

            if (hop.Out < 0)
                return;
            PaintCell(X(visit.Leaves), bottom - (CardMeasures.Cell / 2), hop.Out, elements);
            if (hop.In < 0)
            {
                if (!MeasuredRow.IsUnwired(visit))
                    Begin(visit.Trail, X(visit.Leaves), bottom - (CardMeasures.Cell / 2));
                string lane = _strip.Text.Lane(hop.Out);
                if (lane.Length > 0)
                    elements.Add(Label.CentredOn(X(visit.Leaves), bottom - CardMeasures.Cell - 2, lane, CapHeights.Strand, Anchor.Middle, Palette.Ink));
                return;
            }

            if (measured.Row.Crosses)
            {
                // The crossing keeps to its height, so that it is as steep as planned in a part that is high for its words.
                double middle = (box + bottom) / 2;
                Pass(visit.Trail, X(visit.Enters), middle - (_strip.CrossingHeight / 2));
                Pass(visit.Trail, X(visit.Leaves), middle + (_strip.CrossingHeight / 2));
            }

            Pass(visit.Trail, X(visit.Leaves), bottom - CardMeasures.Cell);
        }

        /// <summary>A strand that ends inside a part: at a lane with its word, else at a bar.</summary>
        private void PaintInnerEnd(Visit visit, double y, List<SceneElement> elements)
        {
            double x = X(visit.Enters);
            string lane = _strip.Text.Lane(visit.Hop.In);
            if (lane.Length > 0)
            {
                End(visit.Trail, x, y - (CardMeasures.Cell / 2));
                elements.Add(Label.CentredOn(x, y + 2, lane, CapHeights.Strand, Anchor.Middle, Palette.Ink));
                return;
            }

            End(visit.Trail, x, y + 1.6);
            elements.Add(Bar(x, y + 1.6));
        }

        private void PaintCell(double x, double middle, int position, List<SceneElement> elements)
        {
            elements.Add(new Box(x - (_strip.CellWidth / 2), middle - (CardMeasures.Cell / 2), _strip.CellWidth, CardMeasures.Cell, 0, Palette.Ink, LineWidths.Leader, Palette.Paper));
            elements.Add(Label.CentredOn(x, middle, _strip.Text.Cell(position), CapHeights.Strand, Anchor.Middle, Palette.Ink));
        }

        private void PaintGap(MeasuredRow measured, double y, double height, List<SceneElement> elements)
        {
            double first = y + CardMeasures.GapMargin + (_slack / 2);
            double middle = first + (measured.Gap.FirstHeight / 2);
            measured.Gap.Append(left + _strip.TextX, first, elements);
            foreach (Visit visit in measured.Row.Visits)
            {
                if (visit.Hop.Out < 0 || MeasuredRow.IsUnwired(visit))
                    continue;
                double x = X(visit.Leaves);
                double end = y + height;
                elements.Add(Label.CentredOn(x + CardMeasures.LabelLead, middle, visit.Trail.Label, CapHeights.Strand, Anchor.Start, Palette.Ink));
                if (visit.GoesAfar)
                {
                    End(visit.Trail, x, end - RingRadius - 0.4);
                    elements.Add(Ring(x, end - RingRadius - 0.4));
                }
                else if (visit.IsLast)
                {
                    End(visit.Trail, x, end - 1);
                    elements.Add(visit.Trail.IsLoop ? Ring(x, end - RingRadius) : Bar(x, end - 1));
                }
                else
                    Pass(visit.Trail, x, end);
                PaintArrow(visit, x, middle, elements);
            }
        }

        /// <summary>The way of the light: in every gap, or where transmitters face each other, as each leaves its own.</summary>
        private static void PaintArrow(Visit visit, double x, double middle, List<SceneElement> elements)
        {
            Trail trail = visit.Trail;
            bool beforeLast = visit.Index == trail.Hops.Count - 2;
            bool down = trail.LitFromTop && (!trail.LitFromFoot || visit.IsFirst);
            bool up = trail.LitFromFoot && (!trail.LitFromTop || (beforeLast && !visit.IsFirst));
            if (!down && !up)
                return;
            double half = Marks.ArrowLength / 2 * (down ? 1 : -1);
            var arrow = new Polygon(
                [(x, middle + half), (x - (Marks.ArrowWidth / 2), middle - half), (x + (Marks.ArrowWidth / 2), middle - half)],
                Palette.Paper,
                0.9,
                Palette.Paper);
            // A rim of paper, so that it stands out from a dark strand.
            elements.Add(arrow);
            elements.Add(arrow with { Stroke = null, Fill = Palette.Ink });
        }

        private static Circle Ring(double x, double y) => new(x, y, RingRadius, Palette.Ink, LineWidths.Inner, Palette.Paper);

        private static Line Bar(double x, double y) => new(x - 1.6, y, x + 1.6, y, Palette.Ink, LineWidths.Frame);

        private void Begin(Trail trail, double x, double y) => _ways[trail.Strand] = [new Point(x, y)];

        private void Pass(Trail trail, double x, double y)
        {
            List<Point> way = _ways[trail.Strand];
            if (way.Count > 1 && way[^1].X == x && way[^2].X == x)
                way[^1] = new Point(x, y);
            else
                way.Add(new Point(x, y));
        }

        private void End(Trail trail, double x, double y)
        {
            Pass(trail, x, y);
            List<Point> way = _ways[trail.Strand];
            if (!_routes.TryGetValue(trail.Strand, out List<Route>? routes))
                _routes[trail.Strand] = routes = [];
            routes.Add(Route.Of(way[0], [.. way.Skip(1).Select(RouteSegment.Line)]));
            _ways.Remove(trail.Strand);
        }

        private void PaintStrand(Trail trail)
        {
            if (!_routes.TryGetValue(trail.Strand, out List<Route>? routes))
                return;
            Colour fill = StrandColours.Drawn(trail.Colour);
            bool faulty = owner.Notes.IsFaulty(trail.Strand);
            string name = $"Strand {trail.Number}, {trail.Colour.Name}, {Words(trail.First)} to {Words(trail.Last)}";
            Finding? finding = page.About.FirstOrDefault(f => f.Strands.Contains(trail.Strand));
            string? description = finding is null ? null : $"{finding.Rule.Code} {finding.Rule.Title}: {finding.Message}";
            owner._strands.Add(new SceneGroup($"{idPrefix}strand-{trail.Number}", GroupRole.GraphicsSymbol, name, description, [.. routes.Select(r => new StrandPath(r, fill, faulty))]));
        }

        private string Words(int position) => $"{HopLine.EndWord(_traced, position)} of {_traced.Address(position)}";
    }

    private TracedPlant TracedPlant => traced;

    private CardNotes Notes => notes;
}
