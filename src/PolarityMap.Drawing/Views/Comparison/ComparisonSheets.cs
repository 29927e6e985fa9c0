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
    private const double SumWidth = 12;
    private const double NoteLine = 3.75;
    private const double SignSize = 3.2;
    private const double LeastBar = 8;
    private const string Nothing = "nothing";
    private const double LeastForLetter = 2.2;

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
        var table = new ComparisonTable(comparison, width - NumberWidth);
        List<Block> blocks = Blocks(comparison, table, asked, left, width);
        List<string> notes = Notes(comparison, table, asked, width);
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
        return [.. pages.Select((page, i) => Sheet(comparison, table, format, page, notes, new SheetPlace(i + 1, pages.Count), foot))];
    }

    private static DrawingSheet Sheet(PlanComparison comparison, ComparisonTable table, SheetFormat format, List<Block> blocks, List<string> notes, SheetPlace place, double foot)
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
            Layers = [frame.Drawing, new SceneGroup("head", comparison.Plans.Count == 0 ? [] : [.. Head(table, left, free.Y, free.Width - (2 * Margin))]), new SceneGroup("plans", rows), new SceneGroup("notes", words)],
        };
    }

    private static IEnumerable<SceneElement> Head(ComparisonTable table, double left, double top, double width)
    {
        double upper = top + 3 + CapHeights.Strand, lower = upper + 1.6 + CapHeights.Least;
        Label Top(double x, string words, Anchor anchor = Anchor.Start) => new(x, upper, words, table.Cap, anchor, Palette.Ink);
        yield return Top(left, "No.");
        yield return Top(left + NumberWidth, "Method, base");
        double x = left + NumberWidth + table.NameWidth;
        for (int i = 0; i < table.Columns.Count; i++)
        {
            yield return Top(x, table.Columns[i].Head);
            (string below, double cap) = TextFit.Fit(table.Columns[i].Below, table.Widths[i] - 1, CapHeights.Least);
            yield return new Label(x, lower, below, cap, Anchor.Start, Palette.Ink);
            x += table.Widths[i];
        }

        yield return Top(x, "Sum");
        yield return new Label(x, lower, left + width - x > 25 ? "the less the better" : "less is best", CapHeights.Least, Anchor.Start, Palette.Ink);
        yield return new Line(left, top + HeadHeight - 1, left + width, top + HeadHeight - 1, Palette.Ink, LineWidths.Outline);
    }

    private static List<Block> Blocks(PlanComparison comparison, ComparisonTable table, Func<PlanCandidate, bool> asked, double left, double width)
    {
        var blocks = new List<Block>();
        decimal most = comparison.Plans.Select(p => p.Score).DefaultIfEmpty(0).Max();
        int number = 1;
        double bar = BarWidth(table, width);
        foreach (ComparedPlan[] plans in table.Rows)
        {
            int first = number;
            number += plans.Length;
            (string Text, bool Asked)[] words = [.. Words(plans, asked, most, bar).SelectMany(w => SheetText.Wrapped(w.Text, width - NumberWidth, CapHeights.Least).Select((t, line) => (t, line == 0 && w.Asked)))];
            double height = NumbersHeight + (words.Length * WordsLine) + RowGap;
            blocks.Add(new Block(height, y => Row(plans, first, table, words, most, new Area(left, y, width, height))));
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

    /// <summary>What the plans of a row take, what comes later, and a sum whose bar is too narrow for letters; what is said of several once.</summary>
    private static IEnumerable<(string Text, bool Asked)> Words(ComparedPlan[] plans, Func<PlanCandidate, bool> asked, decimal most, double barWidth)
    {
        string Name(IEnumerable<ComparedPlan> some) => plans.Length > 1 ? string.Join(' ', some.Select(p => p.Candidate.Method.Name)) + ": " : "";
        foreach (var taken in plans.GroupBy(p => (Text: Takes(p.Measures), Asked: asked(p.Candidate))))
            yield return (Name(taken) + taken.Key.Text, taken.Key.Asked);
        if (plans.All(p => p.Measures.Later is not null))
        {
            string left = Merged(plans, l => l.Spare);
            yield return ($"Later buy {Merged(plans, l => l.Buy)}. {Merged(plans, l => l.Stays)} stays.{(left == Nothing ? "" : $" Left over {left}.")}", false);
        }

        if (SumWords(plans[0], most, barWidth) is { } sum)
            yield return (sum, false);
    }

    private static string Takes(PlanMeasures m) => string.Join("; ", new[] { m.CassetteKinds, m.CordKinds, m.TrunkKinds, m.AdapterKinds }.Where(k => k.Count > 0).Select(k => string.Join(", ", k)));

    /// <summary>Parts that all plans of a row have in common, and what beside them is not the same, by the names of the methods.</summary>
    private static string Merged(ComparedPlan[] plans, Func<LaterChange, IReadOnlyList<PlanItem>> of)
    {
        string[][] lists = [.. plans.Select(p => PlanItem.Lines(of(p.Measures.Later!)).ToArray())];
        string[] common = [.. lists[0].Where(i => lists.All(l => l.Contains(i)))];
        IEnumerable<string> rest = plans.Select((p, i) => (Plan: p, Words: string.Join(", ", lists[i].Except(common)))).Where(p => p.Words.Length > 0)
            .GroupBy(p => p.Words).Select(g => $"with {string.Join(' ', g.Select(p => p.Plan.Candidate.Method.Name))} {g.Key}");
        string[] told = [.. common.Length > 0 ? [string.Join(", ", common)] : Array.Empty<string>(), .. rest];
        return told.Length == 0 ? Nothing : string.Join(", ", told);
    }

    /// <summary>What each weight adds, where a piece of the bar is too narrow for its letter; else null.</summary>
    private static string? SumWords(ComparedPlan plan, decimal most, double barWidth)
    {
        if (most == 0 || barWidth < LeastBar || plan.Pieces.All(p => p == 0 || barWidth * (double)(p / most) >= LeastForLetter))
            return null;
        return "Sum " + string.Join(" + ", plan.Pieces.Select((p, i) => (Piece: p, Words: string.Create(CultureInfo.InvariantCulture, $"{Letter(i)} {p:0.00}"))).Where(p => p.Piece > 0).Select(p => p.Words));
    }

    private static IEnumerable<SceneElement> Row(ComparedPlan[] plans, int number, ComparisonTable table, (string Text, bool Asked)[] words, decimal most, Area area)
    {
        ComparedPlan plan = plans[0];
        double foot = area.Y + 1 + CapHeights.Strand;
        Label Text(double x, string text, Anchor anchor = Anchor.Start) => new(x, foot, text, table.Cap, anchor, Palette.Ink);
        string numbers = plans.Length == 1 ? $"{number}" : string.Create(CultureInfo.InvariantCulture, $"{number}-{number + plans.Length - 1}");
        yield return Text(area.X, numbers);
        yield return Text(area.X + NumberWidth, ComparisonTable.NameOf(plans));
        double x = area.X + NumberWidth + table.NameWidth;
        for (int i = 0; i < table.Columns.Count; i++)
        {
            (string text, double cap) = TextFit.Fit(table.Columns[i].Value(plan), table.Widths[i] - 1, table.Cap);
            yield return new Label(x, foot, text, cap, Anchor.Start, Palette.Ink);
            x += table.Widths[i];
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
        if (most == 0 || area.Width < LeastBar)
            yield break;
        double x = area.X;
        for (int i = 0; i < plan.Pieces.Count; i++)
        {
            double width = area.Width * (double)(plan.Pieces[i] / most);
            if (width < LineWidths.Inner)
                continue;
            yield return new Box(x, area.Y, width, area.Height, 0, Palette.Ink, LineWidths.Inner, Palette.PartFill);
            if (width >= LeastForLetter)
                yield return Label.CentredOn(x + (width / 2), area.CentreY, Letter(i), CapHeights.Least, Anchor.Middle, Palette.Ink);
            x += width;
        }
    }

    private static string Letter(int weight) => PlanWeights.Names[weight] switch
    {
        "matings" => "T",
        "margin" => "W",
        "price" => "C",
        var name => name[..1].ToUpperInvariant(),
    };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>What is left for the bars.</summary>
    private static double BarWidth(ComparisonTable table, double width) => width - NumberWidth - table.NameWidth - table.Widths.Sum() - SumWidth;

    private static IEnumerable<SceneElement> Excluded(List<string> lines, double left, double y)
    {
        yield return Marks.Error(left + (SignSize / 2), y + 0.6 + (CapHeights.Strand / 2), SignSize);
        for (int i = 0; i < lines.Count; i++)
            yield return new Label(left + NumberWidth, y + 0.6 + CapHeights.Strand + (i * NoteLine), lines[i], CapHeights.Strand, Anchor.Start, Palette.Ink);
    }

    private static List<string> Notes(PlanComparison comparison, ComparisonTable table, Func<PlanCandidate, bool> asked, double width)
    {
        var notes = new List<string>();
        if (comparison.Plans.Count > 0)
        {
            string weights = string.Join(", ", comparison.Weights.Values.Select((w, i) => (Weight: w, Words: string.Create(CultureInfo.InvariantCulture, $"{(BarWidth(table, width) < LeastBar ? "" : $"{Letter(i)} ")}{PlanWeights.Names[i]} times {w:0.###}"))).Where(w => w.Weight > 0).Select(w => w.Words));
            notes.Add("Every plan with a number was built, traced and checked: all links proven, nothing found. Outlets with a cassette inside count as cassettes, switches and devices not as parts. Adapters: Type-A keys opposed, Type-B keys aligned.");
            notes.Add(weights.Length == 0
                ? $"All weights are 0: the order is {string.Join(", ", PlanMethod.Preferred)}, small bases first."
                : $"Sum: {weights}, each a share of the most that any plan takes{(comparison.Weights.Kinds > 0 ? "; kinds are those of cassettes, cords now and later, trunks and adapters" : "")}{(comparison.Weights.Rows > 0 ? "; rows are added whole where array connectors have two" : "")}. Of equals the order is {string.Join(", ", PlanMethod.Preferred)}.");
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
