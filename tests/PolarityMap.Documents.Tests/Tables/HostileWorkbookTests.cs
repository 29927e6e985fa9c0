using System.Buffers.Binary;
using System.IO.Compression;
using CsCheck;
using PolarityMap.Core.Schedules;
using PolarityMap.Documents.Tables;
using Xunit;

namespace PolarityMap.Documents.Tests.Tables;

/// <summary>Workbooks that mean harm or are none end with a reason.</summary>
public sealed class HostileWorkbookTests
{
    private const string Main = HandmadeWorkbook.Main;

    private static string Refused(byte[] bytes) => Assert.Throws<TableException>(() => XlsxReader.Read(bytes, out _)).Message;

    [Fact]
    public void A_workbook_that_unpacks_to_far_too_much_is_not_unpacked()
    {
        byte[] bomb = HandmadeWorkbook.Of($"<worksheet xmlns='{Main}'>", part =>
        {
            byte[] blanks = new byte[1 << 20];
            Array.Fill(blanks, (byte)' ');
            for (int i = 0; i < (TableLimits.UnpackedBytes >> 20) + 1; i++)
                part.Write(blanks);
        });
        Assert.InRange(bomb.Length, 0, TableLimits.FileBytes);
        Assert.Contains("unpacks to more", Refused(bomb), StringComparison.Ordinal);
    }

    // 100 MiB, three times: what is unpacked counts each time.
    [Fact]
    public void A_part_that_many_sheets_name_is_not_unpacked_for_each_of_them()
    {
        byte[] bomb = HandmadeWorkbook.Of(
            $"<worksheet xmlns='{Main}'/>",
            part =>
            {
                byte[] blanks = new byte[1 << 20];
                Array.Fill(blanks, (byte)'\n');
                for (int i = 0; i < 100; i++)
                    part.Write(blanks);
            },
            sheets: string.Concat(Enumerable.Range(1, 3).Select(i => $"<sheet name='S{i}' sheetId='{i}' r:id='r1'/>")));
        Assert.Contains("unpacks to more", Refused(bomb), StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_that_unpacks_to_more_than_the_list_of_parts_says_is_cut_there()
    {
        byte[] workbook = HandmadeWorkbook.Of($"<worksheet xmlns='{Main}'><sheetData><row r='1'><c r='A1'><v>5</v></c></row></sheetData></worksheet>{new string(' ', 5000)}");
        Assert.Equal("5", XlsxReader.Read(workbook, out _).Single().Rows.Single()[0]);

        // The size stands 24 bytes into the part's entry of the central directory, whose name begins 46 bytes in.
        int at = workbook.AsSpan().LastIndexOf("xl/worksheets/sheet1.xml"u8) - 46;
        BinaryPrimitives.WriteInt32LittleEndian(workbook.AsSpan(at + 24), 120);
        Assert.Contains("damaged", Refused(workbook), StringComparison.Ordinal);
    }

    [Fact]
    public void Lists_of_parts_that_are_far_too_long_are_refused() => Assert.Contains(
        "listed in more",
        Refused(HandmadeWorkbook.Of("<a/>", relations: new string(' ', (int)TableLimits.RelationBytes))),
        StringComparison.Ordinal);

    [Theory]
    [InlineData("<row><c><v>", "</v></c></row>")]
    [InlineData("<row><c t='inlineStr'><is><t>", "</t></is></c></row>")]
    [InlineData("<row><c t='inlineStr'><is>", "</is></c></row>")]
    [InlineData("<row><c><f>", "</f></c></row>")]
    [InlineData("<row><c><v>1</v><extLst><ext>", "</ext></extLst></c></row>")]
    [InlineData("<row>", "</row>")]
    [InlineData("</sheetData><mergeCells><mergeCell ref='A1:A2'>", "</mergeCell></mergeCells><sheetData>")]
    [InlineData("</sheetData><sheetViews><sheetView><pane>", "</pane></sheetView></sheetViews><sheetData>")]
    public void Elements_nested_far_too_deep_are_refused(string before, string after)
    {
        const int depth = 400_000;
        string nest = string.Concat(Enumerable.Repeat("<a>", depth)) + string.Concat(Enumerable.Repeat("</a>", depth));
        Assert.Contains("damaged", Refused(HandmadeWorkbook.OfRows(before + nest + after)), StringComparison.Ordinal);
    }

    [Fact]
    public void Entities_and_document_types_are_refused()
    {
        string sheet = $"<!DOCTYPE w [<!ENTITY a 'aaaa'><!ENTITY b '&a;&a;&a;'>]><worksheet xmlns='{Main}'><sheetData><row><c t='str'><v>&b;</v></c></row></sheetData></worksheet>";
        Assert.Contains("damaged", Refused(HandmadeWorkbook.Of(sheet)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<row r='1'><c r='A1' t='s'><v>5</v></c></row>", "names a text that is not there")]
    [InlineData("<row r='1'><c r='ZZZ1'><v>5</v></c></row>", "columns")]
    [InlineData("<row r='1'><c r='A1'><v>5</v></c>", "damaged")]
    [InlineData("<row r='1'><c r='A1'><v>5</v></c></row></sheetData><mergeCells><mergeCell ref='A1:A999999'/></mergeCells><sheetData>", "merged")]
    public void A_sheet_that_cannot_be_is_refused_with_a_reason(string rows, string expected) =>
        Assert.Contains(expected, Refused(HandmadeWorkbook.OfRows(rows)), StringComparison.Ordinal);

    [Fact]
    public void Too_many_parts_are_refused() => Assert.Contains("parts", Refused(HandmadeWorkbook.Of("<a/>", parts: TableLimits.Entries)), StringComparison.Ordinal);

    [Fact]
    public void Other_files_are_told_by_what_they_are()
    {
        Assert.Contains("password", Refused([0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1]), StringComparison.Ordinal);
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
            HandmadeWorkbook.Add(zip, "content.xml", "<a/>");
        Assert.Contains("no workbook", Refused(bytes.ToArray()), StringComparison.Ordinal);
        byte[] letter = HandmadeWorkbook.Changed(
            HandmadeWorkbook.OfRows(""), static (_, text) => text.Replace("spreadsheetml.sheet.main", "wordprocessingml.document.main", StringComparison.Ordinal)
                .Replace("<workbook", "<document", StringComparison.Ordinal).Replace("</workbook", "</document", StringComparison.Ordinal));
        Assert.Contains("no workbook", Refused(letter), StringComparison.Ordinal);
        Assert.Contains("damaged", Refused("PK\u0003\u0004 and nothing more"u8.ToArray()), StringComparison.Ordinal);
    }

    [Fact]
    public void A_workbook_with_changed_bytes_is_read_or_refused_and_nothing_else()
    {
        var schedule = new Schedule("t", "T", "For tests.", [new("a", "A"), new("b", "B", CellKind.Whole)], [[Cell.Of("x"), Cell.Of(1)], [Cell.Of("y"), Cell.Of(2)]]);
        byte[] workbook = XlsxWriter.Write([schedule]);
        Gen.Select(Gen.Int[0, workbook.Length - 1], Gen.Byte).Array[1, 3].Sample(
            changes =>
            {
                byte[] changed = [.. workbook];
                foreach ((int at, byte value) in changes)
                    changed[at] = value;
                try
                {
                    TableFile.Read("t", changed, out _);
                }
                catch (TableException told)
                {
                    Assert.NotEqual("", told.Message);
                }
            },
            iter: 600);
    }
}
