using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests;

/// <summary>
/// Puts a plant together from kinds and addresses, as a document would. Every part, mating and link gets a line of its
/// own, in the order of the calls. Keys come from the receptacle or adapter that a mating is made in.
/// </summary>
internal sealed class Bench
{
    private readonly PlantBuilder _builder = new();
    private readonly Dictionary<string, int> _parts = [];
    private int _line;
    private SourcePlace? _stop;

    /// <summary>Adds a part; <paramref name="set"/> sets its attributes.</summary>
    public Bench Add(string name, string kind, Action<AttributeValues>? set = null, int network = -1, params int[] spare)
    {
        PartKind found = PartKinds.Find(kind)!;
        Shape shape = ShapeOf(kind, set);
        var values = new AttributeValues(found.AllAttributes);
        set?.Invoke(values);
        Part part = PartMaker.Make(name, found, values, shape, NextPlace(), _builder.Networks);
        _parts.Add(name, _builder.AddPart(part with
        {
            Network = network < 0 ? part.Network : network,
            SpareLegs = spare.Length > 0 ? spare : part.SpareLegs,
        }));
        return this;
    }

    /// <summary>Sets the limits, the margin and the like that the plant goes by.</summary>
    public Bench Practice(PlantPractice practice)
    {
        _builder.Practice = practice;
        return this;
    }

    /// <summary>Adds a network and returns its index.</summary>
    public int Network(string name, string? colour = null, string? key = null, bool plainFits = false, IReadOnlyList<SharedPlace>? mayShare = null) =>
        _builder.AddNetwork(new Network(name, colour, NextPlace()) { Key = key, PlainFits = plainFits, MayShare = mayShare });

    /// <summary>Whatever <paramref name="make"/> adds stands at one place, as the chains of a run with ranges do.</summary>
    public Bench AtOneStop(Action<Bench> make)
    {
        _stop = NextPlace();
        make(this);
        _stop = null;
        return this;
    }

    /// <summary>A port or plug that finds another port taken, first by line <paramref name="firstLine"/>.</summary>
    public Bench Clash(string taken, string refused, int firstLine)
    {
        (PortRef port, string position) = Port(taken);
        _builder.AddClash(new PortClash(port, PositionNumber(Shape(port), position), Port(refused).Port, new SourcePlace("plant.yaml", firstLine, 1), NextPlace()));
        return this;
    }

    /// <summary>Mates two ports; <c>PART/PORT:POSITION</c> names the place in a duplex port that a simplex plug takes.</summary>
    public Bench Mate(string a, string b, Keying? keys = null, string? through = null)
    {
        (PortRef portA, string positionA) = Port(a);
        (PortRef portB, string positionB) = Port(b);
        PortRef? adapter = through is null ? null : Port(through).Port;
        PortShape shapeA = Shape(portA);
        PortShape shapeB = Shape(portB);
        keys ??= shapeA.Keys ?? shapeB.Keys ?? (adapter is { } at ? Shape(at).Keys : null);
        Assert.True(keys is not null || shapeA.Face.Family != ConnectorFamily.Array, $"{a} and {b} need keys");
        _builder.AddMating(new Mating(portA, portB, keys ?? Keying.Aligned, NextPlace())
        {
            Through = adapter,
            PositionOfA = PositionNumber(shapeA, positionA),
            PositionOfB = PositionNumber(shapeB, positionB),
        });
        return this;
    }

    /// <summary>Joins two ports by a duplex cord (A-to-B or A-to-A) or a simplex cord that is called <paramref name="name"/>.</summary>
    public Bench Cord(string name, string from, string type, string to)
    {
        if (type == "simplex")
            Add(name, "simplex cord");
        else
            Add(name, "duplex cord", v => v.Set("type", type));
        return Mate(from, name + "/near").Mate(name + "/far", to);
    }

    /// <summary>A plug in an adapter with nothing on its other side.</summary>
    public Bench Open(string plug, string adapter)
    {
        _builder.AddOpenPlug(new OpenPlug(Port(plug).Port, Port(adapter).Port, NextPlace()));
        return this;
    }

    /// <summary>States a link between two interface ports, or lanes of them as in <c>QS/1:2</c>.</summary>
    public Bench Link(string from, string to)
    {
        _builder.AddLink(new Link(End(from), End(to), NextPlace()));
        return this;
    }

    public Plant Build() => _builder.Build();

    public TracedPlant Trace() => TracedPlant.Of(Build());

    public IReadOnlyList<Finding> Check() => Checker.Check(Trace());

    /// <summary>The codes of all findings in alphabetical order, with repetitions, separated by blanks.</summary>
    public string Codes() => string.Join(' ', Check().Select(f => f.Rule.Code).Order(StringComparer.Ordinal));

    /// <summary>Builds the shape of a kind; a fault fails the test.</summary>
    public static Shape ShapeOf(string kind, Action<AttributeValues>? set = null)
    {
        PartKind found = PartKinds.Find(kind)!;
        var values = new AttributeValues(found.AllAttributes);
        set?.Invoke(values);
        var faults = new List<AttributeFault>();
        Shape? shape = found.Build(values, faults);
        Assert.Empty(faults);
        Assert.NotNull(shape);
        return shape;
    }

    private SourcePlace NextPlace() => _stop ?? new("plant.yaml", ++_line, 1);

    private LinkEnd End(string address)
    {
        (PortRef port, string lane) = Port(address);
        return new LinkEnd(port, lane.Length == 0 ? 0 : int.Parse(lane));
    }

    private (PortRef Port, string Position) Port(string address)
    {
        int slash = address.IndexOf('/');
        int colon = address.IndexOf(':');
        string port = colon < 0 ? address[(slash + 1)..] : address[(slash + 1)..colon];
        int part = _parts[address[..slash]];
        int index = _builder.Parts[part].Shape.FindPort(port);
        Assert.True(index >= 0, $"no port {address}");
        return (new PortRef(part, index), colon < 0 ? "" : address[(colon + 1)..]);
    }

    private PortShape Shape(PortRef port) => _builder.Parts[port.Part].Shape.Ports[port.Port];

    private static int PositionNumber(PortShape port, string position)
    {
        if (position.Length == 0)
            return 0;
        Assert.True(port.Face.TryParsePosition(position, out int number), position);
        return number;
    }
}
