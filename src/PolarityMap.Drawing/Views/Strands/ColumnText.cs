using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>What a column says of its parts: once at its top where all are alike, else in or above each box.</summary>
internal sealed class ColumnText
{
    private ColumnText(CaptionText head, double insideWidth)
    {
        HeadText = head;
        InsideWidth = insideWidth;
    }

    /// <summary>The text at the top; empty where each box has its own.</summary>
    public string Head => HeadText.Text;

    /// <summary>The same with its widths.</summary>
    public CaptionText HeadText { get; }

    /// <summary>Room that the widest text inside a box needs.</summary>
    public double InsideWidth { get; }

    /// <summary>Finds the words of a column, and gives its small boxes the text inside them.</summary>
    public static ColumnText Of(IReadOnlyList<Node> nodes, SheetText text)
    {
        CaptionText? common = null;
        Node? first = null;
        bool shared = true;
        foreach (Node node in nodes)
        {
            if (!node.NameInside)
                continue;
            CaptionText caption = text.Hops.Captions.Of(node.Part);
            first ??= node;
            common ??= caption;
            shared &= caption == common || caption.Text == common.Text;
        }

        if (first is null)
            return new ColumnText(CaptionText.Empty, 0);
        double width = 0;
        foreach (Node node in nodes)
        {
            if (!node.NameInside)
                continue;
            Part part = text.Part(node);
            node.InsideText = !part.IsInline ? text.Inside(node, node.Part) : shared ? "" : part.Caption[^1];
            if (node.InsideText.Length > 0)
                width = Math.Max(width, SheetText.Width(node.InsideText) + (part.IsInline ? 0 : text.Hops.SpareOfName(node.Part, CapHeights.Strand)) + 1.6);
        }

        return new ColumnText(shared ? common! : new CaptionText(text.Part(first).Caption[0] + CommonLength(nodes, text)), width);
    }

    /// <summary>The length of the column's small parts where all have the same; empty where they differ.</summary>
    private static string CommonLength(IReadOnlyList<Node> nodes, SheetText text)
    {
        Core.Optics.Length? common = null;
        foreach (Node node in nodes)
        {
            if (!node.NameInside)
                continue;
            if (text.Part(node).Length is not { } length || (common is { } other && other != length))
                return "";
            common = length;
        }

        return common is { } all ? $" {all.ToString().Replace(' ', '\u00A0')}" : "";
    }

    /// <summary>The lines above a large box: its name, and what it is.</summary>
    public static (string Name, List<string> Caption) Above(SheetText text, int part, double width) =>
        (NameAbove(text, part), SheetText.Wrapped(text.Hops.Captions.Of(part).Text, width));

    /// <summary>The name above a large box; cords without a name have none.</summary>
    public static string NameAbove(SheetText text, int part) => text.Traced.Plant.Parts[part].IsInline ? "" : text.Name(part);

    /// <summary>Height above any box: over the head of a column of small ones there is more.</summary>
    public const double LeastAbove = 1.2;

    /// <summary>Height of the lines above a large box.</summary>
    public static double AboveHeight(bool hasName, int linesOfCaption) => (hasName ? CapHeights.Part + 1.6 : 0) + (linesOfCaption * Measures.LineOfText) + LeastAbove;
}
