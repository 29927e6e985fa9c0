using CsCheck;
using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Drawing.Tests.Scene;

public class ModuleOutlinesTests
{
    private const int Size = 7;

    // The painter's rule by itself: whatever outline comes last at a place decides.
    [Fact]
    public void Outlines_drawn_over_each_other_give_the_pattern() => Gen.Bool.Array[Size * Size].Sample(squares =>
    {
        List<ModuleOutline> outlines = Of(squares);
        for (int i = 0; i < squares.Length; i++)
        {
            ModuleOutline? last = outlines.LastOrDefault(o => Winds(o, (i % Size) + 0.5, (i / Size) + 0.5));
            Assert.Equal(squares[i], last is { IsDark: true });
        }
    });

    // A vertex of an outline where it goes straight on would be a wasted one, and an outline that crosses itself no outline.
    [Fact]
    public void Each_corner_turns_and_each_side_runs_along_the_squares() => Gen.Bool.Array[Size * Size].Sample(squares =>
    {
        foreach (ModuleOutline outline in Of(squares))
        {
            (int X, int Y)[] c = [.. outline.Corners];
            for (int i = 0; i < c.Length; i++)
            {
                (int X, int Y) next = c[(i + 1) % c.Length];
                Assert.True((c[i].X == next.X) != (c[i].Y == next.Y));
            }
        }
    });

    [Fact]
    public void A_ring_is_its_outside_and_then_its_hole()
    {
        List<ModuleOutline> outlines = ModuleOutlines.Of((x, y) => x is >= 0 and < 3 && y is >= 0 and < 3 && (x, y) != (1, 1), 3);
        Assert.Equal([true, false], outlines.Select(o => o.IsDark));
        Assert.Equal([(0, 0), (3, 0), (3, 3), (0, 3)], outlines[0].Corners);
        Assert.Equal(4, outlines[1].Corners.Count);
    }

    private static List<ModuleOutline> Of(bool[] squares) =>
        ModuleOutlines.Of((x, y) => x is >= 0 and < Size && y is >= 0 and < Size && squares[(y * Size) + x], Size);

    /// <summary>Whether an outline goes round a point, by the number of turns.</summary>
    private static bool Winds(ModuleOutline outline, double x, double y)
    {
        int turns = 0;
        for (int i = 0; i < outline.Corners.Count; i++)
        {
            (int x1, int y1) = outline.Corners[i];
            (_, int y2) = outline.Corners[(i + 1) % outline.Corners.Count];
            if (x1 > x && y1 <= y != y2 <= y)
                turns += y2 > y1 ? 1 : -1;
        }

        return turns != 0;
    }
}
