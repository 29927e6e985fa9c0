using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>A visit of a link to a part: the ports where it enters and leaves; no part at the ends of the link.</summary>
internal readonly record struct WayHop(int Part, PortRef In, PortRef Out);

/// <summary>The parts and matings that carry one link, from its first end to its last.</summary>
/// <param name="Link">The link.</param>
/// <param name="Hops">Its parts in order.</param>
/// <param name="Matings">Its matings, each once.</param>
internal sealed record LinkWay(Link Link, IReadOnlyList<WayHop> Hops, IReadOnlyList<Mating> Matings)
{
    /// <summary>The ways of all links of a plant, in their order.</summary>
    public static LinkWay[] Of(CheckReport report) => [.. report.Context.Outcomes.All.Select(o => Of(report.Traced, report.Traced.Plant.Links[o.Index], o))];

    /// <summary>What is fixed along it: stretches of laid cable with what it ends in, between cords and interfaces.</summary>
    public IEnumerable<IReadOnlyList<WayHop>> FixedRuns(Plant plant) => FixedRuns(plant, Hops);

    /// <summary>As <see cref="FixedRuns(Plant)"/> for hops in a row.</summary>
    public static IEnumerable<IReadOnlyList<WayHop>> FixedRuns(Plant plant, IReadOnlyList<WayHop> hops)
    {
        var run = new List<WayHop>();
        foreach (WayHop hop in hops)
        {
            Part part = plant.Parts[hop.Part];
            if (!part.Shape.IsInterface && !PartFacts.IsCord(part))
            {
                run.Add(hop);
                continue;
            }

            if (run.Count > 0)
                yield return run;
            run = [];
        }

        if (run.Count > 0)
            yield return run;
    }

    /// <summary>A strand as hops from port to port.</summary>
    public static List<WayHop> HopsOf(TracedPlant traced, int strand)
    {
        PortRef Port(int position) => position < 0 ? Joint.Nothing : traced.Graph.PlaceOf(position).Port;
        return [.. traced.Hops(strand).Select(h => new WayHop(h.Part, Port(h.In), Port(h.Out)))];
    }

    /// <summary>The same hops from the other end.</summary>
    public static List<WayHop> Reversed(IReadOnlyList<WayHop> hops) => [.. hops.Reverse().Select(h => new WayHop(h.Part, h.Out, h.In))];

    private static LinkWay Of(TracedPlant traced, Link link, LinkOutcome outcome)
    {
        var hops = new List<WayHop>();
        var matings = new List<Mating>();
        var seen = new HashSet<Mating>(ReferenceEqualityComparer.Instance);
        foreach (int strand in outcome.Strands)
        {
            if (hops.Count == 0)
            {
                hops = HopsOf(traced, strand);
                if (hops[0].Part != link.From.Port.Part)
                    hops = Reversed(hops);
            }

            foreach (int position in traced.Strands[strand])
            {
                if (traced.Graph.Outside[position] >= 0 && traced.MatingAt(position) is { } mating && seen.Add(mating))
                    matings.Add(mating);
            }
        }

        return new LinkWay(link, hops, matings);
    }
}
