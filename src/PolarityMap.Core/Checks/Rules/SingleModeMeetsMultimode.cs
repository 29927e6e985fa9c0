using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class SingleModeMeetsMultimode : Rule
{
    public override string Code => "F01";

    public override string Title => "single mode meets multimode";

    public override string Why =>
        "A strand passes from single-mode to multimode fibre. Its core grows from about 9 to 50 or 62.5 micrometres, so that light which " +
        "comes back the other way is nearly all lost, and no application is specified for the mixture. A yellow cord among aqua ones is enough.";

    public override string Clears => "Use one kind of fibre from interface to interface: exchange the part of the other kind.";

    public override string Source =>
        "ISO/IEC 11801-1: a channel is of one kind of fibre; from memory. Core sizes: three public sources; near total loss: common practice.";

    public override string Example => """
        plant: A multimode cord on a single-mode trunk
        types:
          yellow cord: { kind: A-to-B cord, fibre: OS2 }
          aqua cord: { kind: A-to-B cord, fibre: OM4 }
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
          K-L: { kind: U1 cassette, fibre: OS2 }
          K-R: { kind: U1 cassette, fibre: OS2 }
          T: { kind: Type-B trunk, fibre: OS2, length: 300 m }
        runs:
          - SW-L/1, aqua cord 2 m, K-L/1
          - K-L/rear, T, K-R/rear
          - K-R/1, yellow cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: Single-mode cords on a single-mode trunk
        types:
          yellow cord: { kind: A-to-B cord, fibre: OS2 }
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
          K-L: { kind: U1 cassette, fibre: OS2 }
          K-R: { kind: U1 cassette, fibre: OS2 }
          T: { kind: Type-B trunk, fibre: OS2, length: 300 m }
        runs:
          - SW-L/1, yellow cord 2 m, K-L/1
          - K-L/rear, T, K-R/rear
          - K-R/1, yellow cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings) =>
        CoreSteps.Report(this, context, findings, Applies, (first, second) => (
            "one kind of fibre from interface to interface",
            $"{Kind(first)} {first.Fibre} on {Kind(second)} {second.Fibre}"));

    private static bool Applies(Part first, Part second) => first.Fibre!.IsMultimode != second.Fibre!.IsMultimode;

    private static string Kind(Part part) => part.Fibre!.IsMultimode ? "multimode" : "single-mode";
}
