using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Plants;

/// <summary>
/// Collects a plant. Parts may be added in any order; the finished plant numbers them in the order in which matings
/// mention them, so that the strands of a run lie close together in memory.
/// </summary>
public sealed class PlantBuilder
{
    private readonly List<Network> _networks = [];
    private readonly List<Part> _parts = [];
    private readonly HandedItems<Mating> _matings = new();
    private readonly List<OpenPlug> _openPlugs = [];
    private readonly List<PortClash> _clashes = [];
    private readonly HandedItems<Link> _links = new();
    private readonly List<int> _order = [];
    private readonly List<bool> _mentioned = [];

    public PlantTitle Title { get; set; } = new("");

    public PlantPractice Practice { get; set; } = new();

    public IReadOnlyList<Part> Parts => _parts;

    public IReadOnlyList<Network> Networks => _networks;

    public IReadOnlyList<Mating> Matings => _matings;

    /// <summary>The part of this index.</summary>
    public Part Part(int index) => _parts[index];

    /// <summary>The port's shape.</summary>
    public PortShape Port(PortRef port) => _parts[port.Part].Shape.Ports[port.Port];

    public int AddNetwork(Network network)
    {
        _networks.Add(network);
        return _networks.Count - 1;
    }

    /// <summary>
    /// Makes room for parts and matings to come, where they are many beside what there is. Few are left to the lists, which
    /// would be copied for each of many small steps.
    /// </summary>
    public void Expect(int parts, int matings)
    {
        if (parts > _parts.Count / 4)
        {
            _parts.EnsureCapacity(_parts.Count + parts);
            _mentioned.EnsureCapacity(_parts.Count + parts);
            _order.EnsureCapacity(_parts.Count + parts);
        }

        _matings.Expect(matings);
    }

    /// <summary>Adds a part and returns the index to use in <see cref="PortRef"/> until <see cref="Build"/>.</summary>
    public int AddPart(Part part)
    {
        _parts.Add(part);
        _mentioned.Add(false);
        return _parts.Count - 1;
    }

    /// <summary>Replaces a part that has been added, keeping its index.</summary>
    public void ReplacePart(int index, Part part) => _parts[index] = part;

    /// <summary>Says that a run has come to this part.</summary>
    public void Mention(int part)
    {
        if (_mentioned[part])
            return;
        _mentioned[part] = true;
        _order.Add(part);
    }

    /// <summary>
    /// Adds a mating. Ports of different faces may be joined, as hands on site may try: no fibre meets another then, and the
    /// checker says so. A position other than 0 takes a simplex plug.
    /// </summary>
    /// <exception cref="ArgumentException">A position is named without a simplex plug for it.</exception>
    public void AddMating(Mating mating) => Own(mating with { });

    /// <summary>As <see cref="AddMating(Mating)"/>, without a mating that the builder has to copy.</summary>
    /// <exception cref="ArgumentException">A position is named without a simplex plug for it.</exception>
    public void AddMating(PortRef a, int positionOfA, PortRef b, int positionOfB, PortRef? through, Keying keys, SourcePlace place) =>
        Own(new Mating(a, b, keys, place) { PositionOfA = positionOfA, PositionOfB = positionOfB, Through = through });

    private void Own(Mating mating)
    {
        if ((mating.PositionOfA != 0 || mating.PositionOfB != 0) && !Fits(Port(mating.A), Port(mating.B), mating))
            throw new ArgumentException($"a {Port(mating.A).Face} port does not mate with a {Port(mating.B).Face} port");
        Mention(mating.A.Part);
        if (mating.Through is { } through)
            Mention(through.Part);
        Mention(mating.B.Part);
        _matings.Add(mating);
    }

    /// <summary>Replaces a mating that has been added, as an as-built difference does.</summary>
    public void ReplaceMating(int index, Mating mating) => _matings[index] = mating with { };

    /// <summary>Takes a mating out.</summary>
    public void RemoveMating(int index) => _matings.RemoveAt(index);

    public void AddOpenPlug(OpenPlug plug)
    {
        Mention(plug.Plug.Part);
        Mention(plug.Adapter.Part);
        _openPlugs.Add(plug);
    }

    /// <summary>True when the ports of a mating have faces that meet.</summary>
    internal static bool Fits(PortShape a, PortShape b, Mating mating) => mating.PositionOfA == 0 && mating.PositionOfB == 0
        ? a.Face == b.Face
        : IsSimplexInto(a.Face, mating.PositionOfA, b.Face, mating.PositionOfB) || IsSimplexInto(b.Face, mating.PositionOfB, a.Face, mating.PositionOfA);

    /// <summary>Adds a plug that found its port taken.</summary>
    public void AddClash(PortClash clash)
    {
        Mention(clash.Port.Part);
        if (clash.Refused is { } refused)
            Mention(refused.Part);
        _clashes.Add(clash);
    }

    private static bool IsSimplexInto(Face simplex, int own, Face wider, int position) =>
        simplex == Face.Simplex && own == 0 && wider.Family == ConnectorFamily.Duplex && position >= 1 && position <= wider.Count;

    /// <summary>Says that plugs have found room after all.</summary>
    public void RemoveClashes(IReadOnlySet<PortRef> refused) => _clashes.RemoveAll(c => c.Refused is { } plug && refused.Contains(plug));

    public void AddLink(Link link) => _links.Add(link with { });

    /// <summary>As <see cref="AddLink(Link)"/>, without a link that the builder has to copy.</summary>
    public void AddLink(LinkEnd from, LinkEnd to, SourcePlace place) => _links.Add(new Link(from, to, place));

    /// <summary>Numbers the parts in the order of mention and returns the plant.</summary>
    public Plant Build()
    {
        for (int i = 0; i < _parts.Count; i++)
            Mention(i);
        var parts = new Part[_order.Count];
        var index = new int[_order.Count];
        for (int i = 0; i < _order.Count; i++)
        {
            parts[i] = _parts[_order[i]];
            index[_order[i]] = i;
        }

        return new Plant(
            Title,
            Practice,
            [.. _networks],
            parts,
            _matings.Hand(index),
            [.. _openPlugs.Select(o => o with { Plug = o.Plug.Renumbered(index), Adapter = o.Adapter.Renumbered(index) })],
            [.. _clashes.Select(c => c with { Port = c.Port.Renumbered(index), Refused = c.Refused?.Renumbered(index) })],
            _links.Hand(index));
    }
}
