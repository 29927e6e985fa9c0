using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

/// <summary>Findings about two interface ports that face each other, one for each pair of ports.</summary>
internal static class InterfacePairs
{
    /// <summary>Two ports and a landing between them that shows the fault.</summary>
    public readonly record struct Pair(PortRef Start, PortRef End, Landing Landing);

    public static void Report(
        Rule rule,
        CheckContext context,
        List<Finding> findings,
        Func<Landing, bool> applies,
        Func<CheckContext, Pair, (string Message, string Expected, string Actual)> say)
    {
        var pairs = new Dictionary<(PortRef, PortRef), (Pair Pair, List<int> Strands)>();
        foreach ((PortRef port, Landing landing) in context.LanesAmiss)
        {
            // Each strand is seen from both of its ends; once is enough.
            if (!landing.ReachesLane || landing.End < landing.Start || !applies(landing))
                continue;
            if (!pairs.TryGetValue((port, landing.EndPort), out var found))
                pairs[(port, landing.EndPort)] = found = (new Pair(port, landing.EndPort, landing), []);
            found.Strands.Add(landing.Strand);
        }

        foreach ((Pair pair, List<int> strands) in pairs.Values)
        {
            (string message, string expected, string actual) = say(context, pair);
            findings.Add(new Finding(rule, context.Outcomes.LinkAt(pair.Start)?.Place ?? context.PlaceOf(strands[0]), message, expected, actual)
            {
                Strands = strands,
                Related = context.PlacesAlong(strands),
                Links = context.Outcomes.RefutedAt(pair.Start),
            });
        }
    }
}
