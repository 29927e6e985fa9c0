using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Plants;

/// <summary>A port of a part, by index.</summary>
public readonly record struct PortRef(int Part, int Port)
{
    internal PortRef Renumbered(int[] numbers) => this with { Part = numbers[Part] };
}

/// <summary>Two ports joined.</summary>
/// <param name="A">One port, in the order of the run.</param>
/// <param name="B">The other.</param>
/// <param name="Keys">How the keys lie; aligned for duplex and simplex, where A meets B.</param>
/// <param name="Place">The stop in the document that makes the mating.</param>
public sealed record Mating(PortRef A, PortRef B, Keying Keys, SourcePlace Place) : INumbered<Mating>
{
    private static readonly PortRef s_none = new(-1, -1);

    // A plant has very many matings, so a null, a keying and two positions are kept as small as they go.
    private readonly byte _keys = (byte)Keys;
    private readonly short _positionOfA;
    private readonly short _positionOfB;
    private PortRef _a = A;
    private PortRef _b = B;
    private PortRef _through = s_none;

    public PortRef A
    {
        get => _a;
        init => _a = value;
    }

    public PortRef B
    {
        get => _b;
        init => _b = value;
    }

    /// <summary>The adapter in which the two plugs meet, if it is a part of its own.</summary>
    public PortRef? Through
    {
        get => _through == s_none ? null : _through;
        init => _through = value ?? s_none;
    }

    public Keying Keys
    {
        get => (Keying)_keys;
        init => _keys = (byte)value;
    }

    /// <summary>When a simplex port sits in one position of a wider port: that position of A; otherwise 0.</summary>
    public int PositionOfA
    {
        get => _positionOfA;
        init => _positionOfA = checked((short)value);
    }

    /// <summary>As <see cref="PositionOfA"/> for B.</summary>
    public int PositionOfB
    {
        get => _positionOfB;
        init => _positionOfB = checked((short)value);
    }

    Mating INumbered<Mating>.Copy() => this with { };

    void INumbered<Mating>.Renumber(int[] numbers)
    {
        _a = _a.Renumbered(numbers);
        _b = _b.Renumbered(numbers);
        if (_through != s_none)
            _through = _through.Renumbered(numbers);
    }
}

/// <summary>A plug that sits in an adapter with nothing on the other side.</summary>
public sealed record OpenPlug(PortRef Plug, PortRef Adapter, SourcePlace Place);

/// <summary>A plug that a run puts where another one sits already. Only the first is mated.</summary>
/// <param name="Port">The port that is taken: an adapter or a port of a part.</param>
/// <param name="Position">The position of it, or 0 for the whole port.</param>
/// <param name="Refused">The port that finds it taken, or null when it is the taken port itself that a run goes on from.</param>
/// <param name="First">The stop that took it.</param>
/// <param name="Place">The stop that finds it taken.</param>
public sealed record PortClash(PortRef Port, int Position, PortRef? Refused, SourcePlace First, SourcePlace Place);

/// <summary>One end of a link: an interface port, or one lane of it.</summary>
/// <param name="Port">The interface port.</param>
/// <param name="Lane">The link of a split port, which is a lane where each lane is split off; 0 for the whole port.</param>
public readonly record struct LinkEnd(PortRef Port, int Lane);

/// <summary>What is meant: this interface reaches that interface.</summary>
public sealed record Link(LinkEnd From, LinkEnd To, SourcePlace Place) : INumbered<Link>
{
    private LinkEnd _from = From;
    private LinkEnd _to = To;

    public LinkEnd From
    {
        get => _from;
        init => _from = value;
    }

    public LinkEnd To
    {
        get => _to;
        init => _to = value;
    }

    Link INumbered<Link>.Copy() => this with { };

    void INumbered<Link>.Renumber(int[] numbers)
    {
        _from = _from with { Port = _from.Port.Renumbered(numbers) };
        _to = _to with { Port = _to.Port.Renumbered(numbers) };
    }
}

/// <summary>Everything described in one document, bound and ready to trace. Made by <see cref="PlantBuilder"/>.</summary>
public sealed class Plant
{
    private readonly int[] _firstPort;
    private readonly Shape[] _shapes;

