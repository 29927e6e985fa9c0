namespace PolarityMap.Core.Optics;

/// <summary>Which interfaces work together.</summary>
public static class ApplicationMatch
{
    /// <summary>
    /// True when a port of one application can talk to a port of the other: two alike, an upstream and a downstream port of one
    /// family, or a parallel port that is split and what it breaks out to in so many links.
    /// </summary>
    /// <param name="one">What one port is for.</param>
    /// <param name="oneLinks">Into how many links that port is split; 0 when it is one link.</param>
    /// <param name="other">What the other port is for.</param>
    /// <param name="otherLinks">As <paramref name="oneLinks"/> for the other port.</param>
    public static bool WorkTogether(Application one, int oneLinks, Application other, int otherLinks)
    {
        if (one.Counterpart is { } counterpart)
            return other.Name == counterpart;
        return one.Name == other.Name || BreaksOutTo(one, oneLinks, other) || BreaksOutTo(other, otherLinks, one);
    }

    private static bool BreaksOutTo(Application parallel, int links, Application single)
    {
        foreach (Breakout breakout in Breakouts.Of(parallel.Name))
        {
            if (breakout.To == single.Name && breakout.Groups == links)
                return true;
        }

        return false;
    }
}
