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
