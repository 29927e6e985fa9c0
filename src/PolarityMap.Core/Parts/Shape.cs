using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Parts;

/// <summary>Which side of a part a port is on. A strand that enters on one side leaves on the other.</summary>
public enum Side
{
    /// <summary>The near end of a cable, the front of a cassette or outlet, the only side of an interface.</summary>
    Near,

    /// <summary>The far end of a cable, the rear of a cassette or outlet.</summary>
    Far,
}

/// <summary>What a lane of an interface does at its position.</summary>
public enum LaneDirection
{
    Transmit,
    Receive,

    /// <summary>Both at once on one fibre, at two wavelengths.</summary>
    Both,
}

/// <summary>The words for <see cref="LaneDirection"/> in findings and drawings.</summary>
public static class LaneDirectionWords
{
    public static string Word(this LaneDirection direction) => direction switch
    {
        LaneDirection.Transmit => "transmit",
        LaneDirection.Receive => "receive",
        _ => "transmit and receive",
    };

    /// <summary>The short form for drawings.</summary>
    public static string ShortWord(this LaneDirection direction) => direction switch
    {
        LaneDirection.Transmit => "Tx",
        LaneDirection.Receive => "Rx",
        _ => "Tx Rx",
    };
}

/// <summary>One port of a shape.</summary>
/// <param name="Name">The port's name in addresses.</param>
/// <param name="Face">Its connector face.</param>
/// <param name="Side">The side of the part it is on.</param>
public sealed record PortShape(string Name, Face Face, Side Side)
{
    /// <summary>The leg this port ends, counted from 1; 0 when the part has no legs.</summary>
    public int Leg { get; init; }

    /// <summary>The keying that this port gives to a mating, when it holds an array adapter or is a receptacle; otherwise null.</summary>
    public Keying? Keys { get; init; }

    /// <summary>True when the keying is the port's own nature and a document may not change it, as at a transceiver.</summary>
    public bool KeysFixed { get; init; }

    /// <summary>
    /// True for an adapter: two plugs meet in it and it has no fibre of its own. A run names it between the two plugs.
    /// </summary>
    public bool IsAdapter { get; init; }

    /// <summary>Number of fibres in an array connector of the part, or 0 where the port is none.</summary>
    public int Base { get; init; }

    /// <summary>True when the ferrule has guide pins, false when it has holes for them, null where there is no such thing.</summary>
    public bool? Pinned { get; init; }

    /// <summary>The end face, or null when it is not known.</summary>
    public Polish? Polish { get; init; }

    /// <summary>The connector's name in the standards, such as <c>LC</c>; empty when it is not known.</summary>
    public string Connector { get; init; } = "";

    /// <summary>True when the connector takes its network's key code, where the network has one.</summary>
    public bool IsKeyed { get; init; }

    /// <summary>The largest loss of a mating at this port that the part states, or null.</summary>
    public Decibel? StatedLoss { get; init; }

    /// <summary>The loss of a mating at this port that the part lets expect, or null.</summary>
    public Decibel? ExpectedLoss { get; init; }

    /// <summary>What an interface's port is for, or null when it is not stated.</summary>
    public Application? Application { get; init; }

    /// <summary>Number of separate links that the port is split into by its breakout mode; 0 when it is one link.</summary>
    public int Groups { get; init; }

    /// <summary>Number of receptacles that the application's port has; this is one of them.</summary>
    public int Receptacles { get; init; } = 1;

    /// <summary>Into how many links the application's port is split, by its breakout mode or by its receptacles; 0 when it is one link.</summary>
    public int Links => Groups > 0 ? Groups : Receptacles > 1 ? Receptacles : 0;

    /// <summary>Index of the port's first position within the part.</summary>
    public int FirstPosition { get; init; }

    /// <summary>Number of positions that the part numbers for this port: none for an adapter.</summary>
    public int PositionCount => IsAdapter ? 0 : Face.Count;
}

/// <summary>One lane of an interface: what one position of it does.</summary>
/// <param name="Port">Index of the port in the shape.</param>
/// <param name="Position">Position in the port, 1-based.</param>
/// <param name="Direction">Transmit or receive.</param>
/// <param name="Number">Lane number, 1-based; a duplex port has lane 1 only.</param>
public readonly record struct Lane(int Port, int Position, LaneDirection Direction, int Number)
{
    /// <summary>
    /// The link of the port that the lane belongs to, counted from 1. A port that is not split has one link for each lane to be
    /// named by.
    /// </summary>
    public int Group { get; init; } = Number;

    /// <summary>The wavelength it sends at, or null when it does not send or the wavelength is not known.</summary>
    public Wavelength? Sends { get; init; }

    /// <summary>The wavelength it listens at, or null when it does not listen or the wavelength is not known.</summary>
    public Wavelength? Hears { get; init; }
}

