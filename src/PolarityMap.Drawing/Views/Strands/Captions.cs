using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>What parts are, in one line each, put together and measured once for parts that are alike.</summary>
internal sealed class Captions(Plant plant)
{
    private readonly CaptionText?[] _ofPart = new CaptionText?[plant.Parts.Count];
    private readonly Dictionary<Shape, List<(Part Part, CaptionText Text)>> _lastOfShape = new(ReferenceEqualityComparer.Instance);

    public CaptionText Of(int part) => _ofPart[part] ??= Make(plant.Parts[part]);

    private CaptionText Make(Part part)
    {
        // Cords by the thousand have one shape and one of a few captions, and follow each other.
        const int mostKept = 8;
        if (!_lastOfShape.TryGetValue(part.Shape, out List<(Part Part, CaptionText Text)>? last))
            _lastOfShape[part.Shape] = last = [];
        foreach ((Part other, CaptionText text) in last)
        {
            if (other.Length == part.Length && HaveSameWords(other.Caption, part.Caption))
                return text;
        }

        var made = new CaptionText(SheetText.Caption(part));
        if (last.Count == mostKept)
            last.RemoveAt(0);
        last.Add((part, made));
        return made;
    }

    private static bool HaveSameWords(IReadOnlyList<string> one, IReadOnlyList<string> other)
    {
        if (ReferenceEquals(one, other))
            return true;
        if (one.Count != other.Count)
            return false;
        for (int i = 0; i < one.Count; i++)
        {
            if (one[i] != other[i])
                return false;
        }

        return true;
    }
}

/// <summary>A caption with the widths that placing it takes.</summary>
/// <param name="text">The caption.</param>
internal sealed class CaptionText(string text)
{
    private double _lastWidth = double.NaN;
    private int _lastLines;

    /// <summary>No caption.</summary>
    public static CaptionText Empty => new("");

    public string Text => text;

    /// <summary>Width of its longest word.</summary>
    public double LongestWord { get; } = SheetText.LongestWord(text);

    /// <summary>How many lines it takes in a width; asked for again and again with the same one.</summary>
    public int LinesIn(double width)
    {
        if (width == _lastWidth)
            return _lastLines;
        _lastWidth = width;
        return _lastLines = SheetText.Wrapped(text, width).Count;
    }
}
