using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Schedules;

/// <summary>What rows say of a part.</summary>
internal static class PartFacts
{
    /// <summary>What it is, such as <c>A-to-B cord</c>.</summary>
    public static string Type(Part part) => part.Caption.Count == 0 ? part.Kind : string.Join(' ', part.Caption.Reverse());

    /// <summary>A patch cord.</summary>
    public static bool IsCord(Part part) => PartKinds.Find(part.Kind)?.IsCord == true;

    /// <summary>A cable that is laid and stays: neither a cord nor a splice.</summary>
    public static bool IsLaid(Part part) => part.Shape is { IsCable: true, Splices: 0 } && !IsCord(part);

    /// <summary>Number of fibres that run through the part.</summary>
    public static int Fibres(Part part)
    {
        int joined = 0;
        foreach (int partner in part.Shape.Inside.Span)
            joined += partner >= 0 ? 1 : 0;
        return joined / 2;
    }

    /// <summary>The name of its network, or of each where its ports have several; empty for none.</summary>
    public static string Network(Plant plant, Part part) => part.PortNetworks.Count > 0
        ? string.Join(", ", part.PortNetworks.Where(n => n >= 0).Distinct().Select(n => plant.Networks[n].Name))
        : part.Network >= 0 ? plant.Networks[part.Network].Name : "";

    /// <summary>The room of a port's part; empty where it is not said.</summary>
    public static string Room(Plant plant, PortRef? port) => port is { } p ? plant.Parts[p.Part].Room ?? "" : "";

    /// <summary>What a document says of it in one line, but for some attributes; empty where nothing is known.</summary>
    public static string Attributes(Part part, Func<string, bool>? without = null) =>
        part.Values is { } values && PartKinds.Find(part.Kind) is { } kind ? AttributeWords.Line(kind, values, part.Shape, without) : "";

    /// <summary>The value of one attribute in such a line, or null.</summary>
    public static string? Attribute(string attributes, string name)
    {
        foreach (string one in attributes.Split(", "))
        {
            if (one.StartsWith(name, StringComparison.Ordinal) && one.AsSpan(name.Length).StartsWith(": "))
                return one[(name.Length + 2)..];
        }

        return null;
    }

    /// <summary>A fibre's colour with its letters and tracers, such as <c>aqua (TQ), 1 tracer</c>.</summary>
    public static string Colour(Plant plant, int fibre)
    {
        if (fibre < 1)
            return "";
        FibreColour colour = plant.Practice.Colours[fibre];
        return colour.Tracers switch
        {
            0 => $"{colour.Name} ({colour.Code})",
            1 => $"{colour.Name} ({colour.Code}), 1 tracer",
            _ => $"{colour.Name} ({colour.Code}), {colour.Tracers} tracers",
        };
    }
}
