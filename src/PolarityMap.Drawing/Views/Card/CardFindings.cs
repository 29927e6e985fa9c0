using PolarityMap.Core.Checks;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>The findings of a card in words, each behind the mark of its severity.</summary>
internal sealed class CardFindings
{
    private const int MostFindings = 3;
    private const int MostLines = 7;
    private const double MarkSize = 3.2;
    private const double Indent = 4.4;

    private readonly List<(string Text, Severity? Mark)> _lines = [];

    /// <param name="findings">The findings.</param>
    /// <param name="width">Width of the card's inside, mm.</param>
    /// <param name="isFirst">False on a card that goes on: it names the findings and leaves the rest to the first.</param>
    public CardFindings(IReadOnlyList<Finding> findings, double width, bool isFirst)
    {
        foreach (Finding finding in findings.Take(MostFindings))
        {
            string words = isFirst ? $"{finding.Rule.Code} {finding.Rule.Title}: {finding.Message}." : $"{finding.Rule.Code} {finding.Rule.Title}: see the card before.";
            List<string> lines = CardWrap.Lines(words, width - Indent, most: MostLines);
            for (int i = 0; i < lines.Count; i++)
                _lines.Add((lines[i], i == 0 ? finding.Rule.Severity : null));
        }

        if (findings.Count > MostFindings)
            _lines.Add(($"and {findings.Count - MostFindings} more {(findings.Count == MostFindings + 1 ? "finding" : "findings")}", null));
    }

    public double Height => _lines.Count == 0 ? 0 : (_lines.Count * CardMeasures.Line) + 1.6;

    /// <summary>The findings as drawn.</summary>
    public List<SceneElement> Draw(double left, double top)
    {
        var elements = new List<SceneElement>();
        double middle = top + 0.8 + (CardMeasures.Line / 2);
        foreach ((string text, Severity? mark) in _lines)
        {
            if (mark is { } severity)
                elements.Add(FindingMarks.Of(severity, left + (MarkSize / 2), middle, MarkSize));
            elements.Add(Label.CentredOn(left + Indent, middle, text, CapHeights.Strand, Anchor.Start, Palette.Ink));
            middle += CardMeasures.Line;
        }

        return elements;
    }
}
