using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>Where the strands of a card come out, and where they were meant to, in words.</summary>
internal sealed class CardEnds(TracedPlant traced, CardText text)
{
    /// <summary>One sentence for each strand.</summary>
    public IEnumerable<string> Words(Trail trail, int link)
    {
        Link? meant = link < 0 ? null : traced.Plant.Links[link];
        if (!trail.FromLink && meant is not null && trail.First != trail.Last)
            yield return $"Strand {trail.Number} comes from {traced.Address(trail.First)} ({EndWord(trail.First)}){Meant(trail.First, meant.From)}.";
        yield return $"Strand {trail.Number} {How(trail)}{(meant is null ? "" : Meant(trail.Last, meant.To))}.";
    }

    /// <summary>
    /// For each position at the far end of a link that a strand of another link arrives at, a sentence on it.
    /// </summary>
    public IEnumerable<string> Strangers(CardSubject subject)
    {
        if (subject.Link < 0)
            yield break;
        var own = new HashSet<int>(subject.Groups.SelectMany(g => g.Trails).Select(t => t.Strand));
        LinkEnd end = traced.Plant.Links[subject.Link].To;
        for (int i = 1; i <= traced.Plant.Port(end.Port).PositionCount; i++)
        {
            int position = traced.Graph.PositionOf(end.Port, i);
            if (traced.Graph.LaneAt(position) is not { } lane || (end.Lane > 0 && lane.Group != end.Lane))
                continue;
            int strand = traced.StrandOf(position);
            if (traced.Strands[strand].Length > 1 && !own.Contains(strand))
                yield return $"{traced.Address(position)} is reached by strand {traced.NumberOf(strand)} from {traced.Address(traced.OtherEnd(position))}.";
        }
    }

    /// <summary>A sentence for further strands of which the same is to be said as of the last.</summary>
    public static IEnumerable<string> Likewise(IReadOnlyList<int> numbers)
    {
        if (numbers.Count == 0)
            yield break;
        int[] sorted = [.. numbers.Order()];
        var runs = new List<string>();
        for (int i = 0; i < sorted.Length; i++)
        {
            int from = i;
            while (i + 1 < sorted.Length && sorted[i + 1] == sorted[i] + 1)
                i++;
            runs.Add(i == from ? $"{sorted[from]}" : $"{sorted[from]} to {sorted[i]}");
        }

        yield return numbers.Count == 1 ? $"So does strand {runs[0]}." : $"So do strands {string.Join(", ", runs)}.";
    }

    private string How(Trail trail)
    {
        if (trail.IsLoop)
            return "is a closed loop: no end to put light into";
        if (trail.First == trail.Last)
        {
            return text.Blocked(trail.First) is { } port
                ? $"ends where it begins, at {traced.Address(trail.First)}: {text.Plant.Address(port)} is plugged in and meets no fibre"
                : $"ends where it begins, at {traced.Address(trail.First)}: nothing is plugged in";
        }

        string address = traced.Address(trail.Last);
        if (traced.Graph.LaneAt(trail.Last) is not null)
            return $"comes out at {address} ({EndWord(trail.Last)})";
        return trail.Hops[^1].Out >= 0 ? $"comes out at the open end {address}" : $"stops at {address}, where there is no fibre";
    }

    private string EndWord(int position) => HopLine.EndWord(traced, position);

    /// <summary>Nothing where the strand is at the end that was meant.</summary>
    private string Meant(int position, LinkEnd end)
    {
        PositionPlace place = traced.Graph.PlaceOf(position);
        bool there = place.Port == end.Port && (end.Lane == 0 || (traced.Graph.LaneAt(position) is Lane lane && lane.Group == end.Lane));
        return there ? "" : $", meant: {traced.Plant.Address(end)}";
    }
}
