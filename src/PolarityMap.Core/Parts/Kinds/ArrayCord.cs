namespace PolarityMap.Core.Parts.Kinds;

/// <summary>An array cord: one array connector at each end, joined as <see cref="ArrayMap"/> says.</summary>
public sealed class ArrayCord : PartKind
{
    public override string Name => "array cord";

    public override string Summary => "A cord with one array connector at each end, Type-A, Type-B or Type-C.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        AttributeSpec.Choice("type", "How the two ends are joined: Type-A straight, Type-B reversed, Type-C pair-flipped.", ArrayMap.Names),
        AttributeSpec.OneOf("base", "Fibres in the connector; 8 fibres use positions 1-4 and 9-12 of 12.", ArrayBase.Sizes, 12),
        LengthOfCable,
    ];

    public override bool IsCable => true;

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults) =>
        ArrayCable.Build(values.Word("type")!, values.WholeNumber("base"), legs: 1);

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["cord", values.Word("type")!];
}
