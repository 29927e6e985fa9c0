using PolarityMap.Core.Parts;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>A strand's row at one side of a box, or its row where it passes a column without a part.</summary>
internal sealed class Row(int strand, int position, int column)
{
    public int Strand { get; } = strand;

    public int Column { get; } = column;

    /// <summary>The position in the strand graph; -1 where the strand only passes.</summary>
    public int Position { get; } = position;

    /// <summary>Place from above, shared by all columns.</summary>
    public int Slot { get; set; } = -1;
}

/// <summary>One part as drawn in one column.</summary>
internal sealed class Node(int part, int column)
{
    public int Part { get; } = part;

    public int Column { get; } = column;

    /// <summary>Rows at the left edge, in drawing order.</summary>
    public List<Row> Left { get; } = [];

    /// <summary>Rows at the right edge, in drawing order.</summary>
    public List<Row> Right { get; } = [];

    /// <summary>
    /// Legs (0 for a part without) whose connectors are drawn turned, so that the mating at their left runs straight. Only cables
    /// are turned, always at both ends, so that a crossing shows in the part that makes it.
    /// </summary>
    public Dictionary<int, Turn> Turns { get; } = [];

    /// <summary>True when positions between two that are drawn one below the other are left out.</summary>
    public bool LeavesOut(PortShape port, int above, int below)
    {
        Turn turn = Turns.GetValueOrDefault(port.Leg);
        return Math.Abs(turn.Place(port.Face, below) - turn.Place(port.Face, above)) > 1;
    }

    public int RowCount => Math.Max(Left.Count, Right.Count);

    /// <summary>True when the rows of a side are those of one port, so that one name can speak for all of them.</summary>
    public bool IsOnePortEachSide { get; set; } = true;

    /// <summary>A part of two rows of one port has its name between them; others have it above.</summary>
    public bool NameInside => RowCount == 2 && IsOnePortEachSide;

    public int FirstSlot => Math.Min(Left.Count > 0 ? Left[0].Slot : int.MaxValue, Right.Count > 0 ? Right[0].Slot : int.MaxValue);

    public int LastSlot => Math.Max(Left.Count > 0 ? Left[^1].Slot : -1, Right.Count > 0 ? Right[^1].Slot : -1);
}

/// <summary>A strand's passage through one column.</summary>
/// <param name="Node">The part's box, or null where the strand only passes.</param>
/// <param name="In">Where it enters the box from the left, or null where it begins.</param>
/// <param name="Out">Where it leaves to the right, or null where it ends.</param>
internal sealed record Passage(Node? Node, Row? In, Row? Out);

/// <summary>A strand, or a stretch of one, with its passages from column <see cref="FirstColumn"/> on without a gap.</summary>
/// <param name="piece">What is shown of the strand.</param>
/// <param name="goesOn">True when the strand goes on beyond the right end.</param>
internal sealed class Way(Piece piece, bool goesOn)
{
    public Piece Piece => piece;

    public int Strand => piece.Strand;

    /// <summary>True when the strand comes from another sheet.</summary>
    public bool ComesIn => piece.First > 0;

    /// <summary>True when the strand goes on on another sheet.</summary>
    public bool GoesOn => goesOn;

    public int FirstColumn { get; set; }

    public int LastColumn => FirstColumn + Passages.Count - 1;

    public List<Passage> Passages { get; } = [];
}

/// <summary>Strands that run side by side from left to right: their rows at both sides, and the plan that leads them.</summary>
internal sealed class Crossing
{
    private readonly Dictionary<int, int> _index = [];

    /// <param name="rows">For each strand its row at the left and at the right; slots are set.</param>
    public Crossing(IEnumerable<(Row Left, Row Right)> rows)
    {
        Rows = [.. rows.OrderBy(r => r.Left.Slot)];
        for (int i = 0; i < Rows.Count; i++)
            _index[Rows[i].Left.Strand] = i;
        Plan = BraidPlan.Of([.. Rows.Select(r => r.Right.Slot)]);
    }

    public IReadOnlyList<(Row Left, Row Right)> Rows { get; }

    public BraidPlan Plan { get; }

    /// <summary>A strand's index in <see cref="Rows"/>.</summary>
    public int IndexOf(int strand) => _index[strand];
}

/// <summary>Columns of boxes, and the strands' ways through them.</summary>
internal sealed class Layout
{
    public List<List<Node>> Columns { get; } = [];

    public List<Way> Ways { get; } = [];

    /// <summary>The ways that faulty strands should take, in a gutter or a part each.</summary>
    public IReadOnlyList<Expected> Expected { get; set; } = [];

    /// <summary>The expected ways in the gutter right of a column, or in a part; null where there are none.</summary>
    public Crossing? ExpectedAt(int column, Node? box)
    {
        foreach (Expected expected in Expected)
        {
            if (expected.Column == column && expected.Box == box)
                return expected.Ways;
        }

        return null;
    }

    /// <summary>Number of slots.</summary>
    public int SlotCount { get; set; }

    /// <summary>How the strands of each box cross, by box; made once, whatever the widths.</summary>
    public Dictionary<Node, Crossing> Inside { get; } = [];

    /// <summary>How the strands between two columns cross, by the left column.</summary>
    public Dictionary<int, Crossing> Between { get; } = [];
}
