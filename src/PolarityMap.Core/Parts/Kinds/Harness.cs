namespace PolarityMap.Core.Parts.Kinds;

/// <summary>
/// An array-to-duplex harness: the array plug is the near end, duplex legs leg1, leg2, … the far end. Its standard wiring,
/// leg k with A on plug position 13 - k and B on k, turns each lane of a parallel port into one duplex leg (derived and
/// proved by geometry; two public sources say that each leg pairs one transmit with one receive).
/// </summary>
public sealed class Harness : PartKind
{
    public override string Name => "harness";

    public override string Summary => "Breaks one array plug out to duplex legs.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        TransitionWiring.Spec("U2"),
        AttributeSpec.OneOf("base", "Fibres of the array plug; 8 fibres use positions 1-4 and 9-12 of 12.", ArrayBase.Sizes, 8),
        LengthOfCable,
    ];

    public override bool IsCable => true;

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        IReadOnlyList<DuplexPair>? pairs = TransitionWiring.Pairs(values, faults);
        if (pairs is null)
            return null;
        var shape = new ShapeBuilder();
        int array = shape.AddPort(new PortShape("array", ArrayBase.Of(values.WholeNumber("base")).Face, Side.Near));
        var legs = new int[pairs.Count];
        for (int k = 0; k < pairs.Count; k++)
            legs[k] = shape.AddPort(new PortShape($"leg{k + 1}", Face.Duplex, Side.Far) { Leg = k + 1 });
        TransitionWiring.Join(shape, array, legs, pairs);
        return shape.Build(isCable: true);
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["harness", TransitionWiring.Word(values)];
}
