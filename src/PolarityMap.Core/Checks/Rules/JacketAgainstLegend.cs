using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class JacketAgainstLegend : Rule
{
    public override string Code => "S09";

    public override string Title => "jacket against the legend";

    public override Severity Severity => Severity.Warning;

    public override string Why =>
        "A cable of one network has a jacket in the colour that the plant's own legend gives to another. Whoever goes by the colour takes " +
        "it for the other network's cable. What the jacket says of the fibre class is another matter and not judged here.";

    public override string Clears => "Use a cable in its network's colour or in a colour that no network has, or correct jacket or legend in the document.";

    public override string Source => "Common practice: network colours are in no standard, the legend is the plant's own.";

    public override string Example => """
        plant: A lighting cord in the colour of sound
        networks:
          lighting: { colour: red }
          sound: { colour: blue }
        parts:
          LX-[1..2]: { kind: duplex interface, network: lighting }
          SD-[1..2]: { kind: duplex interface, network: sound }
          LX-C: { kind: A-to-B cord, network: lighting, jacket: blue, length: 2 m }
          SD-C: { kind: A-to-B cord, network: sound, jacket: blue, length: 2 m }
        runs:
          - LX-1/1, LX-C, LX-2/1
          - SD-1/1, SD-C, SD-2/1

        """;

    public override string Repaired => """
        plant: A lighting cord in its own colour
        networks:
          lighting: { colour: red }
          sound: { colour: blue }
        parts:
          LX-[1..2]: { kind: duplex interface, network: lighting }
          SD-[1..2]: { kind: duplex interface, network: sound }
          LX-C: { kind: A-to-B cord, network: lighting, jacket: red, length: 2 m }
          SD-C: { kind: A-to-B cord, network: sound, jacket: blue, length: 2 m }
        runs:
          - LX-1/1, LX-C, LX-2/1
          - SD-1/1, SD-C, SD-2/1

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        if (context.Plant.Networks.Count < 2)
            return;
        Plant plant = context.Plant;
        Dictionary<string, int> legend = Legend(plant);
        var alike = new Dictionary<(SourcePlace Place, string Jacket, int Network, int Legend), List<int>>();
        for (int index = 0; index < plant.Parts.Count; index++)
        {
            Part part = plant.Parts[index];
            if (!part.Shape.IsCable || part.Jacket is not { } jacket || !legend.TryGetValue(jacket, out int other))
                continue;
            int network = part.Network >= 0 ? part.Network : context.Separation.OnlyNetworkIn(index);
            if (network < 0 || string.Equals(plant.Networks[network].Colour, jacket, StringComparison.OrdinalIgnoreCase))
                continue;
            if (!alike.TryGetValue((part.Place, jacket, network, other), out List<int>? parts))
                alike[(part.Place, jacket, network, other)] = parts = [];
            parts.Add(index);
        }

        foreach (((SourcePlace place, string jacket, int network, int other), List<int> parts) in alike)
        {
            string more = parts.Count == 1 ? "" : $", and {parts.Count - 1} more alike";
            string named = plant.Networks[other].Name;
            findings.Add(new Finding(
                this,
                place,
                $"{plant.Parts[parts[0]].Name} of {plant.Networks[network].Name} has a {jacket} jacket{more}; {jacket} is the colour of {named}",
                plant.Networks[network].Colour is { } own ? $"a jacket in {own}, or in a colour of no network" : "a jacket in a colour of no other network",
                $"{jacket}, the colour of {named}")
            {
                Related = [plant.Networks[other].Place, place],
                At = [.. parts.Select(p => new FindingSite(p))],
            });
        }
    }

    /// <summary>The first network of each colour.</summary>
    private static Dictionary<string, int> Legend(Plant plant)
    {
        var legend = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        for (int n = 0; n < plant.Networks.Count; n++)
        {
            if (plant.Networks[n].Colour is { } colour)
                legend.TryAdd(colour, n);
        }

        return legend;
    }
}
