using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>Names and lines of text, one below the other, broken to a width.</summary>
internal sealed class TextBlock
{
    private readonly List<string> _names;
    private readonly List<string> _lines = [];

    /// <param name="words">Names, in larger letters, which may be empty; and the lines below them.</param>
    /// <param name="width">The width at which they are broken; a longer word has a line of its own.</param>
    /// <param name="isLow">True when short lines are put together, with a comma, as far as the width takes them.</param>
    public TextBlock((string Names, IReadOnlyList<string> Lines) words, double width, bool isLow)
    {
        _names = SheetText.Wrapped(words.Names, width, CapHeights.Part);
        foreach (string line in isLow ? Together(words.Lines, width) : words.Lines)
            _lines.AddRange(SheetText.Wrapped(line, width));
        foreach (string name in _names)
            Width = Math.Max(Width, SheetText.Width(name, CapHeights.Part));
        foreach (string line in _lines)
            Width = Math.Max(Width, SheetText.Width(line));
    }

    public double Width { get; }

    private static List<string> Together(IReadOnlyList<string> lines, double width)
    {
        var together = new List<string>();
        foreach (string line in lines)
        {
            if (together.Count > 0 && SheetText.Width($"{together[^1]}, {line}") <= width)
                together[^1] = $"{together[^1]}, {line}";
            else
                together.Add(line);
        }

        return together;
    }

    /// <summary>From the top of the first capitals to the foot of the last.</summary>
    public double Height
    {
        get
        {
            double height = (_names.Count * Measures.NameLine) + (_lines.Count * Measures.Line);
            return height - (_lines.Count > 0 ? Measures.Line - CapHeights.Strand : Measures.NameLine - CapHeights.Part);
        }
    }

    /// <summary>Adds its labels below a height.</summary>
    public void Draw(double x, double top, Anchor anchor, Underlay? underlay, List<SceneElement> elements)
    {
        double y = top;
        foreach (string name in _names)
        {
            elements.Add(new Label(x, y + CapHeights.Part, name, CapHeights.Part, anchor, Palette.Ink, underlay));
            y += Measures.NameLine;
        }

        foreach (string line in _lines)
        {
            elements.Add(new Label(x, y + CapHeights.Strand, line, CapHeights.Strand, anchor, Palette.Ink, underlay));
            y += Measures.Line;
        }
    }
}
