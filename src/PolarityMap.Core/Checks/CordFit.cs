namespace PolarityMap.Core.Checks;

/// <summary>Whether the cord of a network goes into a port.</summary>
public enum CordFit
{
    /// <summary>It is the cord of the port's own network, and goes in.</summary>
    Own,

    /// <summary>It is the cord of the port's own network, and the keys keep it out.</summary>
    OwnBlocked,

    /// <summary>It is the cord of another network, or the port has none, and it goes in.</summary>
    Fits,

    /// <summary>It is the cord of another network, or the port has none, and the keys keep it out.</summary>
    Blocked,
}

/// <summary>The words for <see cref="CordFit"/>, and what fits what.</summary>
public static class CordFits
{
    public static string Word(this CordFit fit) => fit switch
    {
        CordFit.Own => "own",
        CordFit.OwnBlocked => "own, blocked",
        CordFit.Fits => "fits",
        _ => "blocked",
    };

    /// <summary>
    /// True when a duplex plug goes into a port by their key codes; null is plain. Equal codes go in, plain goes into plain.
    /// Plain and keyed go together only in sets that let them (trade practice, no source: no standard defines codes).
    /// </summary>
    /// <param name="plug">The plug's key code.</param>
    /// <param name="plainFitsPlug">True when the plug's set lets it go together with plain connectors.</param>
    /// <param name="port">The port's key code.</param>
    /// <param name="plainFitsPort">True when the port's set lets it go together with plain connectors.</param>
    public static bool GoesIn(string? plug, bool plainFitsPlug, string? port, bool plainFitsPort) =>
        plug == port || (plug is null ? plainFitsPort : port is null && plainFitsPlug);
}
