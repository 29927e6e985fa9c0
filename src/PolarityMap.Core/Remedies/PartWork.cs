using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies;

/// <summary>The work that a change makes. No published figures were found: all are common practice, an order and not a measurement.</summary>
internal static class PartWork
{
    /// <summary>Minutes to put another part of its kind in the place of a part, with cleaning and a look at each end.</summary>
    public static int Replace(Part part) => part.Kind switch
    {
        "duplex cord" or "simplex cord" => 3,
        "array cord" => 5,
        "harness" or "conversion harness" => 15,
        "cassette" or "outlet" or "conversion module" => 20,
        "duplex panel" or "array panel" => 30,
        "trunk" => 90,
        "splice" or "field termination" => 120,
        "cable" => 240,
        _ => 10,
    };

    /// <summary>True for what hangs between two plugs or is put in and out by hand.</summary>
    public static bool IsCord(Part part) => PartKinds.Find(part.Kind) is { IsCord: true };
}
