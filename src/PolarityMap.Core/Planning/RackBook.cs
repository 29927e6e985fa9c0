namespace PolarityMap.Core.Planning;

/// <summary>
/// Gives panels and switches of a room their places: racks are filled from the top down, one unit each; units are counted from
/// the floor (common practice). Panels of a room are numbered in the order in which they are placed.
/// </summary>
internal sealed class RackBook(BriefRoom room, int units)
{
    private int _used = room.UnitsTaken;
    private int _panels = room.PanelsTaken;

    /// <summary>Places parts in panels: for each panel how many of the parts it holds and what its line says.</summary>
    public IEnumerable<(int Count, string Note)> Panels(int parts, int perPanel)
    {
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
        return rack == 0 ? $", rack {first} unit {unit}" : $", rack {first}-{rack + 1} unit {unit}";
    }
}
