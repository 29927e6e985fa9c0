namespace PolarityMap.Core.Planning;

/// <summary>
/// Gives panels and switches of a room their places: racks are filled from the top down, one unit each; units are counted from
/// the floor (common practice). Panels of a room are numbered in the order in which they are placed.
/// </summary>
/// <param name="room">The room.</param>
/// <param name="units">Units of a rack.</param>
/// <param name="fibres">Fibres in an array connector, and so in a cassette.</param>
internal sealed class RackBook(BriefRoom room, int units, int fibres)
{
    /// <summary>Fibres of the 48 duplex ports that a panel of one rack unit has room for (common practice).</summary>
    private const int FibresInUnit = 96;

    private int _used = room.UnitsTaken;
    private int _panels = room.PanelsTaken;

    /// <summary>Places cassettes in panels: for each panel how many of them it holds and what its line says.</summary>
    /// <param name="parts">How many cassettes.</param>
    /// <param name="mostInPanel">How many a panel holds; null for as many as make 48 duplex ports.</param>
    public IEnumerable<(int Count, string Note)> Panels(int parts, int? mostInPanel)
    {
        int perPanel = mostInPanel ?? FibresInUnit / fibres;
        for (int placed = 0; placed < parts; placed += perPanel)
        {
            int count = Math.Min(perPanel, parts - placed);
            string places = count == 1 ? "place 1" : $"places 1 to {count}";
            yield return (count, $"Panel {room.Label}-P{++_panels}{InRack()}, {places}");
        }
    }

    /// <summary>Places one panel that is a part itself.</summary>
    public string Panel() => $"Panel {room.Label}-P{++_panels}{InRack()}";

    /// <summary>Places one switch; null where there is no rack.</summary>
    public string? Switch() => InRack() is { Length: > 0 } rack ? "R" + rack[", r".Length..] : null;

    private string InRack()
    {
        if (room.Rack is not { } first)
            return "";
        int rack = _used / units, unit = units - (_used % units);
        _used++;
        return $", rack {RackNames.After(first, rack)} unit {unit}";
    }
}
