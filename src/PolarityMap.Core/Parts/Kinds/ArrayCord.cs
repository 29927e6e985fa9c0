namespace PolarityMap.Core.Parts.Kinds;

/// <summary>An array cord: one array connector at each end, joined as <see cref="ArrayMap"/> says. Unpinned at both ends (five public sources).</summary>
public sealed class ArrayCord : PartKind
{
    public override string Name => "array cord";

    public override string Summary => "A cord with one array connector at each end.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        ArrayCable.Type, ArrayCable.Wiring, ArrayCable.Base, LengthOfCable, Connectors.Fibre, Connectors.Jacket, Connectors.Attenuation,
        Connectors.CablePins, Connectors.ArrayPolish, Connectors.FarPolish, Connectors.ArrayLoss, Connectors.ExpectedArrayLoss,
    ];

    public override bool IsCable => true;

    public override bool IsCord => true;

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults) =>
        ArrayCable.Build(values, legs: 1, pinnedByDefault: false, faults);

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["cord", ArrayCable.Word(values)];
}
