namespace PolarityMap.Core.Optics;

/// <summary>The colour of one fibre of a sequence.</summary>
/// <param name="Number">The fibre's number in its dozen, 1 to 12.</param>
/// <param name="Name">English name as printed on sheets.</param>
/// <param name="Code">Two-letter code of IEC 60757.</param>
/// <param name="Rgb">A screen and print colour for it, 0xRRGGBB. The standards give no such values: <c>common practice</c>.</param>
/// <param name="Tracers">Number of tracer stripes: 0 for fibres 1 to 12, 1 for 13 to 24 and so on.</param>
public readonly record struct FibreColour(int Number, string Name, string Code, int Rgb, int Tracers);
