using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class OneKeyForTwo : Rule
{
    public override string Code => "S07";

    public override string Title => "one key for two networks";

    public override Severity Severity => Severity.Warning;

    public override string Why =>
        "Two networks have the same key code, so the cords of the one go into the ports of the other. The key is there to prevent just that.";

    public override string Clears => "Give each network a key code of its own. Where codes of several sets are in use, write the name of the set into the code.";

    public override string Source => "Keyed duplex connectors, equal keys go together: two public sources. No standard defines the codes.";

    public override string Example => """
        plant: Lighting and sound with one key
        networks:
          lighting: { colour: red, key: K1 }
          sound: { colour: blue, key: K1 }
        parts:
          LX-[1..2]: { kind: duplex interface, network: lighting }
          SD-[1..2]: { kind: duplex interface, network: sound }
        runs:
          - LX-1/1, A-to-B cord 2 m, LX-2/1
          - SD-1/1, A-to-B cord 2 m, SD-2/1

        """;

    public override string Repaired => """
        plant: Lighting and sound with a key each
        networks:
          lighting: { colour: red, key: K1 }
          sound: { colour: blue, key: K2 }
        parts:
          LX-[1..2]: { kind: duplex interface, network: lighting }
          SD-[1..2]: { kind: duplex interface, network: sound }
        runs:
          - LX-1/1, A-to-B cord 2 m, LX-2/1
          - SD-1/1, A-to-B cord 2 m, SD-2/1

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        var firstOf = new Dictionary<string, Network>();
        foreach (Network network in context.Plant.Networks)
        {
            if (network.Key is not { } key || firstOf.TryAdd(key, network))
                continue;
            Network first = firstOf[key];
            findings.Add(new Finding(
                this,
                network.Place,
                $"{network.Name} has the key {key}, which {first.Name} has already",
                $"a key of its own for {network.Name}",
                $"{key} for both")
            {
                Related = [first.Place, network.Place],
            });
        }
    }
}
