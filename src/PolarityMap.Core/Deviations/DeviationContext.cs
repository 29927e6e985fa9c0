using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Deviations;

/// <summary>What deviation kinds ask of a plant, and every deviation they found, once.</summary>
public sealed class DeviationContext(TracedPlant traced)
{
    private readonly Dictionary<int, IReadOnlyList<Deviation>> _at = [];
    private readonly Dictionary<DeviationId, Deviation> _known = [];

    public TracedPlant Traced { get; } = traced;

    public Plant Plant => Traced.Plant;

    public StrandGraph Graph => Traced.Graph;

    /// <summary>Which mating each port is in.</summary>
    public PlugTable Plugs { get; } = new(traced.Plant);

    /// <summary>
    /// Every deviation that changes a part, a mating at one of its ports, or light that passes it; in the order of the catalogue.
    /// Those that change nothing are left out.
    /// </summary>
    public IReadOnlyList<Deviation> At(int part)
    {
        if (_at.TryGetValue(part, out IReadOnlyList<Deviation>? known))
            return known;
        var all = new List<Deviation>();
        foreach (DeviationKind kind in DeviationCatalogue.All)
        {
            foreach (Deviation deviation in kind.At(this, part))
            {
                if (_known.TryAdd(deviation.Id, deviation))
                    all.Add(deviation);
                else
                    all.Add(_known[deviation.Id]);
            }
        }

        return _at[part] = all;
    }

    /// <summary>Every deviation of the plant, each once, in the order of the parts. Many: a plant of 64 links has some thousands.</summary>
    public IEnumerable<Deviation> All()
    {
        var seen = new HashSet<DeviationId>();
        for (int part = 0; part < Plant.Parts.Count; part++)
        {
            foreach (Deviation deviation in At(part))
            {
                if (seen.Add(deviation.Id))
                    yield return deviation;
            }
        }
    }

    /// <summary>What differences change in the graph, or null when they cannot be or change nothing.</summary>
    public GraphPatch? Patch(params ReadOnlySpan<Difference> differences) =>
        GraphPatch.Of(Traced, Plugs, differences) is { IsEmpty: false } patch ? patch : null;

    /// <summary>
    /// The part with another value of one attribute, or null when its kind has no such attribute, it has that value already or
    /// cannot be built so.
    /// </summary>
    public PartDiffers? With(int part, string attribute, string value)
    {
        Part before = Plant.Parts[part];
        if (PartKinds.Find(before.Kind) is not { } kind || !kind.Has(attribute) || before.Values is not { } values || values.Word(attribute) == value)
            return null;
        AttributeValues changed = new AttributeValues(kind.AllAttributes, values.Defaults).Set(attribute, value);
        changed.FillFrom(values);
        var faults = new List<AttributeFault>();
        if (kind.Build(changed, faults) is not { } shape || faults.Count > 0)
            return null;
        Part after = PartMaker.Make(before.Name, kind, changed, shape, before.Place, Plant.Networks);
        return new PartDiffers(part, after with { IsInline = before.IsInline }, attribute, value);
    }

    /// <summary>The plant with differences in it, its parts numbered as before; null when they cannot be laid over it.</summary>
    public Plant? Build(IEnumerable<Difference> differences) => Site.Of(Plant, Plugs, differences)?.Build();
}
