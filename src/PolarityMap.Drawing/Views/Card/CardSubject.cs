using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>The strands of one card.</summary>
/// <param name="Trails">One, or two beside each other.</param>
/// <param name="Likewise">Numbers of further strands of which the same is to be said.</param>
internal sealed record CardGroup(Trail[] Trails, IReadOnlyList<int> Likewise);

/// <summary>What the cards of one link or one strand tell: the strands, two to a card.</summary>
/// <param name="Link">Index of the link, or -1 for a strand by itself.</param>
/// <param name="Groups">The strands of each card.</param>
internal sealed record CardSubject(int Link, IReadOnlyList<CardGroup> Groups)
{
    /// <summary>
    /// A subject for the one strand of a choice of one; else one for each link that a chosen strand is on, in the order of the
    /// document, and then one for each chosen strand that is on none of them. A strand is told once: by the link that it starts
    /// from, if that is chosen too.
    /// </summary>
    public static List<CardSubject> Of(TracedPlant traced, Selection selection)
    {
        var subjects = new List<CardSubject>();
        if (selection.Strands.Count == 1)
        {
            subjects.Add(new CardSubject(-1, [Alone(traced, selection.Strands[0])]));
            return subjects;
        }

        var chosen = new HashSet<int>(selection.Strands);
        List<int> links = LinksOf(traced, selection, chosen);
        var told = new HashSet<int>();
        var ends = new Dictionary<int, List<LinkStrand>>();
        foreach (int link in links)
            ends[link] = StrandsAt(traced, traced.Plant.Links[link].From, chosen, told);
        foreach (int link in links)
        {
            var groups = new List<CardGroup>();
            AppendPairs(traced, ends[link], atStart: true, groups);
            // What arrives at the far end from elsewhere is told to its end there.
            AppendPairs(traced, StrandsAt(traced, traced.Plant.Links[link].To, chosen, told), atStart: false, groups);
            if (groups.Count > 0)
                subjects.Add(new CardSubject(link, groups));
        }

        foreach (int strand in selection.Strands)
        {
            if (told.Add(strand))
                subjects.Add(new CardSubject(-1, [Alone(traced, strand)]));
        }

        return subjects;
    }

    private static List<int> LinksOf(TracedPlant traced, Selection selection, HashSet<int> chosen)
    {
        var links = new List<int>();
        if (selection.Choice.Link >= 0)
        {
            links.Add(selection.Choice.Link);
            return links;
        }

        for (int i = 0; i < traced.Plant.Links.Count; i++)
        {
            Link link = traced.Plant.Links[i];
            if (HasChosen(traced, link.From, chosen) || HasChosen(traced, link.To, chosen))
                links.Add(i);
        }

        return links;
    }

    private static bool HasChosen(TracedPlant traced, LinkEnd end, HashSet<int> chosen)
    {
        foreach ((int position, _) in Lanes(traced, end))
        {
            if (chosen.Contains(traced.StrandOf(position)))
                return true;
        }

        return false;
    }

    /// <summary>
    /// The strands at one end of a link that have not been told: those with something plugged in, and those chosen without.
    /// </summary>
    private static List<LinkStrand> StrandsAt(TracedPlant traced, LinkEnd end, HashSet<int> chosen, HashSet<int> told)
    {
        var found = new List<LinkStrand>();
        foreach ((int position, Lane lane) in Lanes(traced, end))
        {
            int strand = traced.StrandOf(position);
            if ((traced.Strands[strand].Length > 1 || chosen.Contains(strand)) && told.Add(strand))
                found.Add(new LinkStrand(strand, position, lane.Number));
        }

        // The two directions of a lane belong on one card; a stable order keeps the rest as the port has it.
        return [.. found.OrderBy(s => s.LaneNumber)];
    }

    private static IEnumerable<(int Position, Lane Lane)> Lanes(TracedPlant traced, LinkEnd end)
    {
        for (int position = 1; position <= traced.Plant.Port(end.Port).PositionCount; position++)
        {
            int p = traced.Graph.PositionOf(end.Port, position);
            if (traced.Graph.LaneAt(p) is { } lane && (end.Lane == 0 || lane.Group == end.Lane))
                yield return (p, lane);
        }
    }

    private static CardGroup Alone(TracedPlant traced, int strand) => new([new Trail(traced, strand)], []);

    private static void AppendPairs(TracedPlant traced, List<LinkStrand> strands, bool atStart, List<CardGroup> groups)
    {
        LinkStrand[] wired = [.. strands.Where(s => traced.Strands[s.Strand].Length > 1)];
        for (int i = 0; i < wired.Length; i++)
        {
            Trail first = wired[i].Trail(traced, atStart);
            if (i + 1 < wired.Length && wired[i + 1].LaneNumber == wired[i].LaneNumber)
                groups.Add(new CardGroup([first, wired[++i].Trail(traced, atStart)], []));
            else
                groups.Add(new CardGroup([first], []));
        }

        // Strands that meet nothing have no hops to tell: two of them stand for all.
        LinkStrand[] bare = [.. strands.Where(s => traced.Strands[s.Strand].Length == 1)];
        if (bare.Length > 0)
            groups.Add(new CardGroup([.. bare.Take(2).Select(s => s.Trail(traced, atStart))], [.. bare.Skip(2).Select(s => traced.NumberOf(s.Strand))]));
    }

    /// <summary>A strand at the end of a link.</summary>
    private readonly record struct LinkStrand(int Strand, int Position, int LaneNumber)
    {
        public Trail Trail(TracedPlant traced, bool atStart) =>
            new(traced, Strand, backwards: (traced.Strands[Strand][0] == Position) != atStart, fromLink: atStart);
    }
}
