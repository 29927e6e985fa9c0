namespace PolarityMap.Drawing.Views.Overview;

/// <summary>The distances of an overview, in millimetres.</summary>
internal static class Measures
{
    /// <summary>From one line of text to the next, for 2.5 mm letters.</summary>
    public const double Line = 4;

    /// <summary>From one line of a name to the next, for 3.5 mm letters.</summary>
    public const double NameLine = 5.4;

    /// <summary>Room between a box's edge and its text.</summary>
    public const double Margin = 1.8;

    /// <summary>Room between two boxes, one above the other.</summary>
    public const double Gap = 4;

    /// <summary>Room between the boxes of two networks.</summary>
    public const double NetworkGap = 6;

    /// <summary>Height above a line that its slash and number take.</summary>
    public const double Above = 4.8;

    /// <summary>From a line to the top of the first letters below it.</summary>
    public const double Below = 1.7;

    /// <summary>Least distance of two lines that carry no words.</summary>
    public const double Pitch = 5;

    /// <summary>Free line at each side of the words in a gutter.</summary>
    public const double Lead = 2.5;

    /// <summary>From one upright stretch of a line to the next in a gutter.</summary>
    public const double Bend = 2.6;

    /// <summary>Radius of the circle at which a line goes on in another band, wide enough for two letters.</summary>
    public const double Ring = 2.8;

    /// <summary>Room between two bands.</summary>
    public const double BandGap = 7;

    /// <summary>Size of a finding's sign in a box.</summary>
    public const double Sign = 3.6;

    /// <summary>The widest lines of text in boxes and beside lines, the roomiest first.</summary>
    public static readonly IReadOnlyList<(double Box, double Line)> Widths = [(44, 44), (36, 34), (29, 27), (23, 22)];
}
