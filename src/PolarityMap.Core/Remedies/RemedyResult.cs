using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies;

/// <summary>What can be done about the findings of a plant.</summary>
/// <param name="Before">The plant as it is, checked.</param>
/// <param name="Findings">Each finding that was asked for, in the order of the report, with what clears it.</param>
/// <param name="Plan">What to do for the whole plant; null when nothing clears any of the findings.</param>
/// <param name="Work">How much was tried, and what bound was hit.</param>
public sealed record RemedyResult(CheckReport Before, IReadOnlyList<FindingRemedies> Findings, RemedyPlan? Plan, RemedyWork Work);

/// <summary>Changes that together clear findings and raise none; without any of them that would not be so.</summary>
/// <param name="Changes">What to do.</param>
/// <param name="Clears">Indices of all findings that are gone then.</param>
/// <param name="Proven">How many links are proven then.</param>
public sealed record RemedySet(IReadOnlyList<Change> Changes, IReadOnlyList<int> Clears, int Proven)
{
    /// <summary>The work it makes, in minutes. Common practice.</summary>
    public int Minutes => Changes.Sum(c => c.Minutes);

    /// <summary>How many things the hand does.</summary>
    public int Weight => Changes.Sum(c => c.Weight);
}

/// <summary>What clears one finding.</summary>
/// <param name="Finding">Index of the finding.</param>
/// <param name="Sets">
/// Every set that was proved: that of the plan first, then those that clear most, then by their work. One with more changes is
/// kept only where it is less work than every one with fewer.
/// </param>
/// <param name="Tried">For one change, two, three: how many sets were tried, as far as the search went.</param>
/// <param name="IsComplete">False when a bound ended the search before all sets were tried.</param>
public sealed record FindingRemedies(int Finding, IReadOnlyList<RemedySet> Sets, IReadOnlyList<int> Tried, bool IsComplete);

/// <summary>One change of a plan.</summary>
/// <param name="Change">What to do.</param>
/// <param name="Clears">Indices of the findings that stay, or come back, without it.</param>
public sealed record PlanStep(Change Change, IReadOnlyList<int> Clears);

/// <summary>What to do for the whole plant: the fewest changes that were found, of those the least work, proved together.</summary>
/// <param name="Steps">What to do, that which clears most first.</param>
/// <param name="Clears">Indices of the findings that are gone then.</param>
/// <param name="Remaining">Indices of the findings, of those asked for, that stay.</param>
/// <param name="After">The plant as it is then, checked.</param>
public sealed record RemedyPlan(IReadOnlyList<PlanStep> Steps, IReadOnlyList<int> Clears, IReadOnlyList<int> Remaining, CheckReport After)
{
    /// <summary>The work it makes, in minutes. Common practice.</summary>
    public int Minutes => Steps.Sum(s => s.Change.Minutes);

    /// <summary>The changes in the order in which they are laid.</summary>
    public IReadOnlyList<Change> Changes => [.. ChangeContext.InOrder(Steps.Select(s => s.Change))];

    /// <summary>
    /// True when a plant that was read again is as proved: the same parts, the same links proven, the same findings about the same
    /// things.
    /// </summary>
    public bool IsReachedBy(CheckReport other)
    {
        IReadOnlyList<Part> parts = After.Traced.Plant.Parts, others = other.Traced.Plant.Parts;
        return parts.Select(p => p.Name).SequenceEqual(others.Select(p => p.Name))
            && After.Context.Outcomes.All.Select(o => o.IsProven).SequenceEqual(other.Context.Outcomes.All.Select(o => o.IsProven))
            && SubjectsOf(After).SetEquals(SubjectsOf(other));
    }

    /// <summary>Places in the document do not count: lines were added to it.</summary>
    private static HashSet<(string, Subject)> SubjectsOf(CheckReport report) =>
    [
        .. report.Findings.SelectMany(f => Subjects.Of(report.Context, f), (f, subject) =>
            (f.Rule.Code, subject.Kind == SubjectKind.Line ? subject with { A = 0, B = 0 } : subject)),
    ];
}

/// <summary>How much was tried.</summary>
/// <param name="Tried">Sets of changes that were tried on the light of the plant.</param>
/// <param name="Proved">Sets that were proved or refuted by a full check.</param>
/// <param name="Bound">What ended the search before it was complete, in words, or null.</param>
public sealed record RemedyWork(int Tried, int Proved, string? Bound);
