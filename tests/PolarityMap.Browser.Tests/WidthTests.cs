using Microsoft.Playwright;
using Xunit;

namespace PolarityMap.Browser.Tests;

/// <summary>On a phone, a tablet and a desk nothing is wider than the window, whatever is lit, found or filtered.</summary>
public sealed class WidthTests(Chromium chromium) : BrowserTest(chromium)
{
    [SkippableTheory]
    [InlineData(360, 740)]
    [InlineData(768, 1024)]
    [InlineData(1440, 900)]
    public async Task Nothing_overflows_the_window(int width, int height)
    {
        IPage page = await Open(ReportPages.AsBuilt, width: width, height: height);
        await AssertFits(page, "fresh");
        await page.EvaluateAsync("() => { location.hash = '#strand-97' }");
        await page.WaitLit("97");
        await AssertFits(page, "strand lit");
        await page.EvaluateAsync("() => { location.hash = '#part=LX-T' }");
        await page.FillAsync("#diagram-find", "a");
        await page.SelectOptionAsync("#diagram-finding", "with");
        await page.ClickAsync("summary");
        await AssertFits(page, "large part lit, matches listed");
        await page.EvaluateAsync("() => { Object.defineProperty(navigator, 'clipboard', { value: undefined }) }");
        await page.ClickAsync("#diagram-copy");
        await AssertFits(page, "link to copy");
        Assert.True(await page.EvaluateAsync<double>("() => document.querySelector('.panel').getBoundingClientRect().height / innerHeight") < 0.6);
    }

    private static async Task AssertFits(IPage page, string state)
    {
        int[] widths = await page.EvaluateAsync<int[]>("() => [document.documentElement.scrollWidth, innerWidth]");
        Assert.True(widths[0] <= widths[1], $"{state}: the page is {widths[0]} wide in a window of {widths[1]}");
    }
}
