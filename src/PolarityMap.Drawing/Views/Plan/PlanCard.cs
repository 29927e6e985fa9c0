using PolarityMap.Core.Locate;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Card;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Plan;

/// <summary>
/// A decision tree as a card to print in black and white and to work off at the rack: numbered tests, for each outcome a box to
/// tick, and where it leads or what it is. On A5 where that takes it, else on A4, and on as many sheets as it needs.
/// </summary>
public static class PlanCard
{
    private const double RowsTop = 1.6;
    private const double Line = 3.9;
    private const double TitleLine = 6.8;
    private const int MostSymptoms = 6;
    private const double MarkSize = 3.2;
    private const double FootLine = 3.9;

    /// <summary>The sheets in order, at least one.</summary>
    /// <param name="traced">The plant.</param>
    /// <param name="seen">What was seen before, to say what the card is for.</param>
    /// <param name="plan">The tree.</param>
    public static IReadOnlyList<DrawingSheet> Draw(TracedPlant traced, IReadOnlyList<Observation> seen, TestPlan plan)
    {
        List<Page> small = Pages(SheetFormat.A5Portrait, traced, seen, plan);
        List<Page> pages = small.Count == 1 ? small : Pages(SheetFormat.A4Portrait, traced, seen, plan);
        return [.. pages.Select((p, i) => p.Drawn(traced, i + 1, pages.Count))];
    }

    private static List<Page> Pages(SheetFormat format, TracedPlant traced, IReadOnlyList<Observation> seen, TestPlan plan)
    {
        Area inside = CardMeasures.Inside(format);
        List<PlanRow> rows = new PlanRows(traced, inside.Width).Of(plan);
        List<string> foot = Foot(inside.Width, FieldWords.Cautions(plan.Remaining));
        var pages = new List<Page>();
        int next = 0;
        while (next < rows.Count || pages.Count == 0)
        {
            List<(string Text, double Cap)> head = Head(traced.Plant.Title, traced, seen, inside.Width, isFirst: pages.Count == 0);
            double room = inside.Height - HeadHeight(head) - (foot.Count * FootLine) - (2 * RowsTop);
            var taken = new List<PlanRow>();
            if (next > 0 && !rows[next].IsHead)
                room -= Take(taken, PlanRows.GoesOn(rows[next].Step));
            int first = next;
            while (next < rows.Count && (next == first || Needed(rows, next) <= room))
                room -= Take(taken, rows[next++]);
            pages.Add(new Page(format, head, taken, foot));
        }

        return pages;
    }

    private static double Take(List<PlanRow> taken, PlanRow row)
    {
        taken.Add(row);
        return row.Height;
    }

    /// <summary>The height of a row, and of the one that a head stays with.</summary>
    private static double Needed(List<PlanRow> rows, int index) => rows[index].Height + (rows[index].IsHead && index + 1 < rows.Count ? rows[index + 1].Height : 0);

    private static List<(string Text, double Cap)> Head(PlantTitle plant, TracedPlant traced, IReadOnlyList<Observation> seen, double width, bool isFirst)
    {
        double beside = width - 26;
        var lines = new List<(string, double)>();
        lines.AddRange(CardWrap.Lines("Find the fault, step by step", beside, CapHeights.SheetTitle, 2).Select(l => (l, CapHeights.SheetTitle)));
        lines.AddRange(CardWrap.Lines(plant.Title, width, most: 2).Select(l => (l, CapHeights.Strand)));
        if (!isFirst)
            return lines;
        string[] marks = [.. new[] { plant.Site, plant.Revision is { } r ? $"rev. {r}" : null, plant.Date, plant.Number }.OfType<string>()];
        if (marks.Length > 0)
            lines.AddRange(CardWrap.Lines(string.Join(", ", marks), width, most: 2).Select(l => (l, CapHeights.Strand)));
        IEnumerable<string> symptoms = seen.Take(MostSymptoms).Select(o => "Seen: " + FieldWords.Saw(traced, o) + ".");
        if (seen.Count > MostSymptoms)
            symptoms = symptoms.Append($"And {seen.Count - MostSymptoms} more observations.");
        foreach (string symptom in symptoms)
            lines.AddRange(CardWrap.Lines(symptom, width, most: 3).Select(l => (l, CapHeights.Strand)));
        return lines;
    }

    private static double HeadHeight(List<(string Text, double Cap)> head) => head.Sum(l => l.Cap > CapHeights.Part ? TitleLine : Line) + 1;

    private static List<string> Foot(double width, string further) => CardWrap.Lines($"{Legend.Caution} {CardFoot.SourceCaution} {further}".TrimEnd(), width - MarkSize - 1.2);

    /// <summary>One sheet, planned.</summary>
    private sealed record Page(SheetFormat Format, List<(string Text, double Cap)> Head, List<PlanRow> Rows, List<string> Foot)
    {
        public DrawingSheet Drawn(TracedPlant traced, int number, int count)
        {
            const double border = CardMeasures.Border;
            Area inside = CardMeasures.Inside(Format);
            var outline = new Box(border, border, Format.WidthMm - (2 * border), Format.HeightMm - (2 * border), 1.5, Palette.Ink, LineWidths.Inner);
            var steps = new List<SceneElement>();
            double y = inside.Y + HeadHeight(Head) + RowsTop;
            foreach (PlanRow row in Rows)
            {
                steps.AddRange(row.Draw(inside.X, y));
                y += row.Height;
            }

            return new DrawingSheet
            {
                WidthMm = Format.WidthMm,
                HeightMm = Format.HeightMm,
                Title = $"Decision card: {traced.Plant.Title.Title}",
                Description = $"Tests to find a fault, sheet {number} of {count}. Each outcome has a box to tick and leads to the next step or to what is to be mended.",
                Layers = [new SceneGroup("sheet", [outline]), new SceneGroup("head", Heading(inside, number, count)), new SceneGroup("steps", steps), new SceneGroup("foot", Cautions(inside))],
            };
        }

        private List<SceneElement> Heading(Area inside, int number, int count)
        {
            var elements = new List<SceneElement> { new Label(inside.X + inside.Width, inside.Y + CapHeights.SheetTitle, $"card {number} of {count}", CapHeights.Strand, Anchor.End, Palette.Ink) };
            double y = inside.Y;
            foreach ((string text, double cap) in Head)
            {
                elements.Add(new Label(inside.X, y + cap, text, cap, Anchor.Start, Palette.Ink));
                y += cap > CapHeights.Part ? TitleLine : Line;
            }

            return elements;
        }

        private List<SceneElement> Cautions(Area inside)
        {
            double top = inside.Bottom - (Foot.Count * FootLine);
            var elements = new List<SceneElement>
            {
                new Line(inside.X, top - 1, inside.X + inside.Width, top - 1, Palette.Ink, LineWidths.Leader),
                Marks.Warning(inside.X + (MarkSize / 2), top + (MarkSize / 2), MarkSize),
            };
            for (int i = 0; i < Foot.Count; i++)
                elements.Add(new Label(inside.X + MarkSize + 1.2, top + CapHeights.Strand + (i * FootLine), Foot[i], CapHeights.Strand, Anchor.Start, Palette.Ink));
            return elements;
        }
    }
}
