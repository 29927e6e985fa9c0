namespace PolarityMap.Core.Optics;

/// <summary>
/// The order in which fibre colours are counted. The order is a matter of the sequence, not of the colours:
/// IEC 60304 names the twelve colours but no order, so a sequence is a named list.
/// </summary>
public sealed class ColourSequence
{
    /// <summary>
    /// TIA-598: blue, orange, green, brown, slate, white, red, black, yellow, violet, rose, aqua (more than eight public
    /// sources). Letters are those of IEC 60757 (RD, BU, GN, YE confirmed; the rest from memory), in which slate is grey,
    /// rose is pink and aqua is turquoise.
    /// </summary>
    public static readonly ColourSequence Tia598 = new("TIA-598",
    [
        new(1, "blue", "BU", 0x1F5FBF, 0),
        new(2, "orange", "OG", 0xF28C1E, 0),
        new(3, "green", "GN", 0x1E8449, 0),
        new(4, "brown", "BN", 0x7B4A1E, 0),
        new(5, "slate", "GY", 0x8A939B, 0),
        new(6, "white", "WH", 0xFFFFFF, 0),
        new(7, "red", "RD", 0xCC2222, 0),
        new(8, "black", "BK", 0x1A1A1A, 0),
        new(9, "yellow", "YE", 0xF5D800, 0),
        new(10, "violet", "VT", 0x7D3C98, 0),
        new(11, "rose", "PK", 0xF49AC1, 0),
        new(12, "aqua", "TQ", 0x35C4C4, 0),
    ]);

    private readonly FibreColour[] _dozen;

    private ColourSequence(string name, FibreColour[] dozen)
    {
        Name = name;
        _dozen = dozen;
    }

    /// <summary>The sequence's name.</summary>
    public string Name { get; }

    /// <summary>The colour of fibre <paramref name="number"/>, counted from 1. Every further dozen adds one tracer stripe (TIA-598).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Number below 1.</exception>
    public FibreColour this[int number]
    {
        get
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
            return _dozen[(number - 1) % 12] with { Tracers = (number - 1) / 12 };
        }
    }
}
