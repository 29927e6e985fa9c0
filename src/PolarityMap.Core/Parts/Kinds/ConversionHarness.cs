namespace PolarityMap.Core.Parts.Kinds;

/// <summary>A conversion harness: wide array plugs at the near end (array, or array1, array2), narrow array plugs leg1, leg2, … at the far end.</summary>
public sealed class ConversionHarness : PartKind
{
    public override string Name => "conversion harness";

    public override string Summary => "A cable from array plugs of one size to array plugs of another.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        ConversionWiring.Spec, ConversionWiring.Type, ConversionWiring.Wiring,
        new AttributeSpec("spare", AttributeSort.Legs, "Legs left over on purpose, such as 3."),
        LengthOfCable, Connectors.Fibre, Connectors.Jacket, Connectors.Attenuation, Connectors.CablePins, Connectors.ArrayPolish, Connectors.FarPolish,
        Connectors.ArrayLoss, Connectors.ExpectedArrayLoss,
    ];

    public override bool IsCable => true;

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        Conversion conversion = Conversion.ByName(values.Word("conversion")!);
        foreach (int leg in values.Numbers("spare"))
        {
            if (leg > conversion.Narrow.Count)
                faults.Add(new AttributeFault("spare", $"there is no leg {leg}: the harness has {conversion.Narrow.Count}"));
        }

        if (ConversionWiring.Rows(values, faults) is not { } rows || faults.Count > 0)
            return null;
        var shape = new ShapeBuilder();
        string pins = values.Word("pins") ?? "none";
        var wide = new int[conversion.Wide.Count];
        for (int w = 0; w < wide.Length; w++)
            wide[w] = shape.AddPort(Connectors.Array(wide.Length == 1 ? "array" : $"array{w + 1}", ArrayBase.Of(conversion.Wide[w]), Side.Near, values, Connectors.Names(pins, Side.Near)));
        var narrow = new int[conversion.Narrow.Count];
        for (int n = 0; n < narrow.Length; n++)
            narrow[n] = shape.AddPort(Connectors.Array($"leg{n + 1}", ArrayBase.Of(conversion.Narrow[n]), Side.Far, values, Connectors.Names(pins, Side.Far)) with { Leg = n + 1 });
        ConversionWiring.Join(shape, conversion, wide, narrow, rows, values.Word("type") == "reversed");
        return shape.Build(isCable: true);
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["harness", ConversionWiring.Word(values)];
}
