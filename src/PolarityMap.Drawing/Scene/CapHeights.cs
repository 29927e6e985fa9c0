namespace PolarityMap.Drawing.Scene;

/// <summary>Heights of a capital in mm, steps of ISO 3098.</summary>
public static class CapHeights
{
    /// <summary>Least height anywhere: captions and footers.</summary>
    public const double Least = 1.8;

    /// <summary>Strand numbers and colour letters.</summary>
    public const double Strand = 2.5;

    /// <summary>Part names, findings, zone marks.</summary>
    public const double Part = 3.5;

    /// <summary>Title of a sheet.</summary>
    public const double SheetTitle = 5;
}
