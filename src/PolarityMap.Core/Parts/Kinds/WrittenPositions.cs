namespace PolarityMap.Core.Parts.Kinds;

/// <summary>Checks positions that a document writes out: each exists, and each stands once.</summary>
internal static class WrittenPositions
{
    /// <summary>Reports every position that is refused or repeated; true when there is none.</summary>
    /// <param name="positions">The positions in the order written.</param>
    /// <param name="attribute">The attribute they are written in.</param>
    /// <param name="noun">What one of them is called.</param>
    /// <param name="refusal">Why a position cannot be used, or null when it can.</param>
    /// <param name="faults">Where faults go.</param>
    public static bool Check(IEnumerable<int> positions, string attribute, string noun, Func<int, string?> refusal, List<AttributeFault> faults)
    {
        int before = faults.Count;
        var seen = new HashSet<int>();
        foreach (int position in positions)
        {
            if (refusal(position) is { } why)
                faults.Add(new AttributeFault(attribute, why));
            else if (!seen.Add(position))
                faults.Add(new AttributeFault(attribute, $"{noun} {position} is used twice"));
        }

        return faults.Count == before;
    }

    /// <summary>Both positions of every pair, in the order written.</summary>
    public static IEnumerable<int> Of(IReadOnlyList<DuplexPair> pairs)
    {
        foreach (DuplexPair pair in pairs)
        {
            yield return pair.A;
            yield return pair.B;
        }
    }
}
