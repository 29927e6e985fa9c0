using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Documents.Binding;

/// <summary>Makes the plant's parts from described types.</summary>
internal static class BoundPart
{
    public static Part Make(string name, PartType type, Shape shape, SourcePlace place, IReadOnlyList<Network> networks, bool isInline = false) =>
        PartMaker.Make(name, type.Kind, type.Values, shape, place, networks) with { IsInline = isInline };
}
