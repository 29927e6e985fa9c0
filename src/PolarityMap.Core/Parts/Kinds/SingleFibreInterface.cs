using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Parts.Kinds;

/// <summary>
/// Ports that send and hear on one fibre, at two wavelengths. An upstream port meets a downstream port of the same family:
/// two alike send at the same wavelength and hear nothing (IEEE 802.3 clauses 59 and 158; two and three public sources).
/// </summary>
public sealed class SingleFibreInterface : PartKind
{
    public override string Name => "single-fibre interface";

    public override string Summary => "Active simplex ports that send and hear on one fibre at two wavelengths.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        AttributeSpec.WholeNumber("ports", "Number of ports, named 1, 2, 3, …", 1, 4096, 1),
        AttributeSpec.Choice("application", "What the ports are for: -U meets -D.", InterfacePorts.ApplicationsOf(f => f == PortForm.Simplex)),
        Connectors.Connector,
    ];

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        var shape = new ShapeBuilder();
        Application application = Application.Find(values.Word("application")!)!;
        var model = new PortShape("", Face.Simplex, Side.Near) { Connector = values.Word("connector")!, Polish = Polish.Flat };
        InterfacePorts.Add(shape, values.WholeNumber("ports"), application, application.Layouts[0], model, groups: 0);
        return shape.Build();
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["interface", values.Word("application")!];
}
