using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>One strand sheet: its strands laid out on the smallest paper that takes them.</summary>
internal sealed class StrandsSheet : PlannedSheet
{
    private readonly ViewInput _input;
    private readonly Layout _layout;
    private readonly SheetText _text;
    private readonly Placement _placement;
    private readonly SampleStrand _sample;
    private readonly double _marks;

    public StrandsSheet(ViewInput input)
    {
        _input = input;
        TracedPlant traced = input.Traced;
        _layout = ColumnPlan.Make(traced, input.Selection.Strands);
        SlotPlan.Make(traced, _layout);
        _text = new SheetText(traced);
        _marks = input.Findings.Any(f => f.Strands.Count > 0) ? StrandsPainter.MarkWidth : EndsOpen(_layout) ? Measures.Stub + 1 : 0;
        _sample = Sample(traced, input.Selection.Strands);
        (Format, _placement) = Fit();
    }

    public override string Name => "strands";

    public override string Subject => _input.Selection.Words;

    public override string DocumentType => "Strand diagram";

    public override SheetFormat Format { get; }

    public override DrawingSheet Draw(SheetPlace place)
    {
        TracedPlant traced = _input.Traced;
        SheetFrame frame = SheetFrame.For(Format, _input.TitleBlock(DocumentType, null, place));
        Area free = frame.Free;
        IReadOnlyList<Finding> findings = _input.Findings;
        double foot = Legend.FootHeight(frame, findings, _sample);
        double room = free.Height - foot - _placement.Height;
        double x = free.X + Math.Max(0, (free.Width - _placement.Width - _marks) / 2);
        double y = free.Y + Math.Max(1, room * 0.4);
        var painter = new StrandsPainter(_input, _layout, _placement, _text, x, y);
        FibreColour[] colours = [.. _input.Selection.Strands.Select(s => StrandColours.Of(traced, s)).Distinct()];
        return new DrawingSheet
        {
            WidthMm = Format.WidthMm,
            HeightMm = Format.HeightMm,
            Title = _input.Title.Title.Length > 0 ? _input.Title.Title : "Strand diagram",
            Description = Describe(_input.Selection.Strands, findings),
            Layers =
            [
                frame.Drawing,
                .. painter.Paint(),
                Legend.Foot(new Area(free.X, free.Bottom - foot, free.Width, foot), findings, _sample),
                Legend.Keys(Legend.KeysArea(frame), colours, HasArrays(traced, _layout), findings.Count > 0),
            ],
        };
    }

    /// <summary>The smallest sheet that takes the drawing, narrowing the crossings and then folding before a larger sheet is taken.</summary>
    private (SheetFormat Format, Placement Placement) Fit()
    {
        TracedPlant traced = _input.Traced;
        foreach ((SheetFormat format, bool folded) in Tries())
        {
            SheetFrame frame = SheetFrame.For(format, new TitleBlock());
            Area free = frame.Free;
            double height = free.Height - Legend.FootHeight(frame, _input.Findings, _sample) - 2;
            double width = free.Width - _marks - 2;
            foreach (double stage in Measures.Stages)
            {
                var placement = new Placement(traced, _layout, _text, stage, folded ? width : double.PositiveInfinity);
                if (placement.Width <= width && placement.Height <= height)
                    return (format, placement);
            }
        }

        var wide = new Placement(traced, _layout, _text, Measures.Stages[^1]);
        // Beyond A3 the sheet grows with the plant; nothing shrinks.
        double wideSheet = Math.Max(wide.Width + _marks + 40, 420);
        SheetFrame wider = SheetFrame.For(SheetFormat.Custom(Math.Ceiling(wideSheet), 297), new TitleBlock());
        double tall = Math.Max(wide.Height + Legend.FootHeight(wider, _input.Findings, _sample) + 65, 297);
        return (SheetFormat.Custom(Math.Ceiling(wideSheet), Math.Ceiling(tall)), wide);
    }

    private static IEnumerable<(SheetFormat Format, bool Folded)> Tries() =>
        [(SheetFormat.A5Landscape, false), (SheetFormat.A4Landscape, false), (SheetFormat.A4Landscape, true), (SheetFormat.A4Portrait, true), (SheetFormat.A3Landscape, false), (SheetFormat.A3Landscape, true)];

    private static bool EndsOpen(Layout layout) =>
        layout.Ways.Any(w => w.FirstColumn + w.Passages.Count == layout.Columns.Count && w.Passages[^1].Out is not null);

    /// <summary>The strand that the legend takes as an example: the seventh where there is one, else the first.</summary>
    private static SampleStrand Sample(TracedPlant traced, IReadOnlyList<int> strands)
    {
        const int wanted = 7;
        int strand = strands.OrderBy(s => traced.NumberOf(s) == wanted ? 0 : traced.NumberOf(s)).First();
        return new SampleStrand(traced.NumberOf(strand), StrandColours.Of(traced, strand), StrandColours.IsFibre(traced, strand));
    }

    /// <summary>True when a part on the sheet has an array connector.</summary>
    private static bool HasArrays(TracedPlant traced, Layout layout) =>
        layout.Columns.SelectMany(c => c).Any(n => traced.Plant.Parts[n.Part].Shape.Ports.Any(p => p.Face.Family == ConnectorFamily.Array));

    private static string Describe(IReadOnlyList<int> strands, IReadOnlyList<Finding> findings)
    {
        string count = strands.Count == 1 ? "1 strand" : $"{strands.Count} strands";
        string found = findings.Count switch
        {
            0 => "No findings.",
            1 => $"1 finding: {findings[0].Rule.Code} {findings[0].Rule.Title}.",
            _ => $"{findings.Count} findings: {string.Join(", ", findings.Select(f => $"{f.Rule.Code} {f.Rule.Title}").Distinct())}.",
        };
        return $"Strand diagram of {count} from left to right. {found}";
    }
}
