namespace PolarityMap.Drawing.Views.Strands;

/// <summary>The strand-by-strand sheets: every part a box, every strand a line that a finger can follow.</summary>
public sealed class StrandsView : IDrawingView
{
    /// <summary>The most strands of one sheet: a sheet of 15 m, far beyond what anybody follows; the plans of crossings grow with their square.</summary>
    public const int MostStrands = 3000;

    /// <summary>False to lay every sheet out by itself, also where it looks as another one does.</summary>
    internal bool TakesOverLayouts { get; init; } = true;

    public string Name => "strands";

    public string Summary => "Every strand as a line through the parts it passes.";

    public IReadOnlyList<PlannedSheet> Plan(ViewInput input)
    {
        if (input.Selection.Strands.Count == 0)
            return [];
        if (input is { Division: SheetDivision.None, FoldAlike: false })
            return [new StrandsSheet(OnOne(new StrandHops(input.Traced), input), 0, "strands", input.Selection.Words)];
        IReadOnlyList<int> strands = input.Selection.Strands;
        bool large = strands.Count > Packing.MostOnOneSheet;
        var hops = new StrandHops(input.Traced) { EvenRoom = large ? new EvenRoom(input.Traced.Plant, input.Traced.NumberOf(strands[^1])) : null };
        var packing = new Packing(hops, input, TakesOverLayouts);
        var rooms = new CutRegister();
        var sheets = new List<PlannedSheet>();
        foreach (Section section in Sections.Of(hops, input))
        {
            List<Sheetful> sheetfuls = packing.Pack(section);
            CutRegister cuts = input.Division == SheetDivision.Room ? rooms : new CutRegister();
            int count = sheetfuls.Sum(s => s.Placement.Pages);
            int nth = 1;
            foreach (Sheetful sheetful in sheetfuls)
            {
                sheetful.Settle(sheets.Count, cuts);
                for (int page = 0; page < sheetful.Placement.Pages; page++, nth++)
                {
                    string name = count == 1 ? section.Name : $"{section.Name}-{nth.ToString().PadLeft(count.ToString().Length, '0')}";
                    sheets.Add(new StrandsSheet(sheetful, page, name, Subject(section, sheetful, page, count)));
                }
            }
        }

        return sheets;
    }

    private static Sheetful OnOne(StrandHops hops, ViewInput input)
    {
        int count = input.Selection.Strands.Count;
        if (count > MostStrands)
            throw new DrawingTooLargeException($"{count} strands are too many for one sheet, which takes {MostStrands}");
        Piece[] pieces = [.. input.Selection.Strands.Select(hops.Whole)];
        return Sheetful.OnOneSheet(hops, input, pieces, SheetNames.Plain, input.Paper.Formats) ?? (input.Paper.MayGrow
            ? Sheetful.OnItsOwnSheet(hops, input, pieces, SheetNames.Plain)
            : throw new DrawingTooLargeException($"{count} strands do not fit on one sheet of {input.Paper.Formats[^1].Name}"));
    }

    private static string Subject(Section section, Sheetful sheetful, int page, int count)
    {
        if (count == 1)
            return section.Words;
        int[] numbers = [.. sheetful.Input.Selection.Strands.Concat(sheetful.Text.Names.OtherStrands).Select(sheetful.Input.Traced.NumberOf).Order()];
        string strands = NumberRanges.Words("strand", numbers);
        string words = section.Words.Length > 0 ? $"{section.Words}, {strands}" : char.ToUpperInvariant(strands[0]) + strands[1..];
        return sheetful.Placement.Pages > 1 ? $"{words}, part {page + 1} of {sheetful.Placement.Pages}" : words;
    }
}
