using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>A port that a strand passes, or an adapter in which two of its plugs meet.</summary>
/// <param name="Port">The port.</param>
/// <param name="Network">The network that the document states for it, or -1.</param>
/// <param name="Position">The position at the port; of an adapter, that of the second of its plugs.</param>
/// <param name="IsAdapter">True for an adapter, which has no position of its own.</param>
public readonly record struct Station(PortRef Port, int Network, int Position, bool IsAdapter);
