using Microsoft.Playwright;
using Xunit;

namespace PolarityMap.Browser.Tests;

/// <summary>Links to a strand or a port: they open lit, they follow the choice, and they can be copied.</summary>
public sealed class LinkTests(Chromium chromium) : BrowserTest(chromium)
{
    [SkippableFact]
    public async Task A_page_opens_with_what_its_link_names_lit_and_follows_when_the_link_changes()
    {
        IPage page = await Open(ReportPages.Duplex, "#port=K-R%2Frear%3A5");
        await page.WaitLit("7");
        Assert.StartsWith("At K-R/rear:5.", await Words(page), StringComparison.Ordinal);
        foreach ((string fragment, string lit, string words) in ((string, string, string)[])
            [
                ("#strand-7", "7", "Strand 7, slate"), ("#port=SW-L%2F1", "1 2", "At SW-L/1: what should arrive."), ("#strand-8", "8", "Strand 8, white"), ("#port=SW-L/1", "1 2", "At SW-L/1: what should arrive."),
                ("#part=K-L", "1 2 3 4 5 6 7 8 9 10 11 12", "K-L, cassette straight. 12 strands pass it: 1 to 12."),
            ])
        {
            await page.EvaluateAsync("fragment => { location.hash = fragment }", fragment);
            await page.WaitLit(lit);
            Assert.StartsWith(words, await Words(page), StringComparison.Ordinal);
        }
    }

    [SkippableTheory]
    [InlineData("#strand-99")]
    [InlineData("#port=%E0%A4%A")]
    [InlineData("#diagram-table")]
    public async Task A_link_that_names_nothing_lights_nothing(string fragment)
    {
        IPage page = await Open(ReportPages.Duplex, fragment);
        Assert.Equal("", await page.Lit());
        Assert.StartsWith("Point at a strand", await Words(page), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task A_linked_strand_is_in_the_window()
    {
        IPage page = await Open(ReportPages.OperaHouse, "#strand-120");
        await page.WaitLit("120");
        await page.WaitForFunctionAsync("""
            () => {
              const box = document.querySelector('.lit-strands path').getBoundingClientRect();
              return box.top > 0 && box.top < innerHeight && box.left > 0 && box.left < innerWidth;
            }
            """);
    }

    [SkippableFact]
    public async Task A_link_in_the_page_lights_its_strand()
    {
        IPage page = await Open(ReportPages.Duplex);
        await page.EvaluateAsync("() => { const a = document.createElement('a'); a.href = '#strand-9'; a.textContent = 'strand 9'; document.querySelector('h1').append(a); a.click(); }");
        await page.WaitLit("9");
    }

    [SkippableFact]
    public async Task The_copied_link_opens_the_same_strand()
    {
        IPage page = await Open(ReportPages.Duplex, options: o => o.Permissions = ["clipboard-read", "clipboard-write"]);
        await page.Click(await page.OnPosition("SW-R/2:A"));
        await page.ClickAsync("#diagram-copy");
        await Assertions.Expect(page.Locator("#diagram-copied")).ToHaveTextAsync("The link is copied.");
        string link = await page.EvaluateAsync<string>("() => navigator.clipboard.readText()");
        Assert.EndsWith("duplex-B.html#port=SW-R%2F2%3AA", link, StringComparison.Ordinal);
        Assert.Equal(link, page.Url);
        await page.GotoAsync("about:blank");
        await page.GotoAsync(link);
        await page.WaitLit("4");
    }

    [SkippableFact]
    public async Task Without_the_clipboard_the_link_is_marked_to_be_copied_by_hand()
    {
        IPage page = await Open(ReportPages.Duplex);
        await page.EvaluateAsync("() => { Object.defineProperty(navigator, 'clipboard', { value: { writeText: () => Promise.reject(new Error('no')) } }) }");
        await page.Click(await page.OnStrand(11));
        Assert.False(await page.IsVisibleAsync("#diagram-address"));
        await page.ClickAsync("#diagram-copy");
        await Assertions.Expect(page.Locator("#diagram-address")).ToBeFocusedAsync();
        Assert.EndsWith("#strand-11", await page.EvaluateAsync<string>("() => getSelection().toString() || document.activeElement.value.slice(document.activeElement.selectionStart, document.activeElement.selectionEnd)"), StringComparison.Ordinal);
        Assert.Contains("copy the marked link yourself", await page.InnerTextAsync("#diagram-copied"), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task Marks_on_the_index_and_at_cuts_lead_to_their_sheets()
    {
        IPage page = await Open(ReportPages.OperaHouse);
        await page.EvaluateAsync("() => document.getElementById('sheet-1').scrollIntoView()");
        float[] at = await page.EvaluateAsync<float[]>("""
            () => {
              const [x, y, w, h] = JSON.parse(document.getElementById('diagram-data').textContent).sheets[0].links.slice(0, 4);
              const svg = document.querySelector('#sheet-1 svg'), box = svg.getBoundingClientRect(), scale = box.width / svg.viewBox.baseVal.width;
              return [box.left + (x + w / 2) * scale, box.top + (y + h / 2) * scale];
            }
            """);
        int to = await page.EvaluateAsync<int>("() => JSON.parse(document.getElementById('diagram-data').textContent).sheets[0].links[4]");
        await page.Click(at);
        await page.WaitForFunctionAsync($"() => Math.abs(document.getElementById('sheet-{to}').getBoundingClientRect().top) < 40");
    }
}
