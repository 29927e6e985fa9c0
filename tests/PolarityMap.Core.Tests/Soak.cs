using System.Globalization;

namespace PolarityMap.Core.Tests;

/// <summary>How many random cases a test tries: few in every run, as many times more as POLARITYMAP_SOAK says in a run of its own.</summary>
internal static class Soak
{
    private static readonly int s_times = int.TryParse(Environment.GetEnvironmentVariable("POLARITYMAP_SOAK"), NumberStyles.None, CultureInfo.InvariantCulture, out int times) && times > 0 ? times : 1;

    public static int Times(int cases) => cases * s_times;
}
