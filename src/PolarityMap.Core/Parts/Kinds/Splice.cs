namespace PolarityMap.Core.Parts.Kinds;

/// <summary>The place where the bare fibres of two cables are spliced, fibre n to fibre n unless a wiring says otherwise.</summary>
public sealed class Splice : PartKind
{
    public override string Name => "splice";

    public override string Summary => "Splices the bare fibres of one cable to those of another.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        Cable.Fibres,
        new AttributeSpec("wiring", AttributeSort.Pairs, "The near and far fibres spliced, where they are not alike, such as [[1, 2], [2, 1]]."),
        StatedLoss,
    ];

    /// <summary>The largest loss of a splice that is stated.</summary>
    internal static AttributeSpec StatedLoss { get; } = new("splice-loss", AttributeSort.Loss, "Largest loss of a splice that is stated, such as '0.1 dB'.");

    public override bool IsCable => true;

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        int fibres = values.WholeNumber("fibres");
        if (values.WiringList("wiring") is not { } list)
            return Straight(fibres, splices: 1);
        int[] all = [.. Enumerable.Range(1, fibres)];
        if (!ArrayCable.CheckedPairs(list, all, all, $"a splice of {fibres} fibres", faults))
            return null;
        var shape = new ShapeBuilder();
        (int near, int far) = Ends(shape, fibres);
        foreach (DuplexPair pair in list)
            shape.Join(near, pair.A, far, pair.B);
        return shape.Build(isCable: true, splices: 1);
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["splice"];

    /// <summary>Fibre n to fibre n between two bare ends.</summary>
    internal static Shape Straight(int fibres, int splices)
    {
        var shape = new ShapeBuilder();
        (int near, int far) = Ends(shape, fibres);
        for (int n = 1; n <= fibres; n++)
            shape.Join(near, n, far, n);
        return shape.Build(isCable: true, splices);
    }

    private static (int Near, int Far) Ends(ShapeBuilder shape, int fibres) =>
        (shape.AddPort(new PortShape("near", Face.Bare(fibres), Side.Near)), shape.AddPort(new PortShape("far", Face.Bare(fibres), Side.Far)));
}
