namespace PolarityMap.Core.Tests.Oracles;

/// <summary>
/// One strand of a duplex channel from left to right, as printed in the trade's end-to-end tables.
/// Positions A and B are those of the cassette's inner connector; array positions are seen at the end face, key up.
/// </summary>
/// <param name="LeftPort">Front port of the left cassette, 1..6.</param>
/// <param name="LeftPos">Inner duplex position of the left cassette, A or B.</param>
/// <param name="LeftArray">Array position at the left cassette's rear, 1..12.</param>
/// <param name="TrunkNear">Array position on the trunk's near plug, 1..12.</param>
/// <param name="TrunkFar">Array position on the trunk's far plug, 1..12.</param>
/// <param name="RightArray">Array position at the right cassette's rear, 1..12.</param>
/// <param name="RightPos">Inner duplex position of the right cassette, A or B.</param>
/// <param name="RightPort">Front port of the right cassette, 1..6.</param>
/// <param name="LeftTransmits">True where light goes from the left transceiver to the right one.</param>
public sealed record MethodRow(
    int LeftPort,
    char LeftPos,
    int LeftArray,
    int TrunkNear,
    int TrunkFar,
    int RightArray,
    char RightPos,
    int RightPort,
    bool LeftTransmits);

/// <summary>What a duplex method is built from, as printed in the table of the five methods. Both array adapters are of one kind.</summary>
public sealed record MethodIngredients(
    string Method,
    string Trunk,
    string Adapters,
    string LeftTransition,
    string RightTransition,
    string LeftCord,
    string RightCord,
    bool NeedsSecondKindOrInversion);

/// <summary>The five duplex methods on twelve fibres, typed row by row. Nothing here is computed.</summary>
public static class MethodTables
{
    // Source: trade facts 3. A: TIA-568, more than 6 sources. B: TIA-568, 4 sources. C: TIA-568, more than 5 sources,
    // its Type-A adapters 2 sources. U1 and U2: TIA-568.3-E, 3 sources each.
    public static readonly IReadOnlyList<MethodIngredients> Ingredients =
    [
        new("A", "Type-A", "Type-A", "straight", "straight", "A-to-B", "A-to-A", false),
        new("B", "Type-B", "Type-B", "straight", "straight-reversed", "A-to-B", "A-to-B", true),
        new("C", "Type-C", "Type-A", "straight", "straight", "A-to-B", "A-to-B", false),
        new("U1", "Type-B", "Type-A", "U1", "U1", "A-to-B", "A-to-B", false),
        new("U2", "Type-B", "Type-B", "U2", "U2", "A-to-B", "A-to-B", false),
    ];

    // Source: trade facts 3.1, method A. TIA-568, more than 6 sources for the ingredients; end-to-end rows proved.
    public static readonly IReadOnlyList<MethodRow> MethodA =
    [
        new(1, 'A', 1, 1, 1, 1, 'A', 1, false),
        new(1, 'B', 2, 2, 2, 2, 'B', 1, true),
        new(2, 'A', 3, 3, 3, 3, 'A', 2, false),
        new(2, 'B', 4, 4, 4, 4, 'B', 2, true),
        new(3, 'A', 5, 5, 5, 5, 'A', 3, false),
        new(3, 'B', 6, 6, 6, 6, 'B', 3, true),
        new(4, 'A', 7, 7, 7, 7, 'A', 4, false),
        new(4, 'B', 8, 8, 8, 8, 'B', 4, true),
        new(5, 'A', 9, 9, 9, 9, 'A', 5, false),
        new(5, 'B', 10, 10, 10, 10, 'B', 5, true),
        new(6, 'A', 11, 11, 11, 11, 'A', 6, false),
        new(6, 'B', 12, 12, 12, 12, 'B', 6, true),
    ];

    // Source: trade facts 3.1, method B. TIA-568, 4 sources for the ingredients; end-to-end rows proved.
    public static readonly IReadOnlyList<MethodRow> MethodB =
    [
        new(1, 'A', 1, 12, 1, 12, 'B', 1, false),
        new(1, 'B', 2, 11, 2, 11, 'A', 1, true),
        new(2, 'A', 3, 10, 3, 10, 'B', 2, false),
        new(2, 'B', 4, 9, 4, 9, 'A', 2, true),
        new(3, 'A', 5, 8, 5, 8, 'B', 3, false),
        new(3, 'B', 6, 7, 6, 7, 'A', 3, true),
        new(4, 'A', 7, 6, 7, 6, 'B', 4, false),
        new(4, 'B', 8, 5, 8, 5, 'A', 4, true),
        new(5, 'A', 9, 4, 9, 4, 'B', 5, false),
        new(5, 'B', 10, 3, 10, 3, 'A', 5, true),
        new(6, 'A', 11, 2, 11, 2, 'B', 6, false),
        new(6, 'B', 12, 1, 12, 1, 'A', 6, true),
    ];

