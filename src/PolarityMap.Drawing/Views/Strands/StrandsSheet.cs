using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>One strand sheet: a page of strands that are laid out and placed.</summary>
internal sealed class StrandsSheet(Sheetful sheetful, int page, string name, string subject) : PlannedSheet
{
    private HashSet<int>? _parts;

    public override string Name => name;

    public override string Subject => subject;

    public override string DocumentType => "Strand diagram";

    public override SheetFormat Format => sheetful.Format;

    public override IReadOnlyList<int> Strands { get; } = [.. sheetful.Input.Selection.Strands, .. sheetful.Text.Names.OtherStrands];

    public override IReadOnlyCollection<int> Parts => _parts ??= PartsHere();

    public override IReadOnlyList<HitArea> HitAreas() => Views.Strands.HitAreas.Of(sheetful, page);

    private HashSet<int> PartsHere()
    {
        HashSet<int> parts = [.. sheetful.Text.Names.OtherParts];
        for (int c = 0; c < sheetful.Layout.Columns.Count; c++)
        {
            if (sheetful.Placement.Columns[c].Page != page)
                continue;
            foreach (Node node in sheetful.Layout.Columns[c])
                parts.Add(sheetful.PartOf(node));
        }

        return parts;
    }

    public override DrawingSheet Draw(SheetPlace place)
    {
        ViewInput input = sheetful.Input;
        IReadOnlyList<Finding> findings = input.Findings;
        SheetFrame frame = SheetFrame.For(Format, input.TitleBlock(DocumentType, subject.Length > 0 ? subject : null, place));
        Area free = frame.Free;
        double foot = sheetful.FootHeight;
        var painter = new StrandsPainter(sheetful, page, place, PaintScope.Whole);
        IReadOnlyList<SceneGroup> painted = painter.Paint();
        return new DrawingSheet
        {
            WidthMm = Format.WidthMm,
            HeightMm = Format.HeightMm,
            Title = input.Title.Title.Length > 0 ? input.Title.Title : "Strand diagram",
            Description = Describe(sheetful.Input.Selection.Strands, findings),
            Links = painter.Links,
            Layers =
            [
                frame.Drawing,
                .. painted,
                Legend.Foot(new Area(free.X, free.Bottom - foot, free.Width, foot), sheetful.Notes),
                Legend.Keys(Legend.KeysArea(Format), Colours(), sheetful.Notes.Signs | painter.KeySigns),
            ],
        };
    }

    private HashSet<FibreColour> Colours()
    {
        var colours = new HashSet<FibreColour>();
        foreach (int strand in sheetful.Input.Selection.Strands)
            colours.Add(sheetful.Text.Colour(strand));
        return colours;
    }

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
