using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views;

/// <summary>A place on a sheet that stands for a port or for one of its positions, so that a page can let its reader point at it.</summary>
/// <param name="Area">The place, in mm from the sheet's upper left corner.</param>
/// <param name="Port">The port.</param>
/// <param name="Position">The position in it, 1-based; 0 for the port as a whole.</param>
public readonly record struct HitArea(Area Area, PortRef Port, int Position);
