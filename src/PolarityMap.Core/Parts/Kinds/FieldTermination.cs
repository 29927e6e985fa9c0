namespace PolarityMap.Core.Parts.Kinds;

/// <summary>
/// Duplex connectors put on the bare fibres of a cable in the field, ports 1, 2, 3, …: directly, or as pigtails that are
/// spliced on. Permanent duplex cabling between two panels must cross once: either fibres lie in order at both ends and the
/// adapters of one end are turned (consecutive, consecutive-turned), or the fibres of each pair change places at one end
/// (consecutive, reverse-pair) (TIA-568-A 12.7.1, ISO/IEC 14763-2, EN 50174-1; three public sources).
/// </summary>
public sealed class FieldTermination : PartKind
{
    private static readonly string[] s_wirings = ["consecutive", "consecutive-turned", "reverse-pair"];

    public override string Name => "field termination";

    public override string Summary => "Duplex ports put on the bare fibres of a cable in the field.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        Cable.Fibres,
        new AttributeSpec("wiring", AttributeSort.Wiring, "How fibres come to the ports, or per port its fibres for A and B, such as [[1, 2], [3, 4]].") { Words = s_wirings, Default = "consecutive" },
        AttributeSpec.Choice("method", "Connectors mounted on the fibre, or pigtails spliced to it.", ["direct", "pigtail"], "direct"),
        Connectors.Fibre, Connectors.PortNetworks, Connectors.DuplexPolish, Connectors.Connector, Connectors.Keyed, Connectors.Key,
        Connectors.DuplexLoss, Connectors.ExpectedDuplexLoss, Splice.StatedLoss,
    ];

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        int fibres = values.WholeNumber("fibres");
        if (fibres % 2 != 0)
        {
            faults.Add(new AttributeFault("fibres", "duplex ports take an even number of fibres"));
            return null;
        }

        IReadOnlyList<DuplexPair> pairs = values.WiringList("wiring") ?? Named(values.Word("wiring")!, fibres / 2);
        if (!WrittenPositions.Check(WrittenPositions.Of(pairs), "wiring", "fibre", f => f >= 1 && f <= fibres ? null : $"there is no fibre {f}: the cable has {fibres}", faults))
            return null;
        var shape = new ShapeBuilder();
        var ports = new int[pairs.Count];
        for (int k = 0; k < pairs.Count; k++)
            ports[k] = shape.AddPort(Connectors.Duplex($"{k + 1}", Face.Duplex, Side.Near, values, values.Word("keyed") == "yes"));
        int bare = shape.AddPort(new PortShape("bare", Face.Bare(fibres), Side.Far));
        TransitionWiring.Join(shape, bare, ports, pairs);
        return shape.Build(splices: values.Word("method") == "pigtail" ? 1 : 0);
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["termination", TransitionWiring.Word(values)];

    /// <summary>Turning an adapter and exchanging the fibres behind it come to the same pairs; what differs is what the hand does.</summary>
    private static DuplexPair[] Named(string wiring, int ports)
    {
        var pairs = new DuplexPair[ports];
        for (int k = 0; k < ports; k++)
            pairs[k] = wiring == "consecutive" ? new((2 * k) + 1, (2 * k) + 2) : new((2 * k) + 2, (2 * k) + 1);
        return pairs;
    }
}
