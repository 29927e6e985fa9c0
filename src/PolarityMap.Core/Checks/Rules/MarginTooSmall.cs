using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Checks.Rules;

public sealed class MarginTooSmall : Rule
{
    public override string Code => "L03";

    public override string Title => "margin too small";

    public override Severity Severity => Severity.Warning;

    public override string Why =>
        "The strand fits, but keeps less than the margin that the document asks for. A margin is for repairs, ageing, dirt and plugs that " +
        "were mated often. No standard fixes it; the document's defaults do.";

    public override string Clears =>
        "Take lower-loss connectors and state their loss, fewer matings, or ask for a smaller margin.";

    public override string Source => "The margin is the document's own. That one is kept: common practice.";

    public override string Example => """
        plant: A tenth of a decibel left
        defaults: { fibre: OM4, margin: 0.3 dB }
        parts:
          SW-L: { kind: duplex interface, application: 25GBASE-SR }
          SW-R: { kind: duplex interface, application: 25GBASE-SR }
          PANEL: { kind: duplex panel, ports: 2 }
        runs:
          - SW-L/1, A-to-B cord 2 m, PANEL/1, A-to-B cord 80 m, PANEL/2, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: Lower-loss cords keep the margin
        defaults: { fibre: OM4, margin: 0.3 dB }
        types:
          good cord: { kind: A-to-B cord, duplex-loss: 0.25 dB }
        parts:
          SW-L: { kind: duplex interface, application: 25GBASE-SR }
          SW-R: { kind: duplex interface, application: 25GBASE-SR }
          PANEL: { kind: duplex panel, ports: 2 }
        runs:
          - SW-L/1, good cord 2 m, PANEL/1, good cord 80 m, PANEL/2, good cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        if (context.Plant.Practice.Margin is not { } least)
            return;
        LossFindings.Report(this, context, findings, s => s.Margin is { } m && m >= Decibel.Zero && m < least, null, (link, s) => new(
            $"{link} keeps {(s.LengthsMissing > 0 || s.FibreLossIsUnknown ? "at most " : "")}{s.Margin} of the {s.LossLimit} of {LossFindings.On(s)}; the document asks for {least}",
            $"{least} left of {s.LossLimit}",
            $"{s.Margin} left: {LossFindings.Made(s)}"));
    }
}
