using PolarityMap.Core.Parts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>Distances of an end-face drawing in mm. Faces are drawn large and not to scale.</summary>
internal static class FaceMeasures
{
    /// <summary>From one place of a row to the next: the widest pair of colour letters and half a millimetre.</summary>
    public const double Pitch = 6;

    /// <summary>From A to B of a duplex connector.</summary>
    public const double DuplexPitch = 13.6;

    /// <summary>Radius of a fibre place.</summary>
    public const double Place = 2.1;

    /// <summary>Radius of the round ferrule of a duplex or simplex plug.</summary>
    public const double RoundFerrule = 4.6;

    /// <summary>Radius of a guide pin or its hole.</summary>
    public const double Pin = 1.5;

    /// <summary>Room at each end of the rows for a pin.</summary>
    public const double PinRoom = 4.6;

    /// <summary>From the connector's outline to its ferrule.</summary>
    public const double Wall = 1.4;

    /// <summary>Free room between a circle, its number and its letters.</summary>
    public const double Air = 1;

    /// <summary>Between two rows of one ferrule.</summary>
    public const double RowGap = 2.6;

    /// <summary>Free room above an outline for the key and its word.</summary>
    public const double KeyRoom = 4.4;

    /// <summary>Least width of a face with its words.</summary>
    public const double LeastFace = 40;

    /// <summary>Least width of a diagram of what meets what, for the names above and below it.</summary>
    public const double LeastMeeting = 31;

    /// <summary>From one line of 2.5 mm letters to the next.</summary>
    public const double Line = 4;

    /// <summary>From one line of 3.5 mm letters to the next.</summary>
    public const double TitleLine = 5.4;

    /// <summary>Between the blocks of a panel.</summary>
    public const double BlockGap = 5;

    /// <summary>From a panel's outline to what it holds.</summary>
    public const double Padding = 3;

    /// <summary>Between panels, and from the frame to them.</summary>
    public const double PanelGap = 3;

    /// <summary>The most bare fibres that are drawn one by one; of more only so many are.</summary>
    public const int MostBare = 24;

    /// <summary>How far the offset key of a ferrule 16 wide stands from the middle, as a share of the width.</summary>
    public const double KeyOffset = 0.25;

    /// <summary>Where the key stands from the middle of a face seen with key up; left is negative.</summary>
    /// <remarks>
    /// The key of 16-wide ferrules sits to one side (from memory, implied by one source). To which side no source says: it is drawn
    /// on the side of position 1.
    /// </remarks>
    public static double KeyShift(Face face, double width) => face.OffsetKey ? -width * KeyOffset : 0;

    /// <summary>How many places of a face are drawn.</summary>
    public static int Drawn(Face face) => face.Family == ConnectorFamily.Bare ? Math.Min(MostBare, face.Count) : face.Count;

    /// <summary>Places in a row as drawn: bare fibres stand in dozens.</summary>
    public static int Columns(Face face) => face.Family == ConnectorFamily.Bare ? Math.Min(12, face.Count) : face.Columns;

    /// <summary>Rows as drawn.</summary>
    public static int Rows(Face face) => (Drawn(face) + Columns(face) - 1) / Columns(face);

    /// <summary>From one column to the next.</summary>
    public static double PitchOf(Face face) => face.Family is ConnectorFamily.Duplex or ConnectorFamily.Simplex ? DuplexPitch : Pitch;

    /// <summary>The words in lines no wider than given, a longer word cut.</summary>
    public static List<(string Text, double Cap)> Wrapped(string words, double width, double cap = CapHeights.Strand)
    {
        var lines = new List<(string, double)>();
        foreach (string line in Strands.SheetText.Wrapped(words, width, cap))
            lines.Add(TextFit.Fit(line, width, cap));
        return lines;
    }
}
