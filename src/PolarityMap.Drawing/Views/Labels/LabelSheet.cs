using System.Globalization;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Labels;

/// <summary>How labels lie on a sheet, in mm; of two measures the first is across and the second down.</summary>
/// <param name="Columns">Labels side by side.</param>
/// <param name="Rows">Labels below each other.</param>
/// <param name="Width">Width of a label.</param>
/// <param name="Height">Its height.</param>
public sealed record LabelSheet(int Columns, int Rows, double Width, double Height)
{
    /// <summary>The smallest label that takes an identifier in letters of the least height.</summary>
    public const double LeastWidth = 20;

    public const double LeastHeight = 8;

    /// <summary>From the left edge of the sheet to the first label; null to centre the labels.</summary>
    public double? MarginLeft { get; init; }

    /// <summary>From the top edge of the sheet to the first label; null to centre the labels.</summary>
    public double? MarginTop { get; init; }

    /// <summary>From the left edge of a label to that of the next.</summary>
    public double PitchAcross { get; init; } = Width;

    /// <summary>From the top edge of a label to that of the next.</summary>
    public double PitchDown { get; init; } = Height;

    /// <summary>Labels on a sheet.</summary>
    public int Count => Columns * Rows;

    private double BlockWidth => ((Columns - 1) * PitchAcross) + Width;

    private double BlockHeight => ((Rows - 1) * PitchDown) + Height;

    /// <summary>Three columns of eight for ISO paper, of ten for inch paper: usual sizes of blank label sheets (common practice).</summary>
    public static LabelSheet UsualFor(SheetFormat paper) => paper.Name is "Letter" or "Tabloid"
        ? new LabelSheet(3, 10, 66.7, 25.4) { PitchAcross = 69.85 }
        : new LabelSheet(3, 8, 63.5, 33.9) { PitchAcross = 66 };

    /// <summary>Where a label lies, counted from 0 along the rows.</summary>
    public Area Place(int index, SheetFormat paper) => new(
        (MarginLeft ?? (paper.WidthMm - BlockWidth) / 2) + (index % Columns * PitchAcross),
        (MarginTop ?? (paper.HeightMm - BlockHeight) / 2) + (index / Columns * PitchDown),
        Width,
        Height);

    /// <summary>Why the labels cannot lie so on a sheet, as a sentence without a full stop; null when they can.</summary>
    public string? Fault(SheetFormat paper)
    {
        const double slip = 0.01;
        if (Columns < 1 || Rows < 1)
            return "a sheet has at least one label";
        if (Width < LeastWidth || Height < LeastHeight)
            return $"a label of {Mm(Width)} x {Mm(Height)} mm takes no words; it needs {Mm(LeastWidth)} x {Mm(LeastHeight)} mm";
        if (PitchAcross < Width - slip || PitchDown < Height - slip)
            return $"labels of {Mm(Width)} x {Mm(Height)} mm overlap at a pitch of {Mm(PitchAcross)} x {Mm(PitchDown)} mm";
        Area first = Place(0, paper);
        double right = first.X + BlockWidth, bottom = first.Y + BlockHeight;
        return first.X < -slip || first.Y < -slip || right > paper.WidthMm + slip || bottom > paper.HeightMm + slip
            ? $"{Columns} x {Rows} labels reach from {Mm(first.X)} to {Mm(right)} mm across and from {Mm(first.Y)} to {Mm(bottom)} mm down; {paper.Name} is {Mm(paper.WidthMm)} x {Mm(paper.HeightMm)} mm"
            : null;
    }

    /// <summary>The measures in the words of a call.</summary>
    public string Words(SheetFormat paper)
    {
        Area first = Place(0, paper);
        return $"{Columns} x {Rows}, {Mm(Width)} x {Mm(Height)} mm, margins {Mm(first.X)} x {Mm(first.Y)} mm, pitch {Mm(PitchAcross)} x {Mm(PitchDown)} mm";
    }

    private static string Mm(double value) => Math.Round(value, 2).ToString(CultureInfo.InvariantCulture);
}

/// <summary>What a call says about labels.</summary>
public sealed record LabelOptions
{
    /// <summary>How they lie on the sheet; null for what is usual on the paper.</summary>
    public LabelSheet? Sheet { get; init; }

    /// <summary>Print the outlines of the labels, for plain paper that is cut.</summary>
    public bool Frames { get; init; }

    /// <summary>Begin with a page to lay against a label sheet.</summary>
    public bool TestPage { get; init; }
}
