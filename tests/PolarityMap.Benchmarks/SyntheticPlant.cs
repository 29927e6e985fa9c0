using PolarityMap.Core.Parts;
using PolarityMap.Core.Parts.Kinds;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Benchmarks;

/// <summary>
/// Many alike channels of connectivity method B: duplex interface of 6 ports, 6 A-to-B cords, straight cassette, Type-B trunk
/// of one leg in aligned adapters, straight-reversed cassette, 6 A-to-B cords, duplex interface (TIA-568.3 method B).
/// A channel has 17 parts, 26 matings, 12 strands and 144 positions, so a strand passes 12 positions.
/// </summary>
internal sealed class SyntheticPlant
{
    public const int StrandsPerChannel = 12;
    public const int PositionsPerStrand = 12;
    public const int PartsPerChannel = 17;
    private const int Ports = 6;
    private const int RearPort = Ports;

    // The parts of a channel by their place in the order in which its runs mention them: the run over the near cords
    // reaches the near cassette after its first cord, the run over the far cords the far interface after its first.
    private const int NearInterface = 0;
    private const int NearCassette = 2;
    private const int TrunkPart = 8;
    private const int FarCassette = 9;
    private const int FarInterface = 11;
    private static readonly int[] NearCords = [1, 3, 4, 5, 6, 7];
    private static readonly int[] FarCords = [10, 12, 13, 14, 15, 16];

    private readonly Shape[] _shapes = new Shape[PartsPerChannel];
    private readonly string[] _kinds = new string[PartsPerChannel];

    public SyntheticPlant(int atLeastStrands)
    {
        Channels = (atLeastStrands + StrandsPerChannel - 1) / StrandsPerChannel;
        Set(new DuplexInterface(), v => v.Set("ports", Ports), NearInterface, FarInterface);
        Set(new Cassette(), v => v.Set("wiring", "straight").Set("keys", "aligned"), NearCassette);
        Set(new Cassette(), v => v.Set("wiring", "straight-reversed").Set("keys", "aligned"), FarCassette);
        Set(new Trunk(), v => v.Set("type", "Type-B"), TrunkPart);
        Set(new DuplexCord(), v => v.Set("type", "A-to-B"), [.. NearCords, .. FarCords]);
    }

    public int Channels { get; }

    public int Strands => Channels * StrandsPerChannel;

    public int Positions => Strands * PositionsPerStrand;

    public int Parts => Channels * PartsPerChannel;

    /// <summary>The plant by way of <see cref="PlantBuilder"/>.</summary>
    /// <param name="addedAs">Order in which the parts are added, as from <see cref="Shuffled"/>; null for channel by channel.</param>
    public Plant Build(int[]? addedAs = null)
    {
        var builder = new PlantBuilder();
        var place = new SourcePlace("synthetic", 1, 1);
        var index = new int[Parts];
        for (int i = 0; i < Parts; i++)
        {
            int part = addedAs is null ? i : addedAs[i];
            int role = part % PartsPerChannel;
            index[part] = builder.AddPart(new Part("part", _kinds[role], _shapes[role], place));
        }

        for (int channel = 0; channel < Channels; channel++)
        {
            int first = channel * PartsPerChannel;
            foreach ((PortRef a, PortRef b, Keying keys) in ChannelMatings())
                builder.AddMating(new Mating(a with { Part = index[first + a.Part] }, b with { Part = index[first + b.Part] }, keys, place));
        }

        return builder.Build();
    }

    /// <summary>The same graph without the records of a plant, for sizes whose records would fill the memory.</summary>
    /// <param name="numberedAs">Order in which the parts are numbered; null for the order of mention.</param>
    public StrandGraph Feed(int[]? numberedAs = null)
    {
        var builder = new StrandGraphBuilder();
        int[]? index = numberedAs is null ? null : new int[Parts];
        for (int i = 0; i < Parts; i++)
        {
            int part = numberedAs is null ? i : numberedAs[i];
            int number = builder.AddPart(_shapes[part % PartsPerChannel]);
            if (index is not null)
                index[part] = number;
        }

        (PortRef A, PortRef B, Keying Keys)[] matings = [.. ChannelMatings()];
        for (int channel = 0; channel < Channels; channel++)
        {
            int first = channel * PartsPerChannel;
            foreach ((PortRef a, PortRef b, Keying keys) in matings)
            {
                int partA = index is null ? first + a.Part : index[first + a.Part];
                int partB = index is null ? first + b.Part : index[first + b.Part];
                builder.Mate(a with { Part = partA }, b with { Part = partB }, keys);
            }
        }

        return builder.Build();
    }

    /// <summary>All parts in an order that a fixed seed shuffles.</summary>
    public int[] Shuffled()
    {
        int[] order = [.. Enumerable.Range(0, Parts)];
        new Random(568).Shuffle(order);
        return order;
    }

    /// <summary>The matings of the three runs of a channel; parts count from the channel's first.</summary>
    private static IEnumerable<(PortRef A, PortRef B, Keying Keys)> ChannelMatings()
    {
        for (int k = 0; k < Ports; k++)
        {
            yield return (new PortRef(NearInterface, k), new PortRef(NearCords[k], 0), Keying.Aligned);
            yield return (new PortRef(NearCords[k], 1), new PortRef(NearCassette, k), Keying.Aligned);
        }

        yield return (new PortRef(NearCassette, RearPort), new PortRef(TrunkPart, 0), Keying.Aligned);
        yield return (new PortRef(TrunkPart, 1), new PortRef(FarCassette, RearPort), Keying.Aligned);
        for (int k = 0; k < Ports; k++)
        {
            yield return (new PortRef(FarCassette, k), new PortRef(FarCords[k], 0), Keying.Aligned);
            yield return (new PortRef(FarCords[k], 1), new PortRef(FarInterface, k), Keying.Aligned);
        }
    }

    private void Set(PartKind kind, Action<AttributeValues> attributes, params int[] roles)
    {
        var values = new AttributeValues(kind.AllAttributes);
        attributes(values);
        var faults = new List<AttributeFault>();
        Shape shape = kind.Build(values, faults)
            ?? throw new InvalidOperationException($"{kind.Name}: {string.Join("; ", faults.Select(f => f.Message))}");
        foreach (int role in roles)
        {
            _shapes[role] = shape;
            _kinds[role] = kind.Name;
        }
    }
}
