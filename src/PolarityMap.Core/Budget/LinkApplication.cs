using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Budget;

/// <summary>Finds the application that light between two ports is judged by.</summary>
internal static class LinkApplication
{
    /// <summary>
    /// The sender's application. Where its port is split it is that of each link; where only the other end says what it is
    /// for, that one or its counterpart. Null, with the reason, where neither says or the two do not work together.
    /// </summary>
    public static (Application? Application, LimitGap Gap) Of(PortShape sender, PortShape receiver)
    {
        Application? sends = OfLinks(sender);
        Application? hears = OfLinks(receiver);
        if (sends is null && hears is null)
            return (null, LimitGap.NoApplication);
        if (sends is null)
            return (hears!.Counterpart is { } other ? Application.Find(other) : hears, LimitGap.None);
        if (hears is null || sends.Name == (hears.Counterpart ?? hears.Name))
            return (sends, LimitGap.None);
        if (sends.Counterpart is null && hears.Counterpart is null)
        {
            if (BreaksOut(sends, hears))
                return (hears, LimitGap.None);
            if (BreaksOut(hears, sends))
                return (sends, LimitGap.None);
        }

        return (null, LimitGap.ApplicationsDiffer);
    }

    /// <summary>What each link of a port is for. Of a split port it is what it breaks out to, null where that is not on record.</summary>
    private static Application? OfLinks(PortShape port)
    {
        if (port.Groups == 0 || port.Application is not { } whole)
            return port.Application;
        foreach (Breakout breakout in Breakouts.All)
        {
            if (breakout.From == whole.Name && breakout.Groups == port.Groups)
                return Application.Find(breakout.To);
        }

        return null;
    }

    private static bool BreaksOut(Application parallel, Application single)
    {
        foreach (Breakout breakout in Breakouts.All)
        {
            if (breakout.From == parallel.Name && breakout.To == single.Name)
                return true;
        }

        return false;
    }
}
