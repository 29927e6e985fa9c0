using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations;

/// <summary>
/// One difference between a plant as it is described and as it is built, or is to be built: the words in which deviations,
/// remedies and a document's as-built section speak.
/// </summary>
public abstract record Difference;

/// <summary>A part is of another make: same ports, other wiring, keys, fibre or the like.</summary>
/// <param name="Part">Index of the part.</param>
/// <param name="Changed">The part as it is.</param>
/// <param name="Attribute">The attribute that differs, as a document names it; empty where a document cannot say it.</param>
/// <param name="Value">Its value.</param>
public sealed record PartDiffers(int Part, Part Changed, string Attribute, string Value) : Difference;

/// <summary>What was plugged into the one port sits in the other.</summary>
public sealed record PlugsExchanged(PortRef A, PortRef B) : Difference;

/// <summary>What was plugged into the one port sits in another that was free.</summary>
public sealed record PlugMoved(PortRef From, PortRef To) : Difference;

/// <summary>What was plugged into the port is not, or does not touch.</summary>
public sealed record PlugPulled(PortRef Port) : Difference;

/// <summary>
/// A cable's plug sits in a port that was free, wherever it was before: in another port, loose, or refused by a port that another
/// plug had taken.
/// </summary>
/// <param name="Plug">The end of a cable.</param>
/// <param name="Port">A port, or an adapter in which one other plug waits.</param>
/// <param name="Position">The position that a simplex plug takes in a wider port; else 0.</param>
public sealed record PlugPut(PortRef Plug, PortRef Port, int Position = 0) : Difference;
