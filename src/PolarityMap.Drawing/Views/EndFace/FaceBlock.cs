using PolarityMap.Core.Parts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>
/// One connector as seen looking into its own ferrule with key up: position 1 at the left of the top row, the second row below
/// (TIA-604-5, IEC 61754-7; one row by five public sources, two rows by one), A left and B right (TIA-568-B.3, one source).
/// </summary>
internal sealed class FaceBlock : Block
{
    private const double BareMargin = 3;

    private readonly FaceSide _side;
    private readonly string _name;
    private readonly List<(string Text, double Cap)> _what;
    private readonly List<(string Text, double Cap)> _seen;
    private readonly int _headLines;
    private readonly bool _hasSecondLine;

    /// <param name="side">The connector.</param>
    /// <param name="name">The last part of its group's id.</param>
    /// <param name="turned">True when it lies upside down in the adapter.</param>
    /// <param name="other">The connector beside it: both have their rows on the same heights.</param>
    public FaceBlock(FaceSide side, string name, bool turned, FaceSide other)
    {
        _side = side;
        _name = name;
        _what = FaceMeasures.Wrapped(FaceWords.What(side), Width);
        _seen = FaceMeasures.Wrapped(FaceWords.Seen(side, turned), Width);
        _headLines = Math.Max(_what.Count, FaceMeasures.Wrapped(FaceWords.What(other), WidthOf(other.Face)).Count);
        _hasSecondLine = HasSecondLine(side) || HasSecondLine(other);
    }

    public override double Width => WidthOf(_side.Face);

    public override double Height => HeadHeight + OutlineHeight + FaceMeasures.Air + (_seen.Count * FaceMeasures.Line);

    private bool IsRound => _side.Face.Family is ConnectorFamily.Duplex or ConnectorFamily.Simplex;

    private bool IsArray => _side.Face.Family == ConnectorFamily.Array;

    private int Columns => FaceMeasures.Columns(_side.Face);

    private int Rows => FaceMeasures.Rows(_side.Face);

    private double Pitch => FaceMeasures.PitchOf(_side.Face);

    private double RowsWidth => Columns * Pitch;

    private double OutlineWidth => OutlineOf(_side.Face);

    /// <summary>From the middle of a place to the edge of what surrounds it.</summary>
    private double Round => IsRound ? FaceMeasures.RoundFerrule : FaceMeasures.Place;

    /// <summary>From a row's top to the middle of its places.</summary>
    private double ToMiddle => CapHeights.Strand + FaceMeasures.Air + Round;

    private double RowHeight =>
        ToMiddle + Round + FaceMeasures.Air + CapHeights.Strand + (_hasSecondLine ? FaceMeasures.Air + CapHeights.Strand : 0);

    private double RowsHeight => (Rows * RowHeight) + ((Rows - 1) * FaceMeasures.RowGap);

    private double OutlineHeight => RowsHeight + (IsArray ? 2 * (FaceMeasures.Wall + 1.4) : IsRound ? 2.8 : BareMargin);

    private double HeadHeight => FaceMeasures.TitleLine + (_headLines * FaceMeasures.Line) + (_side.Face.Family == ConnectorFamily.Bare ? 0 : FaceMeasures.KeyRoom);

    private static double WidthOf(Face face) => Math.Max(FaceMeasures.LeastFace, OutlineOf(face));

    private static double OutlineOf(Face face) =>
        (FaceMeasures.Columns(face) * FaceMeasures.PitchOf(face)) + (face.Family == ConnectorFamily.Array ? 2 * (FaceMeasures.PinRoom + FaceMeasures.Wall) : 0);

    /// <summary>True when a place needs a line below its letters: a lane's number, a second direction, or tracers.</summary>
    private static bool HasSecondLine(FaceSide side) =>
        side.Drawn.Any(p => p.LaneNumber > 0 || p.Lane == LaneDirection.Both || p.Colour is { Tracers: > 0 });

    public override void Paint(double x, double y, PanelPaint paint)
    {
        double middle = x + (Width / 2);
        (string address, double cap) = TextFit.Fit(_side.Short, Width, CapHeights.Part, CapHeights.Strand);
        paint.Words.Add(new Label(middle, y + CapHeights.Part, address, cap, Anchor.Middle, Palette.Ink));
        PanelPaint.Write(paint.Words, middle, y + FaceMeasures.TitleLine, _what, FaceMeasures.Line, Anchor.Middle);

        var face = new List<SceneElement>();
        var outline = new Area(middle - (OutlineWidth / 2), y + HeadHeight, OutlineWidth, OutlineHeight);
        if (IsArray)
            PaintArray(outline, face);
        else if (IsRound)
            PaintPlugs(outline, face);
        double rowsTop = outline.CentreY - (RowsHeight / 2);
        double rowsLeft = outline.CentreX - (RowsWidth / 2);
        int drawn = FaceMeasures.Drawn(_side.Face);
        for (int i = 0; i < drawn; i++)
        {
            double placeX = rowsLeft + ((i % Columns) + 0.5) * Pitch;
            double placeY = rowsTop + (i / Columns * (RowHeight + FaceMeasures.RowGap)) + ToMiddle;
            face.Add(Place(_side.Places[i], placeX, placeY));
        }

        paint.Picture.Add(new SceneGroup($"{paint.Id}-{_name}", face));
        PanelPaint.Write(paint.Words, middle, outline.Bottom + FaceMeasures.Air + 0.4, _seen, FaceMeasures.Line, Anchor.Middle);
    }

