using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>The strand-by-strand sheet: every part a box, every strand a line that a finger can follow.</summary>
public sealed class StrandsView : IDrawingView
{
    /// <summary>The most strands of one sheet: a sheet of 15 m, far beyond what anybody follows; the plans of crossings grow with their square.</summary>
    public const int MostStrands = 3000;

    public string Name => "strands";

    public string Summary => "Every strand as a line through the parts it passes.";

    public DrawingSheet? Draw(ViewInput input)
    {
        int[] strands = Chosen(input);
        if (strands.Length == 0)
            return null;
        if (strands.Length > MostStrands)
            throw new DrawingTooLargeException($"{strands.Length} strands are too many for one sheet, which takes {MostStrands}");
        TracedPlant traced = input.Traced;
        Layout layout = ColumnPlan.Make(traced, strands);
        SlotPlan.Make(traced, layout);
        var text = new SheetText(traced);
        var drawn = new HashSet<int>(strands);
        // A finding without a strand belongs to the plant as a whole and stands in words only.
        bool whole = input.Network < 0 && input.Part < 0;
        Finding[] findings = [.. input.Findings.Where(f => f.Strands.Count == 0 ? whole : f.Strands.Any(drawn.Contains))];
        double marks = findings.Any(f => f.Strands.Count > 0) ? StrandsPainter.MarkWidth : EndsOpen(layout) ? Measures.Stub + 1 : 0;
        SampleStrand sample = Sample(traced, strands);
        (SheetFormat format, Placement placement) = Fit(traced, layout, text, findings, marks, sample);

        SheetFrame frame = SheetFrame.For(format, Title(input));
        Area free = frame.Free;
        double foot = Legend.FootHeight(frame, findings, sample);
        double room = free.Height - foot - placement.Height;
        double x = free.X + Math.Max(0, (free.Width - placement.Width - marks) / 2);
        double y = free.Y + Math.Max(1, room * 0.4);
        var painter = new StrandsPainter(input with { Findings = findings }, layout, placement, text, x, y);
        FibreColour[] colours = [.. strands.Select(s => StrandColours.Of(traced, s)).Distinct()];
        return new DrawingSheet
        {
            WidthMm = format.WidthMm,
            HeightMm = format.HeightMm,
            Title = traced.Plant.Title.Title.Length > 0 ? traced.Plant.Title.Title : "Strand diagram",
            Description = Describe(strands, findings),
            Layers =
            [
                frame.Drawing,
                .. painter.Paint(),
                Legend.Foot(new Area(free.X, free.Bottom - foot, free.Width, foot), findings, sample),
                Legend.Keys(Legend.KeysArea(frame), colours, HasArrays(traced, layout), findings.Length > 0),
            ],
        };
    }

    private static int[] Chosen(ViewInput input)
    {
        TracedPlant traced = input.Traced;
        var faulty = new HashSet<int>(input.Findings.SelectMany(f => f.Strands));
        var chosen = new List<int>();
        for (int strand = 0; strand < traced.Strands.Count; strand++)
        {
            bool wanted = traced.IsActive(strand) || faulty.Contains(strand) || (input.WithDark && traced.Strands[strand].Length > 1);
            if (wanted && Touches(traced, strand, input))
                chosen.Add(strand);
        }

        return [.. chosen.OrderBy(traced.NumberOf)];
    }

    private static bool Touches(TracedPlant traced, int strand, ViewInput input)
    {
        if (input.Network < 0 && input.Part < 0)
            return true;
        bool network = input.Network < 0, part = input.Part < 0;
        foreach (Hop hop in traced.Hops(strand))
        {
            network |= traced.Plant.Parts[hop.Part].Network == input.Network;
            part |= hop.Part == input.Part;
        }

        return network && part;
    }

    /// <summary>The smallest sheet that takes the drawing, narrowing the crossings and then folding before a larger sheet is taken.</summary>
    private static (SheetFormat Format, Placement Placement) Fit(TracedPlant traced, Layout layout, SheetText text, IReadOnlyList<Finding> findings, double marks, SampleStrand sample)
    {
        foreach ((SheetFormat format, bool folded) in (ReadOnlySpan<(SheetFormat, bool)>)
            [(SheetFormat.A5Landscape, false), (SheetFormat.A4Landscape, false), (SheetFormat.A4Landscape, true), (SheetFormat.A4Portrait, true), (SheetFormat.A3Landscape, false), (SheetFormat.A3Landscape, true)])
        {
            SheetFrame frame = SheetFrame.For(format, new TitleBlock());
            Area free = frame.Free;
            double height = free.Height - Legend.FootHeight(frame, findings, sample) - 2;
            double width = free.Width - marks - 2;
            foreach (double stage in Measures.Stages)
            {
                var placement = new Placement(traced, layout, text, stage, folded ? width : double.PositiveInfinity);
                if (placement.Width <= width && placement.Height <= height)
                    return (format, placement);
            }
        }

        var wide = new Placement(traced, layout, text, Measures.Stages[^1]);
        // Beyond A3 the sheet grows with the plant; nothing shrinks.
        double wideSheet = Math.Max(wide.Width + marks + 40, 420);
        SheetFrame wider = SheetFrame.For(SheetFormat.Custom(Math.Ceiling(wideSheet), 297), new TitleBlock());
        double tall = Math.Max(wide.Height + Legend.FootHeight(wider, findings, sample) + 65, 297);
        return (SheetFormat.Custom(Math.Ceiling(wideSheet), Math.Ceiling(tall)), wide);
    }

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

    private static TitleBlock Title(ViewInput input)
    {
        PlantTitle title = input.Traced.Plant.Title;
        string network = input.Network >= 0 ? $"Network {input.Traced.Plant.Networks[input.Network].Name}" : "";
        string part = input.Part >= 0 ? $"Part {input.Traced.Plant.Parts[input.Part].Name}" : "";
        string supplement = string.Join(", ", new[] { network, part }.Where(t => t.Length > 0));
        return new TitleBlock
        {
            Title = title.Title,
            SupplementaryTitle = supplement.Length > 0 ? supplement : null,
            Site = title.Site,
            DocumentType = "Strand diagram",
            IdentificationNumber = title.Number,
            Revision = title.Revision,
            DateOfIssue = title.Date,
            Creator = title.Author,
            Sheet = input.Sheet,
            Sheets = input.Sheets,
        };
    }

    private static string Describe(int[] strands, IReadOnlyList<Finding> findings)
    {
        string count = strands.Length == 1 ? "1 strand" : $"{strands.Length} strands";
        string found = findings.Count switch
        {
            0 => "No findings.",
            1 => $"1 finding: {findings[0].Rule.Code} {findings[0].Rule.Title}.",
            _ => $"{findings.Count} findings: {string.Join(", ", findings.Select(f => $"{f.Rule.Code} {f.Rule.Title}").Distinct())}.",
        };
        return $"Strand diagram of {count} from left to right. {found}";
    }
}
