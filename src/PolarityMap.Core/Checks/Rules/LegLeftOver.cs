using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class LegLeftOver : Rule
{
    public override string Code => "W01";

    public override string Title => "leg left over";

    public override Severity Severity => Severity.Warning;

    public override string Why =>
        "A leg of a trunk or harness has an end that nothing is mated to, and the document does not say that it is spare. Either a run is " +
        "missing from the document, or the leg will hang loose on site with nobody knowing why.";

    public override string Clears => "Write the run that uses the leg, or list the leg under spare.";

    public override string Source => "Common practice.";

    public override string Example => """
        plant: A trunk with a leg too many
        parts:
          QS-L: parallel interface
          QS-R: parallel interface
          T: { kind: Type-B trunk, base: 8, legs: 2, length: 30 m }
        runs:
          - QS-L/1, T/1, QS-R/1
        links:
          - QS-L/1 to QS-R/1

        """;

    public override string Repaired => """
        plant: A trunk with a spare leg
        parts:
          QS-L: parallel interface
          QS-R: parallel interface
          T: { kind: Type-B trunk, base: 8, legs: 2, spare: 2, length: 30 m }
        runs:
          - QS-L/1, T/1, QS-R/1
        links:
          - QS-L/1 to QS-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        for (int index = 0; index < context.Plant.Parts.Count; index++)
        {
            Part part = context.Plant.Parts[index];
            SortedSet<int>? open = null;
            List<FindingSite>? at = null;
            bool anyMated = false;
            for (int p = 0; p < part.Shape.Ports.Count; p++)
            {
                PortShape port = part.Shape.Ports[p];
                bool mated = context.IsMated(new PortRef(index, p));
                anyMated |= mated;
                if (port.Leg > 0 && !mated && !part.SpareLegs.Contains(port.Leg))
                {
                    (open ??= []).Add(port.Leg);
                    (at ??= []).Add(FindingSite.Of(new PortRef(index, p)));
                }
            }

            // A part with nothing mated at all is W02.
            if (open is null || !anyMated)
                continue;
            string legs = open.Count == 1 ? $"leg {open.Min}" : $"legs {string.Join(", ", open)}";
            findings.Add(new Finding(
                this,
                part.Place,
                $"{legs} of {part.Name} {(open.Count == 1 ? "has" : "have")} an open end and {(open.Count == 1 ? "is" : "are")} not declared spare",
                $"every leg of {part.Name} mated at both ends or declared spare",
                $"{legs} open")
            {
                At = at!,
            });
        }
    }
}
