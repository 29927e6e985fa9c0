namespace PolarityMap.Drawing.Scene;

/// <summary>One closed outline of a pattern of squares, in squares from its upper left corner.</summary>
/// <param name="Corners">Its corners in order.</param>
/// <param name="IsDark">True for the outside of dark squares, false for light ones that they enclose.</param>
internal sealed record ModuleOutline(IReadOnlyList<(int X, int Y)> Corners, bool IsDark);

/// <summary>
/// The outlines of the dark squares of a pattern. Drawn one over the other in their order they give the pattern without seams,
/// which rectangles side by side have wherever a picture is smoothed.
/// </summary>
internal static class ModuleOutlines
{
    /// <summary>Right, down, left, up.</summary>
    private static readonly (int X, int Y)[] s_ways = [(1, 0), (0, 1), (-1, 0), (0, -1)];

    /// <summary>The outlines, those that lie inside others after them. Squares that touch at a corner alone are apart.</summary>
    /// <param name="isDark">Whether the square in a column and a row is dark; asked for one beyond each edge too.</param>
    /// <param name="size">Number of columns and of rows.</param>
    public static List<ModuleOutline> Of(Func<int, int, bool> isDark, int size)
    {
        // An edge runs with the dark square at its right hand; it is known by its first corner and its way.
        var edges = new bool[size + 1, size + 1, 4];
        for (int y = 0; y < size; y++)
        {
            for (int x = 0; x < size; x++)
            {
                if (!isDark(x, y))
                    continue;
                edges[x, y, 0] = !isDark(x, y - 1);
                edges[x + 1, y, 1] = !isDark(x + 1, y);
                edges[x + 1, y + 1, 2] = !isDark(x, y + 1);
                edges[x, y + 1, 3] = !isDark(x - 1, y);
            }
        }

        var outlines = new List<(ModuleOutline Outline, int Extent)>();
        for (int y = 0; y <= size; y++)
        {
            for (int x = 0; x <= size; x++)
            {
                for (int way = 0; way < 4; way++)
                {
                    if (edges[x, y, way])
                        outlines.Add(Follow(edges, x, y, way));
                }
            }
        }

        // What encloses another reaches further than that in both directions.
        return [.. outlines.OrderByDescending(o => o.Extent).Select(o => o.Outline)];
    }

    private static (ModuleOutline Outline, int Extent) Follow(bool[,,] edges, int x, int y, int way)
    {
        var corners = new List<(int X, int Y)>();
        int twiceArea = 0, left = x, right = x, top = y, bottom = y;
        int last = -1;
        while (edges[x, y, way])
        {
            edges[x, y, way] = false;
            if (way != last)
                corners.Add((x, y));
            last = way;
            (int nextX, int nextY) = (x + s_ways[way].X, y + s_ways[way].Y);
            twiceArea += (x * nextY) - (nextX * y);
            (x, y) = (nextX, nextY);
            (left, right, top, bottom) = (Math.Min(left, x), Math.Max(right, x), Math.Min(top, y), Math.Max(bottom, y));

            // The sharpest turn to the right stays with the same square.
            way = (way + 1) % 4;
            for (int turn = 0; turn < 3 && !edges[x, y, way]; turn++)
                way = (way + 3) % 4;
        }

        return (new ModuleOutline(corners, twiceArea > 0), (right - left) * (bottom - top));
    }
}
