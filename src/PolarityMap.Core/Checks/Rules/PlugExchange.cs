using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Checks.Rules;

/// <summary>
/// The remedy of a crossed pair that needs no other part: a cord with both fibres in one jacket whose two plugs of an end
/// change places by hand. It is proved on the walks: cut at the cord, the head of each strand goes on as the tail of the
/// other, and what then meets what is judged as everywhere else.
/// </summary>
internal static class PlugExchange
{
    /// <summary>The two strands through a cord, each by its end on the near and on the far side of it.</summary>
    private readonly record struct Cut(int Near, int Far);

    /// <summary>The exchanges that put all of these strands right, each by itself.</summary>
    public static IReadOnlyList<Remedy> For(CheckContext context, IReadOnlyList<int> strands)
    {
        var remedies = new List<Remedy>();
        if (strands.Count == 0 || context.Traced.Strands.IsLoop(strands[0]))
            return remedies;
        foreach (Hop hop in context.Traced.Hops(strands[0]))
        {
            if (context.Plant.Parts[hop.Part] is { IsReversible: true } cord && Proof(context, hop, strands) is { } proof)
                remedies.Add(new Remedy($"exchange the plugs at one end of {cord.Name} (reversible in the field)", proof, hop.Part));
        }

        return remedies;
    }

    private static string? Proof(CheckContext context, Hop hop, IReadOnlyList<int> strands)
    {
        TracedPlant traced = context.Traced;
        if (hop.In < 0 || hop.Out < 0)
            return null;
        PositionPlace entry = traced.Graph.PlaceOf(hop.In);
        int first = traced.StrandOf(hop.In);
        int second = traced.StrandOf(traced.Graph.PositionOf(entry.Port, 3 - entry.Position));
        if (first == second || !strands.All(s => s == first || s == second)
            || CutAt(traced, first, hop.Part) is not { } one || CutAt(traced, second, hop.Part) is not { } other)
            return null;
        if (Meet(context, one.Near, other.Far) is not { } there || Meet(context, other.Near, one.Far) is not { } back)
            return null;
        string words = there.From < back.From ? $"{there.Words} and {back.Words}" : $"{back.Words} and {there.Words}";
        return there.IsMeant && back.IsMeant ? $"{words}, the ports that are meant" : $"{words}; no link says which ports are meant";
    }

    /// <summary>The ends of a strand on both sides of a cord; null when it is closed or passes the cord more than once.</summary>
    private static Cut? CutAt(TracedPlant traced, int strand, int cord)
    {
        if (traced.Strands.IsLoop(strand))
            return null;
        Hop[] visits = [.. traced.Hops(strand).Where(h => h.Part == cord)];
        if (visits.Length != 1)
            return null;
        ReadOnlySpan<int> positions = traced.Strands[strand];
        bool fromNear = traced.Plant.Port(traced.Graph.PlaceOf(visits[0].In).Port).Side == Side.Near;
        return fromNear ? new Cut(positions[0], positions[^1]) : new Cut(positions[^1], positions[0]);
    }

    /// <summary>What two ends that would meet do: null unless transmit meets receive and no link means otherwise.</summary>
    private static (int From, string Words, bool IsMeant)? Meet(CheckContext context, int a, int b)
    {
        TracedPlant traced = context.Traced;
        if (traced.Graph.LaneAt(a) is not { } laneA || traced.Graph.LaneAt(b) is not { } laneB)
            return null;
        PortRef portA = traced.Graph.PlaceOf(a).Port;
        PortRef portB = traced.Graph.PlaceOf(b).Port;
        Landing landing = context.Meet(portA, a, traced.Graph.LaneIndexAt(a), b) with { Links = 0, EndLinks = 0 };
        if (portA == portB || !landing.IsHeard || Meant(context, portA, laneA, portB, laneB) is not { } meantA || Meant(context, portB, laneB, portA, laneA) is not { } meantB)
            return null;
        (int from, int to) = laneA.Direction == LaneDirection.Receive ? (b, a) : (a, b);
        return (from, $"transmit {traced.Address(from)} lands on receive {traced.Address(to)}", meantA || meantB);
    }

    /// <summary>True when a link says that the one lane reaches the other, false when none is about it, null when one says otherwise.</summary>
    private static bool? Meant(CheckContext context, PortRef port, Lane lane, PortRef far, Lane farLane)
    {
        bool said = false;
        foreach (Link link in context.Outcomes.LinksAt(port))
        {
            foreach ((LinkEnd here, LinkEnd there) in (ReadOnlySpan<(LinkEnd, LinkEnd)>)[(link.From, link.To), (link.To, link.From)])
            {
                if (here.Port != port || (here.Lane != 0 && here.Lane != lane.Group))
                    continue;
                if (there.Port != far || (there.Lane != 0 && there.Lane != farLane.Group))
                    return null;
                said = true;
            }
        }

        return said;
    }
}
