using PolarityMap.Core.Locate;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Card;

namespace PolarityMap.Drawing.Views.Plan;

/// <summary>Turns the steps of a plan into rows of a width: a head for each test, and a row with a box to tick for each outcome.</summary>
/// <param name="traced">The plant.</param>
/// <param name="width">Width of the rows, mm.</param>
internal sealed class PlanRows(TracedPlant traced, double width)
{
    /// <summary>The most explanations that an outcome lists; more are counted.</summary>
    private const int MostListed = 6;

    private const double Line = 3.9;
    private const double HeadLine = 5.1;
    private const double Disc = 3;
    private const double Indent = 8;
    private const double TickBox = 2.8;
    private const double Space = 1.4;

    public List<PlanRow> Of(TestPlan plan)
    {
        var rows = new List<PlanRow>();
        IReadOnlyList<PlanStep> steps = PlanSteps.Of(plan);
        if (steps.Count == 0)
            rows.Add(Words(0, plan.Remaining.Count == 0 ? ["There is nothing to test."] : [.. Listed(plan.Remaining)]));
        foreach (PlanStep step in steps)
        {
            rows.Add(Head(step));
            foreach (PlanAnswer answer in step.Answers)
                rows.Add(Answer(step.Number, answer));
        }

        return rows;
    }

    /// <summary>The line at the top of a page on which a step goes on.</summary>
    public static PlanRow GoesOn(int step) => new(step, HeadLine + Space, true, (x, y) =>
        [.. Number(x + Disc, y + Disc, step), Label.CentredOn(x + Indent, y + Disc, "goes on", CapHeights.Strand, Anchor.Start, Palette.MutedInk)]);

    private PlanRow Head(PlanStep step)
    {
        string words = $"{FieldWords.Sentence(FieldWords.Do(traced, step.Test))} ({step.Test.Minutes}\u00A0min).";
        List<string> lines = CardWrap.Lines(words, width - Indent, CapHeights.Part);
        return new PlanRow(step.Number, Math.Max(2 * Disc, lines.Count * HeadLine) + (2 * Space), true, (x, y) =>
        [
            new Line(x, y, x + width, y, Palette.Ink, LineWidths.Leader),
            .. Number(x + Disc, y + Space + Disc, step.Number),
            .. lines.Select((l, i) => new Label(x + Indent, y + Space + Disc + (CapHeights.Part / 2) + (i * HeadLine), l, CapHeights.Part, Anchor.Start, Palette.Ink)),
        ]);
    }

    private PlanRow Answer(int step, PlanAnswer answer)
    {
        const double textX = Indent + TickBox + 2;
        string outcome = FieldWords.Sentence(FieldWords.Outcome(traced, answer.Outcome));
        const double toRight = (2 * Disc) + 2;
        bool goesOn = answer.GoTo > 0;
        List<string> lines = CardWrap.Lines(outcome, width - textX - (goesOn ? toRight : 0));
        List<string> ends = goesOn ? [] : [.. Listed(answer.Remaining).SelectMany(e => CardWrap.Lines(e, width - textX - 3))];
        double height = Math.Max(goesOn ? 2 * Disc : 0, (lines.Count + ends.Count) * Line) + Space;
        return new PlanRow(step, height, false, (x, y) =>
        {
            double middle = y + (goesOn ? Disc : Line / 2);
            var elements = new List<SceneElement> { new Box(x + Indent, middle - (TickBox / 2), TickBox, TickBox, 0, Palette.Ink, LineWidths.Inner) };
            for (int i = 0; i < lines.Count; i++)
                elements.Add(Label.CentredOn(x + textX, middle + (i * Line), lines[i], CapHeights.Strand, Anchor.Start, Palette.Ink));
            for (int i = 0; i < ends.Count; i++)
                elements.Add(Label.CentredOn(x + textX + 3, middle + ((lines.Count + i) * Line), ends[i], CapHeights.Strand, Anchor.Start, Palette.Ink));
            if (!goesOn)
                return elements;

            // A line leads the eye to the number of the next step.
            double from = x + textX + ((Label)elements[^1]).WidthMm + 2, to = x + width - (2 * Disc);
            double tip = to - 0.4;
            if (tip - Marks.ArrowLength > from)
                elements.Add(new Line(from, middle + ((lines.Count - 1) * Line), tip - Marks.ArrowLength, middle + ((lines.Count - 1) * Line), Palette.Guide, LineWidths.Leader));
            elements.Add(Marks.ArrowRight(tip, middle + ((lines.Count - 1) * Line), Palette.Ink));
            elements.AddRange(Number(x + width - Disc, middle + ((lines.Count - 1) * Line), answer.GoTo));
            return elements;
        });
    }

    private PlanRow Words(int step, IReadOnlyList<string> sentences)
    {
        List<string> lines = [.. sentences.SelectMany(s => CardWrap.Lines(s, width))];
        return new PlanRow(step, (lines.Count * Line) + Space, false, (x, y) =>
            lines.Select((l, i) => Label.CentredOn(x, y + (Line / 2) + (i * Line), l, CapHeights.Strand, Anchor.Start, Palette.Ink)));
    }

    private static IEnumerable<string> Listed(IReadOnlyList<Explanation> remaining)
    {
        bool first = true;
        foreach ((string what, string? mend) in FieldWords.Ends([.. remaining.Take(MostListed)]))
        {
            yield return first ? FieldWords.Sentence(what) + "." : $"Or: {what}.";
            if (mend is not null)
                yield return $"Mend: {mend.Replace(" min)", "\u00A0min)", StringComparison.Ordinal)}.";
            first = false;
        }

        if (remaining.Count > MostListed)
            yield return $"Or one of {remaining.Count - MostListed} less likely ones: note what you saw and search again.";
    }

    private static IEnumerable<SceneElement> Number(double x, double y, int number) =>
    [
        new Circle(x, y, Disc - (LineWidths.Outline / 2), Palette.Ink, LineWidths.Outline, Palette.Paper),
        Label.CentredOn(x, y, $"{number}", CapHeights.Strand, Anchor.Middle, Palette.Ink),
    ];
}
