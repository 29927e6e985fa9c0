using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>A link before and after.</summary>
/// <param name="Name">What people know it by: the device at its outlet, with the port where it has several.</param>
/// <param name="After">Its ends afterwards; null where it ends for good.</param>
/// <param name="Before">Its index in the existing plant, or -1 where it is new.</param>
public sealed record GrownLink(string Name, Link? After, int Before)
{
    /// <summary>True when nothing of it is touched.</summary>
    public bool IsKept { get; init; }

    /// <summary>What the planner would call the device that the brief asks for; empty for a link that ends.</summary>
    public string Asked { get; init; } = "";
}

/// <summary>One thing that takes the place of another.</summary>
/// <param name="Old">The part that goes.</param>
/// <param name="New">The part that comes.</param>
public readonly record struct Exchange(int Old, int New);

/// <summary>What is between two plants: parts, joints and links with numbers that stay the same all along.</summary>
public sealed record GrowthDifference
{
    /// <summary>All parts before and after. The first are those of the existing plant, with its numbers.</summary>
    public required IReadOnlyList<Part> Parts { get; init; }

    /// <summary>How many parts the existing plant has.</summary>
    public required int OldParts { get; init; }

    public required IReadOnlyList<Joint> Before { get; init; }

    public required IReadOnlyList<Joint> After { get; init; }

    public required IReadOnlyList<GrownLink> Links { get; init; }

    /// <summary>The networks, those of the existing plant first.</summary>
    public required IReadOnlyList<Network> Networks { get; init; }

    /// <summary>Parts that are bought, in the order in which links come to them.</summary>
    public required IReadOnlyList<int> Added { get; init; }

    /// <summary>Parts that are there and are joined elsewhere.</summary>
    public required IReadOnlyList<int> Moved { get; init; }

    /// <summary>For parts that are carried to another room the one where they were.</summary>
    public required IReadOnlyDictionary<int, string?> RoomsBefore { get; init; }

    /// <summary>Parts that go.</summary>
    public required IReadOnlyList<int> TakenOut { get; init; }

    /// <summary>Parts that come where others go: another application on an interface, a panel for a cassette.</summary>
    public required IReadOnlyList<Exchange> Exchanged { get; init; }

    /// <summary>Parts that stay and are described otherwise: a port is given to another network.</summary>
    public required IReadOnlyList<int> Relabelled { get; init; }

    /// <summary>How many parts stay as they are.</summary>
    public int Staying => OldParts - TakenOut.Count - Moved.Count;
}
