using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>A strand's row at one side of a box, or its row where it passes a column without a part.</summary>
internal sealed class Row
{
    /// <summary>A row where a strand only passes.</summary>
    public Row(int strand, int column)
    {
        Strand = strand;
        Column = column;
        Position = -1;
    }

    /// <summary>A row at a position of a part.</summary>
    public Row(int strand, int position, int column, PortTable ports)
    {
        Strand = strand;
        Column = column;
        Position = position;
        Port = ports.At(position);
        Place = ports.PlaceOf(position);
    }

    public int Strand { get; }

    public int Column { get; }

    /// <summary>The position in the strand graph; -1 where the strand only passes.</summary>
    public int Position { get; }

    /// <summary>The port of the position; none where the strand only passes.</summary>
    public DrawnPort Port { get; } = null!;

    /// <summary>The position's place in its port, 1-based.</summary>
    public int Place { get; }

    /// <summary>The mating at the position, or null.</summary>
    public Mating? Mating => Port.Mating ?? Port.MatingOf(Position);

    /// <summary>The lane at the position, or null where no interface is.</summary>
    public Lane? Lane => Port.LaneAt(Place);

    /// <summary>The row of the same strand at the left of the gutter before this one; null where the strand begins.</summary>
    public Row? Before { get; private set; }

    /// <summary>True when the strand goes on to a row right of the gutter behind this one.</summary>
    public bool GoesOn { get; private set; }

    /// <summary>The row where the strand leaves the box that it enters here; null where it ends.</summary>
    public Row? Through { get; set; }

    /// <summary>Place from above, shared by all columns.</summary>
    public int Slot { get; set; } = -1;

    /// <summary>Its index in the crossing at whose left it is.</summary>
    public int Index { get; set; }

    /// <summary>Joins the row to the one before it on its strand.</summary>
    public void Join(Row? before)
    {
        Before = before;
        if (before is not null)
            before.GoesOn = true;
    }
}

/// <summary>One part as drawn in one column.</summary>
internal sealed class Node(int part, int number, int column)
{
    private int _turnedLeg = -1;
    private Turn _turn;
    private List<(int Leg, Turn Turn)>? _furtherTurns;

    public int Part { get; } = part;

    /// <summary>The part's number among those of the layout, from 0 in the order in which ways meet them.</summary>
    public int Number { get; } = number;

    public int Column { get; } = column;

    /// <summary>A box of the same part in another column, or null.</summary>
    public Node? Other { get; init; }

    /// <summary>Rows at the left edge, in drawing order.</summary>
    public List<Row> Left { get; } = [];

    /// <summary>Rows at the right edge, in drawing order.</summary>
    public List<Row> Right { get; } = [];

    /// <summary>How the strands cross inside; null where none goes through.</summary>
    public Crossing? Inside { get; set; }

    /// <summary>The text inside a small box.</summary>
    public string InsideText { get; set; } = "";

    /// <summary>
    /// How the connectors of a leg (0 for a part without) are drawn, so that the mating at their left runs straight. Only cables
    /// are turned, at both ends alike but for duplex cords, so that a crossing shows in the part that makes it.
    /// </summary>
    public Turn TurnOf(int leg)
    {
        if (leg == _turnedLeg)
            return _turn;
        if (_furtherTurns is not null)
        {
            foreach ((int turned, Turn turn) in _furtherTurns)
            {
                if (turned == leg)
                    return turn;
            }
        }

        return default;
    }

    /// <summary>How the connectors at the right are drawn; as at the left but for a cord that is turned at one end alone.</summary>
    public Turn RightTurnOf(int leg) => RightTurn ?? TurnOf(leg);

    /// <summary>The turn of a duplex cord at its right end where it differs from that at its left.</summary>
    public Turn? RightTurn { get; set; }

    /// <summary>Turns the connectors of a leg, once. Most cables of a sheet have one leg on it.</summary>
    public void SetTurn(int leg, Turn turn)
    {
        if (_turnedLeg < 0)
            (_turnedLeg, _turn) = (leg, turn);
        else
            (_furtherTurns ??= []).Add((leg, turn));
    }

    public void ClearTurns()
    {
        _turnedLeg = -1;
        _furtherTurns = null;
        RightTurn = null;
    }

    /// <summary>True when positions between two rows of one port that are drawn one below the other are left out.</summary>
    public bool LeavesOut(Row above, Row below)
    {
        PortShape port = above.Port.Shape;
        Turn turn = TurnOf(port.Leg);
        return Math.Abs(turn.Place(port.Face, below.Place) - turn.Place(port.Face, above.Place)) > 1;
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
internal readonly record struct Passage(Node? Node, Row? In, Row? Out);

/// <summary>A strand, or a stretch of one, with its passages from column <see cref="FirstColumn"/> on without a gap.</summary>
/// <param name="number">Its number in the layout, from 0.</param>
/// <param name="piece">What is shown of the strand.</param>
/// <param name="goesOn">True when the strand goes on beyond the right end.</param>
/// <param name="visits">How many visits to parts it has.</param>
internal sealed class Way(int number, Piece piece, bool goesOn, int visits)
{
    public int Number => number;

    public Piece Piece => piece;

    public int Strand => piece.Strand;

    /// <summary>True when the strand comes from another sheet.</summary>
    public bool ComesIn => piece.First > 0;

    /// <summary>True when the strand goes on on another sheet.</summary>
    public bool GoesOn => goesOn;

    public int FirstColumn { get; set; }

    public int LastColumn => FirstColumn + Passages.Count - 1;

    public List<Passage> Passages { get; } = new(visits);
}

/// <summary>Columns of boxes, and the strands' ways through them.</summary>
/// <param name="ways">How many ways it will have.</param>
internal sealed class Layout(int ways)
{
    public List<List<Node>> Columns { get; } = [];

    /// <summary>For each column the rows of strands that only pass.</summary>
    public List<List<Row>> Passing { get; } = [];

    public List<Way> Ways { get; } = new(ways);

    /// <summary>For each part its box, of several the one made last.</summary>
    public Dictionary<int, Node> LastBoxOf { get; } = [];

    /// <summary>The ways that faulty strands should take, in a gutter or a part each.</summary>
    public IReadOnlyList<Expected> Expected { get; set; } = [];

    /// <summary>True where anything was found; such sheets leave more room between words.</summary>
    public bool IsMarked { get; set; }

    /// <summary>The signs of findings at the parts and matings that they are about.</summary>
    public IReadOnlyList<FaultSign> Faults { get; set; } = [];

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

    /// <summary>How the strands between two columns cross, by the left column; made once, whatever the widths.</summary>
    public Crossing[] Between { get; set; } = [];

    /// <summary>Number of rows at boxes.</summary>
    public int RowCount()
    {
        int count = 0;
        foreach (List<Node> column in Columns)
        {
            foreach (Node node in column)
                count += node.Left.Count + node.Right.Count;
        }

        return count;
    }

    /// <summary>Makes sure that a column is there.</summary>
    public void Reach(int column)
    {
        while (Columns.Count <= column)
        {
            Columns.Add([]);
            Passing.Add([]);
        }
    }

    /// <summary>The rows at the right of the gutter before a column to which a strand comes from the left.</summary>
    public IEnumerable<Row> RowsAtLeft(int column)
    {
        foreach (Node node in Columns[column])
        {
            foreach (Row row in node.Left)
            {
                if (row.Before is not null)
                    yield return row;
            }
        }

        foreach (Row row in Passing[column])
        {
            if (row.Before is not null)
                yield return row;
        }
    }
}
