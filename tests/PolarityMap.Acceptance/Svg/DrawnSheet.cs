using System.Buffers;
using System.Collections.Concurrent;
using System.Globalization;
using System.Xml.Linq;
using PolarityMap.Acceptance.Gallery;
using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Acceptance.Svg;

/// <summary>A drawing of the gallery, read back from its SVG text alone.</summary>
internal sealed class DrawnSheet
{
    /// <summary>Thousandths are rounded away in the file, once for each number in a sum.</summary>
    public const double Rounding = 0.002;

    // How far the tails of g, j, p, q, y hang below the line, as a share of the font size. From memory: a fifth is usual
    // for the family the font was made from.
    private const double Descender = 0.21;

    private static readonly SearchValues<char> WithTail = SearchValues.Create("gjpqy,;()");

    private static readonly XNamespace Ns = "http://www.w3.org/2000/svg";
    private static readonly ConcurrentDictionary<string, DrawnSheet> Sheets = new();

    private DrawnSheet(string text)
    {
        Text = text;
        Root = XDocument.Parse(text).Root!;
        double[] box = [.. Root.Attribute("viewBox")!.Value.Split(' ').Select(Number)];
        Sheet = new Rect(box[0], box[1], box[2], box[3]);
        Parts = [.. Layer("parts").SelectMany(Boxes)];
        Strands = [.. Layer("strands").Elements(Ns + "g").Select(Strand)];
        Texts = [.. Root.Descendants(Ns + "text").Select(ReadText)];

        // White boxes among the labels: they cover what was drawn before.
        Covers = [.. Layer("labels").Descendants().Where(r => r.Attribute("fill")?.Value == "#FFFFFF").SelectMany(Boxes)];
        Signs = [.. Layer("findings").Descendants(Ns + "polygon").Where(p => p.Attribute("fill")?.Value is string fill && (fill == Palette.Fault.Hex || fill == Palette.WarningFill.Hex)).Select(Bounds)];
        StrandLabels = [.. Texts.Where(t => t.Layer == "labels" && StrandNumber(t.Content) > 0)];
    }

    public string Text { get; }

    public XElement Root { get; }

    public Rect Sheet { get; }

    /// <summary>True for a sheet with a frame, false for a card or a figure.</summary>
    public bool HasFrame => Layer("frame").Any();

    /// <summary>The boxes of parts.</summary>
    public IReadOnlyList<Rect> Parts { get; }

    public IReadOnlyList<DrawnStrand> Strands { get; }

    public IReadOnlyList<DrawnText> Texts { get; }

    public IReadOnlyList<Rect> Covers { get; }

    /// <summary>The octagons and triangles of findings on the drawing.</summary>
    public IReadOnlyList<Rect> Signs { get; }

    /// <summary>The labels of strands in gutters, such as <c>7 RD</c>.</summary>
    public IReadOnlyList<DrawnText> StrandLabels { get; }

    /// <summary>The sheet with this path inside the gallery, as the program draws it now.</summary>
    public static DrawnSheet Of(string svg) => Sheets.GetOrAdd(svg, static path => new DrawnSheet(MadeGallery.Now.Files[path]));

    /// <summary>The number in a strand's label, a number and two capitals (and more for a second colour); else 0.</summary>
    public static int StrandNumber(string content)
    {
        int blank = content.IndexOf(' ');
        return blank > 0 && content.Length >= blank + 3 && char.IsAsciiLetterUpper(content[blank + 1]) && char.IsAsciiLetterUpper(content[blank + 2])
            && int.TryParse(content.AsSpan(0, blank), NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : 0;
    }

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static double Number(XElement element, string name) => Number(element.Attribute(name)!.Value);

    /// <summary>The layer with this id; none on a sheet that has no such layer.</summary>
    private IEnumerable<XElement> Layer(string id) => Root.Descendants(Ns + "g").Where(g => g.Attribute("id")?.Value == id);

    /// <summary>The upright rectangles that an element draws, or those among its children.</summary>
    private static IEnumerable<Rect> Boxes(XElement element) => element.Name.LocalName switch
    {
        "rect" => [Rectangle(element)],
        "path" when element.Attribute("d")!.Value.EndsWith('z') => SvgPath.Boxes(element.Attribute("d")!.Value),
        "g" when element.Attribute("id")?.Value == "parts" => element.Elements().SelectMany(Boxes),
        _ => [],
    };

    private static Rect Bounds(XElement polygon)
    {
        double[] numbers = [.. polygon.Attribute("points")!.Value.Split(' ', ',').Select(Number)];
        double[] xs = [.. numbers.Where((_, i) => i % 2 == 0)], ys = [.. numbers.Where((_, i) => i % 2 == 1)];
        return new Rect(xs.Min(), ys.Min(), xs.Max() - xs.Min(), ys.Max() - ys.Min());
    }

    private static Rect Rectangle(XElement rect) => new(Number(rect, "x"), Number(rect, "y"), Number(rect, "width"), Number(rect, "height"));

    /// <summary>The number in an id such as <c>strand-7</c>, <c>strand-7-4</c> for a strand that is on a sheet twice, or <c>p2-strand-7</c> in a figure of several plants.</summary>
    private static int NumberOf(string id)
    {
        const string word = "strand-";
        return int.Parse(id.AsSpan(id.IndexOf(word, StringComparison.Ordinal) + word.Length).ToString().Split('-')[0], CultureInfo.InvariantCulture);
    }

    private static DrawnStrand Strand(XElement group)
    {
        (string, string, double)[] strokes =
            [.. group.Elements(Ns + "path").Select(p => (p.Attribute("d")!.Value, p.Attribute("stroke")!.Value, Number(p, "stroke-width")))];
        return new DrawnStrand(
            NumberOf(group.Attribute("id")!.Value),
            group.Element(Ns + "title")?.Value ?? "",
            [.. strokes.Select(s => s.Item1).Distinct().Select(SvgPath.Flatten)],
            strokes);
    }

    private static string? Inherited(XElement element, string name) =>
        element.AncestorsAndSelf().Select(e => e.Attribute(name)?.Value).FirstOrDefault(v => v is not null);

    private static DrawnText ReadText(XElement text)
    {
        double size = Number(Inherited(text, "font-size")!);
        double cap = size * FontMetrics.CapHeightPerEm;
        double width = FontMetrics.WidthMm(text.Value, cap);
        double x = Number(text, "x");
        double left = Inherited(text, "text-anchor") switch { "middle" => x - (width / 2), "end" => x - width, _ => x };
        double baseline = Number(text, "y");
        var capitals = new Rect(left, baseline - cap, width, cap);
        double tail = text.Value.AsSpan().ContainsAny(WithTail) ? size * Descender : 0;
        string layer = text.Ancestors().LastOrDefault(a => a.Attribute("id") is not null)?.Attribute("id")!.Value ?? "";
        return new DrawnText(layer, text.Value, cap, capitals, capitals with { Height = cap + tail }, Inherited(text, "fill")!);
    }
}