    // Source: trade facts 3.1, method C. TIA-568, more than 5 sources for the ingredients (Type-A adapter: 2 sources); end-to-end rows proved.
    public static readonly IReadOnlyList<MethodRow> MethodC =
    [
        new(1, 'A', 1, 1, 2, 2, 'B', 1, false),
        new(1, 'B', 2, 2, 1, 1, 'A', 1, true),
        new(2, 'A', 3, 3, 4, 4, 'B', 2, false),
        new(2, 'B', 4, 4, 3, 3, 'A', 2, true),
        new(3, 'A', 5, 5, 6, 6, 'B', 3, false),
        new(3, 'B', 6, 6, 5, 5, 'A', 3, true),
        new(4, 'A', 7, 7, 8, 8, 'B', 4, false),
        new(4, 'B', 8, 8, 7, 7, 'A', 4, true),
        new(5, 'A', 9, 9, 10, 10, 'B', 5, false),
        new(5, 'B', 10, 10, 9, 9, 'A', 5, true),
        new(6, 'A', 11, 11, 12, 12, 'B', 6, false),
        new(6, 'B', 12, 12, 11, 11, 'A', 6, true),
    ];

    // Source: trade facts 3.1, method U1. TIA-568.3-E, 3 sources for the ingredients; pairs 1 source and proved; which fibre of a pair is A (the pos columns) is derived, unconfirmed.
    public static readonly IReadOnlyList<MethodRow> MethodU1 =
    [
        new(1, 'A', 1, 1, 12, 12, 'B', 1, false),
        new(2, 'A', 2, 2, 11, 11, 'B', 2, false),
        new(3, 'A', 3, 3, 10, 10, 'B', 3, false),
        new(4, 'A', 4, 4, 9, 9, 'B', 4, false),
        new(5, 'A', 5, 5, 8, 8, 'B', 5, false),
        new(6, 'A', 6, 6, 7, 7, 'B', 6, false),
        new(6, 'B', 7, 7, 6, 6, 'A', 6, true),
        new(5, 'B', 8, 8, 5, 5, 'A', 5, true),
        new(4, 'B', 9, 9, 4, 4, 'A', 4, true),
        new(3, 'B', 10, 10, 3, 3, 'A', 3, true),
        new(2, 'B', 11, 11, 2, 2, 'A', 2, true),
        new(1, 'B', 12, 12, 1, 1, 'A', 1, true),
    ];

    // Source: trade facts 3.1, method U2. TIA-568.3-E, 3 sources for the ingredients; pairs proved; which fibre of a pair is A (the pos columns) is derived, unconfirmed.
    public static readonly IReadOnlyList<MethodRow> MethodU2 =
    [
        new(1, 'B', 1, 12, 1, 12, 'A', 1, true),
        new(2, 'B', 2, 11, 2, 11, 'A', 2, true),
        new(3, 'B', 3, 10, 3, 10, 'A', 3, true),
        new(4, 'B', 4, 9, 4, 9, 'A', 4, true),
        new(5, 'B', 5, 8, 5, 8, 'A', 5, true),
        new(6, 'B', 6, 7, 6, 7, 'A', 6, true),
        new(6, 'A', 7, 6, 7, 6, 'B', 6, false),
        new(5, 'A', 8, 5, 8, 5, 'B', 5, false),
        new(4, 'A', 9, 4, 9, 4, 'B', 4, false),
        new(3, 'A', 10, 3, 10, 3, 'B', 3, false),
        new(2, 'A', 11, 2, 11, 2, 'B', 2, false),
        new(1, 'A', 12, 1, 12, 1, 'B', 1, false),
    ];

    /// <summary>The twelve rows of a method by its letter; throws for a name that is no duplex method.</summary>
    public static IReadOnlyList<MethodRow> Rows(string method) => method switch
    {
        "A" => MethodA,
        "B" => MethodB,
        "C" => MethodC,
        "U1" => MethodU1,
        "U2" => MethodU2,
        _ => throw new ArgumentOutOfRangeException(nameof(method), method, "no such duplex method"),
    };

    /// <summary>The ingredients of a method by its letter; throws for a name that is no duplex method.</summary>
    public static MethodIngredients IngredientsOf(string method)
    {
        foreach (var row in Ingredients)
        {
            if (row.Method == method)
                return row;
        }

        throw new ArgumentOutOfRangeException(nameof(method), method, "no such duplex method");
    }
}
