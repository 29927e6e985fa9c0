namespace PolarityMap.Core.Checks.Rules;

public sealed class TooManyMatings : Rule
{
    public override string Code => "L04";

    public override string Title => "too many matings";

    public override string Why =>
        "Matings and splices alone lose more than the application allows, so that no cable would be short enough. Each cassette is two " +
        "matings, one behind and one in front; a panel adapter is one; those at the interfaces are not counted. Judged is what the " +
        "connectors state, where both of a mating do, and else the standard's largest loss.";

    public override string Clears =>
        "Leave out panels or cassettes, splice where nobody needs to unplug, or take low-loss connectors on both sides of each mating and state their loss.";

    public override string Source =>
        "Largest loss of a mating: TIA-568.3 and ISO/IEC 11801-1 (four public sources). Limits: IEEE 802.3 and TIA-568.3 (explain budget).";

    public override string Example => """
        plant: Four matings of unstated loss
        defaults: { fibre: OM4 }
        parts:
          SW-L: { kind: duplex interface, application: 10GBASE-SR }
          SW-R: { kind: duplex interface, application: 10GBASE-SR }
          K-L: U1 cassette
          K-R: U1 cassette
          TRUNK: { kind: Type-B trunk, length: 30 m }
        runs:
          - SW-L/1, A-to-B cord 2 m, K-L/1
          - K-L/rear, TRUNK, K-R/rear
          - K-R/1, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: Two of the four matings are low-loss by statement
        defaults: { fibre: OM4 }
        parts:
          SW-L: { kind: duplex interface, application: 10GBASE-SR }
          SW-R: { kind: duplex interface, application: 10GBASE-SR }
          K-L: { kind: U1 cassette, array-loss: 0.35 dB }
          K-R: { kind: U1 cassette, array-loss: 0.35 dB }
          TRUNK: { kind: Type-B trunk, length: 30 m, array-loss: 0.35 dB }
        runs:
          - SW-L/1, A-to-B cord 2 m, K-L/1
          - K-L/rear, TRUNK, K-R/rear
          - K-R/1, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings) =>
        LossFindings.Report(this, context, findings, s => s.HasTooManyMatings, null, (link, s) => new(
            $"{link} loses {s.Stated.Connections} in {LossFindings.Count(s.Stated.MatingCount, "mating")}" +
            $"{(s.Stated.SpliceCount > 0 ? $" and {LossFindings.Count(s.Stated.SpliceCount, "splice")}" : "")} by what its parts state " +
            $"({s.Standard.Connections} by the standard, {s.Expected.Connections} expected), more than the {s.LossLimit} of {LossFindings.On(s)} without any fibre",
            $"at most {s.LossLimit} for {LossFindings.On(s)}: of these matings {Fit(context.Losses.MatingsThatFit(s))} beside the fibre",
            $"{LossFindings.AtLeast(s, s.Stated.Total)}: {LossFindings.Made(s)}"));

    private static string Fit(int number) => number switch { 0 => "none fits", 1 => "1 fits", _ => $"{number} fit" };
}
