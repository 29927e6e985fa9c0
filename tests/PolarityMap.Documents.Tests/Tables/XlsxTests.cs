using System.Globalization;
using System.IO.Compression;
using System.Xml.Linq;
using CsCheck;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;
using PolarityMap.Documents.Tables;
using Xunit;

namespace PolarityMap.Documents.Tests.Tables;

/// <summary>Workbooks against a second reader, against XML written by hand and against the schema of the format.</summary>
public sealed class XlsxTests
{
    private static Plant Opera()
    {
        const string path = "gallery/opera-house/plant.yaml";
        return Reading.Read(path, new MemorySource().Add(path, File.ReadAllText(Path.Combine(Repository.Root, path)))).Plant!;
    }

    [Fact]
    public void The_schema_of_the_format_finds_nothing_in_a_workbook_of_all_schedules()
    {
        using SpreadsheetDocument document = SpreadsheetDocument.Open(new MemoryStream(XlsxWriter.Write(Told.All(Opera()))), false);
        Assert.Empty(new OpenXmlValidator(FileFormatVersions.Microsoft365).Validate(document).Select(e => $"{e.Part?.Uri} {e.Path?.XPath}: {e.Description}"));
    }

    [Fact]
    public void Every_sheet_has_a_frozen_heading_a_filter_over_all_columns_of_a_width_and_pages_with_headings()
    {
        IReadOnlyList<Schedule> schedules = Told.All(Opera());
        byte[] workbook = XlsxWriter.Write(schedules);
        IReadOnlyList<PlainSheet> sheets = PlainWorkbook.Read(workbook);
        Assert.Equal(ScheduleCatalogue.All.Select(k => k.Title), sheets.Select(s => s.Name));
        foreach ((Schedule schedule, PlainSheet sheet) in schedules.Zip(sheets))
        {
            string all = $"{TableProblem.Letters(schedule.Columns.Count)}{schedule.Rows.Count + 1}";
            XElement pane = sheet.Elements("pane").Single();
            Assert.Equal(("1", "A2", "frozen"), ((string)pane.Attribute("ySplit")!, (string)pane.Attribute("topLeftCell")!, (string)pane.Attribute("state")!));
            Assert.Equal($"A1:{all}", (string)sheet.Elements("autoFilter").Single().Attribute("ref")!);
            Assert.Equal(Enumerable.Range(1, schedule.Columns.Count), sheet.Elements("col").Select(c => (int)c.Attribute("min")!));
            Assert.All(sheet.Elements("col"), c => Assert.InRange((double)c.Attribute("width")!, 6, 30));
            XElement page = sheet.Elements("pageSetup").Single();
            Assert.Equal(("9", "landscape", "0"), ((string)page.Attribute("paperSize")!, (string)page.Attribute("orientation")!, (string)page.Attribute("fitToHeight")!));
            Assert.Contains(("_xlnm.Print_Titles", $"'{sheet.Name}'!$1:$1"), PlainWorkbook.Names(workbook));
        }
    }

