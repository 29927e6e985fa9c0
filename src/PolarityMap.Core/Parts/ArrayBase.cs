namespace PolarityMap.Core.Parts;

/// <summary>
/// The fibres of one array connector: the face and the positions that carry fibres. A row here is all that a new array size needs.
/// </summary>
/// <param name="Fibres">Number of fibres, the number a document writes as <c>base</c>.</param>
/// <param name="Face">The connector face.</param>
/// <param name="Used">The positions that carry fibres, ascending.</param>
public sealed record ArrayBase(int Fibres, Face Face, IReadOnlyList<int> Used)
{
    /// <summary>Eight fibres sit in a 12-position ferrule at 1-4 and 9-12 (four public sources).</summary>
    public static readonly IReadOnlyList<ArrayBase> All =
    [
        new(8, Face.Array12, [1, 2, 3, 4, 9, 10, 11, 12]),
        new(12, Face.Array12, [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]),
    ];

    public static IReadOnlyList<int> Sizes { get; } = [.. All.Select(b => b.Fibres)];

    public static ArrayBase Of(int fibres) => All.First(b => b.Fibres == fibres);
}
