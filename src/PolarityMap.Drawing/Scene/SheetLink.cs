namespace PolarityMap.Drawing.Scene;

/// <summary>A place on a sheet that leads to another sheet of its set, where the medium has such a thing.</summary>
/// <param name="Area">The place, in mm.</param>
/// <param name="Sheet">Number of the other sheet in the set, from 1.</param>
public readonly record struct SheetLink(Area Area, int Sheet);
