using System.Globalization;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Comparison;

/// <summary>
/// Plans of one brief side by side, the best first: a row for each with numbers and words and its sum as a bar, and below what
/// cannot serve with the codes of the findings that say so. Nothing is told by colour alone.
/// </summary>
public static class ComparisonSheets
{
    private const double Margin = 4;
    private const double HeadHeight = 13;
    private const double NumbersHeight = 4.9;
    private const double WordsLine = 3.1;
    private const double RowGap = 1.6;
    private const double NumberWidth = 11.5;
    private const double NameWidth = 28.5;
    private const double SumWidth = 12;
    private const double NoteLine = 3.75;
    private const double SignSize = 3.2;
    private const double LeastBar = 8;

    /// <summary>A piece of the sheet that is not parted.</summary>
    private sealed record Block(double Height, Func<double, IEnumerable<SceneElement>> At);

    /// <summary>The sheets, at least one.</summary>
    /// <param name="comparison">The plans.</param>
    /// <param name="asked">Whether the brief itself asks for a candidate, which gets an arrow then.</param>
    /// <param name="asSet">True for sheets A4, as many as it takes; false for one sheet as large as it has to be.</param>
    public static IReadOnlyList<DrawingSheet> Draw(PlanComparison comparison, Func<PlanCandidate, bool> asked, bool asSet)
    {
        SheetFormat format = SheetFormat.A4Landscape;
        Area free = SheetFrame.FreeOf(format);
        double left = free.X + Margin, width = free.Width - (2 * Margin);
        List<Block> blocks = Blocks(comparison, asked, left, width);
        List<string> notes = Notes(comparison, asked, width);
        double foot = (notes.Count * NoteLine) + 3, room = free.Height - HeadHeight - foot;
        var pages = new List<List<Block>> { new() };
        double used = 0;
        foreach (Block block in blocks)
        {
            if (asSet && used + block.Height > room && pages[^1].Count > 0)
            {
                pages.Add([]);
                used = 0;
            }

            pages[^1].Add(block);
            used += block.Height;
        }

        if (!asSet && used > room)
            format = SheetFormat.Custom(format.WidthMm, Math.Ceiling(format.HeightMm + used - room));
        return [.. pages.Select((page, i) => Sheet(comparison, format, page, notes, new SheetPlace(i + 1, pages.Count), foot))];
    }

    private static DrawingSheet Sheet(PlanComparison comparison, SheetFormat format, List<Block> blocks, List<string> notes, SheetPlace place, double foot)
    {
        PlantTitle title = comparison.Brief.Title;
        SheetFrame frame = SheetFrame.For(format, new TitleBlock
        {
            Title = title.Title,
            SupplementaryTitle = "Methods and bases side by side",
            Site = title.Site,
            DocumentType = "Comparison of plans",
            IdentificationNumber = title.Number,
            Revision = title.Revision,
            DateOfIssue = title.Date,
            Creator = title.Author,
            Sheet = place.Sheet,
            Sheets = place.Sheets,
        });
        Area free = frame.Free;
        double left = free.X + Margin, y = free.Y + HeadHeight;
        var rows = new List<SceneElement>();
        foreach (Block block in blocks)
        {
            rows.AddRange(block.At(y));
            y += block.Height;
        }

        double at = free.Bottom - foot + 1.2 + CapHeights.Strand;
        var words = new List<SceneElement>();
        foreach (string note in notes)
        {
            words.Add(new Label(left, at, note, CapHeights.Strand, Anchor.Start, Palette.Ink));
            at += NoteLine;
        }

        return new DrawingSheet
        {
            WidthMm = format.WidthMm,
            HeightMm = format.HeightMm,
            Title = title.Title.Length > 0 ? title.Title : "Comparison of plans",
            Description = $"{comparison.Plans.Count} of {comparison.Candidates} ways to build it serve, the best first: {string.Join("; ", comparison.Plans.Select(p => p.Candidate))}.",
            Layers = [frame.Drawing, new SceneGroup("head", comparison.Plans.Count == 0 ? [] : [.. Head(comparison, left, free.Y, free.Width - (2 * Margin))]), new SceneGroup("plans", rows), new SceneGroup("notes", words)],
        };
    }

