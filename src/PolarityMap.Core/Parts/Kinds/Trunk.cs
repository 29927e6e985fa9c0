namespace PolarityMap.Core.Parts.Kinds;

/// <summary>A trunk: 1 to 24 legs, each an array connector at both ends. Leg n of the near end is leg n of the far end.</summary>
public sealed class Trunk : PartKind
{
    public override string Name => "trunk";

    public override string Summary => "A trunk of 1 to 24 legs with an array connector at each end of every leg.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        AttributeSpec.Choice("type", "How the two ends of a leg are joined: Type-A straight, Type-B reversed, Type-C pair-flipped.", ArrayMap.Names),
        AttributeSpec.OneOf("base", "Fibres in a leg; 8 fibres use positions 1-4 and 9-12 of 12.", ArrayBase.Sizes, 12),
        AttributeSpec.WholeNumber("legs", "Number of legs.", 1, 24, 1),
        new AttributeSpec("spare", AttributeSort.Legs, "Legs left over on purpose, such as 5..8."),
        LengthOfCable,
    ];

    public override bool IsCable => true;

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        int legs = values.WholeNumber("legs");
        foreach (int leg in values.Numbers("spare"))
        {
            if (leg > legs)
                faults.Add(new AttributeFault("spare", $"there is no leg {leg}: the trunk has {legs}"));
        }

        return faults.Count > 0 ? null : ArrayCable.Build(values.Word("type")!, values.WholeNumber("base"), legs);
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["trunk", values.Word("type")!];
}
