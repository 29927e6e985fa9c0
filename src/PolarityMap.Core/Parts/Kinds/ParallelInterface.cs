namespace PolarityMap.Core.Parts.Kinds;

/// <summary>
/// Four-lane parallel ports on 8 of 12 positions. By the receptacle's own numbering, key up, lanes 1 to 4 transmit at
/// 1, 2, 3, 4 and receive at 12, 11, 10, 9; 5 to 8 are unused (IEEE 802.3 clauses 86 and 95 as summarised by three public
/// sources). The plug goes in key up to key up, so the mated plug sees transmit at 12 to 9.
/// </summary>
public sealed class ParallelInterface : PartKind
{
    private const int LaneCount = 4;

    public override string Name => "parallel interface";

    public override string Summary => "Active four-lane array ports: lanes 1-4 transmit at positions 1-4 and receive at 12-9.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        AttributeSpec.WholeNumber("ports", "Number of ports, named 1, 2, 3, …", 1, 4096, 1),
    ];

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        var shape = new ShapeBuilder();
        Face face = Face.Array12;
        for (int n = 1; n <= values.WholeNumber("ports"); n++)
        {
            int port = shape.AddPort(new PortShape($"{n}", face, Side.Near) { Keys = Keying.Aligned, KeysFixed = true });
            for (int lane = 1; lane <= LaneCount; lane++)
            {
                shape.AddLane(port, lane, LaneDirection.Transmit, lane);
                shape.AddLane(port, face.Columns + 1 - lane, LaneDirection.Receive, lane);
            }
        }

        return shape.Build();
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["parallel", "interface"];
}
