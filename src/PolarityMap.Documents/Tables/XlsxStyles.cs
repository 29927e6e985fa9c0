using System.Xml;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Documents.Tables;

/// <summary>How cells look: a format for each kind, bold headings on grey, blanks with a border to be filled in.</summary>
internal static class XlsxStyles
{
    public const string Text = "1";
    public const string Heading = "5";
    public const string OneLine = "6";

    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    /// <summary>The number of the style of a kind's numbers and blanks.</summary>
    public static string Of(CellKind kind) => kind switch
    {
        CellKind.Whole => "2",
        CellKind.Metres or CellKind.Decibels => "3",
        CellKind.Blank => "4",
        _ => Text,
    };

    public static void Write(XmlWriter xml) => xml.WriteRaw(
        $"""
        <styleSheet xmlns="{Main}"><fonts count="2"><font><sz val="10"/><name val="Arial"/></font><font><b/><sz val="10"/><name val="Arial"/></font></fonts><fills count="3"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill><fill><patternFill patternType="solid"><fgColor rgb="FFE6E6E6"/><bgColor indexed="64"/></patternFill></fill></fills><borders count="2"><border><left/><right/><top/><bottom/><diagonal/></border><border><left style="thin"/><right style="thin"/><top style="thin"/><bottom style="thin"/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="7"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="49" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1" applyAlignment="1"><alignment vertical="top" wrapText="1"/></xf><xf numFmtId="1" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1" applyAlignment="1"><alignment horizontal="right" vertical="top" indent="1"/></xf><xf numFmtId="2" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1" applyAlignment="1"><alignment horizontal="right" vertical="top" indent="1"/></xf><xf numFmtId="0" fontId="0" fillId="0" borderId="1" xfId="0" applyBorder="1"/><xf numFmtId="49" fontId="1" fillId="2" borderId="0" xfId="0" applyNumberFormat="1" applyFont="1" applyFill="1" applyAlignment="1"><alignment vertical="top" wrapText="1"/></xf><xf numFmtId="49" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1" applyAlignment="1"><alignment vertical="top"/></xf></cellXfs></styleSheet>
        """);
}
