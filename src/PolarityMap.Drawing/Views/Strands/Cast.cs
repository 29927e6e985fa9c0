namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// The strands and parts of a sheet that looks as another one does and takes over its layout: who stands where the strands and
/// parts of that one do.
/// </summary>
/// <param name="Strands">For each way of the layout, in its order, the strand.</param>
/// <param name="Parts">For each part of the layout, in the order in which its ways meet them, the part.</param>
internal sealed record Cast(int[] Strands, int[] Parts);
