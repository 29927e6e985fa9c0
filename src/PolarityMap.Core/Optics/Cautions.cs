namespace PolarityMap.Core.Optics;

/// <summary>What is said wherever work at live fibres is near, worded once. Four public handbooks agree on it.</summary>
public static class Cautions
{
    /// <summary>For all work on fibre.</summary>
    public const string Light =
        "Communication light is invisible: assume every fibre is live, never look into a fibre end, plug or port, and prove it dark with a power meter first.";

    /// <summary>For light that somebody puts in: a red tracer or a test source.</summary>
    public const string Source =
        "Before you put light in, unplug or power down the transmitters at both ends. Never stare into the source or point it at anyone: look from the side, or "
        + "catch its light on paper. Follow its laser class label. Inspect and clean before every mating; fibre shards cut, collect them.";

    /// <summary>What goes before.</summary>
    public const string Codes = "Local codes, site rules and makers' instructions come before anything said here.";
}
