using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class PortUsedTwice : Rule
{
    public override string Code => "M08";

    public override string Title => "port used twice";

    public override string Why =>
        "Two runs put a plug into the same port, and a port holds one. Only the first is taken as plugged in; whatever lies behind the " +
        "second one is cut off. Usually a number was copied and not raised.";

    public override string Clears => "Correct the port of one of the two stops, or take one of the two runs out.";

    public override string Source => "Follows from the document's runs.";

    public override string Example => """
        plant: Two cords in one port
        parts:
          SW-L: { kind: duplex interface, ports: 2 }
          SW-R: { kind: duplex interface, ports: 2 }
        runs:
          - SW-L/1, A-to-B cord 2 m, SW-R/1
          - SW-L/2, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1..2 to SW-R/1..2

        """;

    public override string Repaired => """
        plant: Each cord in its own port
        parts:
          SW-L: { kind: duplex interface, ports: 2 }
          SW-R: { kind: duplex interface, ports: 2 }
        runs:
          - SW-L/1, A-to-B cord 2 m, SW-R/1
          - SW-L/2, A-to-B cord 2 m, SW-R/2
        links:
          - SW-L/1..2 to SW-R/1..2

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        Plant plant = context.Plant;

        // What is cut off ends the strands; what was plugged in first does not.
        var stops = new StopFindings(this, context);
        foreach (PortClash clash in plant.Clashes)
        {
            string port = clash.Position == 0 ? plant.Address(clash.Port) : plant.Address(clash.Port, clash.Position);
            (string first, string second) = Places(clash.First, clash.Place);
            var fault = new StopFault(
                $"{clash.First}",
                $"{port} is used twice, {first} and {second}",
                $"one plug in {port}",
                clash.Refused is { } refused ? $"{plant.Address(refused)} has no room there" : "two plugs");
            stops.Add(clash.Place, fault, CutOff(context, clash), [clash.First], Sites(clash), breaks: true);
            stops.AddStrands(clash.Place, fault, context.StrandsAt(clash.Port, clash.Position));
        }

        stops.Report(findings);
    }

    /// <summary>The port that is taken, and the plug or port that finds it so.</summary>
    private static IEnumerable<FindingSite> Sites(PortClash clash) =>
        clash.Refused is { } refused ? [FindingSite.Of(clash.Port), FindingSite.Of(refused)] : [FindingSite.Of(clash.Port)];

    /// <summary>The strands of what finds the port taken: of a plug or port, or of the plug that waits in an adapter.</summary>
    private static IEnumerable<int> CutOff(CheckContext context, PortClash clash)
    {
        if (clash.Refused is not { } refused)
            return [];
        return context.Plant.Port(refused).IsAdapter
            ? context.Plant.OpenPlugs.Where(o => o.Adapter == refused).SelectMany(o => context.StrandsAt(o.Plug))
            : context.StrandsAt(refused);
    }

    /// <summary>Both places, as lines of one document where they are in one.</summary>
    private static (string First, string Second) Places(SourcePlace first, SourcePlace second)
    {
        if (first.File != second.File)
            return ($"at {first}", $"at {second}");
        return first.Line != second.Line
            ? ($"at line {first.Line}", $"at line {second.Line}")
            : ($"at line {first.Line} column {first.Column}", $"at column {second.Column}");
    }
}
