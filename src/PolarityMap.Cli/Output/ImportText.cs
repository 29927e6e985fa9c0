using PolarityMap.Core.Plants;
using PolarityMap.Documents.Tables;
using PolarityMap.Documents.Tables.Import;

namespace PolarityMap.Cli.Output;

/// <summary>What <c>import</c> tells people.</summary>
internal static class ImportText
{
    private const int RowsShown = 3;
    private const int CellShown = 24;

    /// <summary>How every sheet is understood, its first rows, and what would be rejected.</summary>
    public static void Preview(ImportedTable imported, TextWriter output)
    {
        ReadSheet[] used = TablePlant.Used(imported.Sheets);
        foreach (ReadSheet sheet in imported.Sheets)
        {
            bool isUsed = used.Contains(sheet);
            output.WriteLine($"sheet {Shown(sheet.Name)}: {Form(sheet, isUsed)}");
            if (!isUsed)
                continue;
            int widest = sheet.Columns.Max(c => Shown(c.Header).Length);
            foreach (TableColumn column in sheet.Columns)
            {
                string meaning = column.Meaning is { } m && sheet.Reads(m) ? m + (column.Unit.Length > 0 ? $", in {Shown(column.Unit)}" : "") : "not read";
                output.WriteLine($"  {TableProblem.Letters(column.Index + 1),-3} {Shown(column.Header).PadRight(widest)}  {meaning}");
            }

            foreach (TableRow row in sheet.Rows.Take(RowsShown))
                output.WriteLine($"  row {row.Number}: {string.Join(" | ", sheet.Columns.Select(c => Shown(row[c.Index])))}");
        }

        foreach (TableProblem problem in imported.Rejected)
            output.WriteLine($"would be rejected: {problem}");
        output.WriteLine(imported.Count == 0
            ? $"All rows are taken: {Contents(imported.Plant!)}. Nothing is written."
            : $"{Problems(imported.Count)}. Nothing is written.");
    }

    public static void Rejected(ImportedTable imported, string path, TextWriter error)
    {
        foreach (TableProblem problem in imported.Rejected)
            error.WriteLine($"{path}: {problem}");
        if (imported.Count > imported.Rejected.Count)
            error.WriteLine($"{path}: and {imported.Count - imported.Rejected.Count} more");
    }

    public static void Written(ImportedTable imported, string target, TextWriter output)
    {
        const int most = 20;
        foreach (TableProblem remark in imported.Remarks.Take(most))
            output.WriteLine($"note: {remark}");
        if (imported.Remarks.Count > most)
            output.WriteLine($"note: and {imported.Remarks.Count - most} more");
        if (imported.Count > 0)
            output.WriteLine($"{Problems(imported.Count)}; what is told above is not in the document.");
        output.WriteLine($"Wrote {target}: {Contents(imported.Plant!)}. Next:");
        output.WriteLine($"  polaritymap check {target}");
    }

    private static string Problems(int count) => count == 1 ? "1 problem" : $"{count} problems";

    private static string Contents(Plant plant) =>
        $"{Count(plant.Parts.Count, "part")}, {Count(plant.Matings.Count, "mating")}, {Count(plant.Links.Count, "link")}";

    private static string Count(int number, string noun) => number == 1 ? $"1 {noun}" : $"{number} {noun}s";

    private static string Form(ReadSheet sheet, bool isUsed)
    {
        if (sheet.Form == SheetForm.Unknown)
            return "not read, no headings are known";
        string form = sheet.Form switch
        {
            SheetForm.Hops => "strands hop by hop",
            SheetForm.Matings => "two ports a row",
            SheetForm.Parts => "a part a row",
            SheetForm.Links => "a link a row",
            SheetForm.Networks => "a network a row",
            _ => "settings of the plant",
        };
        return isUsed ? $"{form}, headings in row {sheet.HeaderRow}, {sheet.Rows.Count} rows" : $"{form}; not read, because a sheet tells strands hop by hop";
    }

    /// <summary>A cell on a terminal: short, and with nothing that could steer it.</summary>
    private static string Shown(string text)
    {
        string safe = string.Concat(text.Select(c => char.IsControl(c) || c is (>= '\u2028' and <= '\u202E') or (>= '\u2066' and <= '\u2069') ? '?' : c));
        return safe.Length <= CellShown ? safe : safe[..(CellShown - 1)] + "…";
    }
}
