using PolarityMap.Core.Parts;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>What a box of an overview stands for.</summary>
internal enum BoxSort
{
    /// <summary>Parts that are no cables: interfaces, cassettes, panels, outlets, splices.</summary>
    Part,

    /// <summary>Two cables mated without a part that is named between them.</summary>
    Joint,

    /// <summary>The end of a cable with nothing mated to it.</summary>
    OpenEnd,

    /// <summary>The end of a cable at a mating whose fibres do not meet.</summary>
    Refused,

    /// <summary>A place in a cable's connector that no fibre fills.</summary>
    NoFibre,

    /// <summary>Where a strand that closes on itself is cut to be drawn.</summary>
    Loop,
}

/// <summary>Like parts in one column, drawn as one box.</summary>
/// <param name="sort">What it stands for.</param>
/// <param name="column">Its column in the order of flow.</param>
internal sealed class BoxGroup(BoxSort sort, int column)
{
    public BoxSort Sort { get; } = sort;

    public int Column { get; set; } = column;

    /// <summary>The parts, or for a joint or an end the cables it belongs to; each as often as it is a place of its own.</summary>
    public List<int> Parts { get; } = [];

    /// <summary>Number of chosen strands that pass or end here.</summary>
    public int Strands { get; set; }

    /// <summary>Number of strand ends here.</summary>
    public int Ends { get; set; }

    /// <summary>True when its parts are drawn further left too, since strands come back to them.</summary>
    public bool IsAgain { get; set; }

    /// <summary>The networks it belongs to, as indices in rising order.</summary>
    public IReadOnlyList<int> Networks { get; set; } = [];

    /// <summary>The faulty strands that end here, or null.</summary>
    public FaultTally? Faults { get; set; }
}

/// <summary>The faulty strands that end at a box.</summary>
internal sealed class FaultTally
{
    public int Errors { get; set; }

    public int Warnings { get; set; }

    public SortedSet<string> ErrorCodes { get; } = new(StringComparer.Ordinal);

    public SortedSet<string> WarningCodes { get; } = new(StringComparer.Ordinal);

    public void Add(bool error, string code) => (error ? ErrorCodes : WarningCodes).Add(code);
}

/// <summary>One cable's share in a line.</summary>
/// <param name="part">The cable.</param>
internal sealed class CableUse(int part)
{
    public int Part { get; } = part;

    /// <summary>Number of its fibres that chosen strands of the line use.</summary>
    public int Fibres { get; set; }

    /// <summary>Its legs that chosen strands of the line use, leg n as bit n - 1.</summary>
    public ulong Legs { get; set; }
}

/// <summary>Like cables between two boxes, drawn as one line.</summary>
/// <param name="from">The box at its left.</param>
/// <param name="to">The box at its right.</param>
internal sealed class LineGroup(BoxGroup from, BoxGroup to)
{
    public BoxGroup From { get; } = from;

    public BoxGroup To { get; } = to;

    /// <summary>The cables; none where ports are mated without one.</summary>
    public List<CableUse> Cables { get; } = [];

    /// <summary>Number of chosen strands.</summary>
    public int Strands { get; set; }

    /// <summary>The networks it belongs to, as indices in rising order.</summary>
    public IReadOnlyList<int> Networks { get; set; } = [];

    /// <summary>Number of cables that no line before it has, and their length in all, for the totals.</summary>
    public int NewCables { get; set; }

    public long NewMillimetres { get; set; }

    public int NewWithoutLength { get; set; }
}

/// <summary>Boxes in columns, lines between them, and what they come to in all.</summary>
internal sealed class Chart
{
    public List<List<BoxGroup>> Columns { get; } = [];

    public List<LineGroup> Lines { get; } = [];

    /// <summary>Number of parts that are no cables.</summary>
    public int PartCount { get; set; }

    public int CableCount { get; set; }

    public int StrandCount { get; set; }

    /// <summary>Networks of the chosen strands, and the number of strands of each.</summary>
    public SortedDictionary<int, int> StrandsOfNetwork { get; } = [];

    /// <summary>
    /// True for a cord, trunk, harness or cable, which is drawn as a line. A splice and a termination are entered and left like
    /// cables, but they are places: the one has splices, the other bare fibres on one side only.
    /// </summary>
    public static bool IsLine(Shape shape) => shape is { IsCable: true, Splices: 0, Ports.Count: > 0 }
        && (shape.Ports[0].Face.Family == ConnectorFamily.Bare) == (shape.Ports[^1].Face.Family == ConnectorFamily.Bare);
}
