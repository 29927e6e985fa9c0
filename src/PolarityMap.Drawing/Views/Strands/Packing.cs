using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Packs a section's strands onto sheets, in the order of their numbers: as many bundles to a sheet as it takes. A bundle that
/// is too large for one is parted between ports, and only the strands of one port that fill more than a sheet go on on the next.
/// </summary>
/// <param name="hops">Visits of strands to parts.</param>
/// <param name="input">What is drawn.</param>
/// <param name="takesOver">True to take over the layouts of sheets that look alike.</param>
internal sealed class Packing(StrandHops hops, ViewInput input, bool takesOver)
{
    /// <summary>More strands than this on no desk sheet.</summary>
    public const int MostOnOneSheet = 170;

    private readonly LikeLayouts _like = new(hops);

    /// <summary>How many units the last sheet took: most often the next takes as many.</summary>
    private int _guess = 1;

    public List<Sheetful> Pack(Section section)
    {
        List<List<Piece>> bundles = input.FoldAlike || section.Pieces.Count > MostOnOneSheet ? Bundles.Of(hops, section.Pieces) : [];
        List<Unit> units = input.FoldAlike ? Alike.Fold(hops, input, bundles) : bundles.Count > 0 ? Alike.Apart(bundles) : [new Unit([.. section.Pieces], [])];
        if (OnOne(units, input.Paper.Formats) is { } one)
            return [Roomier(one, units)];
        if (bundles.Count == 0)
            units = Alike.Apart(Bundles.Of(hops, section.Pieces));
        SheetFormat paper = PaperFor(units[0]);
        var sheets = new List<Sheetful>();
        for (int at = 0; at < units.Count;)
        {
            (Sheetful? sheet, int count) = Fullest(units, at, paper);
            if (sheet is not null)
            {
                sheets.Add(Roomier(sheet, units.GetRange(at, count)));
                at += count;
                continue;
            }

            // What stands for others keeps its strands together, so that the note about them stays true.
            List<List<Piece>> ports = Bundles.ByFirstPort(hops, units[at].Pieces);
            if (ports.Count > 1 && units[at].Others.Count == 0)
            {
                units.RemoveAt(at);
                units.InsertRange(at, Alike.Apart(ports));
                continue;
            }

            sheets.Add(OnAnyPaper(units[at], paper));
            at++;
        }

        return sheets;
    }

    private Sheetful? OnOne(IReadOnlyList<Unit> units, IReadOnlyList<SheetFormat> papers)
    {
        int count = 0;
        foreach (Unit unit in units)
            count += unit.Pieces.Count;
        if (count > MostOnOneSheet)
            return null;
        var pieces = new List<Piece>(count);
        foreach (Unit unit in units)
            pieces.AddRange(unit.Pieces);
        ViewInput? narrowed = null;
        var names = SheetNames.Of(hops, units);
        return takesOver && papers.Count == 1 && names == SheetNames.Plain
            ? _like.OnOneSheet(input, pieces, papers[0], Narrow, LaidOut)
            : LaidOut();

        ViewInput Narrow() => narrowed ??= Narrowed(pieces);

        Sheetful? LaidOut() => Sheetful.OnOneSheet(hops, Narrow(), pieces, names, papers);
    }

    /// <summary>The same on several sheets of its paper where very many strands would cross in little room.</summary>
    private Sheetful Roomier(Sheetful sheet, IReadOnlyList<Unit> units)
    {
        if (!sheet.IsCrowded || sheet.Format == SheetFormat.A5Landscape)
            return sheet;
        List<Piece> pieces = [.. units.SelectMany(u => u.Pieces)];
        Sheetful? several = Sheetful.OnSeveralSheets(hops, Narrowed(pieces), pieces, SheetNames.Of(hops, units), sheet.Format);
        return several is { IsCrowded: false } ? several : sheet;
    }

    /// <summary>The paper that takes most of the first strands: of the smallest size that takes any, upright or not.</summary>
    private SheetFormat PaperFor(Unit first)
    {
        var port = new Unit(Bundles.ByFirstPort(hops, first.Pieces)[0], []);
        SheetFormat? best = null;
        int most = 0;
        foreach (SheetFormat paper in Papers())
        {
            if (best is not null && paper.Name != best.Name)
                break;
            int taken = OnOne([first], [paper]) is not null ? first.Pieces.Count + 1 : OnOne([port], [paper]) is not null ? port.Pieces.Count : 0;
            if (taken <= most)
                continue;
            most = taken;
            best = paper;
        }

        return best ?? Papers().First();
    }

    /// <summary>Sheets for a set; the smallest is for single figures only.</summary>
    private IEnumerable<SheetFormat> Papers()
    {
        SheetFormat[] large = [.. input.Paper.Formats.Where(f => f.Name != SheetFormat.A5Landscape.Name)];
        return large.Length > 0 ? large : input.Paper.Formats;
    }

    /// <summary>The most units from a place on that one sheet takes; none when not even the first fits.</summary>
    private (Sheetful? Sheet, int Count) Fullest(List<Unit> units, int at, SheetFormat paper)
    {
        int left = units.Count - at;
        int count = Math.Clamp(_guess, 1, left);
        Sheetful? sheet = Try(count);
        while (sheet is null && count > 1)
            sheet = Try(--count);
        if (sheet is null)
            return (null, 0);
        while (count < left && Try(count + 1) is { } fuller)
        {
            sheet = fuller;
            count++;
        }

        _guess = count;
        return (sheet, count);

        Sheetful? Try(int n) => OnOne(units.GetRange(at, n), [paper]);
    }

    /// <summary>The strands of one port: on the first larger paper that takes them, else on several sheets, else on one of their own size.</summary>
    private Sheetful OnAnyPaper(Unit unit, SheetFormat paper)
    {
        List<Piece> pieces = unit.Pieces;
        ViewInput narrowed = Narrowed(pieces);
        var names = SheetNames.Of(hops, [unit]);
        if (OnOne([unit], [.. Papers()]) is { } sheet)
            return sheet;
        foreach (SheetFormat format in (IEnumerable<SheetFormat>)[paper, .. Papers()])
        {
            if (Sheetful.OnSeveralSheets(hops, narrowed, pieces, names, format) is { } several)
                return several;
        }

        if (!input.Paper.MayGrow)
            throw new DrawingTooLargeException($"a part of {pieces.Count} strands does not fit on {paper.Name}");
        return Sheetful.OnItsOwnSheet(hops, narrowed, pieces, names);
    }

    private ViewInput Narrowed(IReadOnlyList<Piece> pieces) =>
        pieces.Count == input.Selection.Strands.Count ? input : input with { Selection = input.Selection.Narrowed(StrandsOf(pieces)) };

    private static int[] StrandsOf(IReadOnlyList<Piece> pieces)
    {
        var strands = new List<int>(pieces.Count);
        var seen = new HashSet<int>(pieces.Count);
        foreach (Piece piece in pieces)
        {
            if (seen.Add(piece.Strand))
                strands.Add(piece.Strand);
        }

        return [.. strands];
    }
}
