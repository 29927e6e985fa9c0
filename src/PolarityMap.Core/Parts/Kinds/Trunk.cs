namespace PolarityMap.Core.Parts.Kinds;

/// <summary>
/// A trunk: 1 to 24 legs, each an array connector at both ends. Leg n of the near end is leg n of the far end. Unpinned, unless
/// the plant pins its trunks: both habits are live.
/// </summary>
public sealed class Trunk : PartKind
{
    public override string Name => "trunk";

    public override string Summary => "A trunk of 1 to 24 legs with an array connector at each end of every leg.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        ArrayCable.Type, ArrayCable.Wiring, ArrayCable.Base,
        AttributeSpec.WholeNumber("legs", "Number of legs.", 1, 24, 1),
        new AttributeSpec("spare", AttributeSort.Legs, "Legs left over on purpose, such as 5..8."),
        LengthOfCable, Connectors.Fibre, Connectors.Jacket, Connectors.Attenuation,
        Connectors.CablePins, Connectors.ArrayPolish, Connectors.FarPolish, Connectors.ArrayLoss, Connectors.ExpectedArrayLoss,
    ];

    public override bool IsCable => true;

    public override string? PinsBesidePinnedTrunks => "both";

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        int legs = values.WholeNumber("legs");
        foreach (int leg in values.Numbers("spare"))
        {
            if (leg > legs)
                faults.Add(new AttributeFault("spare", $"there is no leg {leg}: the trunk has {legs}"));
        }

        return faults.Count > 0 ? null : ArrayCable.Build(values, legs, values.Defaults.TrunksArePinned, faults);
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["trunk", ArrayCable.Word(values)];
}