    private static IEnumerable<SceneElement> Head(PlanComparison comparison, double left, double top, double width)
    {
        double upper = top + 3 + CapHeights.Strand, lower = upper + 1.6 + CapHeights.Least;
        Label Top(double x, string words, Anchor anchor = Anchor.Start) => new(x, upper, words, CapHeights.Strand, anchor, Palette.Ink);
        yield return Top(left, "No.");
        yield return Top(left + NumberWidth, "Method, base");
        double x = left + NumberWidth + NameWidth;
        foreach (ComparisonColumn column in ComparisonColumn.Of(comparison))
        {
            yield return Top(x, column.Head);
            (string below, double cap) = TextFit.Fit(column.Below, column.Width - 1, CapHeights.Least);
            yield return new Label(x, lower, below, cap, Anchor.Start, Palette.Ink);
            x += column.Width;
        }

        yield return Top(x, "Sum");
        yield return new Label(x, lower, left + width - x > 25 ? "the less the better" : "less is best", CapHeights.Least, Anchor.Start, Palette.Ink);
        yield return new Line(left, top + HeadHeight - 1, left + width, top + HeadHeight - 1, Palette.Ink, LineWidths.Outline);
    }

    private static List<Block> Blocks(PlanComparison comparison, Func<PlanCandidate, bool> asked, double left, double width)
    {
        var blocks = new List<Block>();
        IReadOnlyList<ComparisonColumn> columns = ComparisonColumn.Of(comparison);
        decimal most = comparison.Plans.Select(p => p.Score).DefaultIfEmpty(0).Max();
        int number = 1;
        foreach (ComparedPlan[] plans in Alike(comparison, columns))
        {
            int first = number;
            number += plans.Length;
            (string Text, bool Asked)[] words = [.. plans.SelectMany(p => Words(p, plans.Length > 1).SelectMany((w, i) => SheetText.Wrapped(w, width - NumberWidth, CapHeights.Least).Select((t, j) => (t, i == 0 && j == 0 && asked(p.Candidate)))))];
            double height = NumbersHeight + (words.Length * WordsLine) + RowGap;
            blocks.Add(new Block(height, y => Row(plans, first, columns, words, most, new Area(left, y, width, height))));
        }

        if (comparison.Excluded.Count > 0)
        {
            blocks.Add(new Block(7, y => [new Label(left, y + 2 + CapHeights.Part, "Cannot serve", CapHeights.Part, Anchor.Start, Palette.Ink)]));
            foreach (ExcludedPlans excluded in comparison.Excluded)
            {
                List<string> lines = SheetText.Wrapped($"{Capital(comparison.Listed(excluded))}: {string.Join("; ", excluded.Reasons)}", width - NumberWidth);
                blocks.Add(new Block((lines.Count * NoteLine) + 1, y => Excluded(lines, left, y)));
            }
        }

        return blocks;
    }

    /// <summary>Plans that follow each other with one base and the same numbers, which stand in one row.</summary>
    private static List<ComparedPlan[]> Alike(PlanComparison comparison, IReadOnlyList<ComparisonColumn> columns)
    {
        var rows = new List<List<ComparedPlan>>();
        foreach (ComparedPlan plan in comparison.Plans)
        {
            if (rows.Count > 0 && rows[^1][0] is { } first && first.Score == plan.Score && first.Candidate.Base == plan.Candidate.Base && columns.All(c => c.Value(first) == c.Value(plan)))
                rows[^1].Add(plan);
            else
                rows.Add([plan]);
        }

        return [.. rows.Select(r => r.ToArray())];
    }

    /// <summary>What a plan takes, and what comes later, in words.</summary>
    private static IEnumerable<string> Words(ComparedPlan plan, bool named)
    {
        PlanMeasures m = plan.Measures;
        string name = named ? $"{plan.Candidate.Method.Name}: " : "";
        yield return name + string.Join("; ", new[] { m.CassetteKinds, m.CordKinds, m.TrunkKinds, m.AdapterKinds }.Where(k => k.Count > 0).Select(k => string.Join(", ", k)));
        if (m.Later is { } later)
            yield return $"{(named ? $"{name}later" : "Later")} buy {PlanItem.Listed(later.Buy)}; {PlanItem.Listed(later.Stays)} stays";
    }

