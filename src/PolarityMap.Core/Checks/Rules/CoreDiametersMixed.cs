using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class CoreDiametersMixed : Rule
{
    public override string Code => "F02";

    public override string Title => "core diameters mixed";

    public override string Why =>
        "A strand passes from multimode fibre of 62.5 to fibre of 50 micrometres. The loss depends on the direction: light that steps down " +
        "to the smaller core may lose up to 2.2 dB (an overfilled upper bound, numerical aperture 0.20), light that steps up loses " +
        "nothing. With a narrow laser launch it is far less, so the figure is a bound and not a reckoning.";

    public override string Clears => "Use one core diameter from interface to interface: exchange the part of the other diameter.";

    public override string Source => "Loss of the step: one public source, 2.2 dB at NA 0.20 and 1.6 dB at 0.22. Core sizes: three public sources.";

    public override string Example => """
        plant: An old cord on a new trunk
        types:
          new cord: { kind: A-to-B cord, fibre: OM4 }
          old cord: { kind: A-to-B cord, fibre: OM1 }
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
          K-L: { kind: U1 cassette, fibre: OM4 }
          K-R: { kind: U1 cassette, fibre: OM4 }
          T: { kind: Type-B trunk, fibre: OM4, length: 30 m }
        runs:
          - SW-L/1, old cord 2 m, K-L/1
          - K-L/rear, T, K-R/rear
          - K-R/1, new cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: New cords on a new trunk
        types:
          new cord: { kind: A-to-B cord, fibre: OM4 }
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
          K-L: { kind: U1 cassette, fibre: OM4 }
          K-R: { kind: U1 cassette, fibre: OM4 }
          T: { kind: Type-B trunk, fibre: OM4, length: 30 m }
        runs:
          - SW-L/1, new cord 2 m, K-L/1
          - K-L/rear, T, K-R/rear
          - K-R/1, new cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings) =>
        CoreSteps.Report(this, context, findings, Applies, (first, second) => (
            "one core diameter from interface to interface",
            $"{Diameter(first)} on {Diameter(second)} micrometres; up to 2.2 dB lost stepping down (overfilled upper bound, NA 0.20), none stepping up"));

    private static bool Applies(Part first, Part second) => first.Fibre!.IsMultimode && second.Fibre!.IsMultimode;

    private static string Diameter(Part part) => part.Fibre!.Core == FibreCore.Multimode62 ? "62.5" : "50";
}