    internal Plant(PlantTitle title, PlantPractice practice, Network[] networks, Part[] parts, Mating[] matings, OpenPlug[] openPlugs, PortClash[] clashes, Link[] links)
    {
        Title = title;
        Practice = practice;
        Clashes = new FixedList<PortClash>(clashes);
        Networks = new FixedList<Network>(networks);
        Parts = new FixedList<Part>(parts);
        Matings = new FixedList<Mating>(matings);
        OpenPlugs = new FixedList<OpenPlug>(openPlugs);
        Links = new FixedList<Link>(links);
        _shapes = new Shape[parts.Length];
        _firstPort = new int[parts.Length];
        for (int i = 0; i < parts.Length; i++)
        {
            _shapes[i] = parts[i].Shape;
            _firstPort[i] = PortCount;
            PortCount += _shapes[i].Ports.Count;
        }
    }

    public PlantTitle Title { get; }

    /// <summary>Limits, colours and the like that the whole plant goes by.</summary>
    public PlantPractice Practice { get; }

    public FixedList<Network> Networks { get; }

    /// <summary>The parts, in the order in which the runs mention them; parts that no run mentions come last.</summary>
    public FixedList<Part> Parts { get; }

    public FixedList<Mating> Matings { get; }

    public FixedList<OpenPlug> OpenPlugs { get; }

    /// <summary>Ports that two plugs were put into.</summary>
    public FixedList<PortClash> Clashes { get; }

    public FixedList<Link> Links { get; }

    /// <summary>Number of ports of all parts, adapters included.</summary>
    public int PortCount { get; }

    /// <summary>A port's number among all ports, counted from 0 part by part.</summary>
    public int NumberOf(PortRef port) => _firstPort[port.Part] + port.Port;

    /// <summary>The shapes of <see cref="Parts"/>, in the same order; not to be changed.</summary>
    internal Shape[] Shapes => _shapes;

    /// <summary>The port's shape.</summary>
    public PortShape Port(PortRef port) => _shapes[port.Part].Ports[port.Port];

    /// <summary>
    /// True when the fibres of a mating meet: the faces are equal, or a simplex plug sits in a position of a duplex port; and
    /// both plugs go into the adapter that holds them.
    /// </summary>
    public bool Fits(Mating mating) => PlantBuilder.Fits(Port(mating.A), Port(mating.B), mating)
        && (mating.Through is not { } adapter || Port(adapter).Face.SharesAdapterWith(Port(mating.A).Face));

    /// <summary>True when the plug goes into the adapter that it waits in.</summary>
    public bool Fits(OpenPlug plug) => Port(plug.Adapter).Face.SharesAdapterWith(Port(plug.Plug).Face);

    /// <summary>The network of a port: its own among several, else that of its part; -1 when none is stated.</summary>
    public int NetworkOf(PortRef port)
    {
        Part part = Parts[port.Part];
        if (part.PortNetworks.Count == 0 || Port(port).Face.Family is ConnectorFamily.Array or ConnectorFamily.Bare)
            return part.Network;
        int nth = 0;
        for (int i = 0; i < port.Port; i++)
            nth += part.Shape.Ports[i].Face.Family is ConnectorFamily.Array or ConnectorFamily.Bare ? 0 : 1;
        return nth < part.PortNetworks.Count ? part.PortNetworks[nth] : part.Network;
    }

    /// <summary>The key code that a port carries, or null when it is plain.</summary>
    public string? KeyOf(PortRef port)
    {
        if (!Port(port).IsKeyed)
            return null;
        return Parts[port.Part].Key ?? (NetworkOf(port) is >= 0 and int n ? Networks[n].Key : null);
    }

    /// <summary>The address <c>PART/PORT</c>.</summary>
    public string Address(PortRef port) => $"{Parts[port.Part].Name}/{Port(port).Name}";

    /// <summary>The address of a link's end: <c>PART/PORT</c>, with <c>:LANE</c> when it names one.</summary>
    public string Address(LinkEnd end) => end.Lane == 0 ? Address(end.Port) : $"{Address(end.Port)}:{end.Lane}";

    /// <summary>The address <c>PART/PORT:POSITION</c>; a simplex port has no position to name.</summary>
    public string Address(PortRef port, int position) =>
        Port(port).Face.PositionName(position) is { Length: > 0 } name ? $"{Address(port)}:{name}" : Address(port);
}

/// <summary>What goes into the title block. Every field but the title may be absent.</summary>
public sealed record PlantTitle(string Title)
{
    public string? Site { get; init; }

    public string? Revision { get; init; }

    /// <summary>Date of issue as the document gives it, ISO 8601; never taken from a clock.</summary>
    public string? Date { get; init; }

    public string? Author { get; init; }

    public string? Number { get; init; }
}
