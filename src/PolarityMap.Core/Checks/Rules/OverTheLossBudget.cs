using PolarityMap.Core.Budget;

namespace PolarityMap.Core.Checks.Rules;

public sealed class OverTheLossBudget : Rule
{
    public override string Code => "L01";

    public override string Title => "over the loss budget";

    public override string Why =>
        "The strand loses more than its application allows, so that the receiver may see too little light: the link fails, or works until " +
        "an end face gets dirty. Judged is the largest loss by what the parts state, and by the standard where they state nothing; a " +
        "mating counts as stated only when both of its connectors state a loss. A link that is shorter than the longest one allowed gets " +
        "no greater limit here: IEEE 802.3 lets unused fibre loss be re-engineered, but that is an engineer's work and not a table's.";

    public override string Clears =>
        "State the losses that the makers guarantee for both connectors of a mating, take fewer matings or splices, shorter or better cable, or an application that allows more.";

    public override string Source =>
        "Limits: IEEE 802.3 and TIA-568.3, each figure with its own confidence (explain budget). Re-engineering: from memory.";

    public override string Example => """
        plant: Two hundred metres through connectors that state nothing
        defaults: { fibre: OM3 }
        parts:
          SW-L: { kind: duplex interface, application: 1000BASE-SX }
          SW-R: { kind: duplex interface, application: 1000BASE-SX }
          K-L: U1 cassette
          K-R: U1 cassette
          TRUNK: { kind: Type-B trunk, length: 200 m }
        runs:
          - SW-L/1, A-to-B cord 2 m, K-L/1
          - K-L/rear, TRUNK, K-R/rear
          - K-R/1, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: Two hundred metres through low-loss array connectors
        defaults: { fibre: OM3 }
        parts:
          SW-L: { kind: duplex interface, application: 1000BASE-SX }
          SW-R: { kind: duplex interface, application: 1000BASE-SX }
          K-L: { kind: U1 cassette, array-loss: 0.35 dB }
          K-R: { kind: U1 cassette, array-loss: 0.35 dB }
          TRUNK: { kind: Type-B trunk, length: 200 m, array-loss: 0.35 dB }
        runs:
          - SW-L/1, A-to-B cord 2 m, K-L/1
          - K-L/rear, TRUNK, K-R/rear
          - K-R/1, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings) =>
        LossFindings.Report(this, context, findings, s => s.IsOverLoss && !s.HasTooManyMatings, null, (link, s) => new(
            $"{link} loses {LossFindings.AtLeast(s, s.Stated.Total)} at {s.Wavelength} by what its parts state " +
            $"({s.Standard.Total} by the standard, {s.Expected.Total} expected), {BudgetWords.Excess(s)} over the {s.LossLimit} of {LossFindings.On(s)}",
            $"at most {s.LossLimit} for {LossFindings.On(s)}",
            LossFindings.Made(s)));
}
