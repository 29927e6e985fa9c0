namespace PolarityMap.Core.Parts;

/// <summary>
/// The fibres of one array connector: the face and the positions that carry fibres. A row here is all that a new array size needs.
/// </summary>
/// <param name="Fibres">Number of fibres, the number a document writes as <c>base</c>.</param>
/// <param name="Face">The connector face.</param>
/// <param name="Used">The positions that carry fibres, ascending.</param>
public sealed record ArrayBase(int Fibres, Face Face, FixedList<int> Used)
{
    /// <summary>
    /// Eight fibres sit in a 12-position ferrule at 1-4 and 9-12 (four public sources). Rows of two-row ferrules are counted
    /// top row first (2x12: one source; 16 wide: from memory). Ferrules 16 wide have their key to one side.
    /// </summary>
    public static readonly FixedList<ArrayBase> All = new(
    [
        new(8, new Face(ConnectorFamily.Array, 1, 12), new([1, 2, 3, 4, 9, 10, 11, 12])),
        Full(1, 12),
        Full(1, 16, offsetKey: true),
        Full(2, 12),
        Full(2, 16, offsetKey: true),
    ]);

    public static IReadOnlyList<int> Sizes { get; } = [.. All.Select(b => b.Fibres)];

    /// <summary>True when the ferrule has one row.</summary>
    public bool IsOneRow => Face.Rows == 1;

    /// <summary>In words, such as <c>8 of 12</c>, <c>12</c> or <c>2x16</c>.</summary>
    public string Words => Face.Rows > 1 ? $"{Face.Rows}x{Face.Columns}" : Fibres == Face.Columns ? $"{Fibres}" : $"{Fibres} of {Face.Columns}";

    /// <summary>The array base of a number that has been checked.</summary>
    public static ArrayBase Of(int fibres)
    {
        int i = 0;
        while (All[i].Fibres != fibres)
            i++;
        return All[i];
    }

    private static ArrayBase Full(int rows, int columns, bool offsetKey = false) =>
        new(rows * columns, new Face(ConnectorFamily.Array, rows, columns, offsetKey), new([.. Enumerable.Range(1, rows * columns)]));
}
