using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Checks.Rules;

public sealed class WavelengthsDoNotMeet : Rule
{
    public override string Code => "P06";

    public override string Title => "wavelengths do not meet";

    public override string Why =>
        "Light arrives at a wavelength that the far end does not hear. A port that sends and hears on one fibre needs its counterpart: " +
        "an upstream port a downstream one. Two alike send at the same wavelength; a power meter reads light at both ends and the link stays down.";

    public override string Clears => "Put the counterpart (U against D) at one end.";

    public override string Source => "Single-fibre pairs: IEEE 802.3 clauses 59 and 158 (two and three public sources for the wavelengths).";

    public override string Example => """
        plant: Two upstream ports on one fibre
        parts:
          SW-L: { kind: single-fibre interface, application: 1000BASE-BX10-U }
          SW-R: { kind: single-fibre interface, application: 1000BASE-BX10-U }
        runs:
          - SW-L/1, simplex cord 5 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: An upstream port meets a downstream port
        parts:
          SW-L: { kind: single-fibre interface, application: 1000BASE-BX10-U }
          SW-R: { kind: single-fibre interface, application: 1000BASE-BX10-D }
        runs:
          - SW-L/1, simplex cord 5 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings) =>
        InterfacePairs.Report(this, context, findings, Applies, (c, l) => (
            $"{c.Plant.Address(l.Start)} and {c.Plant.Address(l.End)} send and hear at wavelengths that do not meet",
            $"each end hears what the other sends{Counterpart(l.Landing)}",
            $"{Words(l.Landing.Lane)}; the far end {Words(l.Landing.EndLane!.Value)}"));

    /// <summary>True where the wavelengths are at fault and not the choice of two applications that never work together.</summary>
    private static bool Applies(Landing landing) =>
        landing.WavelengthsMiss && !(landing.ApplicationsMiss && landing.Application!.Name != landing.EndApplication!.Name);

    private static string Counterpart(Landing landing) =>
        landing.Application?.Counterpart is { } name ? $": {name} at one end" : "";

    private static string Words(Lane lane)
    {
        string sends = lane.Sends is { } s ? $"sends {s}" : "";
        string hears = lane.Hears is { } h ? $"hears {h}" : "";
        string both = sends.Length > 0 && hears.Length > 0 ? $"{sends} and {hears}" : sends + hears;
        return both.Length > 0 ? both : lane.Direction == LaneDirection.Both ? "goes both ways" : "goes one way";
    }
}
