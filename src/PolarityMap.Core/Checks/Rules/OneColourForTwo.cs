using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class OneColourForTwo : Rule
{
    public override string Code => "S08";

    public override string Title => "one colour for two networks";

    public override Severity Severity => Severity.Warning;

    public override string Why =>
        "Two networks have the same colour in the plant's legend, so nobody can tell their cords and ports apart by sight. On drawings " +
        "they are told apart by number only.";

    public override string Clears => "Give each network a colour of its own.";

    public override string Source => "Common practice: one colour for each separate network.";

    public override string Example => """
        plant: Lighting and sound both red
        networks:
          lighting: { colour: red }
          sound: { colour: Red }
        parts:
          LX-[1..2]: { kind: duplex interface, network: lighting }
          SD-[1..2]: { kind: duplex interface, network: sound }
        runs:
          - LX-1/1, A-to-B cord 2 m, LX-2/1
          - SD-1/1, A-to-B cord 2 m, SD-2/1

        """;

    public override string Repaired => """
        plant: Lighting red and sound blue
        networks:
          lighting: { colour: red }
          sound: { colour: blue }
        parts:
          LX-[1..2]: { kind: duplex interface, network: lighting }
          SD-[1..2]: { kind: duplex interface, network: sound }
        runs:
          - LX-1/1, A-to-B cord 2 m, LX-2/1
          - SD-1/1, A-to-B cord 2 m, SD-2/1

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        var firstOf = new Dictionary<string, Network>(StringComparer.OrdinalIgnoreCase);
        foreach (Network network in context.Plant.Networks)
        {
            if (network.Colour is not { } colour || firstOf.TryAdd(colour, network))
                continue;
            Network first = firstOf[colour];
            findings.Add(new Finding(
                this,
                network.Place,
                $"{network.Name} has the colour {colour}, which {first.Name} has already",
                $"a colour of its own for {network.Name}",
                $"{colour} for both")
            {
                Related = [first.Place, network.Place],
            });
        }
    }
}
