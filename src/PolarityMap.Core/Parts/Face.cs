namespace PolarityMap.Core.Parts;

/// <summary>The connector family of a port.</summary>
public enum ConnectorFamily
{
    Simplex,
    Duplex,
    Array,

    /// <summary>No connector: bare fibres at the end of a cable, before they are spliced or terminated.</summary>
    Bare,
}

/// <summary>
/// A connector's end face: rows by columns of fibre places. Positions are numbered as seen at the end face with key up:
/// from the left, top row first (TIA-604-5, IEC 61754-7 for arrays; one row by five public sources, two rows by one).
/// Position numbers are 1-based here. A duplex face is one row of two: position 1 is A (left), position 2 is B (right).
/// </summary>
/// <param name="Family">The connector family; only equal faces mate.</param>
/// <param name="Rows">Number of rows, 1 or more.</param>
/// <param name="Columns">Number of places in a row, 1 or more.</param>
/// <param name="OffsetKey">True when the key sits to one side, as on ferrules 16 places wide (TIA-604-18; from memory, implied by one source).</param>
public readonly record struct Face(ConnectorFamily Family, int Rows, int Columns, bool OffsetKey = false)
{
    public static readonly Face Simplex = new(ConnectorFamily.Simplex, 1, 1);
    public static readonly Face Duplex = new(ConnectorFamily.Duplex, 1, 2);

    /// <summary>Bare fibres of a cable, counted in the order of their colours.</summary>
    public static Face Bare(int fibres) => new(ConnectorFamily.Bare, 1, fibres);

    /// <summary>Number of positions.</summary>
    public int Count => Rows * Columns;

    /// <summary>Written out, since faces are compared mating by mating and the comparison made for records is a call for each field.</summary>
    public bool Equals(Face other) =>
        Family == other.Family && Rows == other.Rows && Columns == other.Columns && OffsetKey == other.OffsetKey;

    public override int GetHashCode() => HashCode.Combine((int)Family, Rows, Columns, OffsetKey);

    /// <summary>
    /// The position of an equal face that touches <paramref name="position"/> of this one.
    /// <para>
    /// Two faces look at each other, so left meets right. With keys aligned, (row, column) meets (row, columns + 1 - column).
    /// With keys opposed the other connector is turned by half a turn, which mirrors rows and columns once more, so
    /// (row, column) meets (rows + 1 - row, column). Derived from coordinates; for one row this is i to N + 1 - i and i to i
    /// (TIA-568.3, five public sources). A duplex mating is always aligned: A meets B (TIA-568, pairwise crossover). Bare
    /// fibres have no face: they are joined by their numbers.
    /// </para>
    /// </summary>
    public int Facing(Keying keys, int position)
    {
        if (Family == ConnectorFamily.Bare)
            return position;
        if (Rows == 1)
            return keys == Keying.Aligned ? Columns + 1 - position : position;
        int row = (position - 1) / Columns;
        int column = (position - 1) % Columns;
        return keys == Keying.Aligned
            ? (row * Columns) + (Columns - 1 - column) + 1
            : ((Rows - 1 - row) * Columns) + column + 1;
    }

    /// <summary>
    /// True when plugs of both faces go into the same adapter: the family and the place of the key decide, not the number of
    /// rows. Whether the fibres then meet is another question, which only equal faces answer with yes.
    /// </summary>
    public bool SharesAdapterWith(Face other) => Family == other.Family && OffsetKey == other.OffsetKey;

    /// <summary>The name of a position: A and B of a duplex face, the number of an array face, empty for simplex.</summary>
    public string PositionName(int position) => Family switch
    {
        ConnectorFamily.Duplex => position == 1 ? "A" : "B",
        ConnectorFamily.Simplex => "",
        _ => position.ToString(System.Globalization.CultureInfo.InvariantCulture),
    };

    /// <summary>Reads a position name; the inverse of <see cref="PositionName"/>.</summary>
    public bool TryParsePosition(string name, out int position)
    {
        position = 0;
        if (Family == ConnectorFamily.Duplex)
            position = name switch { "A" or "a" => 1, "B" or "b" => 2, _ => 0 };
        else if (!int.TryParse(name, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out position))
            position = 0;
        return position >= 1 && position <= Count;
    }

    /// <summary>In words, such as <c>duplex</c> or <c>12-position array</c>.</summary>
    public override string ToString() => Family switch
    {
        ConnectorFamily.Simplex => "simplex",
        ConnectorFamily.Duplex => "duplex",
        ConnectorFamily.Bare => Columns == 1 ? "bare fibre" : $"{Columns} bare fibres",
        _ => Rows == 1 ? $"{Columns}-position array" : $"{Rows}x{Columns}-position array",
    };
}
