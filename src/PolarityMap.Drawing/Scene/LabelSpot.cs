namespace PolarityMap.Drawing.Scene;

/// <summary>A place where labels of several sheets stand, all of one style. The writer keeps what of their SVG does not depend on their words.</summary>
internal sealed class LabelSpot
{
    /// <summary>The opening of the text with its place.</summary>
    public byte[]? Opening { get; set; }

    /// <summary>The box of paper under letters of the width <see cref="PaperWidthMm"/>.</summary>
    public byte[]? Paper { get; set; }

    /// <summary>Width of the last letters here: on most sheets those of a strand of the same colour, with as many figures.</summary>
    public double PaperWidthMm { get; set; }
}
