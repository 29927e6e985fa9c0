using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>The words of a strand sheet: what stands in cells, boxes and gutters.</summary>
internal sealed class SheetText(TracedPlant traced, SheetNames names)
{
    public TracedPlant Traced => traced;

    public SheetNames Names => names;

    public static double Width(string text, double capHeight = CapHeights.Strand) => FontMetrics.WidthMm(text, capHeight);

    private readonly Dictionary<int, FibreColour> _colours = [];

    /// <summary>The colour of a strand, looked up once.</summary>
    public FibreColour Colour(int strand)
    {
        if (!_colours.TryGetValue(strand, out FibreColour colour))
            _colours[strand] = colour = StrandColours.Of(traced, strand);
        return colour;
    }

    /// <summary>The label of a strand in a gutter, such as <c>7 RD</c>.</summary>
    public string Strand(int strand) => $"{traced.NumberOf(strand)} {Colour(strand).Code}";

    /// <summary>Width of the label of a strand, with room for the ticks of its tracers at either side, since it stands in the middle.</summary>
    public double LabelWidth(int strand) => Width(Strand(strand)) + (2 * Colour(strand).Tracers);

    /// <summary>The name of a row's position in its cell.</summary>
    public string Cell(Row row)
    {
        PositionPlace place = traced.Graph.PlaceOf(row.Position);
        return traced.Plant.Port(place.Port).Face.PositionName(place.Position);
    }

    /// <summary><c>Tx</c> or <c>Rx</c>, with the lane where a port has several, or the wavelengths where light goes both ways; empty where no interface is.</summary>
    public string Lane(Row row)
    {
        if (traced.Graph.LaneAt(row.Position) is not { } lane)
            return "";
        string word = lane.Direction == LaneDirection.Both && lane.Sends is { } sends && lane.Hears is { } hears
            ? $"Tx {sends.Nanometres:0} Rx {hears.Nanometres:0}"
            : lane.Direction.ShortWord();
        PortShape port = traced.Plant.Port(traced.Graph.PlaceOf(row.Position).Port);

        // Which lanes of two rows belong together is not settled, so a number would mislead, unless the document gives it.
        bool numbered = port.Face.Family == ConnectorFamily.Array && (port.Face.Rows == 1 || port.Groups > 0);
        return numbered ? $"{word} {lane.Number}" : word;
    }

    public string Port(Row row) => names.Of(traced, traced.Graph.PlaceOf(row.Position).Port);

    /// <summary>The name of a part, or of the parts it stands for.</summary>
    public string Name(int part) => names.Of(traced, part);

    /// <summary>
    /// The name in a small box: with its port where the part has several on that side, with its leg where it has legs.
    /// </summary>
    public string Inside(Node node)
    {
        Part part = Part(node);
        foreach (Row row in node.Left.Concat(node.Right))
        {
            PortRef at = traced.Graph.PlaceOf(row.Position).Port;
            PortShape port = traced.Plant.Port(at);
            if (part.Shape.IsCable && port.Leg > 0)
                return $"{Name(node.Part)} leg {names.Leg(traced, at)}";
            if (!part.Shape.IsCable && (part.Shape.IsInterface || part.Shape.Ports.Count(p => p.Side == port.Side) > 1))
                return $"{Name(node.Part)}/{names.Of(traced, at)}";
        }

        return Name(node.Part);
    }

    public Part Part(Node node) => traced.Plant.Parts[node.Part];

    /// <summary>What a part is, in one line, such as <c>cord A-to-B 2 m</c>; a length is never parted from its unit.</summary>
    public static string Caption(Part part) =>
        string.Join(' ', part.Caption.Select(c => part.Shape.Ports.Any(p => p.Face.Family == ConnectorFamily.Bare) ? c.Replace(' ', '\u00A0') : c)) + (part.Length is { } l ? " " + l.ToString().Replace(' ', '\u00A0') : "");

    /// <summary>Words in lines no wider than given; a word wider than that has a line of its own.</summary>
    public static List<string> Wrapped(string text, double width, double capHeight = CapHeights.Strand)
    {
        var lines = new List<string>();
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (lines.Count > 0 && Width($"{lines[^1]} {word}", capHeight) <= width)
                lines[^1] = $"{lines[^1]} {word}";
            else
                lines.Add(word);
        }

        return lines;
    }
}
