using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>One port where duplex ports of several networks sit side by side.</summary>
/// <param name="Name">Its name in the part.</param>
/// <param name="Network">Its network, stated or that of the strands in it, or -1.</param>
/// <param name="Key">Its key code, or null when it is plain.</param>
public sealed record FitPort(string Name, int Network, string? Key)
{
    /// <summary>For each network of the table whether its cord goes in.</summary>
    public IReadOnlyList<CordFit> Cords { get; internal init; } = [];

    /// <summary>True when the port has a network and the cord of another one goes in.</summary>
    public bool LetsForeignCordsIn => Network >= 0 && Cords.Contains(CordFit.Fits);
}

/// <summary>Whether the cords of the networks that meet at an outlet or another part go into its ports.</summary>
/// <param name="Kind">The kind of the parts.</param>
/// <param name="Parts">The parts that are alike, in the order of the plant; at least one.</param>
/// <param name="Networks">The networks that have a port in each of them, as indices in rising order: the columns.</param>
/// <param name="Ports">Their ports: the rows.</param>
/// <param name="Source">The place in the document of the first part.</param>
public sealed record FitTable(string Kind, IReadOnlyList<int> Parts, IReadOnlyList<int> Networks, IReadOnlyList<FitPort> Ports, SourcePlace Source)
{
    /// <summary>True when the cord of a network goes into a port of another one.</summary>
    public bool LetsForeignCordsIn => Ports.Any(p => p.LetsForeignCordsIn);
}
