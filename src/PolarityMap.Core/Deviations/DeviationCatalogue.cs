using PolarityMap.Core.Deviations.Kinds;

namespace PolarityMap.Core.Deviations;

/// <summary>The one list of deviation kinds. A new kind is one file in <c>Kinds</c> and one line here.</summary>
public static class DeviationCatalogue
{
    public static readonly IReadOnlyList<DeviationKind> All =
    [
        new OtherCord(),
        new CordReversed(),
        new OtherArrayCord(),
        new ForeignCord(),
        new CordInNextPort(),
        new CordsExchanged(),
        new LegInWrongPort(),
        new LegsExchanged(),
        new OtherWiring(),
        new OtherKeying(),
        new UpsideDown(),
        new PairCrossed(),
        new PairsTransposed(),
        new FibresExchanged(),
        new OtherTrunk(),
        new Dirty(),
        new NotSeated(),
        new FibreBroken(),
        new OtherFibre(),
    ];

    /// <summary>The kind with this name, or null.</summary>
    public static DeviationKind? Find(string name)
    {
        foreach (DeviationKind kind in All)
        {
            if (kind.Name == name)
                return kind;
        }

        return null;
    }

    /// <summary>The index of a kind in <see cref="All"/>.</summary>
    public static int IndexOf(DeviationKind kind)
    {
        for (int i = 0; i < All.Count; i++)
        {
            if (All[i].GetType() == kind.GetType())
                return i;
        }

        throw new ArgumentException($"{kind.Name} is not listed", nameof(kind));
    }
}
