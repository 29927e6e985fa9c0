using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Planning;

/// <summary>Searches the largest losses of matings, in steps of 0.05 dB, and the margin with which a refusal is gone. Nothing is raised.</summary>
/// <param name="brief">The brief that is refused.</param>
/// <param name="changes">Makes the changed ones.</param>
/// <param name="refused">The plan of the brief.</param>
/// <param name="clears">Whether a changed brief is free of the refusal.</param>
internal sealed class LowerLosses(Brief brief, BriefChanges changes, PlanProof refused, Func<NearestBrief, bool> clears)
{
    private const decimal Step = 0.05m;

    /// <summary>The loss of array matings alone, that of duplex matings alone, and both where they may be larger then.</summary>
    public IEnumerable<NearestBrief> Of()
    {
        Decibel array = brief.ArrayLoss ?? brief.Limits.MatingMax, duplex = brief.DuplexLoss ?? brief.Limits.MatingMax;
        (int Steps, NearestBrief Brief)? one = Largest(array, loss => changes.Changed($"array-loss: at most {loss}", brief with { ArrayLoss = loss }));
        if (one is not null)
            yield return one.Value.Brief;
        (int Steps, NearestBrief Brief)? other = Largest(duplex, loss => changes.Changed($"duplex-loss: at most {loss}", brief with { DuplexLoss = loss }));
        if (other is not null)
            yield return other.Value.Brief;

        // Below the smaller of the two, so that nothing is raised.
        (int Steps, NearestBrief Brief)? both = Largest(Decibel.Min(array, duplex), loss => changes.Changed($"array-loss and duplex-loss: at most {loss}", brief with { ArrayLoss = loss, DuplexLoss = loss }));
        if (both is { } b && !(one?.Steps >= b.Steps) && !(other?.Steps >= b.Steps))
            yield return b.Brief;
    }

    /// <summary>The margin that the worst link has.</summary>
    public IEnumerable<NearestBrief> Margin()
    {
        if (brief.Margin is not { } asked)
            yield break;
        decimal least = new[] { refused, refused.Later }.Where(p => p?.Report is not null)
            .SelectMany(p => p!.Report!.Context.Losses.Links).Select(l => l.Worst.Margin?.Value ?? decimal.MaxValue).DefaultIfEmpty(0).Min();
        var margin = new Decibel(Math.Max(0, decimal.Floor(Math.Min(least, asked.Value) * 100) / 100));
        if (margin < asked)
            yield return changes.Changed($"margin: {margin}", brief with { Margin = margin });
    }

    /// <summary>The largest loss below one with which the links fit, or null.</summary>
    private (int Steps, NearestBrief Brief)? Largest(Decibel below, Func<Decibel, NearestBrief> with)
    {
        NearestBrief Tried(int steps) => with(new Decibel(steps * Step));
        int fits = 1, fails = (int)decimal.Ceiling(below.Value / Step);
        if (fails <= fits || !clears(Tried(fits)))
            return null;
        while (fails - fits > 1)
        {
            int middle = (fits + fails) / 2;
            if (clears(Tried(middle)))
                fits = middle;
            else
                fails = middle;
        }

        return (fits, Tried(fits));
    }
}
