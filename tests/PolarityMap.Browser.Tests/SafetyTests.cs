using Microsoft.Playwright;
using Xunit;

namespace PolarityMap.Browser.Tests;

/// <summary>Unfriendly names come out as text, and the page's own policy keeps everything else out.</summary>
public sealed class SafetyTests(Chromium chromium) : BrowserTest(chromium)
{
    [SkippableFact]
    public async Task Markup_and_scripts_in_titles_and_rooms_are_text_in_every_place()
    {
        IPage page = await Open(ReportPages.Unfriendly, "#strand-1");
        await page.WaitLit("1");
        Assert.Equal("</script><script>document.title='taken'</script> & \"friends\": report", await page.TitleAsync());
        const string one = "=<img src=x onerror=document.title=1>", two = "]]></svg></script><b>'\"&amp;";
        Assert.Contains($"from ONE/1:A, transmit, in {one} to TWO/1:B, receive, in {two}.", await Words(page), StringComparison.Ordinal);
        await page.FillAsync("#diagram-find", "<img");
        Assert.Contains($"room {one}", await page.Locator("#diagram-matches button").First.InnerTextAsync(), StringComparison.Ordinal);
        await page.Locator("#diagram-matches button").First.ClickAsync();
        await page.EvaluateAsync("() => { location.hash = '#port=TWO%2F2' }");
        await page.WaitLit("3 4");
        Assert.Contains(two, await Words(page), StringComparison.Ordinal);
        Assert.Equal([one, two], await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('optgroup')].map(g => g.label)"));
        Assert.Equal(0, await page.Locator("img, b, svg script").CountAsync());
        Assert.Equal(2, await page.Locator("script").CountAsync());
    }

    [SkippableFact]
    public async Task No_element_carries_a_style_or_a_handler_and_no_address_leads_out()
    {
        IPage page = await Open(ReportPages.AsBuilt, options: o => o.JavaScriptEnabled = false);
        string text = await page.ContentAsync();
        Assert.DoesNotMatch("<[a-z][^<>]* (style|on[a-z]+|src|srcset|action)=", text);
        Assert.DoesNotMatch("<[a-z][^<>]* (href|xlink:href)=\"(?!#)", text);
        Assert.DoesNotContain("<foreignObject", text, StringComparison.OrdinalIgnoreCase);
    }

    [SkippableFact]
    public async Task Ids_are_unique_in_the_whole_page()
    {
        IPage page = await Open(ReportPages.OperaHouse);
        Assert.Equal("", await page.EvaluateAsync<string>("""
            () => {
              const seen = new Set();
              return [...document.querySelectorAll('[id]')].map(e => e.id).filter(id => seen.size === seen.add(id).size).join(' ');
            }
            """));
    }
}
