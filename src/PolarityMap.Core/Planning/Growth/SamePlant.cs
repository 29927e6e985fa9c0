using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>Whether two plants are the same but for the order in which they are told and the names of cords without one.</summary>
internal static class SamePlant
{
    public static bool Is(Plant a, Plant b) => Words(a).SequenceEqual(Words(b));

    private static IEnumerable<string> Words(Plant plant) => Parts(plant)
        .Concat(plant.Matings.Select(m => $"{string.Join(" to ", new[] { Address(plant, m.A), Address(plant, m.B) }.Order(StringComparer.Ordinal))} {m.Keys} {(m.Through is { } t ? plant.Address(t) : "")}"))
        .Concat(plant.OpenPlugs.Select(o => $"{Address(plant, o.Plug)} in {plant.Address(o.Adapter)}"))
        .Concat(plant.Links.Select(l => $"{plant.Address(l.From)} link {plant.Address(l.To)}"))
        .Order(StringComparer.Ordinal);

    private static IEnumerable<string> Parts(Plant plant) => plant.Parts.Select(p =>
        $"{(p.IsInline ? "" : p.Name)} {p.Kind} {p.Fibre?.Name} {PartFacts.Network(plant, p)} {string.Join(", ", p.SpareLegs)} {PartFacts.Attributes(p, a => a is "fibre" or "pins")} {string.Join(", ", p.Shape.Ports.Select(s => s.Pinned))} {string.Join(", ", p.Shape.Inside.ToArray())}");

    private static string Address(Plant plant, PortRef port) => plant.Parts[port.Part].IsInline ? $"cord {plant.Port(port).Name}" : plant.Address(port);
}