    private static IEnumerable<SceneElement> Row(ComparedPlan[] plans, int number, IReadOnlyList<ComparisonColumn> columns, (string Text, bool Asked)[] words, decimal most, Area area)
    {
        ComparedPlan plan = plans[0];
        double foot = area.Y + 1 + CapHeights.Strand;
        Label Text(double x, string text, Anchor anchor = Anchor.Start) => new(x, foot, text, CapHeights.Strand, anchor, Palette.Ink);
        string numbers = plans.Length == 1 ? $"{number}" : string.Create(CultureInfo.InvariantCulture, $"{number}-{number + plans.Length - 1}");
        yield return Text(area.X, numbers);
        (string names, double nameCap) = TextFit.Fit($"{string.Join(' ', plans.Select(p => p.Candidate.Method.Name))}, base {plan.Candidate.Base}", NameWidth - 1, CapHeights.Strand);
        yield return new Label(area.X + NumberWidth, foot, names, nameCap, Anchor.Start, Palette.Ink);
        double x = area.X + NumberWidth + NameWidth;
        foreach (ComparisonColumn column in columns)
        {
            (string text, double cap) = TextFit.Fit(column.Value(plan), column.Width - 1.5, CapHeights.Strand);
            yield return new Label(x, foot, text, cap, Anchor.Start, Palette.Ink);
            x += column.Width;
        }

        yield return Text(x, plan.Score.ToString("0.00", CultureInfo.InvariantCulture));
        foreach (SceneElement piece in Bar(plan, most, new Area(x + SumWidth, area.Y + 0.6, area.Right - x - SumWidth, 3.4)))
            yield return piece;
        for (int i = 0; i < words.Length; i++)
        {
            double wordsFoot = area.Y + NumbersHeight + (i * WordsLine) + CapHeights.Least;
            yield return new Label(area.X + NumberWidth, wordsFoot, words[i].Text, CapHeights.Least, Anchor.Start, Palette.Ink);
            if (words[i].Asked)
                yield return Marks.ArrowRight(area.X + NumberWidth - 1.2, wordsFoot - (CapHeights.Least / 2), Palette.Ink);
        }

        yield return new Line(area.X, area.Bottom - 0.6, area.Right, area.Bottom - 0.6, Palette.Ink, LineWidths.Leader);
    }

    /// <summary>The sum as a bar of pieces, one for each weight, with its letter where there is room.</summary>
    private static IEnumerable<SceneElement> Bar(ComparedPlan plan, decimal most, Area area)
    {
        const double leastForLetter = 2.4;
        if (most == 0 || area.Width < LeastBar)
            yield break;
        double x = area.X;
        for (int i = 0; i < plan.Pieces.Count; i++)
        {
            double width = area.Width * (double)(plan.Pieces[i] / most);
            if (width < LineWidths.Inner)
                continue;
            yield return new Box(x, area.Y, width, area.Height, 0, Palette.Ink, LineWidths.Inner, Palette.PartFill);
            if (width >= leastForLetter)
                yield return Label.CentredOn(x + (width / 2), area.CentreY, Letter(i), CapHeights.Least, Anchor.Middle, Palette.Ink);
            x += width;
        }
    }

    private static string Letter(int weight) => weight switch
    {
        3 => "T",
        6 => "W",
        7 => "C",
        _ => PlanWeights.Names[weight][..1].ToUpperInvariant(),
    };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>What is left for the bars.</summary>
    private static double BarWidth(PlanComparison comparison, double width) => width - NumberWidth - NameWidth - ComparisonColumn.Of(comparison).Sum(c => c.Width) - SumWidth;

    private static IEnumerable<SceneElement> Excluded(List<string> lines, double left, double y)
    {
        yield return Marks.Error(left + (SignSize / 2), y + 0.6 + (CapHeights.Strand / 2), SignSize);
        for (int i = 0; i < lines.Count; i++)
            yield return new Label(left + NumberWidth, y + 0.6 + CapHeights.Strand + (i * NoteLine), lines[i], CapHeights.Strand, Anchor.Start, Palette.Ink);
    }

    private static List<string> Notes(PlanComparison comparison, Func<PlanCandidate, bool> asked, double width)
    {
        var notes = new List<string>();
        if (comparison.Plans.Count > 0)
        {
            string weights = string.Join(", ", comparison.Weights.Values.Select((w, i) => (Weight: w, Words: string.Create(CultureInfo.InvariantCulture, $"{(BarWidth(comparison, width) < LeastBar ? "" : $"{Letter(i)} ")}{PlanWeights.Names[i]} times {w:0.###}"))).Where(w => w.Weight > 0).Select(w => w.Words));
            notes.Add("Every plan with a number was built, traced and checked: all links proven, nothing found. Outlets with a cassette inside count as cassettes, switches and devices not as parts. Adapters: Type-A keys opposed, Type-B keys aligned.");
            notes.Add(weights.Length == 0
                ? "All weights are 0: the order is that of the standard."
                : $"Sum: {weights}, each a share of the most that any plan takes{(comparison.Weights.Kinds > 0 ? "; kinds are those of cassettes, cords now and later, trunks and adapters" : "")}.");
            if (comparison.IsPriceLeftOut)
                notes.Add("Prices are left out of the sum, as some parts have none.");
            if (comparison.Plans.Any(p => p.Measures.Price is { IsComplete: false }))
                notes.Add("Price over: the price list is incomplete, some parts have no price in it.");
            if (comparison.Plans.Any(p => asked(p.Candidate)))
                notes.Add("Arrow: what the brief itself asks for.");
        }

        notes.Add($"A plan replaces no survey. {Cautions.Codes}");
        return [.. notes.SelectMany(n => SheetText.Wrapped(n, width))];
    }
}
