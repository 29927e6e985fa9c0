using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Tests.Parts;

/// <summary>Reads a shape's inside as pairs of port and position names.</summary>
internal static class Wiring
{
    /// <summary>Port and position name of every position of a shape, in order.</summary>
    public static List<(string Port, string Position)> Places(Shape shape)
    {
        var places = new List<(string, string)>();
        foreach (PortShape port in shape.Ports)
        {
            for (int position = 1; position <= port.PositionCount; position++)
                places.Add((port.Name, port.Face.PositionName(position)));
        }

        return places;
    }

    /// <summary>Where a position leads inside the part, or null where it carries no fibre.</summary>
    public static (string Port, string Position)? Through(Shape shape, string port, string position)
    {
        List<(string Port, string Position)> places = Places(shape);
        int partner = shape.Inside[places.IndexOf((port, position))];
        return partner < 0 ? null : places[partner];
    }
}
