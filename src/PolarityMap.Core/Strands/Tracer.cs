namespace PolarityMap.Core.Strands;

/// <summary>
/// Follows every strand of a graph in one pass: from each position that lacks a partner inside or outside the walk
/// alternates the two arrays until a partner is missing again. What no such walk reaches lies on closed loops.
/// Time and memory are linear in the positions; nothing is allocated but the result and one bit a position.
/// </summary>
public static class Tracer
{
    public static StrandSet Trace(StrandGraph graph)
    {
        ReadOnlySpan<int> inside = graph.Inside;
        ReadOnlySpan<int> outside = graph.Outside;
        int count = inside.Length;
        int openCount = CountOpenStrands(inside, outside);
        var positions = new int[count];
        var starts = new int[openCount + 1];
        var seenEnd = new ulong[(count + 63) / 64];
        int written = 0;
        int strand = 0;
        for (int p = 0; p < count; p++)
        {
            if ((inside[p] | outside[p]) >= 0 || (seenEnd[p >> 6] >> p & 1) != 0)
                continue;
            starts[strand++] = written;
            written = Walk(inside, outside, p, positions, written);
            int last = positions[written - 1];
            seenEnd[last >> 6] |= 1UL << last;
        }

        starts[openCount] = written;
        return written == count
            ? new StrandSet(positions, starts, openCount)
            : WithLoops(inside, outside, positions, starts, written);
    }

    /// <summary>An open strand has two ends, or one position that lacks both partners.</summary>
    private static int CountOpenStrands(ReadOnlySpan<int> inside, ReadOnlySpan<int> outside)
    {
        int missing = 0;
        for (int p = 0; p < inside.Length; p++)
            missing += (int)((uint)inside[p] >> 31) + (int)((uint)outside[p] >> 31);
        return missing / 2;
    }

    private static int Walk(ReadOnlySpan<int> inside, ReadOnlySpan<int> outside, int start, int[] positions, int written)
    {
        positions[written++] = start;
        int p = start;
        if (outside[p] >= 0)
        {
            p = outside[p];
            positions[written++] = p;
        }

        while ((p = inside[p]) >= 0)
        {
            positions[written++] = p;
            if ((p = outside[p]) < 0)
                break;
            positions[written++] = p;
        }

        return written;
    }

    private static StrandSet WithLoops(ReadOnlySpan<int> inside, ReadOnlySpan<int> outside, int[] positions, int[] openStarts, int written)
    {
        var seen = new bool[positions.Length];
        for (int i = 0; i < written; i++)
            seen[positions[i]] = true;
        var starts = new List<int>(openStarts);
        for (int first = 0; first < seen.Length; first++)
        {
            // A loop starts by going inside from its lowest position and ends at that position's mate.
            for (int p = first; !seen[p]; p = outside[p])
            {
                seen[p] = true;
                positions[written++] = p;
                p = inside[p];
                seen[p] = true;
                positions[written++] = p;
            }

            if (written > starts[^1])
                starts.Add(written);
        }

        return new StrandSet(positions, [.. starts], openStarts.Length - 1);
    }
}
