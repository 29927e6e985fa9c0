namespace PolarityMap.Core.Parts.Kinds;

/// <summary>
/// A duplex patch cord. A-to-B joins near A to far B and near B to far A, the cord of every channel (TIA-568, ISO/IEC 11801;
/// six public sources); A-to-A joins A to A, asked for only by method A (two public sources). The words straight and
/// crossover are used for either by different authors, so they are not used here.
/// </summary>
public sealed class DuplexCord : PartKind
{
    public override string Name => "duplex cord";

    public override string Summary => "A duplex patch cord, A-to-B or A-to-A.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        AttributeSpec.Choice("type", "A-to-B (the normal cord) or A-to-A (one per method A channel).", ["A-to-B", "A-to-A"]),
        LengthOfCable,
    ];

    public override bool IsCable => true;

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        var shape = new ShapeBuilder();
        int near = shape.AddPort(new PortShape("near", Face.Duplex, Side.Near));
        int far = shape.AddPort(new PortShape("far", Face.Duplex, Side.Far));
        bool crossed = values.Word("type") == "A-to-B";
        shape.Join(near, 1, far, crossed ? 2 : 1);
        shape.Join(near, 2, far, crossed ? 1 : 2);
        return shape.Build(isCable: true);
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["cord", values.Word("type")!];
}
