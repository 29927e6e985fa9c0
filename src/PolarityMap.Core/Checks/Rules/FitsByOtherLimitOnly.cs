namespace PolarityMap.Core.Checks.Rules;

public sealed class FitsByOtherLimitOnly : Rule
{
    public override string Code => "L06";

    public override string Title => "fits by other limit only";

    public override Severity Severity => Severity.Warning;

    public override string Why =>
        "The loss is within the limit of the standard that the document goes by, and over that of IEEE 802.3, which the makers of interfaces " +
        "build to. For 10GBASE-SR on OM1 and OM2 the tables of TIA-568.3 add what IEEE 802.3 counts as additional insertion loss allowed.";

    public override string Clears => "Bring the loss below the limit of IEEE 802.3, or ask the makers of the interfaces whether they warrant the other limit.";

    public override string Source => "TIA-568.3: two public sources. The smaller limits of IEEE 802.3: from memory.";

    public override string Example => """
        plant: Two matings on old fibre
        defaults: { fibre: OM1, limits: TIA-568.3-D }
        parts:
          SW-L: { kind: duplex interface, application: 10GBASE-SR }
          SW-R: { kind: duplex interface, application: 10GBASE-SR }
          PANEL: { kind: duplex panel, ports: 2 }
        runs:
          - SW-L/1, A-to-B cord 2 m, PANEL/1, A-to-B cord 28 m, PANEL/2, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: Two better matings on old fibre
        defaults: { fibre: OM1, limits: TIA-568.3-D }
        types:
          good cord: { kind: A-to-B cord, duplex-loss: 0.5 dB }
        parts:
          SW-L: { kind: duplex interface, application: 10GBASE-SR }
          SW-R: { kind: duplex interface, application: 10GBASE-SR }
          PANEL: { kind: duplex panel, ports: 2 }
        runs:
          - SW-L/1, good cord 2 m, PANEL/1, good cord 28 m, PANEL/2, good cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        string limits = context.Losses.Limits.Name;
        LossFindings.Report(this, context, findings, s => s.FitsByOtherLimitOnly, null, (link, s) => new(
            $"{link} loses {LossFindings.AtLeast(s, s.Stated.Total)}, within the {s.LossLimit} of {limits} for {LossFindings.On(s)} but over the {s.DefaultLimit!.Loss} of IEEE 802.3",
            $"at most {s.DefaultLimit!.Loss} by IEEE 802.3",
            $"{s.Stated.Total}: {LossFindings.Made(s)}"));
    }
}
