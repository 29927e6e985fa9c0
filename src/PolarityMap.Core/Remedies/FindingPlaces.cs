using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Remedies;

/// <summary>The parts and ports that a finding has to do with, where something may be changed to clear it.</summary>
/// <param name="Rule">The rule that made it.</param>
/// <param name="Parts">Indices of parts, each once.</param>
/// <param name="Ports">Ports and plugs, each once.</param>
internal sealed record FindingPlaces(Rule Rule, IReadOnlyList<int> Parts, IReadOnlyList<PortRef> Ports)
{
    /// <summary>Families that say something of whole strands and not of a place on them.</summary>
    private static bool IsOfStrands(Rule rule) => rule.Family is "fibre" or "loss" || rule.Code is "S01" or "S06" or "W03" or "P04";

    public static FindingPlaces Of(CheckContext context, Finding finding)
    {
        var parts = new SortedSet<int>();
        var ports = new HashSet<PortRef>();
        foreach (FindingSite site in finding.At)
        {
            parts.Add(site.Part);
            foreach (PortRef? port in (ReadOnlySpan<PortRef?>)[site.Port, site.Meets])
            {
                if (port is not { } at)
                    continue;
                ports.Add(at);
                parts.Add(at.Part);
                if (context.Traced.Plant.Port(at).PositionCount > 0 && context.Traced.MatingAt(context.Traced.Graph.PositionOf(at, 1))?.Through is { } adapter)
                    parts.Add(adapter.Part);
            }
        }

        if (IsOfStrands(finding.Rule))
        {
            foreach (int strand in finding.Strands)
                AddWay(context.Traced, context.Traced.Strands[strand], parts, ports);
        }

        return new FindingPlaces(finding.Rule, [.. parts], [.. ports]);
    }

    /// <summary>Adds every part and port on a strand, and the adapters between.</summary>
    public static void AddWay(TracedPlant traced, ReadOnlySpan<int> way, ISet<int> parts, ISet<PortRef> ports)
    {
        foreach (int p in way)
        {
            PortRef port = traced.Graph.PlaceOf(p).Port;
            if (!ports.Add(port))
                continue;
            parts.Add(port.Part);
            if (traced.MatingAt(p)?.Through is { } adapter)
                parts.Add(adapter.Part);
        }
    }
}
