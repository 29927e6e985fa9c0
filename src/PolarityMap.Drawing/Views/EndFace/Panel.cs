using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>The figure of one kind of mating, laid out for a width.</summary>
internal sealed class Panel
{
    private const int MostFindings = 3;
    private const double SignSize = 3.2;

    private readonly List<(string Text, double Cap)> _title;
    private readonly List<(string Text, double Cap)> _example;
    private readonly List<(string Text, double Cap, Severity? Sign)> _findings;
    private readonly List<List<Block>> _rows = [];

    public Panel(MatingKind kind, double width)
    {
        Kind = kind;
        Width = width;
        double inner = width - (2 * FaceMeasures.Padding);
        _title = FaceMeasures.Wrapped($"{kind.Number}. {FaceWords.Title(kind)}", inner, CapHeights.Part);
        _example = FaceMeasures.Wrapped(FaceWords.Example(kind), inner);
        _findings = Found(kind, inner);
        List<Block> pictures = Pictures(kind);
        bool inLayers = pictures.Count(b => b is MeetingBlock) > 1;
        foreach (Block block in pictures)
            Append(block, inner, below: inLayers && block is MeetingBlock && _rows[^1][^1] is FaceBlock);
        AppendWords(kind, inner);
        Height = (2 * FaceMeasures.Padding) + (_title.Count * FaceMeasures.TitleLine) + (_example.Count * FaceMeasures.Line)
            + _rows.Sum(r => 2 + r.Max(b => b.Height)) + (_findings.Count == 0 ? 0 : 2 + (_findings.Count * FaceMeasures.Line));
    }

    public MatingKind Kind { get; }

    public double Width { get; }

    public double Height { get; }

    /// <summary>The width that the pictures of a kind need to stand in one line.</summary>
    public static double WidthInOneLine(MatingKind kind)
    {
        List<Block> pictures = Pictures(kind);
        return pictures.Sum(b => b.Width) + ((pictures.Count - 1) * FaceMeasures.BlockGap) + (2 * FaceMeasures.Padding);
    }

    /// <summary>The width of the widest picture, below which nothing can be drawn.</summary>
    public static double LeastWidth(MatingKind kind) => Pictures(kind).Max(b => b.Width) + (2 * FaceMeasures.Padding);

    /// <summary>Paints it with its upper left corner at a point.</summary>
    public PanelPaint Paint(double x, double y)
    {
        var paint = new PanelPaint($"kind-{Kind.Number}");
        paint.Picture.Add(new Box(x, y, Width, Height, 0, Palette.Guide, LineWidths.Leader));
        double left = x + FaceMeasures.Padding;
        double top = PanelPaint.Write(paint.Words, left, y + FaceMeasures.Padding, _title, FaceMeasures.TitleLine);
        top = PanelPaint.Write(paint.Words, left, top, _example, FaceMeasures.Line);
        foreach (List<Block> row in _rows)
        {
            top += 2;
            double height = row.Max(b => b.Height);
            double at = left;
            foreach (Block block in row)
            {
                // Faces stand side by side on one line; what explains them is centred on their height.
                block.Paint(at, block is FaceBlock ? top : top + ((height - block.Height) / 2), paint);
                at += block.Width + FaceMeasures.BlockGap;
            }

            top += height;
        }

        PaintFindings(paint, left, top + 2);
        return paint;
    }

    /// <summary>Both faces and what meets what, in this order.</summary>
    private static List<Block> Pictures(MatingKind kind)
    {
        var left = new FaceBlock(kind.Left, "left", turned: false, kind.Right);
        var right = new FaceBlock(kind.Right, "right", kind.IsTurned, kind.Left);
        return [left, right, .. MeetingBlock.Of(kind)];
    }

    /// <summary>Puts a block beside the last one, or below when there is no room or it has to be there.</summary>
    private void Append(Block block, double inner, bool below)
    {
        if (!below && _rows.Count > 0 && Used(_rows[^1]) + FaceMeasures.BlockGap + block.Width <= inner)
            _rows[^1].Add(block);
        else
            _rows.Add([block]);
    }

    private void AppendWords(MatingKind kind, double inner)
    {
        string words = MeetingWords.Rule(kind);
        if (kind.Fits && kind.Left.Face.Family != ConnectorFamily.Bare)
            words = $"Plugged together, seen from above. {words}";
        if (FaceMeasures.Drawn(kind.Left.Face) < kind.Left.Face.Count)
            words += $" The first {FaceMeasures.Drawn(kind.Left.Face)} of {kind.Left.Face.Count} are drawn; the others follow in the same order of colours, with one tracer more in each further round.";
        double room = inner - Used(_rows[^1]) - FaceMeasures.BlockGap;
        if (room >= WordsBlock.Least)
            _rows[^1].Add(new WordsBlock(words, room));
        else
            _rows.Add([new WordsBlock(words, inner)]);
    }

    private static double Used(List<Block> row) => row.Sum(b => b.Width) + ((row.Count - 1) * FaceMeasures.BlockGap);

    private static List<(string Text, double Cap, Severity? Sign)> Found(MatingKind kind, double inner)
    {
        var lines = new List<(string, double, Severity?)>();
        foreach (Finding finding in kind.Findings.Take(MostFindings))
        {
            Severity? sign = finding.Rule.Severity;
            foreach ((string text, double cap) in FaceMeasures.Wrapped($"{finding.Rule.Code} {finding.Rule.Title}: {finding.Message}", inner - 5))
            {
                lines.Add((text, cap, sign));
                sign = null;
            }
        }

        if (kind.Findings.Count > MostFindings)
            lines.Add(($"and {kind.Findings.Count - MostFindings} more findings", CapHeights.Strand, null));

        // Where the findings were not asked for, that nothing meets is still a fault.
        if (lines.Count == 0 && !kind.Fits)
            lines.Add(("The two do not fit.", CapHeights.Strand, Severity.Error));
        return lines;
    }

    private void PaintFindings(PanelPaint paint, double left, double top)
    {
        foreach ((string text, double cap, Severity? sign) in _findings)
        {
            double middle = top + (CapHeights.Strand / 2);
            if (sign is { } severity)
                paint.Signs.Add(severity == Severity.Error ? Marks.Error(left + (SignSize / 2), middle, SignSize) : Marks.Warning(left + (SignSize / 2), middle, SignSize));
            paint.Signs.Add(new Label(left + 5, top + cap, text, cap, Anchor.Start, Palette.Ink));
            top += FaceMeasures.Line;
        }
    }
}
