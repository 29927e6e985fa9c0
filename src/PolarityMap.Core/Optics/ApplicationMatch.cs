namespace PolarityMap.Core.Optics;

/// <summary>Which interfaces work together.</summary>
public static class ApplicationMatch
{
    /// <summary>
    /// True when a port of one application can talk to a port of the other: two alike, an upstream and a downstream port of one
    /// family, or a parallel port in breakout mode and what its lanes break out to.
    /// </summary>
    public static bool WorksWith(this Application one, Application other)
    {
        if (one.Counterpart is { } counterpart)
            return other.Name == counterpart;
        return one.Name == other.Name || BreaksOutTo(one, other) || BreaksOutTo(other, one);
    }

    private static bool BreaksOutTo(Application parallel, Application single)
    {
        foreach (Breakout breakout in Breakouts.Of(parallel.Name))
        {
            if (breakout.To == single.Name)
                return true;
        }

        return false;
    }
}
