using PolarityMap.Core.Planning;
using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Comparison;

/// <summary>The rows and columns of the comparison, each column as wide as what stands in it.</summary>
internal sealed class ComparisonTable
{
    private const double Step = 0.1;
    private const double NameGap = 3;
    private const double LeastForSum = 12;

    /// <param name="comparison">The plans.</param>
    /// <param name="width">What names, columns and sums have in mm.</param>
    public ComparisonTable(PlanComparison comparison, double width)
    {
        Columns = ComparisonColumn.Of(comparison);
        Rows = Alike(comparison, Columns);
        double cap = CapHeights.Strand;
        while (!Fits(comparison, cap, width) && cap - Step >= CapHeights.Least)
            cap -= Step;
        Cap = cap;
        NameWidth = Name(cap);
        Widths = [.. Columns.Select(c => c.Width(comparison, cap))];
    }

    public IReadOnlyList<ComparisonColumn> Columns { get; }

    /// <summary>Plans that stand in one row, row by row.</summary>
    public IReadOnlyList<ComparedPlan[]> Rows { get; }

    /// <summary>The height of capitals that lets all columns stand side by side.</summary>
    public double Cap { get; }

    /// <summary>The width of the names of plans in mm.</summary>
    public double NameWidth { get; }

    /// <summary>The widths of the columns in mm.</summary>
    public IReadOnlyList<double> Widths { get; }

    /// <summary>What a row is called, such as <c>U1 U2, base 8</c>.</summary>
    public static string NameOf(ComparedPlan[] plans) => $"{string.Join(' ', plans.Select(p => p.Candidate.Method.Name))}, base {plans[0].Candidate.Base}";

    private bool Fits(PlanComparison comparison, double cap, double width) => Name(cap) + Columns.Sum(c => c.Width(comparison, cap)) + LeastForSum <= width;

    private double Name(double cap) => NameGap + Rows.Select(NameOf).Append("Method, base").Max(n => FontMetrics.WidthMm(n, cap));

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
}
