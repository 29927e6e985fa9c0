namespace PolarityMap.Core.Planning;

/// <summary>
/// The nearest briefs that can be met: each changes one thing of a refused brief, is planned, and is taken only where the refusal
/// is gone and nothing new stands in the way.
/// </summary>
internal sealed class Relaxations(Brief brief, PlanCandidate candidate, PlanProof refused)
{
    /// <summary>Larger briefs are searched with a few outlets of each group: what a link loses does not depend on how many there are.</summary>
    private const int MostSearched = 500;

    private const int FewOutlets = 4;

    /// <summary>What stands in the way of each brief that was tried, by its words.</summary>
    private readonly Dictionary<string, IReadOnlyList<Refusal>> _tried = [];

    /// <summary>The refusal with what can be met instead.</summary>
    public Refusal Explained(Refusal refusal) => refusal with { Nearest = [.. Nearest(refusal)] };

    /// <summary>What can be met instead, the least change first; each is searched when it is asked for.</summary>
    public IEnumerable<NearestBrief> Nearest(Refusal refusal)
    {
        var changes = new BriefChanges(brief, candidate);
        var ways = new ShorterWays(brief, changes, t => ClearsSoFar(t, refusal));
        var losses = new LowerLosses(brief, changes, refused, t => ClearsSoFar(t, refusal));
        return First(refusal, changes, ways, losses).Append(changes.OfAnyRefusal()).SelectMany(t => t).DistinctBy(t => t.Words)
            .Where(t => (t.Brief.LinkCount <= MostSearched || ClearsSoFar(t, refusal)) && Clears(t, refusal));
    }

    /// <summary>
    /// True when a changed brief is planned without the refusal, and without another that was not there before. Where two parts had
    /// one name nothing was checked before, so that what else is found then is not new.
    /// </summary>
    private bool Clears(NearestBrief tried, Refusal refusal)
    {
        if (!_tried.TryGetValue(tried.Words, out IReadOnlyList<Refusal>? refusals))
            _tried[tried.Words] = refusals = PlanProof.Of(tried.Brief, tried.Candidate).Refusals;
        return refusal.Code == RefusalCode.Names
            ? !refusals.Any(r => r.Code == RefusalCode.Names)
            : !refusals.Any(r => r.IsLike(refusal) || !refused.Refusals.Any(r.IsLike));
    }

    /// <summary>As <see cref="Clears"/> for a step of a search, of whose result the whole brief is tried afterwards.</summary>
    private bool ClearsSoFar(NearestBrief tried, Refusal refusal)
    {
        if (tried.Brief.LinkCount <= MostSearched)
            return Clears(tried, refusal);
        Brief few = tried.Brief with { Outlets = [.. tried.Brief.Outlets.Select(o => o with { Name = o.Name.Slice(0, Math.Min(FewOutlets, o.Name.Count)) })] };
        return !PlanProof.Of(few, tried.Candidate).Refusals.Any(r => r.Code == refusal.Code && r.Finding == refusal.Finding);
    }

    /// <summary>What is nearest at hand for a refusal, the least change first.</summary>
    private static IEnumerable<NearestBrief>[] First(Refusal refusal, BriefChanges changes, ShorterWays ways, LowerLosses losses) => refusal.Code switch
    {
        RefusalCode.Ports => [changes.MoreSwitches(refusal)],
        RefusalCode.Stock => [[changes.LongerStock(refusal)], ways.Of(refusal), changes.NoSlack()],
        RefusalCode.Cassettes => [changes.TwoCassettes()],
        RefusalCode.Array => [changes.OtherBases(), changes.OtherApplications(refusal)],
        RefusalCode.Application => [changes.OtherApplications(refusal)],
        RefusalCode.Later => [changes.Own(), changes.WithoutLater()],
        RefusalCode.Legs => [[changes.MoreLegs(refusal)], changes.OtherBases(), changes.NoSpare()],
        RefusalCode.Way => [changes.Own(), changes.SomeWay(refusal)],
        RefusalCode.Names => [changes.Renamed(refusal)],
        _ => OfFinding(refusal, changes, ways, losses),
    };

    private static IEnumerable<NearestBrief>[] OfFinding(Refusal refusal, BriefChanges changes, ShorterWays ways, LowerLosses losses) => refusal.Finding switch
    {
        "L01" or "L03" or "L04" or "L06" =>
            [losses.Margin(), losses.Of(), changes.OtherFibres(sameCore: true), ways.Of(refusal), changes.Own(), changes.OtherFibres(sameCore: false), changes.OtherLimits()],
        "L02" or "L05" or "F04" => [changes.OtherFibres(sameCore: true), ways.Of(refusal), changes.OtherFibres(sameCore: false), changes.OtherLimits()],
        "M04" => [changes.OtherBases()],
        "M05" or "M06" => [changes.OtherSlopes()],
        "S06" or "S07" => [[changes.Keys()], changes.Own()],
        "S08" or "S09" => [[changes.Colours()]],
        _ => [],
    };
}
