using PolarityMap.Core.Optics;

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
        AttributeSpec.OptionalChoice("application", "What the ports are for; it gives wavelength, reach and loss limit.", InterfacePorts.ApplicationsOf(f => f == PortForm.Duplex)),
        Connectors.Connector,
    ];

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        var shape = new ShapeBuilder();
        int count = values.WholeNumber("ports");
        var model = new PortShape("", Face.Duplex, Side.Near) { Connector = values.Word("connector")!, Polish = Polish.Flat };
        if (values.Word("application") is { } name)
        {
            Application application = Application.Find(name)!;
            InterfacePorts.Add(shape, count, application, application.Layouts[0], model, groups: 0);
            return shape.Build();
        }

        for (int n = 1; n <= count; n++)
        {
            int port = shape.AddPort(model with { Name = $"{n}" });
            shape.AddLane(port, 1, LaneDirection.Transmit, 1);
            shape.AddLane(port, 2, LaneDirection.Receive, 1);
        }

        return shape.Build();
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) =>
        values.Word("application") is { } name ? ["interface", name] : ["duplex", "interface"];
}
