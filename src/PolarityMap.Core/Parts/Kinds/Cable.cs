namespace PolarityMap.Core.Parts.Kinds;

/// <summary>A cable with bare fibres at both ends, to be spliced or terminated in the field.</summary>
public sealed class Cable : PartKind
{
    /// <summary>More fibres than any indoor cable has.</summary>
    internal const int MostFibres = 1728;

    /// <summary>Number of fibres, of cables, splices and field terminations.</summary>
    internal static AttributeSpec Fibres { get; } = AttributeSpec.WholeNumber("fibres", "Number of fibres.", 1, MostFibres);

    public override string Name => "cable";

    public override string Summary => "A cable with bare fibres at both ends, to be spliced or terminated in the field.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } = [Fibres, LengthOfCable, Connectors.Fibre, Connectors.Jacket, Connectors.Attenuation];

    public override bool IsCable => true;

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults) =>
        Splice.Straight(values.WholeNumber("fibres"), splices: 0);

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["cable", $"{values.WholeNumber("fibres")} fibres"];
}
