using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

/// <summary>Two different ports with strands between them that join lanes of the same direction.</summary>
internal sealed class SameDirectionPair(PortRef a, PortRef b)
{
    public PortRef A { get; } = a;

    public PortRef B { get; } = b;

    /// <summary>Strands that join two transmit lanes.</summary>
    public List<int> Transmit { get; } = [];

    /// <summary>Strands that join two receive lanes.</summary>
    public List<int> Receive { get; } = [];

    /// <summary>All such pairs in the order of their first port, without the strands of crossed pairs.</summary>
    public static IEnumerable<SameDirectionPair> All(CheckContext context)
    {
        var pairs = new Dictionary<(PortRef, PortRef), SameDirectionPair>();
        foreach ((PortRef port, Landing landing) in context.LanesAmiss)
        {
            // Each strand is met from both ends; its first end counts.
            if (!landing.MeetsSame || landing.EndPort == port || landing.End < landing.Start || context.Outcomes.IsInCrossedPair(landing.Strand))
                continue;
            if (!pairs.TryGetValue((port, landing.EndPort), out SameDirectionPair? pair))
                pairs[(port, landing.EndPort)] = pair = new SameDirectionPair(port, landing.EndPort);
            (landing.Lane.Direction == LaneDirection.Transmit ? pair.Transmit : pair.Receive).Add(landing.Strand);
        }

        return pairs.Values;
    }

    /// <summary>The link that is meant for either port, else the first mating.</summary>
    public SourcePlace Place(CheckContext context) =>
        (context.Outcomes.LinkAt(A) ?? context.Outcomes.LinkAt(B))?.Place ?? context.PlaceOf(Transmit.Count > 0 ? Transmit[0] : Receive[0]);

    /// <summary>The links that the strands refute.</summary>
    public IReadOnlyList<int> Links(CheckContext context) => context.Outcomes.RefutedOn(Transmit.Concat(Receive));
}
