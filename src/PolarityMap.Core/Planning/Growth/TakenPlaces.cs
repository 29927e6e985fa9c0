using System.Globalization;
using System.Text.RegularExpressions;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>Reads from the notes of parts which places of racks are taken, where the notes are worded as the planner does.</summary>
public static partial class TakenPlaces
{
    /// <summary>The room with what its parts take.</summary>
    /// <param name="room">The room.</param>
    /// <param name="units">Units of a rack.</param>
    /// <param name="plant">The plant that is there.</param>
    /// <param name="isKnown">True where the brief names the rack; else a room whose parts tell no places is planned without any.</param>
    public static BriefRoom In(BriefRoom room, int units, Plant plant, bool isKnown)
    {
        int taken = 0, panels = 0;
        bool isTold = !plant.Parts.Any(p => p.Room == room.Name);
        foreach (string note in plant.Parts.Where(p => p.Room == room.Name).Select(p => p.Note).OfType<string>().Distinct())
        {
            if (PanelNumber().Match(note) is { Success: true } panel && panel.Groups["label"].Value == room.Label)
                panels = Math.Max(panels, Number(panel.Groups["number"]));
            if (room.Rack is not { } rack || Unit().Match(note) is not { Success: true } place)
                continue;
            isTold = true;
            string name = place.Groups["rack"].Value;
            int before = RackNames.IndexOf(rack, name);
            if (before >= 0 && Number(place.Groups["unit"]) is var unit && unit <= units)
                taken = Math.Max(taken, (before * units) + units - unit + 1);
        }

        return room with { UnitsTaken = taken, PanelsTaken = panels, Rack = isTold || isKnown ? room.Rack : null };
    }

    private static int Number(Group digits) => int.Parse(digits.ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^Panel (?<label>.+)-P(?<number>[0-9]{1,6})\b", RegexOptions.CultureInvariant)]
    private static partial Regex PanelNumber();

    [GeneratedRegex(@"\b[Rr]ack (?<rack>.+) unit (?<unit>[0-9]{1,6})\b", RegexOptions.CultureInvariant)]
    private static partial Regex Unit();
}