    // The whole of every sheet, cell by cell: texts are shared texts in their place, numbers are their digits.
    [Fact]
    public void Every_cell_of_a_workbook_of_all_schedules_stands_in_its_place()
    {
        IReadOnlyList<Schedule> schedules = Told.All(Opera());
        foreach ((Schedule schedule, PlainSheet sheet) in schedules.Zip(PlainWorkbook.Read(XlsxWriter.Write(schedules))))
        {
            int found = 0;
            for (int c = 0; c < schedule.Columns.Count; c++)
            {
                string letters = TableProblem.Letters(c + 1);
                Assert.Equal(schedule.Columns[c].Heading, sheet.Cells[$"{letters}1"].Value);
                for (int r = 0; r < schedule.Rows.Count; r++)
                {
                    PlainCell? cell = sheet.Cells.GetValueOrDefault($"{letters}{r + 2}");
                    Cell expected = schedule.Rows[r][c];
                    Assert.Equal(expected.Text ?? expected.Number?.ToString(CultureInfo.InvariantCulture), cell?.Value);
                    Assert.Equal(expected.Text is null ? null : "s", cell?.Type);
                    found += cell?.Value is null ? 0 : 1;
                }
            }

            Assert.Equal(found + schedule.Columns.Count, sheet.Cells.Values.Count(c => c.Value is not null));
            Assert.Empty(sheet.Elements("f"));
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
        PlainSheet sheet = PlainWorkbook.Read(XlsxWriter.Write([schedule])).Single();
        Assert.Equal(
            [new PlainCell("s", "=1+1", 49), new(null, "7", 1), new(null, "2.5", 2), new(null, "3.006", 2), new(null, null, 0)],
            "ABCDE".Select(c => sheet.Cells[$"{c}2"]));
        Assert.Empty(sheet.Elements("f"));
    }

    [Fact]
    public void A_row_is_as_high_as_the_lines_of_its_longest_text()
    {
        var schedule = new Schedule("t", "T", "For tests.", [new("text", "Text")], [[Cell.Of("short")], [Cell.Of(new string('x', 61))]]);
        Assert.Equal([null, null, "39"], PlainWorkbook.Read(XlsxWriter.Write([schedule])).Single().Elements("row").Select(r => (string?)r.Attribute("ht")));
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
    public void Every_text_reads_the_same_with_a_second_reader() =>
        Gen.Char["'=+-@\t\r\n \u0001\u001F<>&\"_x0041äß舞"].Array[1, 14].Select(c => new string(c)).Array[1, 4].Sample(texts =>
        {
            var schedule = new Schedule("t", "T", "For tests.", [new("text", "Text")], [.. texts.Select(t => (IReadOnlyList<Cell>)[Cell.Of(t)])]);
            byte[] workbook = XlsxWriter.Write([schedule]);
            TableSheet sheet = XlsxReader.Read(workbook, out _).Single();
            Assert.Equal(texts.Where(t => !string.IsNullOrWhiteSpace(t)), sheet.Rows.Skip(1).Select(r => r.Cells[0]));
            IReadOnlyDictionary<string, PlainCell> cells = PlainWorkbook.Read(workbook).Single().Cells;
            Assert.Equal(texts, texts.Select((_, i) => System.Xml.XmlConvert.DecodeName(cells[$"A{i + 2}"].Value)));
        });

    // A workbook as other programs write it: texts of both kinds, runs of rich text, readings, formulas with values, truth values, gaps.
    [Fact]
    public void A_workbook_of_another_writer_is_read()
    {
        byte[] workbook = HandmadeWorkbook.OfRows(
            """
            <row r="2"><c r="A2" t="str"><v>a title</v></c><c r="B2" t="inlineStr"><is><t>x</t></is></c><c r="D2"><v>0.10000000000000001</v></c></row>
            <row r="5"><c r="B5"><f>1+6</f><v>7</v></c><c r="C5" t="b"><v>1</v></c><c r="D5" t="inlineStr"><is><r><t>a</t></r><r><t>b</t></r></is></c></row>
            <row><c t="s"><v>1</v></c><c t="s"><v>0</v></c><c/><c t="str"><f>A1</f><v>t</v><extLst><ext uri="u"><v>no</v></ext></extLst></c></row>
            """,
            strings: "<si><t xml:space='preserve'> one </t></si><si><r><rPr><b/></rPr><t>t</t></r><r><t>wo_x0041_</t></r><rPh sb='0' eb='1'><t>reading</t></rPh></si>");
        TableSheet sheet = XlsxReader.Read(workbook, out IReadOnlyList<TableProblem> problems).Single();
        Assert.Empty(problems);
        Assert.Equal([2, 5, 6], sheet.Rows.Select(r => r.Number));
        Assert.Equal(["a title", "x", "", "0.1"], sheet.Rows[0].Cells);
        Assert.Equal(["", "7", "yes", "ab"], sheet.Rows[1].Cells);
        Assert.Equal(["twoA", " one ", "", "t"], sheet.Rows[2].Cells);
    }

    // Strict workbooks name all elements and relations otherwise (ECMA-376 part 1).
    [Fact]
    public void A_strict_workbook_is_read()
    {
        byte[] workbook = HandmadeWorkbook.Changed(
            HandmadeWorkbook.OfRows("<row r='1'><c r='A1' t='s'><v>0</v></c></row>", strings: "<si><t>x</t></si>"),
            static (_, text) => text.Replace(HandmadeWorkbook.Main, "http://purl.oclc.org/ooxml/spreadsheetml/main", StringComparison.Ordinal)
                .Replace("http://schemas.openxmlformats.org/officeDocument/2006/relationships", "http://purl.oclc.org/ooxml/officeDocument/relationships", StringComparison.Ordinal));
        Assert.Equal("x", XlsxReader.Read(workbook, out _).Single().Rows.Single()[0]);
    }

    // Programs keep what was typed as a link even if it is no address.
    [Fact]
    public void A_link_that_is_no_address_does_not_stand_in_the_way()
    {
        byte[] workbook = HandmadeWorkbook.OfRows("<row r='1'><c r='A1'><v>5</v></c></row>", "<hyperlinks><hyperlink ref='A1' r:id='r1'/></hyperlinks>");
        using var stream = new MemoryStream();
        stream.Write(workbook);
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Update, leaveOpen: true))
        {
            HandmadeWorkbook.Add(
                zip,
                "xl/worksheets/_rels/sheet1.xml.rels",
                "<Relationships xmlns='http://schemas.openxmlformats.org/package/2006/relationships'><Relationship Id='r1' TargetMode='External' Target='mailto:a@b@c, d' Type='http://schemas.openxmlformats.org/officeDocument/2006/relationships/hyperlink'/></Relationships>");
        }

        Assert.Equal("5", XlsxReader.Read(stream.ToArray(), out _).Single().Rows.Single()[0]);
    }

    [Fact]
    public void A_formula_without_a_value_and_an_error_are_told_with_their_cell()
    {
        XlsxReader.Read(HandmadeWorkbook.OfRows("<row r='3'><c r='B3'><f>1+6</f></c><c r='C3' t='e'><v>#REF!</v></c></row>"), out IReadOnlyList<TableProblem> problems);
        Assert.Equal(["sheet S, row 3, column B", "sheet S, row 3, column C"], problems.Select(p => p.ToString().Split(": ")[0]));
        Assert.Contains("formula without a value", problems[0].Reason, StringComparison.Ordinal);
        Assert.Contains("#REF!", problems[1].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Cells_merged_downwards_all_have_the_value_and_those_beside_it_none()
    {
        byte[] workbook = HandmadeWorkbook.OfRows(
            "<row r='1'><c r='A1' t='str'><v>net</v></c><c r='B1' t='str'><v>title</v></c></row><row r='2'><c r='B2' t='str'><v>x</v></c></row>",
            "<mergeCells><mergeCell ref='A1:A3'/><mergeCell ref='B1:C1'/></mergeCells>");
        TableSheet sheet = XlsxReader.Read(workbook, out _).Single();
        Assert.Equal(["net", "net", "net"], sheet.Rows.Select(r => r[0]));
        Assert.Equal("", sheet.Rows[0][2]);
    }
}
