using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Deviations;

/// <summary>What deviation kinds ask of a plant, and every deviation they found, once.</summary>
public sealed class DeviationContext(TracedPlant traced)
{
    private readonly Dictionary<int, IReadOnlyList<Deviation>> _at = [];
    private readonly Dictionary<DeviationId, Deviation?> _known = [];
    private readonly HashSet<DeviationId> _listed = [];
    private readonly Dictionary<(AttributeValues Values, string Attribute, string Value), Part?> _made = [];
    private Seats? _seats;
    private Beside? _beside;

    public TracedPlant Traced { get; } = traced;

    public Plant Plant => Traced.Plant;

    public StrandGraph Graph => Traced.Graph;

    /// <summary>Which mating each port is in.</summary>
    public PlugTable Plugs { get; } = new(traced.Plant);

    /// <summary>Which plugs sit where.</summary>
    internal Seats Seats => _seats ??= new Seats(Plant, Plugs);

    /// <summary>Which parts stand side by side.</summary>
    internal Beside Beside => _beside ??= new Beside(Plant);

    /// <summary>
    /// Every deviation that changes a part, a mating at one of its ports, or light that passes it; in the order of the catalogue.
    /// Those that change nothing are left out.
    /// </summary>
    public IReadOnlyList<Deviation> At(int part)
    {
        if (_at.TryGetValue(part, out IReadOnlyList<Deviation>? known))
            return known;
        var all = new List<Deviation>();
        _listed.Clear();
        foreach (DeviationKind kind in DeviationCatalogue.All)
        {
            foreach (Deviation deviation in kind.At(this, part))
            {
                if (_listed.Add(deviation.Id))
                    all.Add(Once(deviation.Id, deviation, static d => d)!);
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
    public PartDiffers? With(int part, string attribute, string value) =>
        Plant.Parts[part].Values?.Word(attribute) == value ? null : With(part, attribute, value, v => v.Set(attribute, value));

    /// <summary>As <see cref="With(int, string, string)"/> for a wiring that is written out, as a document writes it.</summary>
    public PartDiffers? With(int part, string attribute, IReadOnlyList<DuplexPair> wiring) =>
        With(part, attribute, $"[{string.Join(", ", wiring.Select(p => $"[{p.A}, {p.B}]"))}]", v => v.Set(attribute, wiring));

    /// <summary>As <see cref="Patch(ReadOnlySpan{Difference})"/> for an exchange alone: of all differences there are most of these.</summary>
    internal GraphPatch? Patch(PlugsExchanged pair)
    {
        if (Site.Exchanged(Plant, Plugs, pair.A, pair.B) is not var (a, b))
            return null;
        GraphPatch patch = GraphPatch.OfMatings(Traced, (Plugs.At(pair.A), a), (Plugs.At(pair.B), b));
        return patch.IsEmpty ? null : patch;
    }

    /// <summary>The plant with differences in it, its parts numbered as before; null when they cannot be laid over it.</summary>
    public Plant? Build(IEnumerable<Difference> differences) => Site.Of(Plant, Plugs, differences)?.Build();

    /// <summary>
    /// The deviation of a name, made the first time that it is asked for: most are seen from several parts. Null where it would
    /// change nothing or cannot be.
    /// </summary>
    /// <param name="id">Its name.</param>
    /// <param name="from">What it is made from.</param>
    /// <param name="make">Makes it.</param>
    internal Deviation? Once<T>(DeviationId id, T from, Func<T, Deviation?> make)
    {
        if (!_known.TryGetValue(id, out Deviation? known))
            _known[id] = known = make(from);
        return known;
    }

    /// <summary>The part with other pairs inside, which no attribute says.</summary>
    /// <param name="part">Index of the part.</param>
    /// <param name="patch">What changes, as a patch of the graph.</param>
    internal PartDiffers Rewired(int part, GraphPatch patch)
    {
        Part before = Plant.Parts[part];
        int start = Graph.FirstPositionOf(part);
        int[] inside = before.Shape.Inside.Span.ToArray();
        foreach (Rejoined change in patch.Inside)
            inside[change.Position - start] = change.Partner < 0 ? -1 : change.Partner - start;
        return new PartDiffers(part, before with { Shape = before.Shape.WithInside(inside) }, "", "");
    }

    /// <summary>The patch of two positions of one part that have each other's partners inside; null where one has none.</summary>
    internal GraphPatch? Exchanged(int a, int b)
    {
        int partnerA = Graph.Inside[a], partnerB = Graph.Inside[b];
        return partnerA < 0 || partnerB < 0 || partnerA == b
            ? null
            : GraphPatch.OfInside(Graph, new(a, partnerB), new(partnerB, a), new(b, partnerA), new(partnerA, b));
    }

    /// <summary>Parts that one line of a document describes are made once, for all of them.</summary>
    private PartDiffers? With(int part, string attribute, string value, Action<AttributeValues> set)
    {
        Part before = Plant.Parts[part];
        if (before.Values is not { } values)
            return null;
        if (!_made.TryGetValue((values, attribute, value), out Part? made))
            _made[(values, attribute, value)] = made = Made(before, values, attribute, set);
        if (made is null)
            return null;
        Part after = made with { Name = before.Name };
        if (after.Place != before.Place || after.IsInline != before.IsInline)
            after = after with { Place = before.Place, IsInline = before.IsInline };
        return new PartDiffers(part, after, attribute, value);
    }

    private Part? Made(Part before, AttributeValues values, string attribute, Action<AttributeValues> set)
    {
        if (PartKinds.Find(before.Kind) is not { } kind || !kind.Has(attribute))
            return null;
        var changed = new AttributeValues(kind.AllAttributes, values.Defaults);
        set(changed);
        changed.FillFrom(values);
        var faults = new List<AttributeFault>();
        return kind.Build(changed, faults) is { } shape && faults.Count == 0
            ? PartMaker.Make(before.Name, kind, changed, shape, before.Place, Plant.Networks) with { IsInline = before.IsInline }
            : null;
    }
}