/// <summary>
/// What a part looks like to everything downstream: its ports, how its positions are joined inside, and its lanes.
/// Nothing downstream asks which kind of part a shape came from.
/// </summary>
public sealed class Shape
{
    private readonly int[] _portByPosition;
    private readonly int[] _laneByPosition;
    private readonly (int First, int End)[] _lanesByPort;

    internal Shape(PortShape[] ports, int[] inside, Lane[] lanes, bool isCable, int splices)
    {
        Splices = splices;
        Ports = new FixedList<PortShape>(ports);
        Inside = new FixedList<int>(inside);
        AsMade = Inside;
        Lanes = new FixedList<Lane>(lanes);
        IsCable = isCable;
        _portByPosition = PortByPosition(ports, inside.Length);
        _laneByPosition = [];
        _lanesByPort = [];
        if (lanes.Length == 0)
            return;
        _laneByPosition = new int[inside.Length];
        _lanesByPort = new (int, int)[ports.Length];
        Array.Fill(_laneByPosition, -1);
        for (int i = 0; i < lanes.Length; i++)
        {
            int port = lanes[i].Port;
            _laneByPosition[ports[port].FirstPosition + lanes[i].Position - 1] = i;
            _lanesByPort[port] = (_lanesByPort[port].End == 0 ? i : _lanesByPort[port].First, i + 1);
        }
    }

    private Shape(Shape other, FixedList<PortShape> ports, FixedList<int> inside)
    {
        Ports = ports;
        Inside = inside;
        AsMade = other.AsMade;
        Lanes = other.Lanes;
        IsCable = other.IsCable;
        Splices = other.Splices;
        _portByPosition = other._portByPosition;
        _laneByPosition = other._laneByPosition;
        _lanesByPort = other._lanesByPort;
    }

    /// <summary>The ports, in the order of their positions.</summary>
    public FixedList<PortShape> Ports { get; }

    /// <summary>For each position of the part the position it is joined to inside, or -1.</summary>
    public FixedList<int> Inside { get; }

    /// <summary>As <see cref="Inside"/> was before a fibre broke or was joined otherwise: which places have a fibre at all.</summary>
    public FixedList<int> AsMade { get; }

    /// <summary>The lanes; empty unless the part is an interface.</summary>
    public FixedList<Lane> Lanes { get; }

    /// <summary>True for a cord, trunk or harness: it is entered at one end and left at the other without naming a port.</summary>
    public bool IsCable { get; }

    /// <summary>True when the part is an active interface.</summary>
    public bool IsInterface => Lanes.Count > 0;

    /// <summary>Number of splices that each fibre passes inside the part.</summary>
    public int Splices { get; }

    /// <summary>Number of positions.</summary>
    public int PositionCount => Inside.Count;

    /// <summary>The lane at a position of the part (0-based), or null.</summary>
    public Lane? LaneAt(int localPosition) => LaneIndexAt(localPosition) is >= 0 and int i ? Lanes[i] : null;

    /// <summary>The index in <see cref="Lanes"/> of the lane at a position of the part (0-based), or -1.</summary>
    public int LaneIndexAt(int localPosition) => _laneByPosition.Length > 0 ? _laneByPosition[localPosition] : -1;

    /// <summary>Index of the port that a position of the part (0-based) is in.</summary>
    public int PortAt(int localPosition) => _portByPosition[localPosition];

    /// <summary>Where in <see cref="Lanes"/> those of a port begin and end. Lanes of other ports may stand between.</summary>
    internal (int First, int End) LanesAround(int port) => _lanesByPort.Length > 0 ? _lanesByPort[port] : default;

    /// <summary>Index of the port with this name, or -1.</summary>
    public int FindPort(string name)
    {
        for (int i = 0; i < Ports.Count; i++)
        {
            if (Ports[i].Name == name)
                return i;
        }

        return -1;
    }

    /// <summary>The same shape with other pairs inside.</summary>
    /// <param name="inside">For each position its partner, or -1; not changed afterwards.</param>
    internal Shape WithInside(int[] inside) => new(this, Ports, new FixedList<int>(inside));

    /// <summary>The same shape with one port of another nature; its name, face and side stay.</summary>
    internal Shape WithPort(int index, PortShape port)
    {
        PortShape[] ports = [.. Ports];
        ports[index] = port;
        return new Shape(this, new FixedList<PortShape>(ports), Inside);
    }

    private static int[] PortByPosition(PortShape[] ports, int positions)
    {
        var at = new int[positions];
        for (int i = 0; i < ports.Length; i++)
            at.AsSpan(ports[i].FirstPosition, ports[i].PositionCount).Fill(i);
        return at;
    }
}
