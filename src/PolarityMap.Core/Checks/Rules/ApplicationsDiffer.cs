namespace PolarityMap.Core.Checks.Rules;

public sealed class ApplicationsDiffer : Rule
{
    public override string Code => "P07";

    public override string Title => "interfaces of different applications";

    public override string Why =>
        "Transmit meets receive, but the two interfaces are for different applications: another rate, wavelength or kind of fibre. Light " +
        "may be seen at both ends and no link comes up. A parallel port works with slower ports only in a breakout that the trade knows.";

    public override string Clears => "Use the same application at both ends, its counterpart, or one that the parallel port breaks out to.";

    public override string Source => "IEEE 802.3: a link has the same physical layer at both ends. Breakouts: one public source for the pairing of lanes.";

    public override string Example => """
        plant: A short-reach port against a long-reach port
        parts:
          SW-L: { kind: duplex interface, application: 10GBASE-SR }
          SW-R: { kind: duplex interface, application: 10GBASE-LR }
        runs:
          - SW-L/1, A-to-B cord 5 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: Short reach at both ends
        parts:
          SW-L: { kind: duplex interface, application: 10GBASE-SR }
          SW-R: { kind: duplex interface, application: 10GBASE-SR }
        runs:
          - SW-L/1, A-to-B cord 5 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings) =>
        InterfacePairs.Report(this, context, findings, Applies, (c, l) => (
            $"{c.Plant.Address(l.Start)} is for {l.Landing.Application} and {c.Plant.Address(l.End)} for {l.Landing.EndApplication}",
            $"{l.Landing.Application!.Counterpart ?? l.Landing.Application.Name} at {c.Plant.Address(l.End)}, or something it breaks out to",
            $"{l.Landing.EndApplication} at {c.Plant.Address(l.End)}"));

    private static bool Applies(Landing landing) =>
        landing.ApplicationsMiss && !landing.MeetsSame && landing.Application!.Name != landing.EndApplication!.Name;
}
