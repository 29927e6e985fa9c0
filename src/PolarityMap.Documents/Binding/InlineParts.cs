using PolarityMap.Core.Plants;

namespace PolarityMap.Documents.Binding;

/// <summary>Gives every cord that a run mentions without a name one from its two ends.</summary>
internal sealed class InlineParts(PlantBuilder plant, PartNames names, Dictionary<int, PartType> described)
{
    /// <summary>How many cords have had the same ends, so that a free name is found without trying all.</summary>
    private readonly Dictionary<string, int> _alike = [];

    public int Add(InlineStop stop, string from, string to)
    {
        string ends = $"{from}~{to}";
        string name = ends;
        int alike = _alike.GetValueOrDefault(ends, 1);
        while (names.TryFind(name, out _))
            name = $"{ends}#{++alike}";
        _alike[ends] = alike;
        int part = plant.AddPart(BoundPart.Make(name, stop.Type, stop.Shape, stop.Place, plant.Networks, isInline: true));
        names.TryAdd(name, part);
        described[part] = stop.Type;
        return part;
    }
}
