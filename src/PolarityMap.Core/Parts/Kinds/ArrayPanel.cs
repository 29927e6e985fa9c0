namespace PolarityMap.Core.Parts.Kinds;

/// <summary>
/// A panel of array adapters: Type-A adapters have opposed keys, Type-B adapters aligned keys (TIA-568; five public sources).
/// An adapter has neither pins nor rows; the place of the key decides which plugs go in.
/// </summary>
public sealed class ArrayPanel : PartKind
{
    public override string Name => "array panel";

    public override string Summary => "A panel of array adapters with opposed (Type-A) or aligned (Type-B) keys.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        AttributeSpec.WholeNumber("ports", "Number of adapters, named 1, 2, 3, …", 1, 4096, 6),
        TransitionWiring.Base, TransitionWiring.Keys,
    ];

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        Keying keys = KeyingWords.Parse(values.Word("keys")!);
        Face face = ArrayBase.Of(values.WholeNumber("base")).Face;
        return Adapters.Build(new PortShape("", face, Side.Near) { Keys = keys, Connector = "MPO" }, values.WholeNumber("ports"));
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["panel", values.Word("keys")!];
}
