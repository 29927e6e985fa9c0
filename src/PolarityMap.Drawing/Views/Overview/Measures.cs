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
    public const double Below = 2.4;

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

    /// <summary>How roomy a drawing may be, the roomiest first; the last ones are as low as they can be.</summary>
    public static readonly IReadOnlyList<Room> Rooms =
    [
        new(44, 44, false), new(39, 38, false), new(35, 34, false), new(32, 30, false), new(29, 27, false), new(26, 24, false), new(23, 22, false),
        new(50, 64, true), new(44, 50, true), new(36, 40, true),
    ];
}

/// <summary>How roomy a drawing is.</summary>
/// <param name="Box">The widest lines of text in boxes.</param>
/// <param name="Line">The widest lines of text below lines.</param>
/// <param name="IsLow">True when lines of text are put together and stand closer, for the sake of height.</param>
internal readonly record struct Room(double Box, double Line, bool IsLow)
{
    public double Gap => IsLow ? 2 : Measures.Gap;

    public double NetworkGap => IsLow ? 3 : Measures.NetworkGap;

    public double Margin => IsLow ? 1.2 : Measures.Margin;
}
