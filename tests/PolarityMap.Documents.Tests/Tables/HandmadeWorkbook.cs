using System.IO.Compression;
using System.Text;

namespace PolarityMap.Documents.Tests.Tables;

/// <summary>Workbooks whose XML is written out here, as other programs might write it, or as none should.</summary>
internal static class HandmadeWorkbook
{
    public const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Package = "http://schemas.openxmlformats.org/package/2006";
    private const string Type = "application/vnd.openxmlformats-officedocument.spreadsheetml";

    /// <summary>A workbook with one sheet <c>S</c> of these rows and what may follow them.</summary>
    public static byte[] OfRows(string rows, string after = "", string strings = "") =>
        Of($"<worksheet xmlns='{Main}' xmlns:r='{Relations}'><sheetData>{rows}</sheetData>{after}</worksheet>", strings: strings);

    /// <summary>A workbook with one part for a sheet.</summary>
    /// <param name="sheet">The part.</param>
    /// <param name="more">What is written into the part after it.</param>
    /// <param name="parts">How many empty parts there are besides.</param>
    /// <param name="sheets">The list of sheets; the part is <c>r1</c>.</param>
    /// <param name="relations">More relations of the workbook.</param>
    /// <param name="strings">The items of the shared texts.</param>
    public static byte[] Of(
        string sheet, Action<Stream>? more = null, int parts = 0, string sheets = "<sheet name='S' sheetId='1' r:id='r1'/>", string relations = "", string strings = "")
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(
                zip,
                "[Content_Types].xml",
                $"<Types xmlns='{Package}/content-types'><Default Extension='rels' ContentType='application/vnd.openxmlformats-package.relationships+xml'/>"
                + $"<Default Extension='xml' ContentType='{Type}.worksheet+xml'/><Override PartName='/xl/workbook.xml' ContentType='{Type}.sheet.main+xml'/>"
                + $"<Override PartName='/xl/sharedStrings.xml' ContentType='{Type}.sharedStrings+xml'/></Types>");
            Add(zip, "_rels/.rels", $"<Relationships xmlns='{Package}/relationships'><Relationship Id='r1' Type='{Relations}/officeDocument' Target='xl/workbook.xml'/></Relationships>");
            Add(zip, "xl/workbook.xml", $"<workbook xmlns='{Main}' xmlns:r='{Relations}'><sheets>{sheets}</sheets></workbook>");
            Add(
                zip,
                "xl/_rels/workbook.xml.rels",
                $"<Relationships xmlns='{Package}/relationships'><Relationship Id='r1' Type='{Relations}/worksheet' Target='worksheets/sheet1.xml'/>"
                + $"<Relationship Id='r2' Type='{Relations}/sharedStrings' Target='sharedStrings.xml'/>{relations}</Relationships>");
            Add(zip, "xl/sharedStrings.xml", $"<sst xmlns='{Main}'>{strings}</sst>");
            using (Stream part = zip.CreateEntry("xl/worksheets/sheet1.xml", CompressionLevel.Fastest).Open())
            {
                part.Write(Encoding.UTF8.GetBytes(sheet));
                more?.Invoke(part);
            }

            for (int i = 0; i < parts; i++)
                Add(zip, $"more/{i}", "");
        }

        return bytes.ToArray();
    }

    /// <summary>The same workbook with a text of one of its parts replaced.</summary>
    public static byte[] Changed(byte[] workbook, Func<string, string, string> change)
    {
        using var bytes = new MemoryStream();
        using (var from = new ZipArchive(new MemoryStream(workbook)))
        using (var to = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (ZipArchiveEntry entry in from.Entries)
            {
                using var text = new StreamReader(entry.Open());
                Add(to, entry.FullName, change(entry.FullName, text.ReadToEnd()));
            }
        }

        return bytes.ToArray();
    }

    public static void Add(ZipArchive zip, string name, string text)
    {
        using Stream part = zip.CreateEntry(name).Open();
        part.Write(Encoding.UTF8.GetBytes(text));
    }
}
