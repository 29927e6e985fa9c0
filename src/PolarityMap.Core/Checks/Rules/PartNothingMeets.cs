using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class PartNothingMeets : Rule
{
    public override string Code => "W02";

    public override string Title => "part that nothing meets";

    public override Severity Severity => Severity.Warning;

    public override string Why =>
        "A part is described and no run comes to it. It would be bought and labelled and carry no light. Often its name is spelt otherwise in the runs.";

    public override string Clears => "Write the run that uses it, or take the part out.";

    public override string Source => "Common practice.";

    public override string Example => """
        plant: A second switch that nobody wires
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
          SW-X: duplex interface
        runs:
          - SW-L/1, A-to-B cord 2 m, SW-R/1

        """;

    public override string Repaired => """
        plant: Only the switches that are wired
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
        runs:
          - SW-L/1, A-to-B cord 2 m, SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        for (int index = 0; index < context.Plant.Parts.Count; index++)
        {
            Part part = context.Plant.Parts[index];
            if (!context.IsUsed(index))
            {
                findings.Add(new Finding(
                    this,
                    part.Place,
                    $"no run comes to {part.Name}",
                    $"a run that mates {part.Name}",
                    "none")
                {
                    At = [new FindingSite(index)],
                });
            }
        }
    }
}
