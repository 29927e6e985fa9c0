using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Parts;

/// <summary>The ports that interface kinds build for every application and layout.</summary>
public sealed class ApplicationPortTests
{
    private const int Ports = 2;

    public static TheoryData<string> Applications => [.. Application.Names];

    // What an application's layout says is what its ports have; nothing more and nothing less.
    [Theory]
    [MemberData(nameof(Applications))]
    public void A_port_has_the_lanes_of_its_layout_in_every_layout(string name)
    {
        Application application = Application.Find(name)!;
        foreach (PortLayout layout in application.Layouts)
        {
            Shape shape = PortsOf(application, layout);
            Assert.Equal(Ports * layout.Receptacles, shape.Ports.Count);
            Assert.Equal(Ports * layout.Lanes.Count, shape.Lanes.Count);
            for (int port = 0; port < shape.Ports.Count; port++)
            {
                PortShape built = shape.Ports[port];
                int receptacle = port % layout.Receptacles;
                LaneSpec[] specs = [.. layout.Lanes.Where(l => l.Receptacle == receptacle)];
                int first = specs.Min(l => l.Lane);
                string suffix = layout.Receptacles == 1 ? "" : receptacle == 0 ? "a" : "b";
                Assert.Equal($"{(port / layout.Receptacles) + 1}{suffix}", built.Name);
                Assert.Equal(layout.Form.Positions(), built.Face.Count);
                Assert.Equal(layout.Angled, built.Polish is { } polish ? polish != Polish.Flat : null);
                Assert.Equal(0, built.Groups);

                // Each receptacle counts its lanes from 1, and a lane is its own link while the port is not split.
                Assert.Equal(
                    specs.Select(l => (l.Position, l.Use, l.Lane - first + 1, l.Lane - first + 1, l.Transmit, l.Receive)).Order(),
                    shape.Lanes.Where(l => l.Port == port).Select(l => (l.Position, UseOf(l.Direction), l.Number, l.Group, l.Sends, l.Hears)).Order());
            }
        }
    }

    // Source: trade facts 7.1: transceiver arrays have pins, 6 sources; 4.1: the plug goes in key up to key up.
    [Theory]
    [MemberData(nameof(Applications))]
    public void Array_receptacles_have_pins_and_aligned_keys_of_their_own_and_no_other_port_has(string name)
    {
        Application application = Application.Find(name)!;
        foreach (PortLayout layout in application.Layouts)
        {
            foreach (PortShape port in PortsOf(application, layout).Ports)
            {
                bool array = layout.Form.IsArray();
                Assert.Equal(array ? (true, Keying.Aligned, true) : (null, (Keying?)null, false), (port.Pinned, port.Keys, port.KeysFixed));
                Assert.Same(application, port.Application);
            }
        }
    }

    // Source: interface facts 2.2, the rows with two sources or more.
    [Fact]
    public void Confirmed_ports_send_and_receive_where_it_is_typed()
    {
        foreach (ArrayPortRow row in InterfaceTables.ArrayPorts)
        {
            Application application = Application.Find(row.Interface)!;
            Shape shape = PortsOf(application, application.Layouts[0]);
            Assert.Equal(row.Positions, shape.Ports[0].Face.Count);
            Assert.Equal(row.Transmit, Positions(shape, LaneDirection.Transmit));
            Assert.Equal(row.Receive, Positions(shape, LaneDirection.Receive));
            Assert.Equal(row.Unused, Enumerable.Range(1, row.Positions).Except(shape.Lanes.Select(l => l.Position)));
        }
    }

    // Source: interface facts 2.2 and trade facts 4.1: rows, columns and the fibres in use.
    [Fact]
    public void Confirmed_shapes_are_those_of_the_default_layout()
    {
        foreach (ArrayPortShape row in InterfaceTables.ArrayPortShapes)
        {
            Application application = Application.Find(row.Interface)!;
            Shape shape = PortsOf(application, application.Layouts[0]);
            Assert.Equal((row.Rows, row.Columns), (shape.Ports[0].Face.Rows, shape.Ports[0].Face.Columns));
            Assert.Equal(row.FibresUsed, shape.Lanes.Count(l => l.Port == 0));
        }
    }

