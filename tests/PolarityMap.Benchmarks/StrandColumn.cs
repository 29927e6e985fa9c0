using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;

namespace PolarityMap.Benchmarks;

/// <summary>Nanoseconds for one strand: the mean over the number of strands.</summary>
internal sealed class StrandColumn : IColumn
{
    public string Id => nameof(StrandColumn);

    public string ColumnName => "ns/strand";

    public bool AlwaysShow => true;

    public ColumnCategory Category => ColumnCategory.Custom;

    public int PriorityInCategory => 0;

    public bool IsNumeric => true;

    public UnitType UnitType => UnitType.Dimensionless;

    public string Legend => "Mean divided by the number of strands";

    public string GetValue(Summary summary, BenchmarkCase benchmarkCase)
    {
        int strands = new SyntheticPlant((int)benchmarkCase.Parameters[nameof(TraceBenchmarks.AtLeastStrands)]).Strands;
        return summary[benchmarkCase]?.ResultStatistics is { } statistics ? $"{statistics.Mean / strands:F1}" : "-";
    }

    public string GetValue(Summary summary, BenchmarkCase benchmarkCase, SummaryStyle style) => GetValue(summary, benchmarkCase);

    public bool IsAvailable(Summary summary) => true;

    public bool IsDefault(Summary summary, BenchmarkCase benchmarkCase) => false;
}
