using PolarityMap.Core.Checks.Rules;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Checks;

/// <summary>How the networks of a plant keep apart, and the findings on that.</summary>
public sealed record SeparationReport(TracedPlant Traced, Separation Separation, IReadOnlyList<Finding> Findings)
{
    public Plant Plant => Traced.Plant;

    public int Errors => Findings.Count(f => f.Rule.Severity == Severity.Error);

    public int Warnings => Findings.Count - Errors;

    public static SeparationReport Of(TracedPlant traced)
    {
        var context = new CheckContext(traced);
        return Of(context, Checker.Check(context));
    }

    /// <summary>The same of a plant that is checked already.</summary>
    /// <param name="context">The plant and what the rules worked out.</param>
    /// <param name="all">All findings.</param>
    public static SeparationReport Of(CheckContext context, IReadOnlyList<Finding> all)
    {
        // Interfaces of two networks that are joined are a wrong destination to the checker, and the end of separation as well.
        Finding[] findings = [.. all.Where(f => f.Rule.Family == "separation" || f.Rule is WrongNetwork)];
        return new SeparationReport(context.Traced, context.Separation, findings);
    }

    /// <summary>The verdict in one or two sentences.</summary>
    public string Verdict()
    {
        if (Plant.Networks.Count < 2)
            return $"The document names {(Plant.Networks.Count == 0 ? "no network" : "one network only")}, so there is nothing to keep apart.";
        string policies = Plant.Networks.All(n => n.MayShare is null) ? " No network says what it may share, so sharing was not judged." : "";
        string found = (Errors, Warnings) switch
        {
            (0, 0) => "Nothing was found.",
            (var e, 0) => $"{Count(e, "error")}.",
            (0, var w) => $"{Count(w, "warning")}.",
            (var e, var w) => $"{Count(e, "error")} and {Count(w, "warning")}.",
        };
        return found + policies;
    }

    /// <summary>How much of each place is shared, such as <c>16 of 148 sheaths</c>; places that the plant does not have are left out.</summary>
    public string Totals()
    {
        var parts = new List<string>();
        foreach (SharedPlace place in Enum.GetValues<SharedPlace>())
        {
            int total = Separation.Sharing.Total(place);
            if (total > 0)
                parts.Add($"{Separation.Sharing.Shared(place)} of {total} {Plural(place, total)}");
        }

        return string.Join(", ", parts);
    }

    private static string Plural(SharedPlace place, int count)
    {
        string word = place == SharedPlace.Array ? "array connector" : place.Word();
        return count == 1 ? word : word + "s";
    }

    private static string Count(int n, string word) => n == 1 ? $"1 {word}" : $"{n} {word}s";
}
