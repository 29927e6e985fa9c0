using PolarityMap.Core.Locate;
using PolarityMap.Core.Strands;

namespace PolarityMap.Cli.Output;

/// <summary>A decision tree as numbered steps, to be worked off at the rack.</summary>
internal sealed class PlanText(CommandContext context, TracedPlant traced)
{
    private const int Width = 100;

    private readonly Paint _paint = new(context.Colour);

    private TextWriter Out => context.Out;

    public void Write(TestPlan plan)
    {
        Out.WriteLine(_paint.Strong(traced.Plant.Title.Title));
        IReadOnlyList<PlanStep> steps = PlanSteps.Of(plan);
        if (steps.Count == 0)
        {
            Out.WriteLine(plan.Remaining.Count == 0 ? "There is nothing to test." : "No test tells more than this:");
            foreach ((string What, string? Mend) end in FieldWords.Ends(plan.Remaining))
                Wrapped.Write(Out, Words(end), "  ", Width);
        }

        foreach (PlanStep step in steps)
        {
            Out.WriteLine();
            string[] lines = [.. Wrapped.Lines($"{FieldWords.Sentence(FieldWords.Do(traced, step.Test))} ({step.Test.Minutes} min).", $"{step.Number,3}. ", Width)];
            foreach (string line in lines)
                Out.WriteLine(_paint.Strong(line));
            foreach (PlanAnswer answer in step.Answers)
                WriteAnswer(answer);
        }

        LocateText.WriteCautions(Out, plan.Remaining);
    }

    private void WriteAnswer(PlanAnswer answer)
    {
        string outcome = FieldWords.Sentence(FieldWords.Outcome(traced, answer.Outcome));
        if (answer.GoTo > 0)
        {
            Out.WriteLine($"     {outcome}: go to {answer.GoTo}.");
            return;
        }

        string first = $"     {outcome}: ";
        foreach ((string What, string? Mend) end in FieldWords.Ends(answer.Remaining))
        {
            Wrapped.Write(Out, Words(end), first, Width);
            first = "       or ";
        }
    }

    private static string Words((string What, string? Mend) end) => $"{end.What}.{(end.Mend is null ? "" : $" Mend: {end.Mend}.")}";
}
