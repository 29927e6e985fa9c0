using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Planning;

/// <summary>
/// What a polarity method of TIA-568.3 asks for: the trunk, the keys of its adapters, the wirings at the two ends of a segment.
/// Nothing here is believed: every plan is traced and checked.
/// </summary>
/// <param name="Name">The standard's letter.</param>
/// <param name="Keys">How the keys of the array adapters lie.</param>
/// <param name="Trunk">The map of a trunk of one row.</param>
/// <param name="TwoRowTrunk">
/// The map of a trunk of two rows. The letters are read in several ways there, so this is the reading that works with the
/// wirings beside it (derived and proved by tracing).
/// </param>
/// <param name="Near">The wiring of the cassette at the near end of a segment.</param>
/// <param name="Far">The wiring at the far end.</param>
/// <param name="TwoRowNear">As <paramref name="Near"/> for two rows.</param>
/// <param name="TwoRowFar">As <paramref name="Far"/> for two rows.</param>
/// <param name="Crosses">Whether a segment between two cassettes joins A to B, so that A-to-B cords do at both ends.</param>
/// <param name="TrunkWords">Its trunk, for people.</param>
/// <param name="Source">Where the table of its parts is from.</param>
public sealed record PlanMethod(
    string Name, Keying Keys, string Trunk, string TwoRowTrunk, string Near, string Far, string TwoRowNear, string TwoRowFar, bool Crosses, string TrunkWords, string Source)
{
    /// <summary>The methods in the order of the standard.</summary>
    public static IReadOnlyList<PlanMethod> All { get; } =
    [
        new("A", Keying.Opposed, "Type-A", "straight-by-number", "straight", "straight", "straight", "straight", false,
            "a straight trunk", "TIA-568.3, more than six public sources"),
        new("B", Keying.Aligned, "Type-B", "reversed-in-row", "straight", "straight-reversed", "straight", "straight-reversed-in-row", true,
            "a reversed trunk", "TIA-568.3, four public sources"),
        new("C", Keying.Opposed, "Type-C", "pair-flipped", "straight", "straight", "straight", "straight", true,
            "a trunk with its pairs flipped", "TIA-568.3, more than five public sources"),
        new("U1", Keying.Opposed, "Type-B", "reversed-in-row", "U1", "U1", "U1-in-row", "U1-in-row", true,
            "a reversed trunk", "TIA-568.3-E, three public sources"),
        new("U2", Keying.Aligned, "Type-B", "reversed-in-row", "U2", "U2", "U2-in-row", "U2-in-row", true,
            "a reversed trunk", "TIA-568.3-E, three public sources"),
    ];

    public static IReadOnlyList<string> Names { get; } = [.. All.Select(m => m.Name)];

    /// <summary>
    /// The names in the order in which equals are taken: those with one kind of cassette and A-to-B cords alone that keep the order
    /// of ports first (common practice).
    /// </summary>
    public static IReadOnlyList<string> Preferred { get; } = ["U1", "U2", "A", "C", "B"];

    /// <summary>Its place in <see cref="Preferred"/>, counted from 0.</summary>
    public int Preference => Enumerable.Range(0, Preferred.Count).First(i => Preferred[i] == Name);

    /// <summary>True when both ends of a segment take the same kind of cassette.</summary>
    public bool HasOneCassette => Near == Far;

    /// <summary>The method of that very name, or null.</summary>
    public static PlanMethod? Find(string name) => All.FirstOrDefault(m => m.Name == name);

    /// <summary>The map of its trunks for an array.</summary>
    public string TrunkFor(ArrayBase array) => array.IsOneRow ? Trunk : TwoRowTrunk;

    /// <summary>The wiring at the near end of a segment for an array.</summary>
    public string NearFor(ArrayBase array) => array.IsOneRow ? Near : TwoRowNear;

    /// <summary>The wiring at the far end of a segment for an array.</summary>
    public string FarFor(ArrayBase array) => array.IsOneRow ? Far : TwoRowFar;

    /// <summary>
    /// How the last duplex cord of a channel is joined; all others are A-to-B. Light lands right when the A-to-B cords and the
    /// segments that cross are together an odd number (proved).
    /// </summary>
    /// <param name="segments">How many trunks between cassettes lie in series.</param>
    public string LastCord(int segments)
    {
        int crossings = segments + 1 + (Crosses ? segments : 0);
        return crossings % 2 == 1 ? "A-to-B" : "A-to-A";
    }

    /// <summary>
    /// The maps of the first and the last array cord of a parallel channel. One row: transmit lands on receive when the Type-B
    /// cables and the aligned matings, those at both interfaces among them, are an odd number and the Type-C cables an even one
    /// (proved). Two rows: transmit and receive each have a row, so one cord exchanges the rows, and flipped pairs are flipped
    /// back (proved).
    /// </summary>
    /// <param name="array">The array of the cords.</param>
    /// <param name="trunks">How many trunks lie in series, adapters between and around them.</param>
    public (string First, string Last) ArrayCords(ArrayBase array, int trunks)
    {
        if (!array.IsOneRow)
            return (TwoRowTrunk == "pair-flipped" && trunks % 2 == 0 ? "straight-by-number" : TwoRowTrunk, Rows(trunks) ? "rows-exchanged" : "straight-by-number");
        int reversals = 2 + (Trunk == "Type-B" ? trunks : 0) + (Keys == Keying.Aligned ? trunks + 1 : 0);
        bool evenLeft = reversals % 2 == 0;
        return (Trunk == "Type-C" && trunks % 2 == 1) switch
        {
            true => evenLeft ? ("Type-B", "Type-C") : ("Type-A", "Type-C"),
            false when evenLeft => ("Type-A", "Type-B"),
            false => Trunk == "Type-B" ? ("Type-B", "Type-B") : ("Type-A", "Type-A"),
        };
    }

    /// <summary>True when the rows are still as they were after all adapters of a channel.</summary>
    private bool Rows(int trunks) => Keys == Keying.Aligned || (trunks + 1) % 2 == 0;

    public override string ToString() => Name;
}

/// <summary>A way to build a plant: a method with the number of fibres in its array connectors.</summary>
/// <param name="Method">The polarity method.</param>
/// <param name="Base">Fibres in an array connector of the trunks.</param>
public readonly record struct PlanCandidate(PlanMethod Method, int Base)
{
    /// <summary>The bases that are planned with, from the smallest.</summary>
    public static IReadOnlyList<int> Bases { get; } = [8, 12, 16, 24];

    public ArrayBase Array => ArrayBase.Of(Base);

    public override string ToString() => $"method {Method.Name}, base {Base}";
}
