using System.Text;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using SheetText = DocumentFormat.OpenXml.Spreadsheet.Text;

namespace PolarityMap.Documents.Tables;

/// <summary>The texts of a workbook: every text once, numbered in the order in which cells need them.</summary>
internal sealed class XlsxStrings
{
    private static readonly OpenXmlAttribute[] s_keepBlanks = [new("xml", "space", "http://www.w3.org/XML/1998/namespace", "preserve")];

    private readonly Dictionary<string, int> _index = new(StringComparer.Ordinal);
    private readonly List<string> _texts = [];
    private uint _uses;

    public int IndexOf(string text)
    {
        _uses++;
        if (_index.TryGetValue(text, out int index))
            return index;
        _texts.Add(text);
        return _index[text] = _texts.Count - 1;
    }

    public void Write(SharedStringTablePart part)
    {
        using var xml = new OpenXmlPartWriter(part, new UTF8Encoding(false));
        xml.WriteStartDocument(true);
        xml.WriteStartElement(new SharedStringTable { Count = _uses, UniqueCount = (uint)_texts.Count });
        var item = new SharedStringItem();
        var holder = new SheetText();
        foreach (string text in _texts)
        {
            xml.WriteStartElement(item);
            xml.WriteStartElement(holder, text[0] is ' ' or '\t' or '\n' || text[^1] is ' ' or '\t' or '\n' ? s_keepBlanks : []);
            xml.WriteString(XlsxText.Escape(text));
            xml.WriteEndElement();
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
    }
}
