using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>The distances of a card, in millimetres.</summary>
internal static class CardMeasures
{
    /// <summary>From the trimmed edge to the card's outline; desk printers leave about this much white.</summary>
    public const double Border = 5;

    /// <summary>From the outline to what stands inside.</summary>
    public const double Padding = 2;

    /// <summary>Height of the cell that holds a port and position.</summary>
    public const double Cell = 3.6;

    /// <summary>Room between a cell's edge and its text.</summary>
    public const double CellMargin = 0.7;

    /// <summary>Strand between the two cells of a part in which nothing crosses.</summary>
    public const double Through = 0.9;

    /// <summary>Least height of a crossing.</summary>
    public const double Crossing = 5;

    /// <summary>
    /// The widest that a crossing of one millimetre height may be: its two lines then make an angle of 35 degrees.
    /// </summary>
    public const double Widest = 3.15;

    /// <summary>From a strand to its label at its right: half an arrowhead and a little.</summary>
    public const double LabelLead = 2.3;

    /// <summary>From a label to the next strand.</summary>
    public const double LabelTail = 2.6;

    /// <summary>From one line of 2.5 mm text to the next.</summary>
    public const double Line = 3.9;

    /// <summary>From one line to the next where a connector of two rows is drawn on it.</summary>
    public const double TallLine = 4.9;

    /// <summary>The most that a gap is widened where a card has room to spare.</summary>
    public const double MostSlack = 2.4;

    /// <summary>A line of 3.5 mm text.</summary>
    public const double NameLine = 5.1;

    /// <summary>Free strip above and below the text of a gap.</summary>
    public const double GapMargin = 0.7;

    /// <summary>Height of a mark above the first or below the last part: an open end, a ring.</summary>
    public const double Stub = 5.2;

    /// <summary>From the middle of one place of a drawn connector to the next.</summary>
    public const double Place = 1.5;

    /// <summary>Space inside the outline of a card.</summary>
    public static Area Inside(SheetFormat format) => new(
        Border + Padding,
        Border + Padding,
        format.WidthMm - (2 * (Border + Padding)),
        format.HeightMm - (2 * (Border + Padding)));
}
