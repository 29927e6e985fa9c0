using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class ForeignCordFits : Rule
{
    /// <summary>The most ports named one by one.</summary>
    private const int MostListed = 4;

    public override string Code => "S06";

    public override string Title => "wrong cord would fit";

    public override Severity Severity => Severity.Warning;

    public override string Why =>
        "Ports of several networks sit side by side in an outlet, and the cord of one goes into the port of another. Outlets are patched " +
        "by people who are in a hurry and in the dark. Where every network's ports carry a key code of their own, the wrong cord does not go in; the plain end of a keyed cord still goes into any plain port.";

    public override string Clears =>
        "Give each network a key and let its cords and its ports of the outlet carry it, or give each network an outlet of its own.";

    public override string Source =>
        "Keyed duplex connectors: two public sources for the idea. No standard defines codes; that plain and keyed do not go together unless their set lets them is trade practice.";

    public override string Example => """
        plant: Plain ports of two networks in one desk outlet
        networks:
          lighting: { colour: red }
          sound: { colour: blue }
        parts:
          LX-[1..2]: { kind: duplex interface, network: lighting }
          SD-[1..2]: { kind: duplex interface, network: sound }
          DESK: { kind: outlet, rear: duplex, ports: 2, networks: [lighting, sound] }
        runs:
          - LX-1/1, A-to-B cord 40 m, DESK/1, A-to-B cord 3 m, LX-2/1
          - SD-1/1, A-to-B cord 40 m, DESK/2, A-to-B cord 3 m, SD-2/1
        links:
          - LX-1/1 to LX-2/1
          - SD-1/1 to SD-2/1

        """;

    public override string Repaired => """
        plant: Keyed ports of two networks in one desk outlet
        networks:
          lighting: { colour: red, key: K1 }
          sound: { colour: blue, key: K2 }
        types:
          red cord: { kind: A-to-B cord, network: lighting }
          blue cord: { kind: A-to-B cord, network: sound }
        parts:
          LX-[1..2]: { kind: duplex interface, network: lighting }
          SD-[1..2]: { kind: duplex interface, network: sound }
          LX-C1: { kind: red cord, length: 40 m, keyed: far }
          LX-C2: { kind: red cord, length: 3 m, keyed: near }
          SD-C1: { kind: blue cord, length: 40 m, keyed: far }
          SD-C2: { kind: blue cord, length: 3 m, keyed: near }
          DESK: { kind: outlet, rear: duplex, ports: 2, networks: [lighting, sound] }
        runs:
          - LX-1/1, LX-C1, DESK/1, LX-C2, LX-2/1
          - SD-1/1, SD-C1, DESK/2, SD-C2, SD-2/1
        links:
          - LX-1/1 to LX-2/1
          - SD-1/1 to SD-2/1

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        if (context.Plant.Networks.Count < 2)
            return;
        foreach (FitTable table in context.Separation.Fits)
        {
            if (table.Kind != "outlet" || !table.LetsForeignCordsIn)
                continue;
            string outlet = context.Plant.Parts[table.Parts[0]].Name;
            string alike = table.Parts.Count == 1 ? "" : $"; so at {table.Parts.Count - 1} more {(table.Parts.Count == 2 ? "outlet" : "outlets")} alike";
            FitPort first = table.Ports.First(p => p.LetsForeignCordsIn);
            string network = context.Plant.Networks[first.Network].Name;
            string foreign = context.Plant.Networks[table.Networks[IndexOfFit(first)]].Name;
            string[] takes = [.. table.Ports.Where(p => p.LetsForeignCordsIn).Select(p => Takes(context.Plant, table, p))];
            findings.Add(new Finding(
                this,
                table.Source,
                $"a cord of {foreign} goes into {outlet}/{first.Name}, a port of {network}{alike}",
                "ports that only the cords of their own network go into",
                string.Join("; ", takes.Take(MostListed)) + (takes.Length > MostListed ? $"; and {takes.Length - MostListed} more" : ""))
            {
                At = [.. table.Parts.Select(p => new FindingSite(p))],
            });
        }
    }

    private static int IndexOfFit(FitPort port)
    {
        int i = 0;
        while (port.Cords[i] != CordFit.Fits)
            i++;
        return i;
    }

    /// <summary>A port with the foreign networks whose cords go into it.</summary>
    private static string Takes(Plant plant, FitTable table, FitPort port)
    {
        var foreign = new List<string>();
        for (int i = 0; i < port.Cords.Count; i++)
        {
            if (port.Cords[i] == CordFit.Fits)
                foreign.Add(plant.Networks[table.Networks[i]].Name);
        }

        string key = port.Key is null ? "plain" : $"key {port.Key}";
        return $"port {port.Name} of {plant.Networks[port.Network].Name} ({key}) takes cords of {PartWords.List(foreign)}";
    }
}
