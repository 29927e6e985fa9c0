namespace PolarityMap.Core.Parts.Kinds;

/// <summary>
/// A cassette: duplex ports 1, 2, 3, … at the front, one array adapter at the rear. Its array connector has pins, unless the
/// plant pins its trunks: both habits are live (four and three public sources).
/// </summary>
public sealed class Cassette : PartKind
{
    public override string Name => "cassette";

    public override string Summary => "Breaks an array connector at its rear out to duplex ports at its front.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        TransitionWiring.Spec(), TransitionWiring.Base, TransitionWiring.Keys, Connectors.Fibre, Connectors.PortNetworks,
        Connectors.PortPins, Connectors.ArrayPolish, Connectors.DuplexPolish, Connectors.Connector, Connectors.Keyed, Connectors.Key,
        Connectors.ArrayLoss, Connectors.ExpectedArrayLoss, Connectors.DuplexLoss, Connectors.ExpectedDuplexLoss,
    ];

    public override string? PinsBesidePinnedTrunks => "unpinned";

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        IReadOnlyList<DuplexPair>? pairs = TransitionWiring.Pairs(values, faults);
        if (pairs is null)
            return null;
        var shape = new ShapeBuilder();
        var front = new int[pairs.Count];
        for (int k = 0; k < pairs.Count; k++)
            front[k] = shape.AddPort(Connectors.Duplex($"{k + 1}", Face.Duplex, Side.Near, values, values.Word("keyed") == "yes"));
        Keying keys = KeyingWords.Parse(values.Word("keys")!);
        ArrayBase array = ArrayBase.Of(values.WholeNumber("base"));
        int rear = shape.AddPort(Connectors.Array("rear", array, Side.Far, values, Connectors.PinsOfPort(values)) with { Keys = keys });
        TransitionWiring.Join(shape, rear, front, pairs);
        return shape.Build();
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["cassette", TransitionWiring.Word(values)];
}
