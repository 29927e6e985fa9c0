using PolarityMap.Drawing.Fonts;
using PolarityMap.Reports.Templates;

namespace PolarityMap.Reports.Pages;

/// <summary>Style sheets of pages. The font is in each page once, for its words and its drawings.</summary>
internal static class PageStyle
{
    public static string Font { get; } =
        $"@font-face {{ font-family: '{FontMetrics.Family}'; src: url(data:font/ttf;base64,{EmbeddedFont.Base64}) format('truetype') }}\n";

    /// <summary>Style sheets one after the other, with the font in front.</summary>
    /// <exception cref="TemplateException">One of them would end the element that it stands in.</exception>
    public static string Of(TemplateFolder folder, params string[] files)
    {
        var style = new System.Text.StringBuilder(Font);
        foreach (string file in files)
            style.Append(folder.TextFor("style", file));
        return style.ToString();
    }
}
