namespace PolarityMap.Core.Checks.Rules;

public sealed class TooLong : Rule
{
    public override string Code => "L02";

    public override string Title => "too long";

    public override string Why =>
        "The cables of the strand are together longer than its application reaches on this class of fibre. Beyond that distance pulses run " +
        "into each other, however little light is lost, so that a small loss does not make up for it.";

    public override string Clears => "Use a higher class of fibre, a shorter way, or an application that reaches farther.";

    public override string Source => "Distances: IEEE 802.3, each figure with its own confidence (explain budget).";

    public override string Example => """
        plant: Three hundred and fifty metres of OM3
        defaults: { fibre: OM3 }
        parts:
          SW-L: { kind: duplex interface, application: 10GBASE-SR }
          SW-R: { kind: duplex interface, application: 10GBASE-SR }
        runs:
          - SW-L/1, A-to-B cord 350 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: Three hundred and fifty metres of OM4
        defaults: { fibre: OM4 }
        parts:
          SW-L: { kind: duplex interface, application: 10GBASE-SR }
          SW-R: { kind: duplex interface, application: 10GBASE-SR }
        runs:
          - SW-L/1, A-to-B cord 350 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings) =>
        LossFindings.Report(this, context, findings, s => s.IsTooLong, (a, b) => b.LengthOver!.Value.CompareTo(a.LengthOver!.Value), (link, s) => new(
            $"{link} is {(s.LengthsMissing > 0 ? "at least " : "")}{s.Length} long, {s.LengthOver} more than {LossFindings.On(s)} reaches",
            $"at most {s.DistanceLimit} for {LossFindings.On(s)}",
            s.LengthsMissing > 0 ? $"{s.Length}, and {LossFindings.Count(s.LengthsMissing, "cable")} without a length" : $"{s.Length}"));
}
