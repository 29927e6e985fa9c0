using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Steps;

/// <summary>The table under a step: for each strand and each part so far the position where it enters and where it leaves.</summary>
internal static class StepTable
{
    private const double Line = Measures.LineOfText;
    private const double StrandColumn = 14;
    private const double LeastColumn = 12;

    private const string Reading = "Heavy frame: what this step adds. In a cell: where the strand goes in → where it comes out, port:position.";

    /// <summary>Height of the table of so many strands, with its head of two lines, and of how to read it.</summary>
    public static double HeightOf(int strands) => RowsOf(strands) + Line;

    /// <summary>What a column shows: the part where there is one, else what all its parts are.</summary>
    public static string HeadOf(Sheetful sheetful, int column)
    {
        List<Node> nodes = sheetful.Layout.Columns[column];
        Part first = sheetful.Text.Part(nodes[0]);
        if (nodes.Count == 1 && !first.IsInline)
            return first.Name;
        string[] captions = [.. nodes.Select(n => SheetText.Caption(sheetful.Text.Part(n))).Distinct()];
        return captions.Length == 1 ? captions[0] : first.Caption[0];
    }

    /// <summary>Where every strand is at the end of the step, for a reader.</summary>
    public static string InWords(Sheetful sheetful, int step)
    {
        var words = new List<string>();
        foreach (Way way in InOrder(sheetful))
        {
            int column = Math.Min(step, way.LastColumn);
            if (column < way.FirstColumn || way.Passages[column - way.FirstColumn] is not { Node: not null } passage)
                continue;
            int position = (passage.Out ?? passage.In)!.Position;
            words.Add($"strand {sheetful.Input.Traced.NumberOf(way.Strand)} at {sheetful.Input.Traced.Address(position)}");
        }

        string all = string.Join(", ", words);
        return all.Length == 0 ? "" : char.ToUpperInvariant(all[0]) + all[1..] + ".";
    }

    public static SceneGroup Draw(Sheetful sheetful, int step, Area area)
    {
        var elements = new List<SceneElement>();
        int columns = sheetful.Layout.Columns.Count;
        double width = Math.Max(LeastColumn, (area.Width - StrandColumn) / columns);
        Way[] ways = InOrder(sheetful);
        double bottom = area.Y + RowsOf(ways.Length) - 3;
        for (int c = 0; c <= step && c < columns; c++)
        {
            double x = area.X + StrandColumn + (c * width);
            List<string> head = SheetText.Wrapped(HeadOf(sheetful, c), width - 1.5);
            for (int l = 0; l < Math.Min(2, head.Count); l++)
                elements.Add(Words(x + (width / 2), area.Y + ((l + 3 - Math.Min(2, head.Count)) * Line) - 0.8, TextFit.Fit(head[l], width - 1, CapHeights.Strand).Text));
            elements.Add(new Line(x, area.Y + 0.6, x, bottom, Palette.Ink, LineWidths.Leader));
        }

        elements.Add(new Label(area.X, area.Y + (2 * Line) - 0.8, "strand", CapHeights.Strand, Anchor.Start, Palette.Ink));
        elements.Add(new Line(area.X, area.Y + (2 * Line) + 0.6, area.X + StrandColumn + ((step + 1) * width), area.Y + (2 * Line) + 0.6, Palette.Ink, LineWidths.Inner));
        for (int i = 0; i < ways.Length; i++)
        {
            double baseline = area.Y + ((i + 3) * Line) + 0.2;
            elements.Add(new Label(area.X, baseline, sheetful.Text.Strand(ways[i].Strand), CapHeights.Strand, Anchor.Start, Palette.Ink));
            for (int c = ways[i].FirstColumn; c <= Math.Min(step, ways[i].LastColumn); c++)
            {
                if (ways[i].Passages[c - ways[i].FirstColumn] is { Node: not null } passage)
                    elements.Add(Words(area.X + StrandColumn + ((c + 0.5) * width), baseline, Cell(sheetful, passage)));
            }
        }

        elements.Add(new Label(area.X, bottom + Line + 0.4, Reading, CapHeights.Strand, Anchor.Start, Palette.Ink));
        return new SceneGroup("table", elements);
    }

    private static double RowsOf(int strands) => ((strands + 2) * Line) + 5;

    /// <summary>For example <c>1:B → 2</c>; at an interface the lane, at an open end one position alone.</summary>
    private static string Cell(Sheetful sheetful, Passage passage)
    {
        string into = passage.In is { } a ? Position(sheetful, a) : "";
        string from = passage.Out is { } b ? Position(sheetful, b) : "";
        if (into.Length > 0 && from.Length > 0)
            return $"{into} → {from}";
        Row only = (passage.In ?? passage.Out)!;
        string lane = SheetText.Lane(only);
        return lane.Length > 0 ? $"{into}{from} {lane}" : into + from;
    }

    private static string Position(Sheetful sheetful, Row row)
    {
        PositionPlace place = sheetful.Input.Traced.Graph.PlaceOf(row.Position);
        Part part = sheetful.Input.Traced.Plant.Parts[place.Port.Part];
        string position = SheetText.Cell(row);
        bool named = !part.Shape.IsCable && part.Shape.Ports.Count(p => p.Side == part.Shape.Ports[place.Port.Port].Side) > 1;
        return !named ? position.Length > 0 ? position : sheetful.Text.Port(row) : position.Length > 0 ? $"{sheetful.Text.Port(row)}:{position}" : sheetful.Text.Port(row);
    }

    private static Way[] InOrder(Sheetful sheetful) => [.. sheetful.Layout.Ways.OrderBy(w => sheetful.Input.Traced.NumberOf(w.Strand))];

    private static Label Words(double x, double baseline, string words) => new(x, baseline, words, CapHeights.Strand, Anchor.Middle, Palette.Ink);
}
