using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Checks.Rules;

public sealed class DarkTransmit : Rule
{
    public override string Code => "P03";

    public override string Title => "dark transmit";

    public override string Why =>
        "A transmitter is plugged in, but its strand ends before it reaches an interface: at a connector that nothing is mated to, or at " +
        "a place of an array that carries no fibre. The far interface stays dark. An open end may give out invisible laser light: cap it, " +
        "and never look into it.";

    public override string Clears => "Mate the open end that the finding names, or take the transmitter's cord out.";

    public override string Source => "Follows from the trace. Caution on open ends: IEC 60825-2 practice (four public sources).";

    public override string Example => """
        plant: A cord whose far end was left hanging
        parts:
          SW-L: duplex interface
        runs:
          - SW-L/1, A-to-B cord 2 m

        """;

    public override string Repaired => """
        plant: The cord is plugged in
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
        runs:
          - SW-L/1, A-to-B cord 2 m, SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        PortRef? last = null;
        var dark = new List<Landing>();
        foreach ((PortRef port, Landing landing) in context.LanesAmiss)
        {
            if (last != port)
                Report(context, last, dark, findings);
            last = port;
            if (landing.Lane.Direction != LaneDirection.Receive && !landing.ReachesLane && !context.IsRefused(landing.EndPort))
                dark.Add(landing);
        }

        Report(context, last, dark, findings);
    }

    private void Report(CheckContext context, PortRef? port, List<Landing> dark, List<Finding> findings)
    {
        if (port is not { } from || dark.Count == 0)
            return;
        string address = context.Plant.Address(from);
        string ends = string.Join(" and ", dark.Select(l => OpenEnd(context, l)).Distinct());
        int[] strands = [.. dark.Select(l => l.Strand)];
        Link? link = context.Outcomes.LinkAt(from);
        findings.Add(new Finding(
            this,
            link?.Place ?? context.PlaceOf(dark[0].Strand),
            $"the transmit of {address} ends at {ends}",
            link is null ? $"transmit of {address} on a receive" : $"transmit of {address} on a receive of {context.Plant.Address(FarEnd(link, from))}",
            $"transmit of {address} reaches no interface")
        {
            Strands = strands,
            At = [.. dark.Select(l => FindingSite.Of(l.EndPort)).Distinct()],
            Related = context.PlacesAlong(strands),
            Links = context.Outcomes.RefutedAt(from),
        });
        dark.Clear();
    }

    private static LinkEnd FarEnd(Link link, PortRef from) => link.From.Port == from ? link.To : link.From;

    private static string OpenEnd(CheckContext context, Landing landing)
    {
        TracedPlant traced = context.Traced;
        string address = traced.Address(landing.End);
        if (traced.Graph.Outside[landing.End] >= 0)
            return $"{address}, a place without a fibre";
        OpenPlug? plug = context.Plant.OpenPlugs.FirstOrDefault(o => o.Plug == landing.EndPort);
        if (plug is not null)
            return $"the open adapter {context.Plant.Address(plug.Adapter)}";
        Part part = context.Plant.Parts[landing.EndPort.Part];
        if (!part.IsInline)
            return $"the open end {address}";

        // A cord without a name is known by what its other end is plugged into.
        int other = traced.Graph.Outside[traced.Graph.Inside[landing.End]];
        return $"the open {context.Plant.Port(landing.EndPort).Name} end of the cord in {context.Plant.Address(traced.Graph.PlaceOf(other).Port)}";
    }
}
