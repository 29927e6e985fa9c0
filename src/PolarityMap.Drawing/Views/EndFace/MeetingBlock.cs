using PolarityMap.Core.Parts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>
/// What meets what in one row of the left connector: both connectors plugged together and seen from above, the left one at the top
/// with its key up. Its position 1 lies left, since who looks into it from the other side sees it so; the partner of each position
/// lies straight below. No line crosses another, whatever the rule.
/// </summary>
internal sealed class MeetingBlock : Block
{
    private const double Body = 7.6;
    private const double Gap = 6;
    private const double Side = 2;
    private const double KeyWidth = 4;
    private const double KeyHeight = 1.4;

    private readonly MatingKind _kind;
    private readonly string _name;
    private readonly string? _layer;
    private readonly (FacePlace? Top, FacePlace? Bottom)[] _columns;

    private MeetingBlock(MatingKind kind, string name, string? layer, (FacePlace?, FacePlace?)[] columns)
    {
        _kind = kind;
        _name = name;
        _layer = layer;
        _columns = columns;
    }

    /// <summary>One for each row; empty where nothing meets.</summary>
    public static IEnumerable<MeetingBlock> Of(MatingKind kind)
    {
        if (!kind.Fits)
            yield break;
        if (kind.Right.TakenPosition > 0)
        {
            // A plug in one place of the lower port, whose A lies right as it looks the other way.
            FacePlace[] lower = [.. kind.Right.Places.Reverse()];
            yield return new MeetingBlock(kind, "meets", null,
                [.. lower.Select(p => (p.Position == kind.Right.TakenPosition ? kind.Left.Places[0] : null, (FacePlace?)p))]);
            yield break;
        }

        Face face = kind.Left.Face;
        int drawn = FaceMeasures.Drawn(face), columns = FaceMeasures.Columns(face), rows = FaceMeasures.Rows(face);
        for (int row = 0; row < rows; row++)
        {
            IEnumerable<FacePlace> places = kind.Left.Places.Skip(row * columns).Take(Math.Min(columns, drawn - (row * columns)));
            string? layer = face.Family == ConnectorFamily.Array && rows > 1 ? row == 0 ? "Upper layer" : "Lower layer" : null;
            yield return new MeetingBlock(kind, rows == 1 ? "meets" : $"meets-{row + 1}", layer,
                [.. places.Select(p => ((FacePlace?)p, kind.PartnerOf(p.Position) is > 0 and int partner ? kind.Right.Places[partner - 1] : null))]);
        }
    }

    public override double Width => Math.Max(FaceMeasures.LeastMeeting, BodyWidth);

    public override double Height => (_layer is null ? 0 : FaceMeasures.Line) + (2 * FaceMeasures.Line) + (2 * Body) + Gap;

    private double Pitch => Math.Max(FaceMeasures.PitchOf(_kind.Left.Face), FaceMeasures.PitchOf(_kind.Right.Face));

    private double BodyWidth => (_columns.Length * Pitch) + (2 * Side);

    private bool HasKeys => _kind.Left.Face.Family != ConnectorFamily.Bare;

    public override void Paint(double x, double y, PanelPaint paint)
    {
        double middle = x + (Width / 2);
        if (_layer is not null)
        {
            paint.Words.Add(new Label(middle, y + CapHeights.Strand, _layer, CapHeights.Strand, Anchor.Middle, Palette.Ink));
            y += FaceMeasures.Line;
        }

        var picture = new List<SceneElement>();
        double upper = y + FaceMeasures.Line;
        double lower = upper + Body + Gap;
        double left = middle - (BodyWidth / 2);
        Outline(picture, left, upper, _columns.Select(c => c.Top is not null), isUpper: true);
        Outline(picture, left, lower, _columns.Select(c => c.Bottom is not null), isUpper: false);
        Named(paint, x, y + CapHeights.Strand, _kind.Left, _columns.Select(c => c.Top), turned: false);
        Named(paint, x, lower + Body + 0.9 + CapHeights.Strand, _kind.Right, _columns.Select(c => c.Bottom), _kind.IsTurned);
        for (int i = 0; i < _columns.Length; i++)
        {
            double columnX = left + Side + ((i + 0.5) * Pitch);
            picture.Add(Column(_columns[i], columnX, upper, lower));
        }

        paint.Picture.Add(new SceneGroup($"{paint.Id}-{_name}", picture));
    }

