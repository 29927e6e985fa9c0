using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>Puts the matings of the chosen strands together that are alike.</summary>
internal static class KindPlan
{
    /// <summary>The kinds in the order in which the runs first come to them.</summary>
    public static List<MatingKind> Make(ViewInput input)
    {
        TracedPlant traced = input.Traced;
        Plant plant = traced.Plant;
        HashSet<Mating>? chosen = input.Selection.Choice.IsWhole ? null : Chosen(traced, input.Selection.Strands);
        ILookup<SourcePlace, Finding> findings = input.Findings.ToLookup(f => f.Place);
        var kinds = new List<MatingKind>();
        var byLikeness = new Dictionary<string, MatingKind>();
        foreach (Mating mating in plant.Matings)
        {
            if (chosen is not null && !chosen.Contains(mating))
                continue;
            FaceSide left = FaceSide.Of(traced, mating.A, mating.PositionOfA);
            FaceSide right = FaceSide.Of(traced, mating.B, mating.PositionOfB);
            if (left.CompareTo(right) > 0)
                (left, right) = (right, left);
            List<Finding> about = [.. findings[mating.Place].Where(f => IsAbout(traced, f, mating))];
            bool fits = plant.Fits(mating);
            string likeness = $"{left.Likeness}|{right.Likeness}|{mating.Keys}|{fits}|{string.Join(' ', about.Select(f => f.Rule.Code).Distinct())}";
            if (byLikeness.TryGetValue(likeness, out MatingKind? kind))
            {
                kind.Count++;
                kind.HasOneColouring &= kind.Left.Contents == left.Contents && kind.Right.Contents == right.Contents;
                kind.HasOneKeyCode &= kind.Left.Key == left.Key && kind.Right.Key == right.Key;
            }
            else
            {
                kind = new MatingKind(kinds.Count + 1, left, right, mating.Keys, fits, mating.Through is { } adapter ? plant.Address(adapter) : null);
                byLikeness.Add(likeness, kind);
                kinds.Add(kind);
            }

            foreach (Finding finding in about)
            {
                if (!kind.Findings.Contains(finding))
                    kind.Findings.Add(finding);
            }
        }

        return kinds;
    }

    /// <summary>The matings that the strands pass or end at.</summary>
    private static HashSet<Mating> Chosen(TracedPlant traced, IReadOnlyList<int> strands)
    {
        // Two matings of one stop may be equal in everything but their ports, so it is the object that counts.
        var chosen = new HashSet<Mating>(ReferenceEqualityComparer.Instance);
        foreach (int strand in strands)
        {
            foreach (int position in traced.Strands[strand])
            {
                if (traced.MatingAt(position) is { } mating)
                    chosen.Add(mating);
            }
        }

        return chosen;
    }

    /// <summary>
    /// True for a finding at the stop of a mating when one of its strands comes there. Of a strand as a whole it says nothing about
    /// the mating, also where its place is that of the first stop.
    /// </summary>
    private static bool IsAbout(TracedPlant traced, Finding finding, Mating mating) =>
        finding.Rule.Family is "mechanical" or "fibre"
        && (finding.Strands.Count == 0 || HasStrandOf(traced, finding, mating.A, mating.PositionOfA)
            || HasStrandOf(traced, finding, mating.B, mating.PositionOfB));

    private static bool HasStrandOf(TracedPlant traced, Finding finding, PortRef port, int taken)
    {
        int first = Math.Max(1, taken);
        int last = taken > 0 ? taken : traced.Plant.Port(port).PositionCount;
        for (int position = first; position <= last; position++)
        {
            if (finding.Strands.Contains(traced.StrandOf(traced.Graph.PositionOf(port, position))))
                return true;
        }

        return false;
    }
}
