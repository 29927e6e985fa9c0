using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

/// <summary>Words and collections that the destination rules share.</summary>
internal static class DestinationText
{
    /// <summary>The interface ports that a link's lanes come out at, such as <c>SW-R/2 and SW-R/3</c>.</summary>
    public static string Reached(CheckContext context, LinkOutcome outcome) =>
        string.Join(" and ", outcome.Landings.Where(l => l.EndLane is not null).Select(l => context.Plant.Address(l.EndPort)).Distinct());

    /// <summary>The expected statement of a link.</summary>
    public static string Meant(CheckContext context, Link link) => $"{context.Plant.Address(link.From)} at {context.Plant.Address(link.To)}";

    /// <summary>The actual statement of a link.</summary>
    public static string Is(CheckContext context, LinkOutcome outcome) => $"{context.Plant.Address(outcome.Link.From)} at {Reached(context, outcome)}";

    /// <summary>The first few of a list in words.</summary>
    private static string List(string[] items)
    {
        const int mostListed = 4;
        return items.Length <= mostListed ? string.Join(", ", items) : $"{string.Join(", ", items.Take(mostListed))} and {items.Length - mostListed} more";
    }

    /// <summary>One finding for links that are one fault together.</summary>
    public static Finding ForGroup(Rule rule, CheckContext context, IReadOnlyList<int> group, string message)
    {
        LinkOutcome[] outcomes = [.. group.Select(i => context.Outcomes.All[i])];
        int[] strands = [.. outcomes.SelectMany(o => o.Strands).Distinct()];
        return new Finding(
            rule,
            outcomes[0].Link.Place,
            message,
            List([.. outcomes.Select(o => Meant(context, o.Link))]),
            List([.. outcomes.Select(o => Is(context, o))]))
        {
            Strands = strands,
            Related = context.PlacesAlong(strands),
            Links = group,
        };
    }
}
