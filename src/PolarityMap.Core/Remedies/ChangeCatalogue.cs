using PolarityMap.Core.Remedies.Kinds;

namespace PolarityMap.Core.Remedies;

/// <summary>The one list of the kinds of change. A new kind is one file in <c>Kinds</c> and one line here.</summary>
public static class ChangeCatalogue
{
    public static readonly IReadOnlyList<ChangeKind> All =
    [
        new ReversedCord(),
        new OtherCord(),
        new OtherArrayCord(),
        new CordFittings(),
        new CordNetwork(),
        new PatchesExchanged(),
        new PatchMoved(),
        new PlugPutIn(),
        new PlugTakenOut(),
        new LegsExchanged(),
        new LegMoved(),
        new LegSpared(),
        new AdapterTurned(),
        new TerminationTurned(),
        new OtherTransceiver(),
        new OtherWiring(),
        new OtherConversion(),
        new OtherPins(),
        new OtherPolish(),
        new OtherKey(),
        new OtherJacket(),
        new OtherFibre(),
        new SplicedStraight(),
        new OtherTrunk(),
    ];

    /// <summary>The index of a kind in <see cref="All"/>.</summary>
    public static int IndexOf(ChangeKind kind)
    {
        for (int i = 0; i < All.Count; i++)
        {
            if (All[i].GetType() == kind.GetType())
                return i;
        }

        throw new ArgumentException($"{kind.Name} is not listed", nameof(kind));
    }
}
