namespace PolarityMap.Drawing.Scene;

/// <summary>
/// The drawing's own colours. They carry no fibre's identity; strand and sheath colours come from the plant.
/// </summary>
public static class Palette
{
    /// <summary>Outlines, casings and most text.</summary>
    public static Colour Ink => new(0x22, 0x22, 0x22);

    /// <summary>The sheet, the halo at crossings, and text on dark marks.</summary>
    public static Colour Paper => new(0xFF, 0xFF, 0xFF);

    /// <summary>Quieter text: captions, positions in brackets.</summary>
    public static Colour MutedInk => new(0x59, 0x59, 0x59);

    /// <summary>Leaders, ticks and guide lines.</summary>
    public static Colour Guide => new(0x80, 0x80, 0x80);

    /// <summary>Inside of a part's box. Nothing depends on seeing it: the outline carries the box.</summary>
    public static Colour PartFill => new(0xF4, 0xF4, 0xF1);

    /// <summary>The octagon of an error, and words about it.</summary>
    public static Colour Fault => new(0xB0, 0x00, 0x20);

    /// <summary>Words about a warning.</summary>
    public static Colour Warning => new(0x7A, 0x4F, 0x00);

    /// <summary>Inside of the warning triangle, always outlined in ink.</summary>
    public static Colour WarningFill => new(0xFF, 0xD1, 0x5C);

    /// <summary>The circle of a note, and words about it.</summary>
    public static Colour Note => new(0x1F, 0x4E, 0x8C);
}
