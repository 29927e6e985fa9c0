using System.Text;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>One of the two connectors of a mating, with everything that its end face shows.</summary>
internal sealed class FaceSide
{
    private FaceSide(TracedPlant traced, PortRef port, int takenPosition)
    {
        Part = traced.Plant.Parts[port.Part];
        Shape = traced.Plant.Port(port);
        Address = traced.Plant.Address(port);
        Short = Part.IsInline ? $"{Part.Caption[0]}/{Shape.Name}" : Address;
        TakenPosition = takenPosition;
        Key = traced.Plant.KeyOf(port);
        Places = FacePlace.Of(traced, port);
        Likeness = LikenessOf();
        Contents = ContentsOf();
    }

    public Part Part { get; }

    public PortShape Shape { get; }

    public Face Face => Shape.Face;

    /// <summary>The address <c>PART/PORT</c>.</summary>
    public string Address { get; }

    /// <summary>The address; of a cord without a name of its own what it is, and its end.</summary>
    public string Short { get; }

    /// <summary>The position of it that a simplex plug takes, or 0 for the whole port.</summary>
    public int TakenPosition { get; }

    /// <summary>The network's code on its key, or null for a plain one.</summary>
    public string? Key { get; }

    /// <summary>Its places in the order of their numbers.</summary>
    public IReadOnlyList<FacePlace> Places { get; }

    /// <summary>The places that are drawn: all of them, but of very many bare fibres.</summary>
    public IEnumerable<FacePlace> Drawn => Places.Take(FaceMeasures.Drawn(Face));

    /// <summary>Equal for two sides that are drawn alike, but for the colours of the fibres in duplex plugs.</summary>
    public string Likeness { get; }

    /// <summary>Equal for two sides with the same behind every place.</summary>
    public string Contents { get; }

    public static FaceSide Of(TracedPlant traced, PortRef port, int takenPosition) => new(traced, port, takenPosition);

    /// <summary>
    /// Which of two sides is drawn left: an interface before other ports, a port before a plug, pins before holes. Negative when it
    /// is this one.
    /// </summary>
    public int CompareTo(FaceSide other)
    {
        int order = UprightSide.Compare(Part, Shape, other.Part, other.Shape);
        return order != 0 ? order : string.CompareOrdinal(Likeness, other.Likeness);
    }

    private string LikenessOf()
    {
        // The legs of one harness differ in their colours and in nothing else; a panel for each would say the same again.
        bool withColours = Face.Family is ConnectorFamily.Array or ConnectorFamily.Bare;
        var text = new StringBuilder();
        text.Append(Face.Family).Append(' ').Append(Face.Rows).Append('x').Append(Face.Columns).Append(Face.OffsetKey ? " offset " : " middle ")
            .Append(Shape.Pinned).Append(' ').Append(Shape.Polish).Append(' ').Append(Shape.Connector).Append(' ')
            .Append(Part.Shape.IsInterface ? "interface " : "").Append(TakenPosition).Append(' ');
        foreach (FacePlace place in Places)
            Append(text, place, withColours);
        return text.ToString();
    }

    private string ContentsOf()
    {
        var text = new StringBuilder();
        foreach (FacePlace place in Places)
            Append(text, place, withColours: true);
        return text.ToString();
    }

    private static void Append(StringBuilder text, FacePlace place, bool withColours)
    {
        text.Append(place.IsUsed ? 'u' : '-');
        if (place.Lane is { } lane)
            text.Append(lane).Append(place.LaneNumber);
        if (withColours && place.Colour is { } colour)
            text.Append(colour.Code).Append(colour.Tracers);
        text.Append(' ');
    }
}
