using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Budget;

/// <summary>Verdicts and remarks on budgets in words, for the table, reports and programs alike.</summary>
public static class BudgetWords
{
    /// <summary>The verdict on a link, over all of its strands, such as <c>fits, 1.05 dB left</c> or <c>too long by 20 m</c>.</summary>
    public static string Verdict(LinkBudget link)
    {
        if (!link.Exceeds)
            return Verdict(link.Strands.FirstOrDefault(s => s.LossLimit is null) ?? link.Worst);
        StrandBudget? overLoss = link.Strands.FirstOrDefault(s => s.IsOverLoss);
        StrandBudget? tooLong = link.Strands.Where(s => s.IsTooLong).MaxBy(s => s.LengthOver);
        return string.Join(" and ", new[] { overLoss is null ? null : OverLoss(overLoss), tooLong is null ? null : TooLong(tooLong) }.OfType<string>());
    }

    /// <summary>The verdict on one strand.</summary>
    public static string Verdict(StrandBudget strand)
    {
        if (strand.Exceeds)
            return string.Join(" and ", new[] { strand.IsOverLoss ? OverLoss(strand) : null, strand.IsTooLong ? TooLong(strand) : null }.OfType<string>());
        if (strand.Margin is { } left)
            return $"fits, {left} left";
        return strand.DistanceLimit is null ? $"not judged: {Reason(strand)}" : $"reaches, and the loss is not judged: {Reason(strand)}";
    }

    /// <summary>What else is to be said of a strand, one sentence without its full stop each; empty for nothing.</summary>
    /// <param name="strand">The strand.</param>
    /// <param name="margin">The margin that the document asks for, or null.</param>
    public static IReadOnlyList<string> Remarks(StrandBudget strand, Decibel? margin)
    {
        var remarks = new List<string>();
        if (strand.FailsByStandard)
            remarks.Add($"fits by what the parts state and not by the standard's largest losses, which come to {strand.Standard.Total}");
        if (margin is { } least && strand.Margin is { } left && left >= Decibel.Zero && left < least)
            remarks.Add($"keeps less than the {least} that the document asks for");
        if (strand.FitsByOtherLimitOnly)
            remarks.Add($"over the {strand.DefaultLimit!.Loss} of IEEE 802.3");
        if (strand.HasWorseCable)
            remarks.Add($"cable of up to {strand.WorstCable}: the distance is specified for at most {strand.Limit!.AssumedCable}");
        if (strand.IsBelowLeastLoss)
            remarks.Add($"expected to lose less than the {strand.Limit!.LeastLoss} that the receiver needs: it may be overloaded");
        if (strand.LengthsMissing > 0)
            remarks.Add($"{Cables(strand.LengthsMissing, "states", "state")} no length: length and losses are at least so much");
        if (strand.FibreLossIsUnknown)
            remarks.Add("the fibre's own loss is not known and not counted: state its class");
        else if (strand.FibresMissing > 0 && strand.Fibre is { } fibre)
            remarks.Add($"{Cables(strand.FibresMissing, "states", "state")} no class of fibre and {(strand.FibresMissing == 1 ? "is" : "are")} taken to be {fibre}");
        if (strand.WavelengthIsAssumed)
            remarks.Add($"{strand.Wavelength} is assumed: no end says its wavelength");
        return remarks;
    }

    /// <summary>Why a strand's loss cannot be judged; empty where it can.</summary>
    public static string Reason(StrandBudget strand) => strand.Gap switch
    {
        LimitGap.NoApplication => "neither end says what it is for",
        LimitGap.ApplicationsDiffer => "the ends are for applications that do not work together",
        LimitGap.FibreNotStated => "no part states its class of fibre",
        LimitGap.CoresMixed => "fibres of different cores follow each other",
        LimitGap.FibreNotListed => $"{strand.Application} is not specified on {strand.Fibre}",
        LimitGap.NotOnRecord => $"the loss limit of {strand.Application} is not on record",
        _ => "",
    };

    /// <summary>By how much the stated figure is over the limit; a little too much is never printed as nothing.</summary>
    public static string Excess(StrandBudget strand)
    {
        Decibel over = strand.Margin is { } margin ? -margin : Decibel.Zero;
        return over.Value is > 0 and < 0.005m ? "less than 0.01 dB" : $"{over}";
    }

    private static string OverLoss(StrandBudget s) => s.HasTooManyMatings ? $"too many matings, over by {Excess(s)}" : $"over by {Excess(s)}";

    private static string TooLong(StrandBudget s) => $"too long by {s.LengthOver}";

    private static string Cables(int number, string one, string many) => number == 1 ? $"1 cable {one}" : $"{number} cables {many}";
}
