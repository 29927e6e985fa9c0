using PolarityMap.Core.Parts.Kinds;

namespace PolarityMap.Core.Parts;

/// <summary>The one list of part kinds. A new kind is one file in <c>Kinds</c> and one line here.</summary>
public static class PartKinds
{
    public static readonly IReadOnlyList<PartKind> All =
    [
        new DuplexInterface(),
        new SingleFibreInterface(),
        new ParallelInterface(),
        new DuplexCord(),
        new SimplexCord(),
        new ArrayCord(),
        new Trunk(),
        new Harness(),
        new ConversionHarness(),
        new Cassette(),
        new Outlet(),
        new ConversionModule(),
        new DuplexPanel(),
        new ArrayPanel(),
        new Cable(),
        new Splice(),
        new FieldTermination(),
    ];

    /// <summary>The kind with this name, or null.</summary>
    public static PartKind? Find(string name)
    {
        foreach (PartKind kind in All)
        {
            if (kind.Name == name)
                return kind;
        }

        return null;
    }
}
