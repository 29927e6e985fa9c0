using System.Globalization;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;

namespace PolarityMap.Cli.Output;

/// <summary>Plans side by side for people: a table, what each takes, what comes later, and what cannot serve.</summary>
internal sealed class ComparisonText(CommandContext context)
{
    private readonly Paint _paint = new(context.Colour);

    private TextWriter Out => context.Out;

    public void Write(PlanComparison comparison, IReadOnlyList<string> written)
    {
        Out.WriteLine(_paint.Strong(comparison.Brief.Title.Title));
        Out.WriteLine((comparison.Plans.Count, comparison.Candidates) switch
        {
            (1, 1) => "The one way to build it serves; it was built, traced and checked.",
            (0, 1) => "The one way to build it does not serve; it was built, traced and checked.",
            (var serving, var all) => $"{serving} of {all} ways to build it {(serving == 1 ? "serves" : "serve")}, each built, traced and checked.",
        });
        if (comparison.Plans.Count > 0)
            WritePlans(comparison);
        WriteExcluded(comparison);
        Out.WriteLine();
        if (comparison.Plans.Count == 0)
            Out.WriteLine("'polaritymap plan BRIEF' tells the nearest brief that can be met.");
        PlanResultText.WriteRemarks(Out, comparison.Brief);
        foreach (string path in written)
            Out.WriteLine($"Wrote {path}");
        Wrapped.Write(Out, Cautions.Codes, "");
    }

    private void WritePlans(PlanComparison comparison)
    {
        Wrapped.Write(Out, comparison.Weights.Values.All(w => w == 0)
            ? $"All weights are 0: the order is {string.Join(", ", PlanMethod.Preferred)}, small bases first."
            : $"The best first, by the weights {comparison.Weights.Words}, each a share of the most that any plan takes; of equals in the order {string.Join(", ", PlanMethod.Preferred)}.", "");
        if (comparison is { IsPriceLeftOut: true, Brief.Prices: not null })
            Out.WriteLine("Prices are left out of the sum, as some parts have none.");
        Out.WriteLine();
        WriteTable(comparison);
        Head("What each takes");
        foreach ((string names, ComparedPlan plan) in Alike(comparison, p => Takes(p.Measures)))
            Wrapped.Write(Out, $"{Takes(plan.Measures)}.", $"  {names}  ");
        if (comparison.HasLater)
            WriteLater(comparison);
        if (comparison.Plans.Any(p => p.Measures.Price is { IsComplete: false }))
            WriteWithout(comparison);
        if (UnusedPrices.Of(comparison) is { Count: > 0 } unused)
            WriteUnused(unused);
    }

    private void WriteTable(PlanComparison comparison)
    {
        string[] later = comparison.HasLater ? ["buy later", "stay", "links later"] : [], price = comparison.HasPrices ? ["price"] : [];
        var table = new TextTable("  ", ["", "method", "base", "cassettes", "cords", "trunks", "adapters", "parts", "used", "idle", "matings", "margin", "ends", .. later, .. price, "sum"]);
        for (int i = 0; i < comparison.Plans.Count; i++)
        {
            ComparedPlan plan = comparison.Plans[i];
            PlanMeasures m = plan.Measures;
            TextCell[] then = comparison.HasLater ? [m.Later is { } l ? Number(l.PartsToBuy) : "-", m.Later is { } s ? Number(s.PartsThatStay) : "-", m.LinksLater is { Now: > 0 } links ? links.ToString() : "-"] : [];
            TextCell[] cost = comparison.HasPrices ? [Price(m.Price)] : [];
            table.Add(
            [
                Number(i + 1), plan.Candidate.Method.Name, Number(plan.Candidate.Base), Kinds(m.CassetteKinds), Kinds(m.CordKinds), Kinds(m.TrunkKinds), Kinds(m.AdapterKinds),
                Number(m.Parts), Number(m.FibresUsed), Number(m.FibresIdle), Number(m.Matings), m.WorstMargin?.ToString() ?? "-", m.IsAlikeAtBothEnds ? "alike" : "differ",
                .. then, .. cost, plan.Score.ToString("0.00", CultureInfo.InvariantCulture),
            ]);
        }

        table.Write(Out, _paint);
        Wrapped.Write(Out, "Cassettes, cords, trunks, adapters: number of kinds: number of pieces; outlets with a cassette inside count as cassettes. Parts beside switches and devices. Fibres of trunks, used and idle. Matings: the most in a link. Margin: the worst. Adapters are those that cassettes, outlets and panels hold."
            + (comparison.Weights.Rows > 0 && comparison.Plans.Any(p => p.Measures.ArrayRows > 1) ? " Rows: the array connectors of base 24 have two, and makers' parts are not alike there." : "")
            + (comparison.HasLater ? " Links later: how many go on to what comes later, of how many." : "")
            + (comparison.HasPrices ? $" Price: {(comparison.Brief.Prices!.Currency is { Length: > 0 } currency ? $"in {currency}, " : "")}by your list." : ""));
    }

