namespace PolarityMap.Core.Parts.Kinds;

/// <summary>
/// A duplex patch cord. A-to-B joins near A to far B and near B to far A, the cord of every channel (TIA-568, ISO/IEC 11801;
/// six public sources); A-to-A joins A to A, asked for only by method A (two public sources). The words straight and
/// crossover are used for either by different authors, so they are not used here. The two plugs of one end of a cord with
/// both fibres in one jacket can be made to change places by hand (mechanism: two public sources).
/// </summary>
public sealed class DuplexCord : PartKind
{
    public override string Name => "duplex cord";

    public override string Summary => "A duplex patch cord, A-to-B or A-to-A.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        AttributeSpec.Choice("type", "A-to-B (the normal cord) or A-to-A (one per method A channel).", ["A-to-B", "A-to-A"]),
        LengthOfCable, Connectors.Fibre, Connectors.Jacket, Connectors.Attenuation,
        AttributeSpec.Choice("reversible", "Whether both fibres lie in one jacket and the plugs of an end can change places in the field.", ["no", "yes"], "no"),
        AttributeSpec.Choice("reversed", "The ends of a reversible cord at which the plugs have changed places.", ["none", "near", "far", "both"], "none"),
        Connectors.Connector, Connectors.FarConnector, Connectors.DuplexPolish, Connectors.FarDuplexPolish,
        Connectors.KeyedEnds, Connectors.Key, Connectors.DuplexLoss, Connectors.ExpectedDuplexLoss,
    ];

    public override bool IsCable => true;

    public override bool IsCord => true;

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        string reversed = values.Word("reversed")!;
        if (reversed != "none" && values.Word("reversible") != "yes")
        {
            faults.Add(new AttributeFault("reversed", "only a reversible cord can have reversed ends; write reversible: yes"));
            return null;
        }

        var shape = new ShapeBuilder();
        int near = shape.AddPort(Connectors.Duplex("near", Face.Duplex, Side.Near, values, Connectors.Names(values.Word("keyed"), Side.Near)));
        int far = shape.AddPort(Connectors.Duplex("far", Face.Duplex, Side.Far, values, Connectors.Names(values.Word("keyed"), Side.Far)));
        bool crossed = values.Word("type") == "A-to-B" ^ reversed is "near" or "far";
        shape.Join(near, 1, far, crossed ? 2 : 1);
        shape.Join(near, 2, far, crossed ? 1 : 2);
        return shape.Build(isCable: true);
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) =>
        ["cord", values.Word("reversed") is "near" or "far" ? $"{values.Word("type")} reversed" : values.Word("type")!];
}
