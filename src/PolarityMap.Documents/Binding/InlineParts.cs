using PolarityMap.Core.Plants;

namespace PolarityMap.Documents.Binding;

/// <summary>Gives every cord that a run mentions without a name one from its two ends.</summary>
internal sealed class InlineParts(PlantBuilder plant, PartNames names, List<PartType> described)
{
    /// <summary>How many cords have had the same ends, so that a free name is found without trying all.</summary>
    private readonly Dictionary<string, int> _alike = [];

    /// <summary>Makes room for cords to come, where they are many beside what there is.</summary>
    public void Expect(int cords)
    {
        if (cords > described.Count / 4)
            described.EnsureCapacity(described.Count + cords);
    }

    /// <summary>Adds a cord and returns its index.</summary>
    /// <param name="stop">The stop that mentions it.</param>
    /// <param name="ends">Its two ends, as in <c>SW-1/3~K-1/3</c>.</param>
    public int Add(InlineStop stop, string ends)
    {
        string name = ends;
        if (names.TryFind(name, out _))
            name = NextFree(ends);
        stop.First ??= BoundPart.Make(name, stop.Type, stop.Shape, stop.Place, plant.Networks, isInline: true);
        int part = plant.AddPart(stop.First.Name == name ? stop.First : stop.First with { Name = name });
        names.Add(part);
        described.Add(stop.Type);
        return part;
    }

    private string NextFree(string ends)
    {
        int alike = _alike.GetValueOrDefault(ends, 1);
        string name;
        do
            name = $"{ends}#{++alike}";
        while (names.TryFind(name, out _));
        _alike[ends] = alike;
        return name;
    }
}
