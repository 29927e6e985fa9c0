using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Checks;

/// <summary>Runs every rule over a traced plant.</summary>
public static class Checker
{
    /// <summary>All findings: errors before warnings, then in the order of the document, then by code.</summary>
    public static IReadOnlyList<Finding> Check(TracedPlant traced) => Check(new CheckContext(traced));

    /// <inheritdoc cref="Check(TracedPlant)"/>
    public static IReadOnlyList<Finding> Check(CheckContext context)
    {
        var findings = new List<Finding>();
        foreach (Rule rule in RuleCatalogue.All)
            rule.Check(context, findings);
        var order = new int[findings.Count];
        for (int i = 0; i < order.Length; i++)
            order[i] = i;
        Array.Sort(order, (a, b) => Compare(findings[a], findings[b]) is var c && c != 0 ? c : a.CompareTo(b));
        return [.. order.Select(i => findings[i])];
    }

    private static int Compare(Finding a, Finding b)
    {
        int c = b.Rule.Severity.CompareTo(a.Rule.Severity);
        if (c == 0)
            c = string.CompareOrdinal(a.Place.File, b.Place.File);
        if (c == 0)
            c = a.Place.Line.CompareTo(b.Place.Line);
        if (c == 0)
            c = string.CompareOrdinal(a.Rule.Code, b.Rule.Code);
        return c;
    }
}
