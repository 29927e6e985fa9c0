using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>The network that the document states for each port, worked out once for each part.</summary>
public sealed class StatedNetworks
{
    private readonly Plant _plant;
    private readonly int[]?[] _ofPorts;

    internal StatedNetworks(Plant plant)
    {
        _plant = plant;
        _ofPorts = new int[plant.Parts.Count][];
    }

    /// <summary>
    /// The network of a port, or -1. Where duplex ports of several networks sit side by side, an array or bare end of the part
    /// belongs to none of them, whatever the part says as a whole.
    /// </summary>
    public int Of(PortRef port)
    {
        Part part = _plant.Parts[port.Part];
        if (part.PortNetworks.Count == 0)
            return part.Network;
        return (_ofPorts[port.Part] ??= OfPorts(part))[port.Port];
    }

    /// <summary>In one pass, since a panel may have thousands of ports; the order is that of <see cref="Plant.NetworkOf"/>.</summary>
    private static int[] OfPorts(Part part)
    {
        IReadOnlyList<PortShape> ports = part.Shape.Ports;
        var networks = new int[ports.Count];
        int nth = 0;
        for (int i = 0; i < networks.Length; i++)
        {
            if (ports[i].Face.Family is ConnectorFamily.Array or ConnectorFamily.Bare)
                networks[i] = -1;
            else
                networks[i] = nth < part.PortNetworks.Count ? part.PortNetworks[nth++] : part.Network;
        }

        return networks;
    }
}
