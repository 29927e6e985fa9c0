using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>Draws a placed overview.</summary>
internal sealed class OverviewPainter(Plant plant, Chart chart, Grid grid, Rails rails, Placement placement, OverviewWords words, double originX, double originY)
{
    private const double Corner = 0.8;
    private const double SlashRise = 1.7;
    private const double SlashRun = 1;

    private readonly Heights _heights = placement.Heights;
    private readonly List<SceneElement> _boxes = [];
    private readonly List<SceneElement> _lines = [];
    private readonly List<SceneElement> _labels = [];
    private readonly List<SceneElement> _findings = [];
    private readonly Dictionary<Segment, string> _rings = [];

    /// <summary>The layers in drawing order.</summary>
    public IReadOnlyList<SceneGroup> Paint()
    {
        PaintNetworks();
        NameRings();
        for (int i = 0; i < chart.Lines.Count; i++)
        {
            LineGroup line = chart.Lines[i];
            _lines.Add(new SceneGroup($"line-{i + 1}", GroupRole.GraphicsSymbol, words.Spoken(line), null, PaintLine(line)));
        }

        int number = 0;
        for (int c = 0; c < grid.Columns.Length; c++)
        {
            foreach (Item item in grid.Columns[c])
            {
                if (item.Box is { } box)
                    PaintBox(item, box, ++number);
            }
        }

        return
        [
            new SceneGroup("lines", _lines),
            new SceneGroup("parts", _boxes),
            new SceneGroup("labels", _labels),
            new SceneGroup("findings", _findings),
        ];
    }

    private double X(double x) => originX + x;

    private double Y(int column, double y) => originY + placement.TopOf(placement.Band[column]) + y;

    /// <summary>At the left of each band the names of the networks, beside a bar as high as their rows.</summary>
    private void PaintNetworks()
    {
        for (int band = 0; band < placement.BandCount; band++)
        {
            double y = originY + placement.TopOf(band);
            foreach (int network in rails.Networks.Keys)
            {
                (double top, double bottom) = _heights.RowsOf(network);
                double x = X(1);
                Colour colour = NetworkColours.Of(plant.Networks[network]) ?? Palette.Ink;
                _lines.Add(new StrandPath(Route.From(x, y + top).LineTo(x, y + bottom), colour, Emphasised: true));
                TextBlock text = _heights.Text(network);
                text.Draw(X(Placement.NetworkBar), y + ((top + bottom - text.Height) / 2), Anchor.Start, null, _labels);
            }
        }
    }

    private void PaintBox(Item item, BoxGroup box, int number)
    {
        (double top, double bottom) = _heights.Of(item);
        double x = X(placement.X[box.Column]), width = placement.Width[box.Column];
        double y = Y(box.Column, top);
        var elements = new List<SceneElement>();
        switch (box.Sort)
        {
            case BoxSort.Part:
                elements.Add(new Box(x, y, width, bottom - top, Corner, Palette.Ink, LineWidths.Outline, Palette.PartFill));
                break;
            case BoxSort.Joint:
                elements.Add(new Box(x, y, width, bottom - top, 0, Palette.Ink, LineWidths.Leader, Palette.Paper));
                break;
            default:
                foreach (Segment segment in item.Left)
                    elements.Add(Marks.DeadEnd(x, Y(box.Column, _heights.Right(segment))));
                foreach (Segment segment in item.Right)
                    elements.Add(Marks.DeadEnd(x + width, Y(box.Column, _heights.Left(segment))));
                break;
        }

        double at = y + ((bottom - top - _heights.Inside(box)) / 2);
        TextBlock text = _heights.Text(box);
        text.Draw(x + (width / 2), at, Anchor.Middle, null, elements);
        at += text.Height;
        foreach (FaultLine line in _heights.Faults(box))
        {
            line.Draw(x + (width / 2), at + 1, _findings);
            at += line.Height;
        }

        _boxes.Add(new SceneGroup($"box-{number}", GroupRole.GraphicsSymbol, words.Spoken(box), null, elements));
    }

    /// <summary>Gives the places where lines go on in the next band their letters, from the left and from above.</summary>
    private void NameRings()
    {
        for (int g = 0; g < grid.Gutters.Length; g++)
        {
            if (!placement.IsFoldAfter(g))
                continue;
            foreach (Segment segment in grid.Gutters[g])
                _rings[segment] = Letter(_rings.Count);
        }
    }

    /// <summary>A line from box to box, in one stroke for each band.</summary>
    private List<SceneElement> PaintLine(LineGroup line)
    {
        var elements = new List<SceneElement>();
        IReadOnlyList<Segment> way = grid.WayOf(line);
        Colour colour = line.Networks is [var network] && NetworkColours.Of(plant.Networks[network]) is { } own ? own : Palette.Ink;
        BoxGroup from = line.From;
        double height = Y(from.Column, _heights.Left(way[0]));
        Route route = Route.From(X(placement.X[from.Column] + placement.Width[from.Column] + (LineWidths.Outline / 2)), height);
        foreach (Segment segment in way)
        {
            int column = segment.Gutter;
            if (placement.IsFoldAfter(column))
            {
                double ring = X(placement.RingAfter(column));
                elements.Add(new StrandPath(route.LineTo(ring - Measures.Ring, Y(column, _heights.Left(segment))), colour));
                Ring(ring, Y(column, _heights.Left(segment)), _rings[segment]);
                double goesOn = X(placement.RingBefore(column + 1));
                double to = Y(column + 1, _heights.Right(segment));
                Ring(goesOn, to, _rings[segment]);
                route = Route.From(goesOn + Measures.Ring, to);
                continue;
            }

            foreach (Upright upright in placement.Bends[column].Of(segment))
            {
                double x = X(placement.BendX(column, upright.Place));
                route = route.LineTo(x, Y(column, upright.From)).LineTo(x, Y(column, upright.To));
            }
        }

        elements.Add(new StrandPath(route.LineTo(X(placement.X[line.To.Column]) - (LineWidths.Outline / 2), Y(line.To.Column, _heights.Right(way[^1]))), colour));
        PaintWords(line, from.Column, height, elements);
        return elements;
    }

    /// <summary>The slash, on top of the line, and the words beside it.</summary>
    private void PaintWords(LineGroup line, int gutter, double y, List<SceneElement> elements)
    {
        double x = X(placement.WordX(gutter));
        string fibres = OverviewWords.Fibres(line);
        if (fibres.Length > 0)
        {
            elements.Add(new Line(x, y + SlashRise, x + (2 * SlashRun), y - SlashRise, Palette.Ink, LineWidths.Inner));
            _labels.Add(new Label(x + (2 * SlashRun) + 0.6, y - 1.5, fibres, CapHeights.Strand, Anchor.Start, Palette.Ink, Underlay.Paper));
        }

        _heights.Text(line).Draw(x, y + Measures.Below, Anchor.Start, Underlay.Paper, _labels);
    }

    private void Ring(double x, double y, string letter)
    {
        _labels.Add(new Circle(x, y, Measures.Ring, Palette.Ink, LineWidths.Inner, Palette.Paper));
        _labels.Add(Label.CentredOn(x, y, letter, CapHeights.Strand, Anchor.Middle, Palette.Ink));
    }

    /// <summary>A, B and so on to Z, then AA, AB.</summary>
    private static string Letter(int index) => index < 26
        ? ((char)('A' + index)).ToString()
        : Letter((index / 26) - 1) + (char)('A' + (index % 26));
}
