namespace PolarityMap.Core.Parts.Kinds;

/// <summary>
/// Duplex transceiver ports, of a switch or a device. Seen at the port with keys up the transmitter is left, so position A
/// transmits and position B receives (ISO/IEC 11801 and TIA-568; three public sources, by way of the plugs that enter).
/// </summary>
public sealed class DuplexInterface : PartKind
{
    public override string Name => "duplex interface";

    public override string Summary => "Active duplex ports: position A transmits, position B receives.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        AttributeSpec.WholeNumber("ports", "Number of ports, named 1, 2, 3, …", 1, 4096, 1),
    ];

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        var shape = new ShapeBuilder();
        for (int n = 1; n <= values.WholeNumber("ports"); n++)
        {
            int port = shape.AddPort(new PortShape($"{n}", Face.Duplex, Side.Near));
            shape.AddLane(port, 1, LaneDirection.Transmit, 1);
            shape.AddLane(port, 2, LaneDirection.Receive, 1);
        }

        return shape.Build();
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["duplex", "interface"];
}
