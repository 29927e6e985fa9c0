using System.IO.Compression;
using System.Xml.Linq;

namespace PolarityMap.Documents.Tests.Tables;

/// <summary>A cell as it stands in a workbook.</summary>
/// <param name="Type">The attribute <c>t</c>: <c>s</c> for a shared text, null for a number.</param>
/// <param name="Value">The text or the number; null where the cell is empty.</param>
/// <param name="Format">The number of the format that its style has.</param>
internal sealed record PlainCell(string? Type, string? Value, int Format);

/// <summary>A sheet as it stands in a workbook: its root element, and its cells by their places, such as <c>B2</c>.</summary>
internal sealed record PlainSheet(string Name, XElement Root, IReadOnlyDictionary<string, PlainCell> Cells)
{
    /// <summary>All elements of the sheet with a name of the format.</summary>
    public IEnumerable<XElement> Elements(string name) => Root.Descendants(PlainWorkbook.Main + name);
}

/// <summary>
/// A second reader of workbooks, which judges the program's: the zip file of the base library and XML as a tree. It shares nothing with the
/// library that writes and reads them in the program.
/// </summary>
internal static class PlainWorkbook
{
    public static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static readonly XNamespace s_package = "http://schemas.openxmlformats.org/package/2006/relationships";
    private static readonly XNamespace s_relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    public static IReadOnlyList<PlainSheet> Read(byte[] workbook)
    {
        using var zip = new ZipArchive(new MemoryStream(workbook));
        Dictionary<string, (string Type, string Path)> parts = Part(zip, "xl/_rels/workbook.xml.rels").Elements(s_package + "Relationship")
            .ToDictionary(r => (string)r.Attribute("Id")!, r => (((string)r.Attribute("Type")!).Split('/')[^1], Path((string)r.Attribute("Target")!)));
        XElement Of(string type) => Part(zip, parts.Values.Single(p => p.Type == type).Path);
        string[] texts = [.. Of("sharedStrings").Elements(Main + "si").Select(i => string.Concat(i.Descendants(Main + "t").Select(t => t.Value)))];
        int[] formats = [.. Of("styles").Element(Main + "cellXfs")!.Elements(Main + "xf").Select(f => (int)f.Attribute("numFmtId")!)];
        return
        [
            .. Part(zip, "xl/workbook.xml").Descendants(Main + "sheet").Select(s =>
            {
                XElement root = Part(zip, parts[(string)s.Attribute(s_relations + "id")!].Path);
                return new PlainSheet((string)s.Attribute("name")!, root, root.Descendants(Main + "c").ToDictionary(c => (string)c.Attribute("r")!, c => Cell(c, texts, formats)));
            }),
        ];
    }

    /// <summary>The names that a workbook gives to ranges, each with what it refers to.</summary>
    public static IReadOnlyList<(string Name, string RefersTo)> Names(byte[] workbook)
    {
        using var zip = new ZipArchive(new MemoryStream(workbook));
        return [.. Part(zip, "xl/workbook.xml").Descendants(Main + "definedName").Select(n => ((string)n.Attribute("name")!, n.Value))];
    }

    private static PlainCell Cell(XElement cell, string[] texts, int[] formats)
    {
        string? type = (string?)cell.Attribute("t");
        string? value = cell.Element(Main + "v")?.Value;
        return new PlainCell(type, type == "s" ? texts[int.Parse(value!)] : value, formats[(int)cell.Attribute("s")!]);
    }

    private static string Path(string target) => target.StartsWith('/') ? target[1..] : "xl/" + target;

    private static XElement Part(ZipArchive zip, string path)
    {
        using Stream part = zip.GetEntry(path)!.Open();
        return XElement.Load(part, LoadOptions.PreserveWhitespace);
    }
}
