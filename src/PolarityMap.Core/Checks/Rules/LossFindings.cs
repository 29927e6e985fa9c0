using PolarityMap.Core.Budget;
using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Checks.Rules;

/// <summary>Findings about losses and reach, one for each link; of several strands the worst is named.</summary>
internal static class LossFindings
{
    /// <summary>The three texts of a finding.</summary>
    public readonly record struct Words(string Message, string Expected, string Actual);

    /// <param name="rule">The rule that reports.</param>
    /// <param name="context">What is checked.</param>
    /// <param name="findings">Where findings go.</param>
    /// <param name="applies">Whether a strand is at fault.</param>
    /// <param name="worst">Which of two strands at fault is told; null for the one with the least to spare.</param>
    /// <param name="say">The texts, of a link by its two addresses and of the strand that is told.</param>
    public static void Report(
        Rule rule,
        CheckContext context,
        List<Finding> findings,
        Func<StrandBudget, bool> applies,
        Comparison<StrandBudget>? worst,
        Func<string, StrandBudget, Words> say)
    {
        if (!context.Losses.HasApplications)
            return;
        foreach (LinkBudget link in context.Losses.Links)
        {
            List<StrandBudget> at = [.. link.Strands.Where(applies)];
            if (at.Count == 0)
                continue;
            if (worst is not null)
                at = [.. at.Order(Comparer<StrandBudget>.Create(worst))];
            int[] strands = [.. at.Select(s => s.Strand).Distinct()];
            Words words = say($"{context.Plant.Address(link.From)} to {context.Plant.Address(link.To)}", at[0]);
            bool refutes = rule.Severity == Severity.Error && link.Link >= 0;
            findings.Add(new Finding(
                rule,
                link.Link >= 0 ? context.Plant.Links[link.Link].Place : context.PlaceOf(strands[0]),
                words.Message,
                words.Expected,
                words.Actual)
            {
                Strands = strands,
                Related = context.PlacesAlong(strands),
                Links = refutes ? [link.Link] : [],
            });
        }
    }

    /// <summary>The application and the fibre, such as <c>10GBASE-SR on OM3</c>.</summary>
    public static string On(StrandBudget s) => $"{s.Application} on {s.Fibre}";

    /// <summary>A loss, with "at least" where some of it is not known.</summary>
    public static string AtLeast(StrandBudget s, Decibel loss) => s.LengthsMissing > 0 || s.FibreLossIsUnknown ? $"at least {loss}" : $"{loss}";

    /// <summary>The judged figure by its parts, such as <c>0.35 dB in 100 m of fibre, 3.00 dB in 4 matings</c>.</summary>
    public static string Made(StrandBudget s)
    {
        LossSum sum = s.Stated;
        string fibre = $"{sum.Fibre} in {s.Length} of fibre";
        string matings = sum.MatingCount == 0 ? "" : $", {sum.Matings} in {Count(sum.MatingCount, "mating")}";
        string splices = sum.SpliceCount == 0 ? "" : $", {sum.Splices} in {Count(sum.SpliceCount, "splice")}";
        return fibre + matings + splices;
    }

    public static string Count(int number, string word) => number == 1 ? $"1 {word}" : $"{number} {word}s";
}
