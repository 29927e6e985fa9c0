using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>A port with all that laying out asks of it again and again, looked up once for each planning.</summary>
/// <param name="port">The port.</param>
/// <param name="part">Its part.</param>
/// <param name="table">The table it is in.</param>
internal sealed class DrawnPort(PortRef port, Part part, PortTable table)
{
    public PortRef Ref => port;

    public Part Part => part;

    public PortShape Shape { get; } = part.Shape.Ports[port.Port];

    /// <summary>The mating of the whole port; null where none is, or where only single positions are mated.</summary>
    public Mating? Mating { get; set; }

    /// <summary>The mating at a position of the port in the strand graph, where single positions are mated.</summary>
    public Mating? MatingOf(int position) => table.MatingAt(position);

    public bool IsArray => Shape.Face.Family == ConnectorFamily.Array;

    /// <summary>The last pass over a layout that came by here, so that a pass can tell its first visit to each port.</summary>
    public int Visit { get; set; }

    /// <summary>The lane at a position of the port (1-based), or null.</summary>
    public Lane? LaneAt(int position) => part.Shape.IsInterface ? part.Shape.LaneAt(Shape.FirstPosition + position - 1) : null;
}
