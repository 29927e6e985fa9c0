using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Card;

namespace PolarityMap.Drawing.Views.Labels;

/// <summary>A label with its lines broken and its QR code sized.</summary>
internal sealed class LabelLayout
{
    private const double Padding = 1.5;
    private const double Gap = 1;

    /// <summary>From one line to the next, in heights of the lower one.</summary>
    private const double Pitch = 1.56;

    /// <summary>Sides of the squares of a QR code, the preferred first.</summary>
    private static readonly double[] s_modules = [0.5, 0.45, QrMark.LeastModuleMm];

    /// <summary>Heights of the address and of the other lines, the preferred first; the address never goes below those of labels.</summary>
    private static readonly (double Address, double Other)[] s_heights =
        [(CapHeights.Part, CapHeights.Strand), (CapHeights.Strand, CapHeights.Strand), (CapHeights.Strand, 2), (CapHeights.Strand, CapHeights.Least)];

    private readonly LabelText _text;
    private readonly List<(string Text, double Cap)> _lines;
    private readonly QrMark? _mark;
    private readonly double _module;

    private LabelLayout(LabelText text, List<(string Text, double Cap)> lines, QrMark? mark, double module)
    {
        _text = text;
        _lines = lines;
        _mark = mark;
        _module = module;
    }

    public bool HasMark => _mark is not null;

    private double Height => HeightOf(_lines);

    /// <summary>
    /// Lays a label out: with its QR code if that goes beside the words, with what it is about if that goes below them; letters
    /// grow smaller only as far as <see cref="CapHeights.Least"/>.
    /// </summary>
    /// <exception cref="LabelFitException">The address and both ends do not fit.</exception>
    public static LabelLayout Of(LabelText text, LabelSheet sheet)
    {
        double width = sheet.Width - (2 * Padding), height = sheet.Height - (2 * Padding);
        QrMark? mark = QrMark.Of(text.Address);
        foreach (bool withMark in (bool[])[true, false])
        {
            double module = mark is null || !withMark ? 0 : s_modules.FirstOrDefault(m => mark.Modules * m <= Math.Min(height, width / 2));
            if (withMark && module == 0)
                continue;
            double room = withMark ? width - (mark!.Modules * module) - Gap : width;
            foreach (bool withAbout in (bool[])[true, false])
            {
                foreach ((double address, double other) in s_heights)
                {
                    List<(string Text, double Cap)> lines = Lines(text, withAbout, room, address, other);
                    if (HeightOf(lines) <= height)
                        return new LabelLayout(text, lines, withMark ? mark : null, module);
                }
            }
        }

        throw new LabelFitException($"the label of {text.Address} does not fit on {sheet.Width:0.##} x {sheet.Height:0.##} mm");
    }

    /// <summary>The label as drawn.</summary>
    /// <param name="on">The label on the sheet.</param>
    /// <param name="id">The id of its group.</param>
    public SceneGroup Draw(Area on, string id)
    {
        var elements = new List<SceneElement>();
        double top = on.Y + ((on.Height - Height) / 2), y = top;
        for (int i = 0; i < _lines.Count; i++)
        {
            (string text, double cap) = _lines[i];
            y += i == 0 ? cap : cap * Pitch;
            elements.Add(new Label(on.X + Padding, y, text, cap, Anchor.Start, Palette.Ink));
        }

        if (_mark is not null)
        {
            double side = _mark.Modules * _module;
            elements.Add(_mark.Draw(on.Right - Padding - side, on.Y + ((on.Height - side) / 2), _module));
        }

        return new SceneGroup(id, GroupRole.GraphicsObject, $"Label {_text.Address}", $"{string.Join("; ", _text.Ends)}; {_text.About}.", elements);
    }

    private static List<(string Text, double Cap)> Lines(LabelText text, bool withAbout, double width, double address, double other)
    {
        var lines = new List<(string Text, double Cap)>();
        double cap = Math.Clamp(Math.Floor(address * width / FontMetrics.WidthMm(text.Address, address) * 10) / 10, CapHeights.Strand, address);
        foreach (string line in AddressLines(text.Address, width, cap))
            lines.Add((line, cap));
        foreach (string words in withAbout ? [.. text.Ends, text.About] : text.Ends)
        {
            foreach (string line in CardWrap.Lines(words, width, other))
                lines.Add((line, other));
        }

        return lines;
    }

    /// <summary>An address that is too long for a line goes on in the next behind a stroke, a swung dash or a hyphen.</summary>
    private static IEnumerable<string> AddressLines(string address, double width, double cap)
    {
        string rest = address;
        while (FontMetrics.WidthMm(rest, cap) > width)
        {
            int kept = rest.Length - 1;
            while (kept > 0 && !(rest[kept - 1] is '/' or '~' or '-' or ' ' && FontMetrics.WidthMm(rest.AsSpan(0, kept), cap) <= width))
                kept--;
            if (kept == 0)
                break;
            yield return rest[..kept].TrimEnd();
            rest = rest[kept..];
        }

        foreach (string line in CardWrap.Lines(rest, width, cap))
            yield return line;
    }

    /// <summary>From the top of the first capitals to below the letters of the last line.</summary>
    private static double HeightOf(List<(string Text, double Cap)> lines)
    {
        double height = lines[0].Cap;
        for (int i = 1; i < lines.Count; i++)
            height += lines[i].Cap * Pitch;
        return height + (lines[^1].Cap * 0.35);
    }
}
