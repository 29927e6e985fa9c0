using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>What a column says of its parts: once at its top where all are alike, else in or above each box.</summary>
internal sealed class ColumnText
{
    private ColumnText(string head, Dictionary<Node, string> inside)
    {
        Head = head;
        Inside = inside;
    }

    /// <summary>The text at the top; empty where each box has its own.</summary>
    public string Head { get; }

    /// <summary>The text inside each small box.</summary>
    public IReadOnlyDictionary<Node, string> Inside { get; }

    /// <summary>Room that the widest text inside a box needs.</summary>
    public double InsideWidth => Inside.Values.Select(t => t.Length == 0 ? 0 : SheetText.Width(t) + 1.6).DefaultIfEmpty(0).Max();

    public static ColumnText Of(IReadOnlyList<Node> nodes, SheetText text)
    {
        Node[] small = [.. nodes.Where(n => n.NameInside)];
        string[] captions = [.. small.Select(n => SheetText.Caption(text.Part(n))).Distinct()];
        bool shared = small.Length > 0 && captions.Length == 1;
        var inside = new Dictionary<Node, string>();
        foreach (Node node in small)
        {
            Part part = text.Part(node);
            inside[node] = !part.IsInline ? text.Inside(node) : shared ? "" : part.Caption[^1];
        }

        return new ColumnText(shared ? captions[0] : small.Length > 0 ? text.Part(small[0]).Caption[0] : "", inside);
    }

    /// <summary>The lines above a large box: its name, and what it is.</summary>
    public static (string Name, List<string> Caption) Above(SheetText text, int part, double width) =>
        (text.Traced.Plant.Parts[part].IsInline ? "" : text.Name(part), SheetText.Wrapped(SheetText.Caption(text.Traced.Plant.Parts[part]), width));

    /// <summary>Height of the lines above a large box.</summary>
    public static double AboveHeight(SheetText text, int part, double width)
    {
        (string name, List<string> caption) = Above(text, part, width);
        return (name.Length > 0 ? CapHeights.Part + 1.6 : 0) + (caption.Count * Measures.LineOfText) + 1.2;
    }
}