    // Source: trade facts 4.1 (twelve: 2 sources), interface facts 3 (sixteen: pairing 1 source, positions derived). Ten lanes:
    // one row each way and the ends of both rows dark (2 sources, interface facts 2.2); which row transmits has no source.
    [Fact]
    public void Lanes_lie_where_they_are_typed_on_twelve_sixteen_and_two_rows()
    {
        foreach ((string name, IReadOnlyList<LaneRow> lanes) in new[] { ("100GBASE-SR4", PartTables.FourLanes), ("400GBASE-DR4", PartTables.FourLanes), ("400GBASE-SR8", PartTables.EightLanes), ("800GBASE-DR8", PartTables.EightLanes), ("800GBASE-SR8", PartTables.EightLanes) })
        {
            Application application = Application.Find(name)!;
            Shape shape = PortsOf(application, application.Layouts[0]);
            Assert.Equal(lanes.Select(l => (l.Lane, l.ReceptacleTx, l.ReceptacleRx)), LanePairs(shape, 0));
        }

        Application ten = Application.Find("100GBASE-SR10")!;
        Shape port = PortsOf(ten, ten.Layouts[0]);
        int[] transmitRows = [.. Positions(port, LaneDirection.Transmit).Select(p => (p - 1) / 12).Distinct()];
        int[] receiveRows = [.. Positions(port, LaneDirection.Receive).Select(p => (p - 1) / 12).Distinct()];
        Assert.NotEqual(Assert.Single(transmitRows), Assert.Single(receiveRows));
        Assert.Equal(InterfaceTables.DarkOfTenLanePort, Enumerable.Range(1, 24).Except(port.Lanes.Select(l => l.Position)));
    }

    // Source: interface facts 2.2: one port of sixteen, or two of twelve each like a four-lane port. 3 sources for both styles.
    [Fact]
    public void The_two_layouts_of_eight_lanes_are_one_port_of_sixteen_and_two_four_lane_ports_named_a_and_b()
    {
        foreach (string name in (string[])["800GBASE-DR8", "800GBASE-SR8"])
        {
            Application application = Application.Find(name)!;
            Assert.Equal(["1", "2"], PortsOf(application, application.FindLayout("one port")!).Ports.Select(p => p.Name));
            Shape two = PortsOf(application, application.FindLayout("two ports")!);
            Assert.Equal(["1a", "1b", "2a", "2b"], two.Ports.Select(p => p.Name));
            for (int port = 0; port < two.Ports.Count; port++)
                Assert.Equal(PartTables.FourLanes.Select(l => (l.Lane, l.ReceptacleTx, l.ReceptacleRx)), LanePairs(two, port));
        }
    }

    // Source: interface facts 2.1. Each end of a single-fibre pair sends what its counterpart hears. 2 and 3 sources.
    [Fact]
    public void Single_fibre_ports_send_and_hear_at_the_typed_wavelengths()
    {
        Assert.Equal(InterfaceTables.SingleFibrePairs.Select(r => r.Interface).Order(), Application.All.Where(a => a.Form == PortForm.Simplex).Select(a => a.Name).Order());
        foreach (SingleFibreRow row in InterfaceTables.SingleFibrePairs)
        {
            Application application = Application.Find(row.Interface)!;
            Lane lane = Assert.Single(PortsOf(application, application.Layouts[0]).Lanes, l => l.Port == 0);
            Assert.Equal((1, LaneDirection.Both, new Wavelength(row.TransmitNm), new Wavelength(row.ReceiveNm)), (lane.Position, lane.Direction, lane.Sends!.Value, lane.Hears!.Value));
            Assert.Equal(row.Counterpart, application.Counterpart);
        }
    }

    /// <summary>Two interfaces of an application in one of its layouts, built by the kind that its form belongs to.</summary>
    internal static Shape PortsOf(Application application, PortLayout layout)
    {
        string kind = application.Form switch { PortForm.Simplex => "single-fibre interface", PortForm.Duplex => "duplex interface", _ => "parallel interface" };
        return Bench.ShapeOf(kind, v =>
        {
            v.Set("ports", Ports).Set("application", application.Name);
            if (application.Form.IsArray())
                v.Set("layout", layout.Name);
        });
    }

    private static LaneUse UseOf(LaneDirection direction) => direction switch
    {
        LaneDirection.Transmit => LaneUse.Transmit,
        LaneDirection.Receive => LaneUse.Receive,
        _ => LaneUse.Both,
    };

    private static IEnumerable<int> Positions(Shape shape, LaneDirection direction) =>
        shape.Lanes.Where(l => l.Port == 0 && l.Direction == direction).Select(l => l.Position).Order();

    private static IEnumerable<(int Lane, int Tx, int Rx)> LanePairs(Shape shape, int port) => shape.Lanes
        .Where(l => l.Port == port)
        .GroupBy(l => l.Number)
        .OrderBy(g => g.Key)
        .Select(g => (g.Key, g.Single(l => l.Direction == LaneDirection.Transmit).Position, g.Single(l => l.Direction == LaneDirection.Receive).Position));
}
