using PolarityMap.Core.Checks.Rules;

namespace PolarityMap.Core.Checks;

/// <summary>The one list of rules. A new rule is one file in <c>Rules</c> and one line here.</summary>
public static class RuleCatalogue
{
    public static readonly IReadOnlyList<Rule> All =
    [
        new TransmitMeetsTransmit(),
        new ReceiveMeetsReceive(),
        new DarkTransmit(),
        new ReturnsToOwnInterface(),
        new LaneOrder(),
        new WavelengthsDoNotMeet(),
        new ApplicationsDiffer(),
        new WrongFarPort(),
        new CrossedPair(),
        new TransposedPairs(),
        new ReversedPortOrder(),
        new WrongLeg(),
        new WrongNetwork(),
        new PinnedMeetsPinned(),
        new UnpinnedMeetsUnpinned(),
        new ConnectorFamilies(),
        new ArraySizeOrKey(),
        new FlatMeetsAngled(),
        new SlopesDoNotFit(),
        new KeyCode(),
        new PortUsedTwice(),
        new SingleModeMeetsMultimode(),
        new CoreDiametersMixed(),
        new LowerClass(),
        new ClassNotListed(),
        new ForeignPart(),
        new SharedSheath(),
        new SharedCassette(),
        new SharedArray(),
        new SharedPanel(),
        new ForeignCordFits(),
        new OneKeyForTwo(),
        new OneColourForTwo(),
        new JacketAgainstLegend(),
        new OverTheLossBudget(),
        new TooLong(),
        new MarginTooSmall(),
        new TooManyMatings(),
        new CableWorseThanAssumed(),
        new FitsByOtherLimitOnly(),
        new LegLeftOver(),
        new PartNothingMeets(),
        new ClosedLoop(),
        new LinkNobodyWires(),
    ];

    /// <summary>The rule with this code, or null. Letter case does not matter.</summary>
    public static Rule? Find(string code)
    {
        foreach (Rule rule in All)
        {
            if (string.Equals(rule.Code, code, StringComparison.OrdinalIgnoreCase))
                return rule;
        }

        return null;
    }
}
