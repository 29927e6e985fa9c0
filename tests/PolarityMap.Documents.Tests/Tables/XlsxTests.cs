using System.IO.Compression;
using CsCheck;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;
using PolarityMap.Documents.Tables;
using Xunit;
using Cell = PolarityMap.Core.Schedules.Cell;
using SheetCell = DocumentFormat.OpenXml.Spreadsheet.Cell;
using SheetText = DocumentFormat.OpenXml.Spreadsheet.Text;

namespace PolarityMap.Documents.Tests.Tables;

/// <summary>Workbooks against the Open XML SDK, which neither writes nor reads them in the program.</summary>
public sealed class XlsxTests
{
    private static Plant Opera()
    {
        const string path = "gallery/opera-house/plant.yaml";
        return Reading.Read(path, new MemorySource().Add(path, File.ReadAllText(Path.Combine(Repository.Root, path)))).Plant!;
    }

    private static SpreadsheetDocument Open(byte[] workbook) => SpreadsheetDocument.Open(new MemoryStream(workbook), false);

    private static Worksheet Sheet(SpreadsheetDocument document, string name)
    {
        Sheet sheet = document.WorkbookPart!.Workbook.Descendants<Sheet>().Single(s => s.Name == name);
        return ((WorksheetPart)document.WorkbookPart.GetPartById(sheet.Id!)).Worksheet;
    }

    private static string Text(SpreadsheetDocument document, SheetCell cell) => cell.DataType?.Value == CellValues.SharedString
        ? document.WorkbookPart!.SharedStringTablePart!.SharedStringTable.Elements<SharedStringItem>().ElementAt(int.Parse(cell.CellValue!.Text)).InnerText
        : cell.CellValue!.Text;

    [Fact]
    public void The_schema_of_the_format_finds_nothing_in_a_workbook_of_all_schedules()
    {
        using SpreadsheetDocument document = Open(XlsxWriter.Write(Told.All(Opera())));
        Assert.Empty(new OpenXmlValidator(FileFormatVersions.Microsoft365).Validate(document).Select(e => $"{e.Part?.Uri} {e.Path?.XPath}: {e.Description}"));
        Assert.Equal(ScheduleCatalogue.All.Select(k => k.Title), document.WorkbookPart!.Workbook.Descendants<Sheet>().Select(s => s.Name!.Value));
    }

    [Fact]
    public void Every_sheet_has_a_frozen_heading_a_filter_over_all_and_columns_of_a_width()
    {
        IReadOnlyList<Schedule> schedules = Told.All(Opera());
        using SpreadsheetDocument document = Open(XlsxWriter.Write(schedules));
        foreach (Schedule schedule in schedules)
        {
            Worksheet sheet = Sheet(document, schedule.Title);
            Pane pane = sheet.Descendants<Pane>().Single();
            Assert.Equal((1d, PaneStateValues.Frozen), (pane.VerticalSplit!.Value, pane.State!.Value));
            Assert.Equal($"A1:{TableProblem.Letters(schedule.Columns.Count)}{schedule.Rows.Count + 1}", sheet.Descendants<AutoFilter>().Single().Reference!.Value);
            Assert.Equal(schedule.Columns.Count, sheet.Descendants<Column>().Count());
            Assert.All(sheet.Descendants<Column>(), c => Assert.InRange(c.Width!.Value, 6, 30));
            Assert.Equal(schedule.Columns.Select(c => c.Heading), sheet.Descendants<Row>().First().Elements<SheetCell>().Select(c => Text(document, c)));
        }
    }

    // Formats 0 General, 1 "0", 2 "0.00", 49 "@" are built into the format (ECMA-376 part 1, 18.8.30).
    [Fact]
    public void Numbers_are_numbers_with_a_format_and_texts_are_never_formulas()
    {
        var schedule = new Schedule(
            "t", "T", "For tests.",
            [new("text", "Text"), new("whole", "Whole", CellKind.Whole), new("length", "Length (m)", CellKind.Metres), new("loss", "Loss (dB)", CellKind.Decibels), new("date", "Date", CellKind.Blank)],
            [[Cell.Of("=1+1"), Cell.Of(7), Cell.Of(PolarityMap.Core.Optics.Length.FromMillimetres(2_500)), Cell.Of(new Decibel(3.006m)), Cell.Empty]]);
        using SpreadsheetDocument document = Open(XlsxWriter.Write([schedule]));
        SheetCell[] cells = [.. Sheet(document, "T").Descendants<Row>().ElementAt(1).Elements<SheetCell>()];
        Assert.Equal(["=1+1", "7", "2.5", "3.006", null], cells.Select(c => c.CellValue is null ? null : Text(document, c)));
        Assert.Equal([CellValues.SharedString, null, null, null, null], cells.Select(c => c.DataType?.Value));
        CellFormats formats = document.WorkbookPart!.WorkbookStylesPart!.Stylesheet.CellFormats!;
        Assert.Equal([49u, 1u, 2u, 2u, 0u], cells.Select(c => ((CellFormat)formats.ElementAt((int)c.StyleIndex!.Value)).NumberFormatId!.Value));
        Assert.Empty(Sheet(document, "T").Descendants<CellFormula>());
    }

