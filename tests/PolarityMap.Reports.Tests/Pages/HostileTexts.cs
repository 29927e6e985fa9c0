using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Xunit;

namespace PolarityMap.Reports.Tests.Pages;

/// <summary>What <see cref="Plants.Hostile"/> tries, and that none of it comes true.</summary>
internal static class HostileTexts
{
    public static void AssertHarmless(IHtmlDocument page)
    {
        Assert.DoesNotContain(page.QuerySelectorAll("*"), e => e.LocalName.Contains("evil", StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain(page.QuerySelectorAll("*"), e => e.Attributes.Any(a => a.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase)));
        Assert.Single(page.QuerySelectorAll("style"));
        Assert.DoesNotContain(page.Descendants(), n => n.NodeType == NodeType.Comment);
        Assert.DoesNotContain(page.DocumentElement.TextContent, c => c is '\u202E' or '\u202D' or '\u2066' or '\u2067');
    }
}
