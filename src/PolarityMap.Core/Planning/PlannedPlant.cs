using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning;

/// <summary>What was decided and why, for the head of the document.</summary>
/// <param name="About">The key of the brief that it answers to, or what it is about.</param>
/// <param name="What">What was decided, a sentence without a full stop.</param>
/// <param name="Why">Why.</param>
public sealed record PlanDecision(string About, string What, string Why);

/// <summary>A type of part, as a document's <c>types</c> would hold it.</summary>
public sealed class PlannedType
{
    /// <param name="name">Its name; that of the catalogue where it adds nothing.</param>
    /// <param name="of">The kind or the catalogue's type that it is built on.</param>
    /// <param name="set">Sets what it adds.</param>
    /// <param name="defaults">What the plant says once.</param>
    /// <exception cref="ArgumentException">The attributes do not go together.</exception>
    public PlannedType(string name, string of, Action<AttributeValues> set, PartDefaults defaults)
    {
        (Name, Of) = (name, of);
        CatalogueType? known = PartKinds.Find(of) is null ? Catalogue.Find(of) : null;
        Kind = PartKinds.Find(known?.Kind ?? of)!;
        Own = new AttributeValues(Kind.AllAttributes, defaults);
        set(Own);
        Whole = new AttributeValues(Kind.AllAttributes, defaults);
        Whole.FillFrom(Own);
        if (known is not null)
            Whole.FillFrom(known.Values(defaults));
        var faults = new List<AttributeFault>();
        Shape = Kind.Build(Whole, faults) ?? throw new ArgumentException($"{name}: {string.Join("; ", faults.Select(f => f.Message))}", nameof(set));
        Content = $"{of}: {AttributeWords.Line(Kind, Own, Shape, a => !Own.Has(a))}";
    }

    public string Name { get; internal set; }

    public string Of { get; }

    public PartKind Kind { get; }

    /// <summary>What it adds to what it is built on.</summary>
    public AttributeValues Own { get; }

    /// <summary>All that is said of its parts.</summary>
    public AttributeValues Whole { get; }

    public Shape Shape { get; }

    /// <summary>What it is, without its name: equal for equal types.</summary>
    public string Content { get; }

    /// <summary>True when a document has to describe it.</summary>
    public bool IsWritten => Own.Given.Any();
}

/// <summary>Parts that count up and are of one type, as one line of a document describes them.</summary>
/// <param name="Name">Their names.</param>
/// <param name="Type">Their type.</param>
public sealed record PlannedPart(PlannedName Name, PlannedType Type)
{
    /// <summary>Index of the network, or -1.</summary>
    public int Network { get; init; } = -1;

    /// <summary>For each duplex port in order its network; empty when all belong to <see cref="Network"/>.</summary>
    public IReadOnlyList<int> PortNetworks { get; init; } = [];

    public string? Room { get; init; }

    /// <summary>Where in the room: rack, unit, panel and place.</summary>
    public string? Note { get; init; }

    /// <summary>The legs that are left over on purpose, ascending from 1.</summary>
    public IReadOnlyList<int> Spare { get; init; } = [];

    /// <summary>The last legs of so many, from one on.</summary>
    internal static IReadOnlyList<int> Last(int legs, int from) => from > legs ? [] : [.. Enumerable.Range(from, legs - from + 1)];
}

/// <summary>Parts whose names count on from line to line, so that runs may name all of them in one range.</summary>
public sealed class PlannedFamily(PlannedName name)
{
    private readonly List<PlannedPart> _lines = [];

    /// <summary>The names of all of them.</summary>
    public PlannedName Name { get; } = name;

    /// <summary>The lines that describe them, together as many as the names.</summary>
    public IReadOnlyList<PlannedPart> Lines => _lines;

    /// <summary>Adds a line; where all ports of its parts have one network, that is the parts' network.</summary>
    internal void Add(PlannedPart line) => _lines.Add(line.PortNetworks.Count > 0 && line.PortNetworks.Count == line.Type.Shape.Ports.Count(p => p.Base == 0) && line.PortNetworks.Distinct().Count() == 1
        ? line with { Network = line.PortNetworks[0], PortNetworks = [] }
        : line);

    /// <summary>The type of one of them, counted from 0.</summary>
    public PlannedType TypeAt(int index)
    {
        foreach (PlannedPart line in _lines)
        {
            if (index < line.Name.Count)
                return line.Type;
            index -= line.Name.Count;
        }

        throw new ArgumentOutOfRangeException(nameof(index));
    }
}

/// <summary>One port, or one leg of a cable, that a run comes to.</summary>
/// <param name="Index">Which part of the family, counted from 0.</param>
/// <param name="Port">The number of port or leg; 0 for the one that the stop names.</param>
public readonly record struct PlannedPort(int Index, int Port);

/// <summary>One stop of many chains in step.</summary>
/// <param name="Family">The parts; null for a cord without a name.</param>
/// <param name="Ports">For each chain the port; empty for a cord.</param>
public sealed record PlannedStop(PlannedFamily? Family, IReadOnlyList<PlannedPort> Ports)
{
    /// <summary>The name of the port where <see cref="PlannedPort.Port"/> is 0; empty for a cable with one leg.</summary>
    public string PortName { get; init; } = "";

    /// <summary>The type of a cord without a name.</summary>
    public PlannedType? Cord { get; init; }

    /// <summary>The length of a cord without a name.</summary>
    public Length Length { get; init; }
}

/// <summary>Chains in step, as many as each named stop has ports.</summary>
/// <param name="Stops">The stops, in the order in which a finger would follow.</param>
public sealed record PlannedRun(IReadOnlyList<PlannedStop> Stops)
{
    public int Count => Stops[0].Ports.Count;
}

/// <summary>Links in step: each port of the one stop reaches that of the other.</summary>
public sealed record PlannedLinks(PlannedStop From, PlannedStop To);

/// <summary>A part of the document under a comment of its own.</summary>
/// <param name="Heading">The comment.</param>
public sealed record PlannedSection(string Heading)
{
    internal List<PlannedFamily> FamilyList { get; } = [];

    internal List<PlannedRun> RunList { get; } = [];

    internal List<PlannedLinks> LinkList { get; } = [];

    public IReadOnlyList<PlannedFamily> Families => FamilyList;

    public IReadOnlyList<PlannedRun> Runs => RunList;

    public IReadOnlyList<PlannedLinks> Links => LinkList;
}

/// <summary>
/// A plant as a person would write it: types, ranges and runs in step. <see cref="PlantAssembly"/> makes a plant of it for the
/// checker; a writer makes a document of it, which the ordinary reader reads as the same plant.
/// </summary>
public sealed record PlannedPlant
{
    public required Brief Brief { get; init; }

    public required PlanCandidate Candidate { get; init; }

    public required PartDefaults Defaults { get; init; }

    public required PlantPractice Practice { get; init; }

    public required IReadOnlyList<Network> Networks { get; init; }

    /// <summary>The types, in the order of first use; those that add nothing to the catalogue's among them.</summary>
    public required IReadOnlyList<PlannedType> Types { get; init; }

    public required IReadOnlyList<PlannedSection> Sections { get; init; }

    public IReadOnlyList<PlanDecision> Decisions { get; init; } = [];
}