    [Fact]
    public void The_same_schedules_give_the_same_bytes_and_no_time_of_day()
    {
        byte[] workbook = XlsxWriter.Write(Told.All(Opera()));
        Assert.Equal(workbook, XlsxWriter.Write(Told.All(Opera())));
        using var zip = new ZipArchive(new MemoryStream(workbook));
        Assert.All(zip.Entries, e => Assert.Equal(new DateTime(1980, 1, 1), e.LastWriteTime.DateTime));
    }

    [Fact]
    public void Every_text_reads_the_same_here_and_in_the_SDK() =>
        Gen.Char["'=+-@\t\r\n \u0001\u001F<>&\"_x0041äß舞"].Array[1, 14].Select(c => new string(c)).Array[1, 4].Sample(texts =>
        {
            var schedule = new Schedule("t", "T", "For tests.", [new("text", "Text")], [.. texts.Select(t => (IReadOnlyList<Cell>)[Cell.Of(t)])]);
            byte[] workbook = XlsxWriter.Write([schedule]);
            TableSheet sheet = XlsxReader.Read(workbook, out _).Single();
            Assert.Equal(texts.Where(t => !string.IsNullOrWhiteSpace(t)), sheet.Rows.Skip(1).Select(r => r.Cells[0]));
            using SpreadsheetDocument document = Open(workbook);
            Assert.Equal(
                texts,
                Sheet(document, "T").Descendants<Row>().Skip(1).Select(r => System.Xml.XmlConvert.DecodeName(Text(document, r.Elements<SheetCell>().Single()))));
        });

    // A workbook as other programs write it: inline strings, runs of rich text, formulas with values, errors, truth values, gaps.
    [Fact]
    public void A_workbook_of_another_writer_is_read()
    {
        byte[] workbook = Foreign(
            Row(2, ("A2", "str", "a title"), ("B2", "inline", "x"), ("D2", "n", "0.10000000000000001")),
            Row(5, ("B5", "formula", "7"), ("C5", "b", "1"), ("D5", "rich", "ab")));
        IReadOnlyList<TableSheet> sheets = XlsxReader.Read(workbook, out IReadOnlyList<TableProblem> problems);
        Assert.Empty(problems);
        Assert.Equal([2, 5], sheets[0].Rows.Select(r => r.Number));
        Assert.Equal(["a title", "x", "", "0.1"], sheets[0].Rows[0].Cells);
        Assert.Equal(["", "7", "yes", "ab"], sheets[0].Rows[1].Cells);
    }

    [Fact]
    public void A_formula_without_a_value_and_an_error_are_told_with_their_cell()
    {
        XlsxReader.Read(Foreign(Row(3, ("B3", "formula", ""), ("C3", "e", "#REF!"))), out IReadOnlyList<TableProblem> problems);
        Assert.Equal(["sheet S, row 3, column B", "sheet S, row 3, column C"], problems.Select(p => p.ToString().Split(": ")[0]));
        Assert.Contains("formula without a value", problems[0].Reason, StringComparison.Ordinal);
        Assert.Contains("#REF!", problems[1].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Cells_merged_downwards_all_have_the_value_and_those_beside_it_none()
    {
        byte[] workbook = Foreign(["A1:A3", "B1:C1"], Row(1, ("A1", "str", "net"), ("B1", "str", "title")), Row(2, ("B2", "str", "x")));
        TableSheet sheet = XlsxReader.Read(workbook, out _).Single();
        Assert.Equal(["net", "net", "net"], sheet.Rows.Select(r => r[0]));
        Assert.Equal("", sheet.Rows[0][2]);
    }

    private static Row Row(uint number, params (string Place, string Type, string Value)[] cells) =>
        new(cells.Select(c => c.Type switch
        {
            "inline" => new SheetCell { CellReference = c.Place, DataType = CellValues.InlineString, InlineString = new InlineString(new SheetText(c.Value)) },
            "rich" => new SheetCell { CellReference = c.Place, DataType = CellValues.InlineString, InlineString = new InlineString(c.Value.Select(r => new Run(new SheetText($"{r}")))) },
            "formula" => new SheetCell { CellReference = c.Place, CellFormula = new CellFormula("1+6"), CellValue = c.Value.Length > 0 ? new CellValue(c.Value) : null },
            "str" => new SheetCell { CellReference = c.Place, DataType = CellValues.String, CellValue = new CellValue(c.Value) },
            "b" => new SheetCell { CellReference = c.Place, DataType = CellValues.Boolean, CellValue = new CellValue(c.Value) },
            "e" => new SheetCell { CellReference = c.Place, DataType = CellValues.Error, CellValue = new CellValue(c.Value) },
            _ => new SheetCell { CellReference = c.Place, CellValue = new CellValue(c.Value) },
        }))
        { RowIndex = number };

    private static byte[] Foreign(params Row[] rows) => Foreign([], rows);

    private static byte[] Foreign(string[] merged, params Row[] rows)
    {
        using var stream = new MemoryStream();
        using (var document = SpreadsheetDocument.Create(stream, SpreadsheetDocumentType.Workbook))
        {
            WorkbookPart workbook = document.AddWorkbookPart();
            WorksheetPart sheet = workbook.AddNewPart<WorksheetPart>();
            sheet.Worksheet = new Worksheet(new SheetData(rows));
            if (merged.Length > 0)
                sheet.Worksheet.Append(new MergeCells(merged.Select(m => new MergeCell { Reference = m })));
            workbook.Workbook = new Workbook(new Sheets(new Sheet { Name = "S", SheetId = 1, Id = workbook.GetIdOfPart(sheet) }));
        }

        return stream.ToArray();
    }
}
