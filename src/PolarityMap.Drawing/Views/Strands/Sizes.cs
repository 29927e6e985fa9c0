namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Room that crossings take: how many stages, and the widest gap between rows that a strand runs past in one.</summary>
internal readonly record struct CrossingSize(int Stages, double Gap)
{
    /// <summary>Room with a straight lead at each side.</summary>
    /// <param name="stage">Room for one exchange of neighbours.</param>
    public double Room(double stage) => (Stages * Braid.StageFor(stage, Gap)) + (2 * Measures.Lead);
}

/// <summary>What a column takes, whatever the room for its crossings.</summary>
internal sealed class ColumnSize
{
    /// <summary>Cells at the left edge; 0 without left rows.</summary>
    public double LeftCell { get; init; }

    /// <summary>Words beside the left cells.</summary>
    public double LeftWords { get; init; }

    public double RightCell { get; init; }

    public double RightWords { get; init; }

    public required ColumnText Text { get; init; }

    /// <summary>Least width for the words above the boxes.</summary>
    public double LeastWidth { get; set; }

    /// <summary>True when strands go through a box.</summary>
    public bool HasInside { get; set; }

    /// <summary>The crossings inside boxes.</summary>
    public List<CrossingSize> Crossings { get; } = [];

    /// <summary>The large boxes, with the words above them.</summary>
    public List<(int Slot, bool HasName, CaptionText Caption)> Large { get; } = [];

    /// <summary>True when the head stands at the top of the drawing.</summary>
    public bool HasHead { get; set; }

    /// <summary>The slot above which the head stands below a large box, or -1.</summary>
    public int HeadSlot { get; set; } = -1;
}

/// <summary>What a gutter takes, whatever the room for its crossing.</summary>
/// <param name="ArrowLeft">Room for arrowheads at its left edge.</param>
/// <param name="ArrowRight">Room for arrowheads at its right edge.</param>
/// <param name="Label">Room for one label.</param>
/// <param name="IsStraight">True where every strand runs straight.</param>
internal sealed record GutterSize(double ArrowLeft, double ArrowRight, double Label, bool IsStraight)
{
    /// <summary>Of the room at its left edge that for adapters.</summary>
    public double Adapters { get; init; }

    /// <summary>The strands' crossing, and that of the ways they should take.</summary>
    public List<CrossingSize> Crossings { get; init; } = [];

    /// <summary>Room for the crossings; 0 where one label will do.</summary>
    public double Crossing(double stage)
    {
        if (IsStraight)
            return 0;
        double room = Crossings.Count > 1 ? 0 : 8;
        foreach (CrossingSize crossing in Crossings)
            room = Math.Max(room, crossing.Room(stage));
        return Measures.Tenths(room);
    }
}
