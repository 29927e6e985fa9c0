using PolarityMap.Core.Deviations;

namespace PolarityMap.Core.Locate;

/// <summary>A set of at most three deviations, whatever their order.</summary>
internal readonly record struct SetKey(DeviationId First, DeviationId Second, DeviationId Third)
{
    private static readonly DeviationId s_none = new(-1, -1);

    public static SetKey Of(IReadOnlyList<Deviation> set)
    {
        Span<DeviationId> ids = [s_none, s_none, s_none];
        for (int i = 0; i < set.Count; i++)
            ids[i] = set[i].Id;
        ids.Sort(static (a, b) => (a.Kind, a.At, a.With, a.Variant).CompareTo((b.Kind, b.At, b.With, b.Variant)));
        return new SetKey(ids[0], ids[1], ids[2]);
    }
}
