using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>The words of a strand sheet: what stands in cells, boxes and gutters.</summary>
internal sealed class SheetText(StrandHops hops, SheetNames names)
{
    private readonly TracedPlant traced = hops.Traced;

    public TracedPlant Traced => traced;

    /// <summary>What is known of the plant for this planning.</summary>
    public StrandHops Hops => hops;

    public SheetNames Names => names;

    public static double Width(string text, double capHeight = CapHeights.Strand) => FontMetrics.WidthMm(text, capHeight);

    /// <summary>Width of the longest word.</summary>
    public static double LongestWord(string text)
    {
        double longest = 0;
        for (int from = 0; from <= text.Length;)
        {
            int length = text.AsSpan(from).IndexOf(' ');
            int to = length < 0 ? text.Length : from + length;
            longest = Math.Max(longest, FontMetrics.WidthMm(text.AsSpan(from, to - from), CapHeights.Strand));
            from = to + 1;
        }

        return longest;
    }

    /// <summary>The colour of a strand.</summary>
    public FibreColour Colour(int strand) => hops.Labels.Of(strand).Colour;

    /// <summary>The label of a strand in a gutter, such as <c>7 RD</c>.</summary>
    public string Strand(int strand) => hops.Labels.Of(strand).Text;

    /// <summary>Width of the label of a strand, with room for the ticks of its tracers at either side, since it stands in the middle.</summary>
    public double LabelWidth(int strand) => hops.Labels.Of(strand).Width;

    /// <summary>The name of a row's position in its cell.</summary>
    public static string Cell(Row row) => row.Port.Shape.Face.PositionName(row.Place);

    /// <summary><c>Tx</c> or <c>Rx</c>, with the lane where a port has several, or the wavelengths where light goes both ways; empty where no interface is.</summary>
    public static string Lane(Row row)
    {
        if (row.Lane is not { } lane)
            return "";
        string word = lane.Direction == LaneDirection.Both && lane.Sends is { } sends && lane.Hears is { } hears
            ? $"Tx {sends.Nanometres:0} Rx {hears.Nanometres:0}"
            : lane.Direction.ShortWord();
        PortShape port = row.Port.Shape;

        // Which lanes of two rows belong together is not settled, so a number would mislead, unless the document gives it.
        bool numbered = port.Face.Family == ConnectorFamily.Array && (port.Face.Rows == 1 || port.Groups > 0);
        return numbered ? $"{word} {lane.Number}" : word;
    }

    public string Port(Row row) => names.Of(traced, row.Port.Ref);

    /// <summary>The name of a part, or of the parts it stands for.</summary>
    public string Name(int part) => names.Of(traced, part);

    /// <summary>
    /// The name in a small box: with its port where the part has several on that side, with its leg where it has legs.
    /// </summary>
    /// <param name="node">The box.</param>
    /// <param name="part">The part that stands there.</param>
    public string Inside(Node node, int part)
    {
        // All rows of a side are of one port, so the first of each side speaks for it.
        return (node.Left.Count > 0 ? Inside(part, node.Left[0]) : null) ?? (node.Right.Count > 0 ? Inside(part, node.Right[0]) : null) ?? Name(part);
    }

    private string? Inside(int part, Row row)
    {
        PortShape port = row.Port.Shape;
        Shape shape = row.Port.Part.Shape;
        if (shape.IsCable && port.Leg > 0)
            return $"{Name(part)} leg {names.Leg(traced, row.Port.Ref)}";
        return !shape.IsCable && (shape.IsInterface || HasSeveral(shape, port.Side)) ? $"{Name(part)}/{names.Of(traced, row.Port.Ref)}" : null;
    }

    /// <summary>True when a part has more than one port on a side.</summary>
    public static bool HasSeveral(Shape shape, Side side)
    {
        int count = 0;
        for (int i = 0; i < shape.Ports.Count && count < 2; i++)
            count += shape.Ports[i].Side == side ? 1 : 0;
        return count > 1;
    }

    public Part Part(Node node) => traced.Plant.Parts[node.Part];

    /// <summary>What a part is, in one line, such as <c>cord A-to-B 2 m</c>; a length is never parted from its unit.</summary>
    public static string Caption(Part part) =>
        string.Join(' ', part.Caption.Select(c => part.Shape.Ports.Any(p => p.Face.Family == ConnectorFamily.Bare) ? c.Replace(' ', '\u00A0') : c)) + (part.Length is { } l ? " " + l.ToString().Replace(' ', '\u00A0') : "");

    /// <summary>Words in lines no wider than given; a word wider than that has a line of its own.</summary>
    public static List<string> Wrapped(string text, double width, double capHeight = CapHeights.Strand)
    {
        var lines = new List<string>();
        int from = 0, to = 0;
        if (text.Contains("  ", StringComparison.Ordinal) || text.StartsWith(' ') || text.EndsWith(' '))
            text = string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries));

        // Lines are cut from the text, so that no word is measured twice.
        long space = FontMetrics.Advance(' '), line = 0;
        while (to < text.Length)
        {
            int start = to == 0 ? 0 : to + 1;
            int length = text.AsSpan(start).IndexOf(' ');
            int end = length < 0 ? text.Length : start + length;
            long word = FontMetrics.Advances(text.AsSpan(start, end - start));
            if (to > 0 && FontMetrics.WidthMm(line + space + word, capHeight) > width)
            {
                lines.Add(text[from..to]);
                from = start;
                line = word;
            }
            else
            {
                line = to > 0 ? line + space + word : word;
            }

            to = end;
        }

        if (text.Length > 0)
            lines.Add(text[from..]);
        return lines;
    }
}
