namespace PolarityMap.Drawing.Views.Strands;

/// <summary>The distances of a strand sheet, in millimetres.</summary>
internal static class Measures
{
    /// <summary>A width rounded up to a tenth of a millimetre: nothing needs finer places, and short numbers make short files.</summary>
    public static double Tenths(double width) => Math.Ceiling((width * 10) - 1e-6) / 10;

    /// <summary>From one strand to the next.</summary>
    public const double Pitch = 5;

    /// <summary>Height of the small box that holds a position's name.</summary>
    public const double CellHeight = 3.8;

    /// <summary>Room between a cell's edge and its text.</summary>
    public const double CellMargin = 0.7;

    /// <summary>How far a part's outline stays inside its rows' share, so that neighbours do not touch.</summary>
    public const double Inset = 0.35;

    /// <summary>Free strand at each side of a label in a gutter.</summary>
    public const double LabelLead = 1.4;

    /// <summary>Straight strand at each side of a crossing.</summary>
    public const double Lead = 2;

    /// <summary>
    /// Horizontal room for one exchange of neighbours, the widest first. At 4 mm two running strands cross at about a right angle, at
    /// 2.6 mm at 55 degrees, and no three crossings lie within 2.5 mm.
    /// </summary>
    public static readonly IReadOnlyList<double> Stages = [4, 3.5, 3, 2.6];

    /// <summary>The least room for one exchange where very many strands cross: with less, what lies below is more hidden than seen.</summary>
    public const double RoomyStage = 3.5;

    /// <summary>The steepest a running strand may be, as rise over run; two that cross then make more than 30 degrees.</summary>
    public const double Steepest = 3;

    /// <summary>No more than two crossings lie within this distance, with a little to spare over 2.5 mm for the rounding of corners.</summary>
    public const double Crowded = 2.55;

    /// <summary>Gap before a further array connector of the same part.</summary>
    public const double ConnectorGap = 4.6;

    /// <summary>Gap where positions of an array are left out.</summary>
    public const double LeftOutGap = 2.4;

    /// <summary>Gap between the bands of a folded drawing.</summary>
    public const double BandGap = 4;

    /// <summary>Length of strand drawn beyond an open end.</summary>
    public const double Stub = 4;

    /// <summary>From one line of text to the next, for 2.5 mm letters.</summary>
    public const double LineOfText = 4;
}
