using System.Collections;
using QRCoder;

namespace PolarityMap.Drawing.Scene;

/// <summary>
/// A text as a QR code (ISO/IEC 18004, level M: a seventh of it may be lost), drawn in squares on white with the free edge of
/// four squares that a reader needs. It holds the text and nothing else: no address of a page, nothing that a reader would open.
/// </summary>
public sealed class QrMark
{
    /// <summary>The least side of a square, mm: what an office printer and a telephone's camera manage (common practice).</summary>
    public const double LeastModuleMm = 0.4;

    private const int QuietZone = 4;

    /// <summary>Most characters of versions 1 to 10 at level M (from memory): digits, capitals and <c>$%*+-./:</c> with the space.</summary>
    private static readonly int[] s_capitals = [20, 38, 61, 90, 122, 154, 178, 221, 262, 311];

    /// <summary>Most bytes of any other text, less two for the mark that says UTF-8.</summary>
    private static readonly int[] s_bytes = [12, 24, 40, 60, 82, 104, 120, 150, 178, 211];

    private readonly int _version;

    private QrMark(string text, int version)
    {
        Text = text;
        _version = version;
    }

    public string Text { get; }

    /// <summary>Squares along a side, the free edge included.</summary>
    public int Modules => 17 + (4 * _version) + (2 * QuietZone);

    /// <summary>The mark of a text, or null of one too long to be read from paper of this size.</summary>
    public static QrMark? Of(string text)
    {
        string clean = CleanText.Of(text);
        bool capitals = clean.All(IsCapital);
        int[] most = capitals ? s_capitals : s_bytes;
        int length = capitals ? clean.Length : System.Text.Encoding.UTF8.GetByteCount(clean);
        int version = Array.FindIndex(most, m => length <= m) + 1;
        return clean.Length == 0 || version == 0 ? null : new QrMark(clean, version);
    }

    /// <summary>Draws it with its upper left corner at a place.</summary>
    /// <param name="left">Left edge of the free edge, mm.</param>
    /// <param name="top">Its top edge.</param>
    /// <param name="moduleMm">The side of a square, at least <see cref="LeastModuleMm"/>.</param>
    public SceneGroup Draw(double left, double top, double moduleMm)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(moduleMm, LeastModuleMm);
        bool plain = Text.All(char.IsAscii);
        using QRCodeData data = QRCodeGenerator.GenerateQrCode(
            Text, QRCodeGenerator.ECCLevel.M, forceUtf8: !plain, utf8BOM: false, plain ? QRCodeGenerator.EciMode.Default : QRCodeGenerator.EciMode.Utf8, _version);
        List<BitArray> rows = data.ModuleMatrix;
        var elements = new List<SceneElement> { new Box(left, top, Modules * moduleMm, Modules * moduleMm, Fill: Palette.Paper) };
        foreach (ModuleOutline outline in ModuleOutlines.Of((x, y) => rows[y][x], rows.Count))
        {
            Point[] points = [.. outline.Corners.Select(c => new Point(left + (c.X * moduleMm), top + (c.Y * moduleMm)))];
            elements.Add(new Polygon(points, Fill: outline.IsDark ? Palette.Ink : Palette.Paper));
        }

        return new SceneGroup(null, GroupRole.GraphicsSymbol, $"QR code of the text {Text}", null, elements);
    }

    private static bool IsCapital(char c) => c is (>= '0' and <= '9') or (>= 'A' and <= 'Z') or ' ' or '$' or '%' or '*' or '+' or '-' or '.' or '/' or ':';
}
