namespace PolarityMap.Drawing.Svg;

/// <summary>How a sheet is written as SVG.</summary>
public sealed record SvgOptions
{
    /// <summary>Carry the font inside the file as a data URI, about 65 kB. Else the reader's program must have it.</summary>
    public bool EmbedFont { get; init; }

    /// <summary>
    /// Put before every id, so that several sheets can stand in one HTML page; empty, or of the form of an id.
    /// </summary>
    public string IdPrefix { get; init; } = "";
}
