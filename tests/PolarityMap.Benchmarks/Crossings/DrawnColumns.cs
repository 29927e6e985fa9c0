using PolarityMap.Acceptance.Svg;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views;

namespace PolarityMap.Benchmarks.Crossings;

/// <summary>A strand's visit to a part as it is drawn: the column of the part's box, and the heights in mm at which the strand comes to its edges.</summary>
internal readonly record struct DrawnHop(Hop Hop, int Column, double InY, double OutY);

/// <summary>
/// The strand sheet of a plant, read back from its scene: on one sheet without folds, so that a column's neighbour is drawn
/// beside it.
/// </summary>
internal sealed class DrawnColumns
{
    private const double Tolerance = 0.02;
    private const double Slack = 0.01;
    private readonly List<DrawnStrand> _strands = [];
    private readonly double[] _columns;
    private readonly List<Rect> _boxes = [];
    private readonly Dictionary<int, (int Column, double Y)> _places = [];

    private DrawnColumns(TracedPlant traced, IReadOnlyList<int> strands, DrawingSheet sheet)
    {
        Strands = strands;
        foreach (Box box in sheet.Layers.Single(l => l.Id == "parts").Children.OfType<Box>())
            _boxes.Add(new Rect(box.X, box.Y, box.Width, box.Height));
        _columns = [.. _boxes.Select(b => b.X).Distinct().Order()];
        var lines = new Dictionary<int, SceneGroup>();
        foreach (SceneGroup group in sheet.Layers.Single(l => l.Id == "strands").Children.Cast<SceneGroup>())
            lines.Add(int.Parse(group.Id!.Split('-')[1]), group);
        foreach (int strand in strands)
        {
            int number = traced.NumberOf(strand);
            StrandPath path = lines[number].Children.OfType<StrandPath>().Single();
            Spot[] route = [.. path.Route.Flatten(Tolerance).Select(p => new Spot(p.X, p.Y))];
            _strands.Add(new DrawnStrand(number, "", [route], []));
            Hops.Add(HopsOf(traced.Hops(strand), route));
        }
    }

    /// <summary>The strands drawn.</summary>
    public IReadOnlyList<int> Strands { get; }

    /// <summary>For each of <see cref="Strands"/> its visits to parts from left to right.</summary>
    public List<DrawnHop[]> Hops { get; } = [];

    public int ColumnCount => _columns.Length;

    /// <summary>Draws a plant; null when not even its dark strands are anything to draw.</summary>
    public static DrawnColumns? Of(TracedPlant traced)
    {
        var context = new CheckContext(traced);
        IReadOnlyList<Finding> findings = Checker.Check(context);
        Selection selection = Selection.Of(traced, findings, new Choice());
        if (selection.Strands.Count == 0)
            selection = Selection.Of(traced, findings, new Choice { WithDark = true });
        if (selection.Strands.Count == 0)
            return null;
        var input = new ViewInput(traced, selection)
        {
            Division = SheetDivision.None,
            Paper = new PaperChoice([], MayGrow: true),
            ExpectedEnds = ExpectedEnds.Of(context),
        };
        return new DrawnColumns(traced, selection.Strands, ViewCatalogue.Find("strands")!.Plan(input).Single().Draw(new SheetPlace(1, 1)));
    }

    /// <summary>Places where two strands cross outside every box.</summary>
    public int CrossingsBetweenParts() => Geometry.Crossings(_strands).Count(c => !_boxes.Exists(b => b.Contains(c.At.X, c.At.Y)));

    /// <summary>Inversions of the rows as they are drawn, gutter by gutter: the crossings when no two strands cross more often than they must.</summary>
    public int Inversions()
    {
        int count = 0;
        for (int c = 0; c + 1 < ColumnCount; c++)
        {
            double from = _boxes.Where(b => b.X == _columns[c]).Max(b => b.Right), to = _columns[c + 1];
            (double From, double To)[] rows =
            [
                .. Enumerable.Range(0, _strands.Count)
                    .Where(s => Hops[s][0].Column <= c && Hops[s][^1].Column > c)
                    .Select(s => (HeightAt(_strands[s].Routes[0], from), HeightAt(_strands[s].Routes[0], to))),
            ];
            for (int i = 0; i < rows.Length; i++)
            {
                for (int j = i + 1; j < rows.Length; j++)
                    count += (rows[i].From - rows[j].From) * (rows[i].To - rows[j].To) < 0 ? 1 : 0;
            }
        }

        return count;
    }

    /// <summary>Positions at one side of a part from the top down as they are drawn; a part drawn twice, its first box first.</summary>
    public int AsDrawn(int positionA, int positionB) => _places[positionA].CompareTo(_places[positionB]);

    private DrawnHop[] HopsOf(IReadOnlyList<Hop> hops, Spot[] route)
    {
        Rect[] passed = [.. _boxes.Where(b => Meets(route, b)).OrderBy(b => b.X)];
        SelfCheck.Demand(passed.Length == hops.Count, "a strand is drawn through as many boxes as it passes parts");
        var drawn = new DrawnHop[hops.Count];
        for (int i = 0; i < drawn.Length; i++)
        {
            int column = Array.IndexOf(_columns, passed[i].X);
            drawn[i] = new DrawnHop(hops[i], column, HeightAt(route, passed[i].X), HeightAt(route, passed[i].Right));
            if (hops[i].In >= 0)
                _places[hops[i].In] = (column, drawn[i].InY);
            if (hops[i].Out >= 0)
                _places[hops[i].Out] = (column, drawn[i].OutY);
        }

        return drawn;
    }

    /// <summary>True when the strand comes to the box at its left edge or leaves it at its right one.</summary>
    private static bool Meets(Spot[] route, Rect box) => MeetsAt(route, box, box.X) || MeetsAt(route, box, box.Right);

    private static bool MeetsAt(Spot[] route, Rect box, double x) =>
        x >= route[0].X - Slack && x <= route[^1].X + Slack && HeightAt(route, x) is var y && y > box.Y && y < box.Bottom;

    private static double HeightAt(Spot[] route, double x)
    {
        for (int i = 1; i < route.Length; i++)
        {
            if (route[i].X >= x)
                return HeightOn(route[i - 1], route[i], x);
        }

        return route[^1].Y;
    }

    private static double HeightOn(Spot a, Spot b, double x) => a.X == b.X ? b.Y : a.Y + (Math.Max(0, x - a.X) / (b.X - a.X) * (b.Y - a.Y));
}
