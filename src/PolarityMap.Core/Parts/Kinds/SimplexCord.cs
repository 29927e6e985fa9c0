namespace PolarityMap.Core.Parts.Kinds;

/// <summary>A cord of one fibre. It fits a simplex port or one position of a duplex port.</summary>
public sealed class SimplexCord : PartKind
{
    public override string Name => "simplex cord";

    public override string Summary => "A cord of one fibre, for a simplex port or one position of a duplex port.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        LengthOfCable, Connectors.Fibre, Connectors.Jacket, Connectors.Attenuation,
        Connectors.Connector, Connectors.FarConnector, Connectors.DuplexPolish, Connectors.FarDuplexPolish,
        Connectors.KeyedEnds, Connectors.Key, Connectors.DuplexLoss, Connectors.ExpectedDuplexLoss,
    ];

    public override bool IsCable => true;

    public override bool IsCord => true;

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        var shape = new ShapeBuilder();
        int near = shape.AddPort(Connectors.Duplex("near", Face.Simplex, Side.Near, values, Connectors.Names(values.Word("keyed"), Side.Near)));
        int far = shape.AddPort(Connectors.Duplex("far", Face.Simplex, Side.Far, values, Connectors.Names(values.Word("keyed"), Side.Far)));
        shape.Join(near, 1, far, 1);
        return shape.Build(isCable: true);
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["cord", "simplex"];
}
