namespace PolarityMap.Core.Optics;

/// <summary>The colour of one fibre of a sequence.</summary>
/// <param name="Number">The fibre's number in its round of the sequence, counted from 1: 1 to 12 in a sequence of twelve.</param>
/// <param name="Name">English name as printed on sheets.</param>
/// <param name="Code">Two-letter code: of IEC 60757 for the twelve colours, this project's own for those it has none for.</param>
/// <param name="Rgb">A screen and print colour for it, 0xRRGGBB. The standards give no such values: <c>common practice</c>.</param>
/// <param name="Tracers">Number of tracer stripes or rings: 0 in the first round of the sequence, one more in every further round.</param>
public readonly record struct FibreColour(int Number, string Name, string Code, int Rgb, int Tracers);
