using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Plants;

/// <summary>One of several physically separate networks.</summary>
/// <param name="Name">Its name in the document.</param>
/// <param name="Colour">The colour word its parts carry, or null.</param>
/// <param name="Place">Where the document names it.</param>
public sealed record Network(string Name, string? Colour, SourcePlace Place);

/// <summary>A part of the plant with the shape that its kind built.</summary>
public sealed record Part(string Name, string Kind, Shape Shape, SourcePlace Place)
{
    /// <summary>Index into <see cref="Plant.Networks"/>, or -1.</summary>
    public int Network { get; init; } = -1;

    /// <summary>One or two short lines on what it is.</summary>
    public IReadOnlyList<string> Caption { get; init; } = [];

    public Length? Length { get; init; }

    public string? Room { get; init; }

    public string? Note { get; init; }

    /// <summary>Legs left over on purpose.</summary>
    public IReadOnlyList<int> SpareLegs { get; init; } = [];

    /// <summary>True when an as-built difference describes the part; its place is then that of the difference.</summary>
    public bool IsAsBuilt { get; init; }

    /// <summary>True for a cord that a run mentions without naming it.</summary>
    public bool IsInline { get; init; }
}

/// <summary>A port of a part, by index.</summary>
public readonly record struct PortRef(int Part, int Port);

/// <summary>Two ports joined.</summary>
/// <param name="A">One port, in the order of the run.</param>
/// <param name="B">The other.</param>
/// <param name="Keys">How the keys lie; aligned for duplex and simplex, where A meets B.</param>
/// <param name="Place">The stop in the document that makes the mating.</param>
public sealed record Mating(PortRef A, PortRef B, Keying Keys, SourcePlace Place)
{
    /// <summary>The adapter in which the two plugs meet, if it is a part of its own.</summary>
    public PortRef? Through { get; init; }

    /// <summary>When a simplex port sits in one position of a wider port: that position of A; otherwise 0.</summary>
    public int PositionOfA { get; init; }

    /// <summary>As <see cref="PositionOfA"/> for B.</summary>
    public int PositionOfB { get; init; }
}

/// <summary>A plug that sits in an adapter with nothing on the other side.</summary>
public sealed record OpenPlug(PortRef Plug, PortRef Adapter, SourcePlace Place);

/// <summary>One end of a link: an interface port, or one lane of it.</summary>
/// <param name="Port">The interface port.</param>
/// <param name="Lane">The lane, or 0 for all lanes of the port.</param>
public readonly record struct LinkEnd(PortRef Port, int Lane);

/// <summary>What is meant: this interface reaches that interface.</summary>
public sealed record Link(LinkEnd From, LinkEnd To, SourcePlace Place);

/// <summary>Everything described in one document, bound and ready to trace. Made by <see cref="PlantBuilder"/>.</summary>
public sealed class Plant
{
    internal Plant(PlantTitle title, Network[] networks, Part[] parts, Mating[] matings, OpenPlug[] openPlugs, Link[] links)
    {
        Title = title;
        Networks = networks;
        Parts = parts;
        Matings = matings;
        OpenPlugs = openPlugs;
        Links = links;
    }

    public PlantTitle Title { get; }

    public IReadOnlyList<Network> Networks { get; }

    /// <summary>The parts, in the order in which the runs mention them; parts that no run mentions come last.</summary>
    public IReadOnlyList<Part> Parts { get; }

    public IReadOnlyList<Mating> Matings { get; }

    public IReadOnlyList<OpenPlug> OpenPlugs { get; }

    public IReadOnlyList<Link> Links { get; }

    /// <summary>The port's shape.</summary>
    public PortShape Port(PortRef port) => Parts[port.Part].Shape.Ports[port.Port];

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
