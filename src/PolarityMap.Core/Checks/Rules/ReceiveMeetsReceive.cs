namespace PolarityMap.Core.Checks.Rules;

public sealed class ReceiveMeetsReceive : Rule
{
    public override string Code => "P02";

    public override string Title => "receive meets receive";

    public override string Why =>
        "Two receivers face each other over one strand, so no light ever travels on it. Where the transmitters of the same two ports " +
        "also face each other, that is reported as P01 with both strands; this rule speaks when only the receivers meet.";

    public override string Clears => "Move one end of the strand from the receiver to the transmitter's position.";

    public override string Source =>
        "TIA-568.3 and ISO/IEC 11801: a channel joins transmit to receive (six public sources).";

    public override string Example => """
        plant: A simplex cord joins two receivers
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
        runs:
          - SW-L/1:B, simplex cord 2 m, SW-R/1:B

        """;

    public override string Repaired => """
        plant: Two simplex cords join each transmitter to a receiver
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
        runs:
          - SW-L/1:A, simplex cord 2 m, SW-R/1:B
          - SW-L/1:B, simplex cord 2 m, SW-R/1:A

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        foreach (SameDirectionPair pair in SameDirectionPair.All(context))
        {
            if (pair.Transmit.Count > 0)
                continue;
            string a = context.Plant.Address(pair.A);
            string b = context.Plant.Address(pair.B);
            findings.Add(new Finding(
                this,
                pair.Place(context),
                $"the receivers of {a} and {b} face each other",
                $"receive of {a} fed by a transmit",
                $"receive of {a} on receive of {b}")
            {
                Strands = pair.Receive,
                Related = context.PlacesAlong(pair.Receive),
                Links = pair.Links(context),
                Remedies = PlugExchange.For(context, pair.Receive),
            });
        }
    }
}
