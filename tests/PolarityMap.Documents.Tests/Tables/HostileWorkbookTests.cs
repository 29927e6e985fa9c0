using System.IO.Compression;
using System.Text;
using CsCheck;
using PolarityMap.Core.Schedules;
using PolarityMap.Documents.Tables;
using Xunit;

namespace PolarityMap.Documents.Tests.Tables;

/// <summary>Workbooks that mean harm or are none end with a reason.</summary>
public sealed class HostileWorkbookTests
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private static byte[] Workbook(string sheet, Action<Stream>? stream = null, int more = 0)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(zip, "xl/workbook.xml", $"<workbook xmlns='{Main}' xmlns:r='{Relations}'><sheets><sheet name='S' sheetId='1' r:id='r1'/></sheets></workbook>");
            Add(zip, "xl/_rels/workbook.xml.rels", $"<Relationships xmlns='http://schemas.openxmlformats.org/package/2006/relationships'><Relationship Id='r1' Type='{Relations}/worksheet' Target='worksheets/sheet1.xml'/></Relationships>");
            using (Stream part = zip.CreateEntry("xl/worksheets/sheet1.xml", CompressionLevel.Fastest).Open())
            {
                part.Write(Encoding.UTF8.GetBytes(sheet));
                stream?.Invoke(part);
            }

            for (int i = 0; i < more; i++)
                Add(zip, $"more/{i}", "");
        }

        return bytes.ToArray();
    }

    private static void Add(ZipArchive zip, string name, string text)
    {
        using Stream part = zip.CreateEntry(name).Open();
        part.Write(Encoding.UTF8.GetBytes(text));
    }

    private static string Refused(byte[] bytes) => Assert.Throws<TableException>(() => XlsxReader.Read(bytes, out _)).Message;

    [Fact]
    public void A_workbook_that_unpacks_to_far_too_much_is_not_unpacked()
    {
        byte[] bomb = Workbook($"<worksheet xmlns='{Main}'>", part =>
        {
            byte[] blanks = new byte[1 << 20];
            Array.Fill(blanks, (byte)' ');
            for (int i = 0; i < (TableLimits.UnpackedBytes >> 20) + 1; i++)
                part.Write(blanks);
        });
        Assert.InRange(bomb.Length, 0, TableLimits.FileBytes);
        Assert.Contains("unpacks to more", Refused(bomb), StringComparison.Ordinal);
    }

    [Fact]
    public void Entities_and_document_types_are_refused()
    {
        string sheet = $"<!DOCTYPE w [<!ENTITY a 'aaaa'><!ENTITY b '&a;&a;&a;'>]><worksheet xmlns='{Main}'><sheetData><row><c t='str'><v>&b;</v></c></row></sheetData></worksheet>";
        Assert.Contains("damaged", Refused(Workbook(sheet)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<row r='1'><c r='A1' t='s'><v>5</v></c></row>", "names a text that is not there")]
    [InlineData("<row r='1'><c r='ZZZ1'><v>5</v></c></row>", "columns")]
    [InlineData("<row r='1'><c r='A1'><v>5</v></c>", "damaged")]
    [InlineData("<row r='1'><c r='A1'><v>5</v></c></row></sheetData><mergeCells><mergeCell ref='A1:A999999'/></mergeCells><sheetData>", "merged")]
    public void A_sheet_that_cannot_be_is_refused_with_a_reason(string rows, string expected) =>
        Assert.Contains(expected, Refused(Workbook($"<worksheet xmlns='{Main}'><sheetData>{rows}</sheetData></worksheet>")), StringComparison.Ordinal);

    [Fact]
    public void Too_many_parts_are_refused() => Assert.Contains("parts", Refused(Workbook("<a/>", more: TableLimits.Entries)), StringComparison.Ordinal);

    [Fact]
    public void Other_files_are_told_by_what_they_are()
    {
        Assert.Contains("password", Refused([0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1]), StringComparison.Ordinal);
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
            Add(zip, "content.xml", "<a/>");
        Assert.Contains("no workbook", Refused(bytes.ToArray()), StringComparison.Ordinal);
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
