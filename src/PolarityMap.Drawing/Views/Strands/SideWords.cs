namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// The words beside the cells of one port at a side of a box: lane and port. Ports are named where a side has several, or at an
/// interface.
/// </summary>
/// <param name="First">Index of the port's first row at the side.</param>
/// <param name="Last">Index of its last row.</param>
/// <param name="Port">The port's name; empty where it is not named.</param>
/// <param name="Width">Room for the words.</param>
internal readonly record struct SideWords(int First, int Last, string Port, double Width)
{
    /// <summary>True where no words stand beside the cells, as at most small boxes.</summary>
    public static bool AreNone(Node node, List<Row> rows) => rows.Count == 0 || (!AreNamed(node, rows) && rows[0].Port.Part.Shape is { IsInterface: false });

    private static bool AreNamed(Node node, List<Row> rows) =>
        !node.NameInside && (rows[0].Port.Part.Shape.IsInterface || SheetText.HasSeveral(rows[0].Port.Part.Shape, rows[0].Port.Shape.Side));

    public static IEnumerable<SideWords> Of(SheetText text, Node node, List<Row> rows)
    {
        if (rows.Count == 0)
            yield break;
        bool named = AreNamed(node, rows);
        double lane = LaneWidth(rows);
        if (!named && lane == 0)
            yield break;
        for (int i = 0; i < rows.Count;)
        {
            int last = i;
            while (last + 1 < rows.Count && rows[last + 1].Port == rows[i].Port)
                last++;
            string name = named ? text.Port(rows[i]) : "";
            yield return new SideWords(i, last, name, (lane > 0 ? lane + 0.9 : 0) + (name.Length > 0 ? SheetText.Width(name) + 1.4 : 0));
            i = last + 1;
        }
    }

    /// <summary>Room for the words Tx and Rx of a side.</summary>
    public static double LaneWidth(List<Row> rows)
    {
        double width = 0;
        foreach (Row row in rows)
        {
            if (row.Lane is not null)
                width = Math.Max(width, SheetText.Width(SheetText.Lane(row)));
        }

        return width;
    }
}
