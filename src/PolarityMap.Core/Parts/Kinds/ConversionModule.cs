namespace PolarityMap.Core.Parts.Kinds;

/// <summary>
/// A conversion module: wide array ports at the rear (rear, or rear1, rear2), narrow array ports 1, 2, 3, … at the front. The
/// rear has the pins of a cassette's rear; the front is an array port for unpinned cords.
/// </summary>
public sealed class ConversionModule : PartKind
{
    public override string Name => "conversion module";

    public override string Summary => "Joins array ports of one size at its rear to array ports of another at its front.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        ConversionWiring.Spec, ConversionWiring.Type, ConversionWiring.Wiring, TransitionWiring.Keys,
        AttributeSpec.Choice("front-keys", "Keying of the array adapters at the front.", ["opposed", "aligned"], "opposed"),
        Connectors.Fibre, Connectors.PortPins,
        AttributeSpec.Choice("front-pins", "Whether its front array connectors have guide pins.", ["pinned", "unpinned"], "pinned"),
        Connectors.ArrayPolish, Connectors.ArrayLoss, Connectors.ExpectedArrayLoss,
    ];

    public override string? PinsBesidePinnedTrunks => "unpinned";

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        if (ConversionWiring.Rows(values, faults) is not { } rows)
            return null;
        Conversion conversion = Conversion.ByName(values.Word("conversion")!);
        var shape = new ShapeBuilder();
        Keying frontKeys = KeyingWords.Parse(values.Word("front-keys")!);
        Keying rearKeys = KeyingWords.Parse(values.Word("keys")!);
        bool frontPinned = values.Word("front-pins") == "pinned";
        var narrow = new int[conversion.Narrow.Count];
        for (int n = 0; n < narrow.Length; n++)
            narrow[n] = shape.AddPort(Connectors.Array($"{n + 1}", ArrayBase.Of(conversion.Narrow[n]), Side.Near, values, frontPinned) with { Keys = frontKeys });
        var wide = new int[conversion.Wide.Count];
        for (int w = 0; w < wide.Length; w++)
            wide[w] = shape.AddPort(Connectors.Array(wide.Length == 1 ? "rear" : $"rear{w + 1}", ArrayBase.Of(conversion.Wide[w]), Side.Far, values, Connectors.PinsOfPort(values)) with { Keys = rearKeys });
        ConversionWiring.Join(shape, conversion, wide, narrow, rows, values.Word("type") == "reversed");
        return shape.Build();
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["conversion", ConversionWiring.Word(values)];
}