    /// <summary>Connector and ferrule, the key on top, pins or their holes outside the rows.</summary>
    private void PaintArray(Area outline, List<SceneElement> face)
    {
        double key = outline.CentreX + FaceMeasures.KeyShift(_side.Face, outline.Width);
        face.Add(Marks.KeyUp(key, outline.Y));
        face.Add(new Label(key + 2.4, outline.Y - 1.2, "key", CapHeights.Strand, Anchor.Start, Palette.Ink));
        face.Add(new Box(outline.X, outline.Y, outline.Width, outline.Height, 1.2, Palette.Ink, LineWidths.Outline, Palette.PartFill));
        face.Add(new Box(
            outline.X + FaceMeasures.Wall, outline.Y + FaceMeasures.Wall, outline.Width - (2 * FaceMeasures.Wall), outline.Height - (2 * FaceMeasures.Wall),
            0, Palette.Ink, LineWidths.Inner, Palette.Paper));
        if (_side.Shape.Pinned is not { } pinned)
            return;
        double inset = FaceMeasures.Wall + (FaceMeasures.PinRoom / 2);
        foreach (double x in (double[])[outline.X + inset, outline.Right - inset])
            face.Add(new Circle(x, outline.CentreY, FaceMeasures.Pin, Palette.Ink, LineWidths.Outline, pinned ? Palette.Ink : Palette.Paper));
    }

    /// <summary>Each plug with its key on top and its round ferrule.</summary>
    private void PaintPlugs(Area outline, List<SceneElement> face)
    {
        for (int i = 0; i < Columns; i++)
        {
            double x = outline.X + ((i + 0.5) * Pitch);
            face.Add(Marks.KeyUp(x, outline.Y));
            face.Add(new Box(x - (Pitch / 2) + 0.6, outline.Y, Pitch - 1.2, outline.Height, 1.2, Palette.Ink, LineWidths.Outline, Palette.PartFill));
            face.Add(new Circle(x, outline.CentreY - (RowsHeight / 2) + ToMiddle, FaceMeasures.RoundFerrule, Palette.Ink, LineWidths.Inner, Palette.Paper));
        }

        face.Add(new Label(outline.Right - (Pitch / 2) + 2.4, outline.Y - 1.2, "key", CapHeights.Strand, Anchor.Start, Palette.Ink));
    }

    /// <summary>A fibre place with its number above and below it the letters of its colour, or what an interface does there.</summary>
    private SceneGroup Place(FacePlace place, double x, double y)
    {
        var elements = new List<SceneElement>();
        double number = y - Round - FaceMeasures.Air - (CapHeights.Strand / 2);
        double letters = y + Round + FaceMeasures.Air + (CapHeights.Strand / 2);
        double second = letters + CapHeights.Strand + FaceMeasures.Air;
        elements.Add(new Circle(x, y, FaceMeasures.Place, Palette.Ink, LineWidths.Outline, place.Colour is { } c ? Strands.StrandColours.Drawn(c) : Palette.Paper));
        if (place.Name.Length > 0)
            elements.Add(Label.CentredOn(x, number, place.Name, CapHeights.Strand, Anchor.Middle, Palette.Ink));
        if (!place.IsUsed)
            elements.AddRange(EmptyPlace.Hatch(x, y));
        else if (place.Colour is { } colour)
        {
            elements.Add(Label.CentredOn(x, letters, colour.Code, CapHeights.Strand, Anchor.Middle, Palette.Ink));
            if (colour.Tracers > 0)
                elements.Add(Marks.Ticks(x, second, colour.Tracers));
        }
        else if (place.Lane is { } lane)
        {
            string[] words = lane == LaneDirection.Both ? ["Tx", "Rx"] : place.LaneNumber > 0 ? [lane.ShortWord(), $"{place.LaneNumber}"] : [lane.ShortWord()];
            for (int i = 0; i < words.Length; i++)
                elements.Add(Label.CentredOn(x, i == 0 ? letters : second, words[i], CapHeights.Strand, Anchor.Middle, Palette.Ink));
        }

        return new SceneGroup(null, elements);
    }
}
