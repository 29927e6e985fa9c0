namespace PolarityMap.Core.Checks.Rules;

public sealed class CableWorseThanAssumed : Rule
{
    public override string Code => "L05";

    public override string Title => "cable worse than assumed";

    public override Severity Severity => Severity.Warning;

    public override string Why =>
        "The application's distance is given for cable of a certain attenuation at most, and a cable of the strand may have more. The loss may " +
        "still fit, but no distance is specified for such cable: indoor single-mode cable of OS1 and OS1a is allowed 1.0 dB/km, where " +
        "interfaces of short single-mode reach assume 0.5 dB/km.";

    public override string Clears => "Use cable of a class with a smaller attenuation, or state the attenuation that its maker guarantees.";

    public override string Source => "Assumed attenuation: overviews of IEEE 802.3 by a trade consortium (one public source).";

    public override string Example => """
        plant: Fifteen hundred metres of indoor cable
        defaults: { fibre: OS1a }
        parts:
          SW-L: { kind: duplex interface, application: 100GBASE-FR1 }
          SW-R: { kind: duplex interface, application: 100GBASE-FR1 }
        runs:
          - SW-L/1, A-to-B cord 1500 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: Fifteen hundred metres of outside-plant cable
        defaults: { fibre: OS2 }
        parts:
          SW-L: { kind: duplex interface, application: 100GBASE-FR1 }
          SW-R: { kind: duplex interface, application: 100GBASE-FR1 }
        runs:
          - SW-L/1, A-to-B cord 1500 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings) =>
        LossFindings.Report(this, context, findings, s => s.HasWorseCable, (a, b) => b.WorstCable!.Value.CompareTo(a.WorstCable!.Value), (link, s) => new(
            $"{link} has cable of up to {s.WorstCable}; the {s.DistanceLimit} of {LossFindings.On(s)} are for at most {s.Limit!.AssumedCable}, so that no distance is specified",
            $"cable of at most {s.Limit!.AssumedCable}",
            $"cable of up to {s.WorstCable}, {s.Length} in all"));
}
