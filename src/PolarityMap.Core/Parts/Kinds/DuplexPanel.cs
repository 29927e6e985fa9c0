namespace PolarityMap.Core.Parts.Kinds;

/// <summary>A panel of duplex adapters. Position A of one plug meets position B of the other (TIA-568, pairwise crossover).</summary>
public sealed class DuplexPanel : PartKind
{
    public override string Name => "duplex panel";

    public override string Summary => "A panel of duplex adapters, each the meeting place of two duplex plugs.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        AttributeSpec.WholeNumber("ports", "Number of adapters, named 1, 2, 3, …", 1, 4096, 12),
        Connectors.PortNetworks, Connectors.Connector, Connectors.Keyed, Connectors.Key,
    ];

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults) =>
        Adapters.Build(Connectors.Duplex("", Face.Duplex, Side.Near, values, values.Word("keyed") == "yes"), values.WholeNumber("ports"));

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["panel", "duplex"];
}
