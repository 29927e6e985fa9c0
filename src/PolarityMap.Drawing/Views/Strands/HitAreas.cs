using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Where the cells of positions and the names of ports lie on one sheet of a placed layout.</summary>
internal static class HitAreas
{
    /// <summary>The cells of all positions, and for each port that is named beside them its cells and its name together.</summary>
    public static List<HitArea> Of(Sheetful sheetful, int page)
    {
        var areas = new List<HitArea>(sheetful.Layout.RowCount());
        for (int c = 0; c < sheetful.Layout.Columns.Count; c++)
        {
            ColumnPlace place = sheetful.Placement.Columns[c];
            if (place.Page != page)
                continue;
            foreach (Node node in sheetful.Layout.Columns[c])
            {
                Append(sheetful, node, node.Left, place.X, place.LeftCell, left: true, areas);
                Append(sheetful, node, node.Right, place.Right - place.RightCell, place.RightCell, left: false, areas);
            }
        }

        return areas;
    }

    private static void Append(Sheetful sheetful, Node node, List<Row> rows, double x, double cell, bool left, List<HitArea> areas)
    {
        if (rows.Count == 0)
            return;
        foreach (Row row in rows)
            areas.Add(new HitArea(At(sheetful, x, cell, row, row), sheetful.PortOf(node, row), row.Place));
        if (SideWords.AreNone(node, rows))
            return;
        foreach (SideWords words in SideWords.Of(sheetful.Text, node, rows))
        {
            PortRef port = sheetful.PortOf(node, rows[words.First]);
            areas.Add(new HitArea(At(sheetful, left ? x : x - words.Width, cell + words.Width, rows[words.First], rows[words.Last]), port, 0));
        }
    }

    /// <summary>From one row to another below it.</summary>
    private static Area At(Sheetful sheetful, double x, double width, Row first, Row last)
    {
        double top = sheetful.OriginY + sheetful.Placement.Y(first) - (Measures.CellHeight / 2);
        double bottom = sheetful.OriginY + sheetful.Placement.Y(last) + (Measures.CellHeight / 2);
        return new Area(sheetful.OriginX + x, top, width, bottom - top);
    }
}
