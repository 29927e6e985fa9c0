using PolarityMap.Core.Plants;

namespace PolarityMap.Documents.Binding;

/// <summary>Gives every cord that a run mentions without a name one from its two ends.</summary>
internal sealed class InlineParts(PlantBuilder plant, PartNames names, Dictionary<int, PartType> described)
{
    public int Add(InlineStop stop, string from, string to)
    {
        string name = $"{from}~{to}";
        for (int n = 2; names.TryFind(name, out _); n++)
            name = $"{from}~{to}#{n}";
        int part = plant.AddPart(BoundPart.Make(name, stop.Type, stop.Shape, stop.Place, plant.Networks, isInline: true));
        names.TryAdd(name, part);
        described[part] = stop.Type;
        return part;
    }
}
