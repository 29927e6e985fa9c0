namespace PolarityMap.Core.Tests.Oracles;

/// <summary>One colour of the fibre sequence with its two letter codes and how well each code is attested.</summary>
public sealed record ColourRow(
    int Number,
    string TiaName,
    string TiaCode,
    string TiaCodeConfidence,
    string IecName,
    string IecCode,
    string IecCodeConfidence);

/// <summary>The twelve colours of the fibre sequence of TIA-598, also used for tubes, units and ribbons.</summary>
public static class ColourTable
{
    // Source: trade facts 9.1. Sequence and names: TIA-598, more than 8 sources. The codes carry their own confidence;
    // the IEC codes are those of IEC 60757, in the two letters of that standard.
    public static readonly IReadOnlyList<ColourRow> Twelve =
    [
        new(1, "blue", "BL", "2 sources", "blue", "BU", "1 source"),
        new(2, "orange", "OR", "1 source", "orange", "OG", "from memory"),
        new(3, "green", "GR", "1 source", "green", "GN", "1 source"),
        new(4, "brown", "BR", "1 source", "brown", "BN", "from memory"),
        new(5, "slate", "SL", "2 sources", "grey", "GY", "from memory"),
        new(6, "white", "WH", "1 source", "white", "WH", "from memory"),
        new(7, "red", "RD", "from memory", "red", "RD", "1 source"),
        new(8, "black", "BK", "from memory", "black", "BK", "from memory"),
        new(9, "yellow", "YL", "from memory", "yellow", "YE", "1 source"),
        new(10, "violet", "VI", "from memory", "violet", "VT", "from memory"),
        new(11, "rose", "RS", "from memory", "pink", "PK", "from memory"),
        new(12, "aqua", "AQ", "2 sources", "turquoise", "TQ", "from memory"),
    ];

    // Source: trade facts 9.1, tube and fibre of a cable built from units of twelve. 2 sources for the rule and the first example.
    // The last two examples are the rule's own ends, worked by hand.
    public static readonly IReadOnlyList<(int Fibre, int Tube, string TubeColour, int InTube, string FibreColour)> TubeExamples =
    [
        (100, 9, "yellow", 4, "brown"),
        (1, 1, "blue", 1, "blue"),
        (144, 12, "aqua", 12, "aqua"),
    ];

    // Source: trade facts 9.1. Fibres 13 to 24 repeat the order with a tracer of this colour: TIA-598, 3 sources.
    public const string TracerColour = "black";

    // Source: as TracerColour; a black tracer cannot be seen on the black fibre.
    public const int FibreWithOtherTracer = 20;

    // Source: as TracerColour.
    public const string OtherTracerColour = "yellow";
}
