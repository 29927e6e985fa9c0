using System.Diagnostics;

namespace PolarityMap.Benchmarks;

/// <summary>One measure at one size: a number for each round.</summary>
internal sealed class Sample(string name)
{
    private static readonly TimeSpan Batch = TimeSpan.FromMilliseconds(1);
    private static readonly TimeSpan Enough = TimeSpan.FromMilliseconds(20);
    private readonly List<double> _rounds = [];

    public string Name { get; } = name;

    public IReadOnlyList<double> Rounds => _rounds;

    /// <summary>
    /// Times the work once more: in batches of a millisecond or of one call if that is longer, until the clock has enough to
    /// see. The garbage of a batch is collected off the clock, since the tool traces a plant once and then ends.
    /// </summary>
    public T Time<T>(int strands, Func<T> work)
    {
        T result;
        int times = 0;
        TimeSpan clocked = TimeSpan.Zero;
        do
        {
            GC.Collect();
            long start = Stopwatch.GetTimestamp();
            TimeSpan batch;
            do
            {
                result = work();
                times++;
                batch = Stopwatch.GetElapsedTime(start);
            }
            while (batch < Batch);
            clocked += batch;
        }
        while (clocked < Enough);
        _rounds.Add(clocked.TotalNanoseconds / times / strands);
        return result;
    }

    /// <summary>Round by round, so that what slows the whole machine down slows both.</summary>
    public Sample Over(Sample other, string name)
    {
        var ratio = new Sample(name);
        for (int i = 0; i < _rounds.Count; i++)
            ratio._rounds.Add(_rounds[i] / other._rounds[i]);
        return ratio;
    }

    /// <summary>Median, with the smallest and the largest behind it.</summary>
    public override string ToString()
    {
        double[] sorted = [.. _rounds.Order()];
        return sorted.Length == 0 ? "" : $"{Short(sorted[sorted.Length / 2])} ({Short(sorted[0])}-{Short(sorted[^1])})";
    }

    private static string Short(double value) => value.ToString(value < 20 ? "F1" : "F0");
}
