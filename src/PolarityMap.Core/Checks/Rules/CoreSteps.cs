using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

/// <summary>Findings about two fibres of different cores, one for each stop that joins them.</summary>
internal static class CoreSteps
{
    public static void Report(
        Rule rule,
        CheckContext context,
        List<Finding> findings,
        Func<Part, Part, bool> applies,
        Func<Part, Part, (string Expected, string Actual)> say)
    {
        Plant plant = context.Plant;
        var stops = new StopFindings(rule, context);
        var faults = new Dictionary<(SourcePlace, int, int), StopFault>();
        foreach (CoreStep step in context.Fibres.Steps)
        {
            Part first = plant.Parts[step.First];
            Part second = plant.Parts[step.Second];
            if (!applies(first, second))
                continue;

            // Two strands of one mating may be told in different directions.
            var key = (step.Place, Math.Min(step.First, step.Second), Math.Max(step.First, step.Second));
            if (faults.TryGetValue(key, out StopFault? known))
            {
                stops.AddStrands(step.Place, known, [step.Strand]);
                stops.AddSites(step.Place, known, [step.At]);
                continue;
            }

            (string expected, string actual) = say(first, second);
            string[] between = [.. step.Between.Select(p => plant.Parts[p].Name).Distinct()];
            string by = between.Length == 0 ? "" : $" by way of {string.Join(", ", between)}, which {(between.Length == 1 ? "states" : "state")} no fibre";
            var fault = new StopFault(
                Alike(first, second),
                $"{first.Name} of {first.Fibre} meets {second.Name} of {second.Fibre}{by}",
                expected,
                actual);
            faults[key] = fault;
            stops.Add(step.Place, fault, [step.Strand], [first.Place, second.Place], [step.At]);
        }

        stops.Report(findings);
    }

    private static string Alike(Part first, Part second) =>
        string.CompareOrdinal(first.Fibre!.Name, second.Fibre!.Name) <= 0 ? $"{first.Fibre} {second.Fibre}" : $"{second.Fibre} {first.Fibre}";
}
