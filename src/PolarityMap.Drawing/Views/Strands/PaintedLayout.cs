using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// A sheet of a layout but for who stands in it: all that sheets which look alike have in common, and the places of what each
/// of them says itself.
/// </summary>
internal sealed class PaintedLayout
{
    /// <summary>Filled boxes, to lie under the strands.</summary>
    public required SceneGroup Boxes { get; init; }

    /// <summary>Their outlines, to lie over the strands.</summary>
    public required SceneGroup Outlines { get; init; }

    /// <summary>Cells of positions and tabs of keys, to lie over both.</summary>
    public required SceneGroup Cells { get; init; }

    /// <summary>Words that do not depend on who stands in the layout.</summary>
    public required SceneGroup Words { get; init; }

    /// <summary>Arrowheads, bars at open ends, and rings where a strand goes on.</summary>
    public required SceneGroup Signs { get; init; }

    /// <summary>Where faulty strands should go.</summary>
    public required SceneGroup Expected { get; init; }

    /// <summary>Keys, arrowheads and dots that were painted, for the legend.</summary>
    public required SheetSigns KeySigns { get; init; }

    /// <summary>For each way its rank in drawing, the lowest first; null where the order of numbers will do.</summary>
    public required int[]? Ranks { get; init; }

    /// <summary>For each way the stretches of its strand on this sheet; null where it has none.</summary>
    public required WayPaths?[] Paths { get; init; }

    public required IReadOnlyList<LabelPlace> Labels { get; init; }

    public required IReadOnlyList<NamePlace> Names { get; init; }

    public required IReadOnlyList<CutPlace> Cuts { get; init; }

    public required IReadOnlyList<EndPlace> Ends { get; init; }
}

/// <summary>The stretches of a way: its routes, drawn in the colour of the strand that runs there.</summary>
/// <param name="routes">The route of each stretch.</param>
/// <param name="repeats">True where sheets share them. At one place of a layout most of them have a strand of the same colour.</param>
internal sealed class WayPaths(Route[] routes, bool repeats)
{
    private (Colour Fill, bool Emphasised, SceneElement[] Paths)? _last;

    /// <summary>The stretches in a colour, and wide for a strand with a finding.</summary>
    public SceneElement[] In(Colour fill, bool emphasised)
    {
        if (_last is { } last && last.Fill == fill && last.Emphasised == emphasised)
            return last.Paths;
        var paths = new SceneElement[routes.Length];
        for (int i = 0; i < paths.Length; i++)
            paths[i] = new StrandPath(routes[i], fill, emphasised) { Repeats = repeats };
        _last = (fill, emphasised, paths);
        return paths;
    }
}

/// <summary>Where the label of a strand stands.</summary>
/// <param name="Way">The number of its way.</param>
/// <param name="X">Middle of the label.</param>
/// <param name="Y">Height of the strand.</param>
/// <param name="Spot">The place as sheets share it, or null where they do not.</param>
internal readonly record struct LabelPlace(int Way, double X, double Y, LabelSpot? Spot);

/// <summary>A word that names what stands in a box: the part, or with a row the adapter of its mating.</summary>
/// <param name="Model">The label where the layout is that of the sheet itself.</param>
/// <param name="Node">The box.</param>
/// <param name="IsInside">True where it stands inside the box, with port or leg.</param>
/// <param name="Row">For an adapter the row that is mated in it, else null.</param>
internal readonly record struct NamePlace(Label Model, Node Node, bool IsInside, Row? Row = null);

/// <summary>Where a strand goes on on another sheet, or comes from one.</summary>
/// <param name="Cut">The cut.</param>
/// <param name="Leaves">True where it goes on.</param>
/// <param name="X">The end of the mark next to the strand.</param>
/// <param name="Y">Height of the strand.</param>
internal readonly record struct CutPlace(Cut Cut, bool Leaves, double X, double Y);

/// <summary>Where the last stretch of a strand ends.</summary>
/// <param name="Way">The number of its way.</param>
/// <param name="X">The end.</param>
/// <param name="Y">Its height.</param>
/// <param name="HasRoom">True where words fit beside a sign.</param>
/// <param name="IsLast">True in the last column.</param>
internal readonly record struct EndPlace(int Way, double X, double Y, bool HasRoom, bool IsLast);
