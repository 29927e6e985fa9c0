using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Packs a section's strands onto sheets, in the order of their numbers: as many bundles to a sheet as it takes. A bundle that
/// is too large for one is parted between ports, and only the strands of one port that fill more than a sheet go on on the next.
/// </summary>
internal sealed class Packing(StrandHops hops, ViewInput input)
{
    /// <summary>More strands than this on no desk sheet.</summary>
    private const int MostOnOneSheet = 170;

    /// <summary>How many units the last sheet took: most often the next takes as many.</summary>
    private int _guess = 1;

    public List<Sheetful> Pack(Section section)
    {
        if (section.Pieces.Count <= MostOnOneSheet && Sheetful.OnOneSheet(hops, Narrowed(section.Pieces), section.Pieces, input.Paper.Formats) is { } one)
            return [one];
        List<List<Piece>> units = Bundles.Of(hops, section.Pieces);
        SheetFormat paper = PaperFor(units[0]);
        var sheets = new List<Sheetful>();
        for (int at = 0; at < units.Count;)
        {
            (Sheetful? sheet, int count) = Fullest(units, at, paper);
            if (sheet is not null)
            {
                sheets.Add(sheet);
                at += count;
                continue;
            }

            List<List<Piece>> ports = Bundles.ByFirstPort(hops, units[at]);
            if (ports.Count > 1)
            {
                units.RemoveAt(at);
                units.InsertRange(at, ports);
                continue;
            }

            sheets.Add(OnAnyPaper(units[at], paper));
            at++;
        }

        return sheets;
    }

    /// <summary>The paper that takes most of the first strands: of the smallest size that takes any, upright or not.</summary>
    private SheetFormat PaperFor(List<Piece> first)
    {
        List<Piece> port = Bundles.ByFirstPort(hops, first)[0];
        SheetFormat? best = null;
        int most = 0;
        foreach (SheetFormat paper in Papers())
        {
            if (best is not null && paper.Name != best.Name)
                break;
            int taken = Taken(first, paper) ? first.Count + 1 : Taken(port, paper) ? port.Count : 0;
            if (taken <= most)
                continue;
            most = taken;
            best = paper;
        }

        return best ?? Papers().First();
    }

    private bool Taken(List<Piece> pieces, SheetFormat paper) => Sheetful.OnOneSheet(hops, Narrowed(pieces), pieces, [paper]) is not null;

    /// <summary>Sheets for a set; the smallest is for single figures only.</summary>
    private IEnumerable<SheetFormat> Papers()
    {
        SheetFormat[] large = [.. input.Paper.Formats.Where(f => f.Name != SheetFormat.A5Landscape.Name)];
        return large.Length > 0 ? large : input.Paper.Formats;
    }

    /// <summary>The most units from a place on that one sheet takes; none when not even the first fits.</summary>
    private (Sheetful? Sheet, int Count) Fullest(List<List<Piece>> units, int at, SheetFormat paper)
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

        Sheetful? Try(int n)
        {
            List<Piece> pieces = [.. units.Skip(at).Take(n).SelectMany(u => u)];
            return pieces.Count > MostOnOneSheet ? null : Sheetful.OnOneSheet(hops, Narrowed(pieces), pieces, [paper]);
        }
    }

    /// <summary>The strands of one port: on the first larger paper that takes them, else on several sheets, else on one of their own size.</summary>
    private Sheetful OnAnyPaper(List<Piece> pieces, SheetFormat paper)
    {
        ViewInput narrowed = Narrowed(pieces);
        if (Sheetful.OnOneSheet(hops, narrowed, pieces, [.. Papers()]) is { } sheet)
            return sheet;
        foreach (SheetFormat format in (IEnumerable<SheetFormat>)[paper, .. Papers()])
        {
            if (Sheetful.OnSeveralSheets(hops, narrowed, pieces, format) is { } several)
                return several;
        }

        if (!input.Paper.MayGrow)
            throw new DrawingTooLargeException($"a part of {pieces.Count} strands does not fit on {paper.Name}");
        return Sheetful.OnItsOwnSheet(hops, narrowed, pieces);
    }

    private ViewInput Narrowed(IReadOnlyList<Piece> pieces) =>
        pieces.Count == input.Selection.Strands.Count ? input : input with { Selection = input.Selection.Narrowed([.. pieces.Select(p => p.Strand).Distinct()]) };
}
