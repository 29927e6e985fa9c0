namespace PolarityMap.Core.Parts.Kinds;

/// <summary>
/// An array-to-duplex harness: the array plug is the near end, duplex legs leg1, leg2, … the far end. Its standard wiring,
/// leg k with A on plug position N+1-k and B on k, turns each lane of a parallel port into one duplex leg (derived and
/// proved by geometry; two public sources say that each leg pairs one transmit with one receive).
/// </summary>
public sealed class Harness : PartKind
{
    public override string Name => "harness";

    public override string Summary => "Breaks one array plug out to duplex legs: 4, 6, 8, 12 or 16 of them by its base.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        TransitionWiring.Spec("U2"),
        AttributeSpec.OneOf("base", "Fibres of the array plug; 8 fibres use positions 1-4 and 9-12 of 12.", ArrayBase.Sizes, 8),
        new AttributeSpec("spare", AttributeSort.Legs, "Legs left over on purpose, such as 5..8."),
        LengthOfCable, Connectors.Fibre, Connectors.Jacket, Connectors.Attenuation, Connectors.PortNetworks,
        Connectors.PlugPins, Connectors.ArrayPolish, Connectors.DuplexPolish, Connectors.Connector, Connectors.Keyed, Connectors.Key,
        Connectors.ArrayLoss, Connectors.ExpectedArrayLoss, Connectors.DuplexLoss, Connectors.ExpectedDuplexLoss,
    ];

    public override bool IsCable => true;

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        IReadOnlyList<DuplexPair>? pairs = TransitionWiring.Pairs(values, faults);
        foreach (int leg in values.Numbers("spare"))
        {
            if (pairs is not null && leg > pairs.Count)
                faults.Add(new AttributeFault("spare", $"there is no leg {leg}: the harness has {pairs.Count}"));
        }

        if (pairs is null || faults.Count > 0)
            return null;
        var shape = new ShapeBuilder();
        int array = shape.AddPort(Connectors.Array("array", ArrayBase.Of(values.WholeNumber("base")), Side.Near, values, values.Word("pins") == "pinned"));
        var legs = new int[pairs.Count];
        for (int k = 0; k < pairs.Count; k++)
            legs[k] = shape.AddPort(Connectors.Duplex($"leg{k + 1}", Face.Duplex, Side.Far, values, values.Word("keyed") == "yes") with { Leg = k + 1 });
        TransitionWiring.Join(shape, array, legs, pairs);
        return shape.Build(isCable: true);
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["harness", TransitionWiring.Word(values)];
}
