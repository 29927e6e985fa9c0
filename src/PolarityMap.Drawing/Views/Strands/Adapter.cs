using PolarityMap.Core.Plants;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>An adapter of a panel or an outlet in which duplex or simplex plugs of two cords meet, as drawn in a gutter: a box around their strands.</summary>
/// <param name="At">The adapter.</param>
/// <param name="First">Its topmost strand's row at the left of the gutter.</param>
/// <param name="Last">Its lowest.</param>
internal readonly record struct Adapter(PortRef At, Row First, Row Last)
{
    /// <summary>Free strand at each side of the box.</summary>
    private const double Lead = 1;

    /// <summary>From the edge of the room to the middle of the box.</summary>
    public static double Middle(double room) => room / 2;

    /// <summary>Width of the box in a room.</summary>
    public static double WidthIn(double room) => room - (2 * Lead);

    /// <summary>Room for the box with its address and a lead at each side.</summary>
    public double Room(SheetText text) =>
        Measures.Tenths(SheetText.Width(text.Traced.Plant.Address(At)) + text.Hops.SpareOfName(At.Part, Scene.CapHeights.Strand) + 1.6 + (2 * Lead));

    /// <summary>The adapters in a gutter from the top down. Those of arrays are named by the words on their keys.</summary>
    public static IEnumerable<Adapter> In(Crossing gutter)
    {
        IReadOnlyList<(Row Left, Row Right)> rows = gutter.Rows;
        for (int i = 0; i < rows.Count; i++)
        {
            if (rows[i] is not { Left: { Position: >= 0, Port.IsArray: false } first, Right.Position: >= 0 } || first.Mating is not { Through: { } adapter })
                continue;
            int last = i;
            while (last + 1 < rows.Count && rows[last + 1].Left is { Position: >= 0 } next && ReferenceEquals(next.Mating, first.Mating) && next.Slot == rows[last].Left.Slot + 1)
                last++;
            yield return new Adapter(adapter, first, rows[last].Left);
            i = last;
        }
    }
}