    private void WriteLater(PlanComparison comparison)
    {
        Head("For what comes later");
        foreach ((string names, ComparedPlan plan) in Alike(comparison, p => Change(p.Measures.Later)))
        {
            Out.WriteLine($"  {names}");
            if (plan.Measures.Later is not { } later)
                continue;
            Wrapped.Write(Out, $"{PlanItem.Listed(later.Buy)}.", "    buy        ");
            Wrapped.Write(Out, $"{PlanItem.Listed(later.Stays)}.", "    stays      ");
            Wrapped.Write(Out, $"{PlanItem.Listed(later.Spare)}.", "    left over  ");
        }
    }

    /// <summary>The parts that have no price, each once.</summary>
    private void WriteWithout(PlanComparison comparison)
    {
        Head("Without a price, so that sums are incomplete");
        const int mostTold = 12;
        PlanItem[] without = [.. comparison.Plans.SelectMany(p => p.Measures.Price!.Without).Select(i => i.Each()).Distinct()];
        foreach (PlanItem item in without.Take(mostTold))
            Out.WriteLine($"  {item.Words}");
        if (without.Length > mostTold)
            Out.WriteLine($"  and {without.Length - mostTold} more");
    }

    /// <summary>Rows of the price list of which nothing comes.</summary>
    private void WriteUnused(IReadOnlyList<PriceLine> unused)
    {
        Head("Prices that fit no part of these plans");
        const int mostTold = 12;
        foreach (PriceLine line in unused.Take(mostTold))
            Out.WriteLine($"  {line.Place}: {UnusedPrices.Words(line)}");
        if (unused.Count > mostTold)
            Out.WriteLine($"  and {unused.Count - mostTold} more");
    }

    private void WriteExcluded(PlanComparison comparison)
    {
        if (comparison.Excluded.Count == 0)
            return;
        Head("Cannot serve");
        foreach (ExcludedPlans excluded in comparison.Excluded)
            Wrapped.Write(Out, $"{comparison.Listed(excluded)}: {string.Join("; ", excluded.Reasons)}.", "  - ");
        if (comparison.Excluded.Any(e => e.Reasons.Any(r => r.Finding is not null)))
            Out.WriteLine(_paint.Faint("'polaritymap explain CODE' tells why a finding matters."));
    }

    private void Head(string text)
    {
        Out.WriteLine();
        Out.WriteLine(_paint.Strong(text));
    }

    /// <summary>Plans that are told in the same words, under all their names.</summary>
    private static IEnumerable<(string Names, ComparedPlan Plan)> Alike(PlanComparison comparison, Func<ComparedPlan, string> words) =>
        comparison.Plans.GroupBy(words).Select(g => (string.Join(", ", g.GroupBy(p => p.Candidate.Base).Select(b => $"{string.Join(" ", b.Select(p => p.Candidate.Method.Name))} base {b.Key}")), g.First()));

    private static string Takes(PlanMeasures m) =>
        string.Join("; ", new[] { m.CassetteKinds, m.CordKinds, m.TrunkKinds, m.AdapterKinds }.Where(k => k.Count > 0).Select(k => string.Join(", ", k)));

    private static string Change(LaterChange? later) => later is null ? "nothing" : $"{PlanItem.Listed(later.Buy)}|{PlanItem.Listed(later.Stays)}|{PlanItem.Listed(later.Spare)}";

    private static string Price(PriceSum? price) => price is null ? "-"
        : $"{(price.IsComplete ? "" : "over ")}{price.Total.ToString("0.00", CultureInfo.InvariantCulture)}";

    private static string Kinds(IReadOnlyList<KindCount> kinds) => kinds.Count == 0 ? "none" : $"{Number(kinds.Count)}: {Number(kinds.Sum(k => k.Count))}";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
