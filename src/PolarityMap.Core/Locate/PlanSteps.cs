namespace PolarityMap.Core.Locate;

/// <summary>What follows from an outcome of a step.</summary>
/// <param name="Outcome">What was seen.</param>
/// <param name="GoTo">The number of the next step, or 0 where the plan ends.</param>
/// <param name="Remaining">What is left there, the most likely first; empty where the outcome was not to be expected.</param>
public sealed record PlanAnswer(Observation Outcome, int GoTo, IReadOnlyList<Explanation> Remaining);

/// <summary>A numbered step of a decision tree.</summary>
/// <param name="Number">From 1, in the order in which a card lists them.</param>
/// <param name="Test">What to do.</param>
/// <param name="Answers">For each outcome, in the order of the test, what follows.</param>
public sealed record PlanStep(int Number, SiteTest Test, IReadOnlyList<PlanAnswer> Answers);

/// <summary>A decision tree as a list of numbered steps, as one prints it.</summary>
public static class PlanSteps
{
    /// <summary>
    /// The steps, each followed by those of its first outcome, then of its second, and so on, so that the likely way is read from
    /// top to bottom; none where nothing is to be tested.
    /// </summary>
    public static IReadOnlyList<PlanStep> Of(TestPlan plan)
    {
        var order = new List<TestPlan>();
        var numbers = new Dictionary<TestPlan, int>(ReferenceEqualityComparer.Instance);
        var open = new Stack<TestPlan>([plan]);
        while (open.TryPop(out TestPlan? next))
        {
            if (next.Next is null || numbers.ContainsKey(next))
                continue;
            order.Add(next);
            numbers[next] = order.Count;
            for (int i = next.Branches.Count - 1; i >= 0; i--)
                open.Push(next.Branches[i]);
        }

        return [.. order.Select(p => new PlanStep(numbers[p], p.Next!.Test, [.. p.Next.Outcomes.Select((o, i) => Answer(o, p.Branches[i], numbers))]))];
    }

    private static PlanAnswer Answer(TestOutcome outcome, TestPlan branch, Dictionary<TestPlan, int> numbers) =>
        new(outcome.Observation, numbers.GetValueOrDefault(branch), branch.Remaining);
}
