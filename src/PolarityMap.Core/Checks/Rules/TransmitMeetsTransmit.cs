namespace PolarityMap.Core.Checks.Rules;

public sealed class TransmitMeetsTransmit : Rule
{
    public override string Code => "P01";

    public override string Title => "transmit meets transmit";

    public override string Why =>
        "Two transmitters face each other over one strand, and nothing listens at either end. Where the other strand of the pair joins " +
        "the two receivers, both ends report loss of signal although both transmitters are healthy. In a duplex channel it means that " +
        "the number of crossings is even: one A-to-A cord too many or too few, a trunk of another type, or cassettes that do not belong together.";

    public override string Clears =>
        "Make the number of crossings odd: exchange one A-to-B cord for an A-to-A cord or the reverse, or use the trunk and cassettes of one method throughout.";

    public override string Source =>
        "TIA-568.3 and ISO/IEC 11801: a channel joins transmit to receive (six public sources); the parity is proved by enumeration.";

    public override string Example => """
        plant: An A-to-A cord straight between two interfaces
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
        runs:
          - SW-L/1, A-to-A cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: An A-to-B cord straight between two interfaces
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
        runs:
          - SW-L/1, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        foreach (SameDirectionPair pair in SameDirectionPair.All(context))
        {
            if (pair.Transmit.Count == 0)
                continue;
            string a = context.Plant.Address(pair.A);
            string b = context.Plant.Address(pair.B);
            bool bothReceive = pair.Receive.Count > 0;
            findings.Add(new Finding(
                this,
                pair.Place(context),
                bothReceive
                    ? $"the transmitters of {a} and {b} face each other, and so do their receivers"
                    : $"the transmitters of {a} and {b} face each other",
                $"transmit of {a} on a receive",
                $"transmit of {a} on transmit of {b}")
            {
                Strands = [.. pair.Transmit, .. pair.Receive],
                Related = context.PlacesAlong([.. pair.Transmit, .. pair.Receive]),
                Links = pair.Links(context),
                Remedies = PlugExchange.For(context, [.. pair.Transmit, .. pair.Receive]),
            });
        }
    }
}
