using PolarityMap.Drawing.Scene;

namespace PolarityMap.Export.Tests.Png;

/// <summary>
/// A way of seeing colours, as a matrix on linear light: grey print by luminance (WCAG 2.2), and the three kinds of colour
/// deficiency at full severity by a published simulation model of 2009, whose figures many public programs agree on.
/// </summary>
internal sealed record Sight(string Name, double[] Matrix)
{
    public static readonly IReadOnlyList<Sight> All =
    [
        new("grey", [0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722]),
        new("protan", [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998]),
        new("deutan", [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881]),
        new("tritan", [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900]),
    ];

    private static readonly double[] Light = [.. Enumerable.Range(0, 256).Select(i => Linear(i / 255.0))];

    /// <summary>Relative luminance of a colour seen in this way (definition in WCAG 2.2).</summary>
    public double Luminance(byte r, byte g, byte b)
    {
        (double x, double y, double z) = (Light[r], Light[g], Light[b]);
        return (0.2126 * Row(0)) + (0.7152 * Row(3)) + (0.0722 * Row(6));

        double Row(int i) => Math.Clamp((Matrix[i] * x) + (Matrix[i + 1] * y) + (Matrix[i + 2] * z), 0, 1);
    }

    public double Luminance(Colour colour) => Luminance(colour.R, colour.G, colour.B);

    /// <summary>Contrast ratio of two luminances, 1 to 21 (definition in WCAG 2.2).</summary>
    public static double Contrast(double a, double b) => (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);

    private static double Linear(double value) => value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
}
