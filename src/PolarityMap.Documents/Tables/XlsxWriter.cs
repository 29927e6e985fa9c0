using System.IO.Packaging;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Documents.Tables;

/// <summary>
/// Writes schedules as one workbook after ECMA-376, a sheet for each: numbers as numbers with a format, texts as shared strings and
/// never as formulas, the first row frozen and with filters, columns as wide as what they hold. Same schedules, same bytes.
/// </summary>
public static class XlsxWriter
{
    /// <summary>Rows of a sheet, with its first one, that the format has.</summary>
    private const int MostRows = 1_048_576;

    /// <summary>The bytes of the workbook.</summary>
    /// <param name="schedules">The schedules, one or more, in the order of the sheets.</param>
    /// <exception cref="TableException">A schedule has more rows than a sheet.</exception>
    public static byte[] Write(IReadOnlyList<Schedule> schedules)
    {
        using var package = new MemoryStream();
        using (SpreadsheetDocument document = SpreadsheetDocument.Create(package, SpreadsheetDocumentType.Workbook))
        {
            document.CompressionOption = CompressionOption.SuperFast;
            WorkbookPart book = document.AddWorkbookPart();
            document.ChangeIdOfPart(book, "rId1");
            var strings = new XlsxStrings();
            for (int i = 0; i < schedules.Count; i++)
            {
                if (schedules[i].Rows.Count >= MostRows)
                    throw new TableException($"the schedule '{schedules[i].Name}' has {schedules[i].Rows.Count} rows, and a sheet takes {MostRows - 1}; write it as CSV");
                XlsxSheetWriter.Write(book.AddNewPart<WorksheetPart>(SheetId(i)), schedules[i], strings);
            }

            book.AddNewPart<WorkbookStylesPart>($"rId{schedules.Count + 1}").Stylesheet = XlsxStyles.All();
            strings.Write(book.AddNewPart<SharedStringTablePart>($"rId{schedules.Count + 2}"));
            book.Workbook = Workbook(schedules);
        }

        XlsxPackage.RemoveTimes(package);
        return package.ToArray();
    }

    /// <summary>The name of a schedule's sheet: its title, as far as a sheet's name goes.</summary>
    public static string SheetName(Schedule schedule)
    {
        string name = string.Concat(schedule.Title.Where(c => c is not ('[' or ']' or ':' or '*' or '?' or '/' or '\\')));
        return name.Length <= 31 ? name : name[..31];
    }

    /// <summary>The cells of a schedule's first columns with its headings, as <c>A1:C9</c>; absolute with a mark of <c>$</c>.</summary>
    internal static string Range(Schedule schedule, string mark, int? columns = null) =>
        $"{mark}A{mark}1:{mark}{TableProblem.Letters(columns ?? schedule.Columns.Count)}{mark}{schedule.Rows.Count + 1}";

    private static string SheetId(int index) => $"rId{index + 1}";

    private static Workbook Workbook(IReadOnlyList<Schedule> schedules)
    {
        var sheets = new Sheets();
        var names = new DefinedNames();
        for (int i = 0; i < schedules.Count; i++)
        {
            sheets.Append(new Sheet { Name = SheetName(schedules[i]), SheetId = (uint)(i + 1), Id = SheetId(i) });
            string sheet = $"'{SheetName(schedules[i]).Replace("'", "''", StringComparison.Ordinal)}'!";

            // On paper every page begins with the headings.
            names.Append(
                new DefinedName(sheet + Range(schedules[i], "$")) { Name = "_xlnm._FilterDatabase", LocalSheetId = (uint)i, Hidden = true },
                new DefinedName(sheet + Range(schedules[i], "$", schedules[i].Columns.Count(c => !c.ForPrograms))) { Name = "_xlnm.Print_Area", LocalSheetId = (uint)i },
                new DefinedName(sheet + "$1:$1") { Name = "_xlnm.Print_Titles", LocalSheetId = (uint)i });
        }

        return new Workbook(sheets, names);
    }
}