    private static SceneGroup Column((FacePlace? Top, FacePlace? Bottom) column, double x, double upper, double lower)
    {
        var elements = new List<SceneElement>();
        const double inset = 1.3 + (CapHeights.Strand / 2);
        if (column.Top is { } top)
            Number(elements, x, upper + Body - inset, top);
        if (column.Bottom is { } bottom)
            Number(elements, x, lower + inset, bottom);
        if (column is ({ } a, { } b) && (a.IsUsed || b.IsUsed))
        {
            elements.Add(new Line(
                x, upper + Body, x, lower, Palette.Ink, a.IsUsed && b.IsUsed ? LineWidths.Frame : LineWidths.Leader,
                a.IsUsed && b.IsUsed ? DashKind.Continuous : DashKind.Dashed));
        }

        return new SceneGroup(null, elements);
    }

    /// <summary>The place's name; the one place of a simplex plug has none and is a dot.</summary>
    private static void Number(List<SceneElement> elements, double x, double y, FacePlace place) =>
        elements.Add(place.Name.Length > 0
            ? Label.CentredOn(x, y, place.Name, CapHeights.Strand, Anchor.Middle, place.IsUsed ? Palette.Ink : Palette.MutedInk)
            : new Circle(x, y, 1, Fill: Palette.Ink));

    /// <summary>The name of a connector, on the side of the block where its body is.</summary>
    private void Named(PanelPaint paint, double x, double baseline, FaceSide side, IEnumerable<FacePlace?> columns, bool turned)
    {
        string words = side.Face.Family == ConnectorFamily.Array ? $"{side.Short}, key {(turned ? "down" : "up")}" : side.Short;
        (string text, double cap) = TextFit.Fit(words, Width, CapHeights.Strand, CapHeights.Strand);
        FacePlace?[] places = [.. columns];
        Anchor anchor = places[^1] is null ? Anchor.Start : places[0] is null ? Anchor.End : Anchor.Middle;
        paint.Words.Add(new Label(x + (anchor == Anchor.Start ? 0 : anchor == Anchor.End ? Width : Width / 2), baseline, text, cap, anchor, Palette.Ink));
    }

    /// <summary>The body of a connector with its keys: filled where they are on the side of the onlooker.</summary>
    private void Outline(List<SceneElement> picture, double x, double y, IEnumerable<bool> columns, bool isUpper)
    {
        bool[] taken = [.. columns];
        int first = Array.IndexOf(taken, true), last = Array.LastIndexOf(taken, true);
        FaceSide side = isUpper ? _kind.Left : _kind.Right;
        double left = x + (first * Pitch);
        double width = ((last - first + 1) * Pitch) + (2 * Side);
        picture.Add(new Box(left, y, width, Body, 1, Palette.Ink, LineWidths.Outline, Palette.PartFill));
        if (!HasKeys)
            return;
        bool up = isUpper || !_kind.IsTurned;
        double keyY = isUpper ? y + 0.8 : y + Body - 0.8 - KeyHeight;
        if (side.Face.Family == ConnectorFamily.Array)
        {
            // A connector that looks the other way has its left on the onlooker's right, unless it is turned over as well.
            double shift = FaceMeasures.KeyShift(side.Face, width) * (isUpper || _kind.IsTurned ? 1 : -1);
            picture.Add(Key(left + (width / 2) + shift, keyY, up));
            return;
        }

        for (int i = first; i <= last; i++)
            picture.Add(Key(x + Side + ((i + 0.5) * Pitch), keyY, up));
    }

    private static Box Key(double middle, double y, bool up) => new(
        middle - (KeyWidth / 2), y, KeyWidth, KeyHeight, 0, Palette.Ink, LineWidths.Leader, up ? Palette.Ink : Palette.Paper);
}
