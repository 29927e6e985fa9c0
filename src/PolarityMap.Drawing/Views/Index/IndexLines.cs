using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Index;

/// <summary>A line of the index.</summary>
/// <param name="Sheet">What stands in the column of sheets; empty where nothing does.</param>
/// <param name="Words">The words.</param>
internal sealed record IndexLine(string Sheet, string Words)
{
    public bool IsHead { get; init; }

    public bool IsEmpty => Sheet.Length == 0 && Words.Length == 0;

    /// <summary>The sheet it leads to, or 0.</summary>
    public int LeadsTo { get; init; }

    /// <summary>The severity of the finding it begins, or null.</summary>
    public Severity? Mark { get; init; }
}

/// <summary>The words of the index.</summary>
internal static class IndexLines
{
    /// <summary>Width of the column of sheets.</summary>
    public const double SheetColumn = 11;

    /// <param name="input">What is drawn.</param>
    /// <param name="following">The sheets after the index.</param>
    /// <param name="before">How many sheets the index has.</param>
    /// <param name="width">Width of a line.</param>
    public static List<IndexLine> Of(ViewInput input, IReadOnlyList<PlannedSheet> following, int before, double width)
    {
        var lines = new List<IndexLine> { new("", "Sheets") { IsHead = true } };
        for (int i = 0; i < following.Count; i++)
            Add(lines, $"{before + i + 1}", $"{Named(following[i])} ({Paper(following[i].Format)})", width, before + i + 1);
        if (input.Findings.Count > 0)
        {
            List<int>[] sheetsOf = SheetsOfStrands(input.Traced, following, before);
            Head(lines, "Findings");
            foreach (Finding finding in input.Findings)
            {
                int[] sheets = [.. finding.Strands.SelectMany(s => sheetsOf[s]).Distinct().Order()];
                string where = sheets.Length == 0 ? "" : $" ({NumberRanges.Words("sheet", sheets)})";
                Add(lines, "", $"{finding.Rule.Code} {finding.Rule.Title}: {finding.Message}{where}", width, sheets.Length > 0 ? sheets[0] : 0, finding.Rule.Severity);
            }
        }

        Head(lines, "Parts");
        foreach ((string names, int[] sheets) in PartsBySheets(input.Traced, following, before))
            Add(lines, "", $"{names}: {NumberRanges.Words("sheet", sheets)}", width, sheets[0]);
        return lines;
    }

    /// <summary>
    /// The lines in columns of so many rows: none begins with an empty line or ends with a heading, and one that begins in the
    /// middle of a list has that list's heading again.
    /// </summary>
    public static List<List<IndexLine>> InColumns(IReadOnlyList<IndexLine> lines, int rows)
    {
        var columns = new List<List<IndexLine>> { new() };
        IndexLine? head = null;
        foreach (IndexLine line in lines)
        {
            List<IndexLine> column = columns[^1];
            if (column.Count == rows || (line.IsHead && column.Count == rows - 1))
            {
                columns.Add(column = []);
                if (!line.IsHead && !line.IsEmpty && head is not null)
                    column.Add(head with { Words = $"{head.Words}, continued" });
            }

            if (line.IsHead)
                head = line;
            if (!line.IsEmpty || column.Count > 0)
                column.Add(line);
        }

        return columns;
    }

    /// <summary>The name of the paper; of a sheet of its own size that size.</summary>
    private static string Paper(SheetFormat format) => format.Name == SheetFormat.OwnSize
        ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{format.WidthMm:0} x {format.HeightMm:0} mm")
        : format.Name;

    private static string Named(PlannedSheet sheet) => sheet.Subject.Length > 0 ? sheet.Subject : sheet.DocumentType;

    private static void Head(List<IndexLine> lines, string words)
    {
        lines.Add(new IndexLine("", ""));
        lines.Add(new IndexLine("", words) { IsHead = true });
    }

    private static void Add(List<IndexLine> lines, string sheet, string words, double width, int leadsTo, Severity? mark = null)
    {
        bool first = true;
        foreach (string line in SheetText.Wrapped(words, width - SheetColumn))
        {
            lines.Add(new IndexLine(first ? sheet : "", TextFit.Fit(line, width - SheetColumn, CapHeights.Strand, CapHeights.Strand).Text) { LeadsTo = leadsTo, Mark = first ? mark : null });
            first = false;
        }
    }

    /// <summary>For each strand the sheets it is on.</summary>
    private static List<int>[] SheetsOfStrands(TracedPlant traced, IReadOnlyList<PlannedSheet> sheets, int before)
    {
        var sheetsOf = new List<int>[traced.Strands.Count];
        for (int s = 0; s < sheetsOf.Length; s++)
            sheetsOf[s] = [];
        for (int i = 0; i < sheets.Count; i++)
        {
            foreach (int strand in sheets[i].Strands)
                sheetsOf[strand].Add(before + i + 1);
        }

        return sheetsOf;
    }

    /// <summary>Named parts in the order of their names, those that follow each other on the same sheets in one line.</summary>
    private static List<(string Names, int[] Sheets)> PartsBySheets(TracedPlant traced, IReadOnlyList<PlannedSheet> sheets, int before)
    {
        var sheetsOf = new Dictionary<int, SortedSet<int>>();
        for (int i = 0; i < sheets.Count; i++)
        {
            foreach (int part in sheets[i].Parts)
            {
                if (traced.Plant.Parts[part].IsInline)
                    continue;
                if (!sheetsOf.TryGetValue(part, out SortedSet<int>? on))
                    sheetsOf[part] = on = [];
                on.Add(before + i + 1);
            }
        }

        int[] parts = [.. sheetsOf.Keys];
        Array.Sort(parts, (a, b) => NaturalOrder.Compare(traced.Plant.Parts[a].Name, traced.Plant.Parts[b].Name));
        var lines = new List<(string, int[])>();
        for (int i = 0; i < parts.Length; i++)
        {
            int first = i;
            while (i + 1 < parts.Length && sheetsOf[parts[i + 1]].SetEquals(sheetsOf[parts[first]]) && Follows(traced.Plant.Parts[parts[i]], traced.Plant.Parts[parts[i + 1]]))
                i++;
            string name = traced.Plant.Parts[parts[first]].Name;
            lines.Add((i == first ? name : $"{name} to {traced.Plant.Parts[parts[i]].Name}", [.. sheetsOf[parts[first]]]));
        }

        return lines;
    }

    /// <summary>True when two names differ in the number at their end only, which rises by one.</summary>
    private static bool Follows(Part part, Part next)
    {
        (string stem, long number) = Numbered(part.Name);
        (string nextStem, long nextNumber) = Numbered(next.Name);
        return number >= 0 && nextNumber == number + 1 && stem == nextStem;
    }

    /// <summary>A name without the number at its end, and that number; -1 without one.</summary>
    private static (string Stem, long Number) Numbered(string name)
    {
        int digits = 0;
        while (digits < Math.Min(name.Length, 9) && char.IsAsciiDigit(name[^(digits + 1)]))
            digits++;
        return digits == 0 ? (name, -1) : (name[..^digits], long.Parse(name.AsSpan(name.Length - digits), System.Globalization.CultureInfo.InvariantCulture));
    }
}
