using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Budget;

/// <summary>
/// The way of measuring that an acceptance limit is for: the source's power is taken through one reference cord, so that the
/// result holds both end matings of the link under test. It is the default for premises links (four public sources).
/// </summary>
public static class ReferenceMethod
{
    /// <summary>The method's name in the standard that goes with the limits, from memory.</summary>
    public static string Name(LimitProfile limits, bool multimode) => (limits.IsTia, multimode) switch
    {
        (true, true) => "one-jumper reference of TIA-526-14",
        (true, false) => "one-jumper reference of TIA-526-7",
        (false, true) => "one-cord reference of IEC 61280-4-1",
        (false, false) => "one-cord reference of IEC 61280-4-2",
    };

    /// <summary>The two wavelengths that a link is tested at (two public sources).</summary>
    public static IReadOnlyList<Wavelength> TestWavelengths(bool multimode) => multimode ? [new(850), new(1300)] : [new(1310), new(1550)];
}
