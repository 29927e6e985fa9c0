using System.Text;
using PolarityMap.Drawing.Fonts;
using PolarityMap.Reports.Templates;

namespace PolarityMap.Reports.Pages;

/// <summary>The style of a page. The font is in it once, for the words of the page and for its drawings.</summary>
internal static class PageStyle
{
    /// <summary>Style sheets one after the other, and behind them what the diagram brings along.</summary>
    /// <param name="folder">Where the style sheets are.</param>
    /// <param name="files">Their names.</param>
    /// <param name="further">What the program made itself.</param>
    /// <exception cref="TemplateException">A style sheet would end the element that it stands in.</exception>
    public static string Of(TemplateFolder folder, IReadOnlyList<string> files, string further = "")
    {
        var style = new StringBuilder("@font-face { font-family: '").Append(FontMetrics.Family).Append("'; src: url(data:font/ttf;base64,").Append(EmbeddedFont.Base64).Append(") format('truetype') }\n");
        foreach (string file in files)
            style.Append(folder.TextFor("style", file));
        return style.Append(further).ToString();
    }
}
