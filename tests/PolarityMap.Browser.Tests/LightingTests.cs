using Microsoft.Playwright;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Browser.Tests;

/// <summary>
/// Strands light up by mouse, touch and keyboard, from a strand, a position and a port. Oracles: the lines drawn on the sheets,
/// and the hops of the trace.
/// </summary>
public sealed class LightingTests(Chromium chromium) : BrowserTest(chromium)
{
    private const string Hint = "Point at a strand, a port or a position, or choose one, to see its whole way.";

    [SkippableFact]
    public async Task The_mouse_on_a_strand_lights_its_whole_way_for_as_long_as_it_is_there()
    {
        IPage page = await Open(ReportPages.Duplex);
        Assert.Equal(Hint, await Words(page));
        await page.Hover(await page.OnStrand(7));
        await page.WaitLit("7");
        await page.Hover(await page.OnStrand(8));
        await page.WaitLit("8");
        await page.Mouse.MoveAsync(5, 5);
        await page.WaitLit("");
        Assert.Equal(Hint, await Words(page));
    }

    [SkippableFact]
    public async Task The_words_tell_every_hop_of_the_trace()
    {
        IPage page = await Open(ReportPages.Duplex);
        TracedPlant traced = ReportPages.Told("gallery/methods/duplex-B.yaml").Traced;
        foreach (int number in (int[])[7, 12])
        {
            await page.Hover(await page.OnStrand(number));
            await page.WaitLit($"{number}");
            int strand = Enumerable.Range(0, traced.Strands.Count).Single(s => traced.NumberOf(s) == number);
            Assert.Equal(HopLine.Of(traced, strand).Split(" → "), await page.Locator("#diagram-words li").AllInnerTextsAsync());
        }

        Assert.Equal("status", await page.Locator("#diagram-words").GetAttributeAsync("role"));
    }

    [SkippableFact]
    public async Task The_mouse_on_a_position_lights_its_strand_and_on_a_port_all_of_its_strands()
    {
        IPage page = await Open(ReportPages.Duplex);
        await page.Hover(await page.OnPosition("K-L/rear:9"));
        await page.WaitLit("10");
        await page.Hover(await page.OnPort("SW-R/4"));
        await page.WaitLit("7 8");
        await page.Hover(await page.OnPort("K-L/2"));
        await page.WaitLit("3 4");
    }

    [SkippableFact]
    public async Task Where_the_panel_grows_under_the_mouse_what_is_lit_stays_lit_and_can_be_read()
    {
        IPage page = await Open(ReportPages.Duplex, height: 640);
        float[] at = await page.OnStrand(7);
        await page.EvaluateAsync("by => scrollBy(0, by)", (double)at[1] - 560);
        double before = await PanelHeight(page);
        await page.Mouse.MoveAsync(at[0], 560);
        await page.WaitLit("7");
        Assert.True(await PanelHeight(page) > before + 70, "the panel has not grown to where the mouse is");
        for (int i = 0; i < 8; i++)
        {
            await page.Mouse.MoveAsync(at[0] + i, 560);
            await Task.Delay(40);
            Assert.Equal("7", await page.Lit());
        }

        await page.Mouse.MoveAsync(5, 5);
        await page.WaitLit("");
    }

    [SkippableFact]
    public async Task What_is_clicked_stays_lit_until_it_is_cleared()
    {
        IPage page = await Open(ReportPages.Duplex);
        await page.Click(await page.OnStrand(3));
        await page.Mouse.MoveAsync(5, 5);
        await page.WaitLit("3");
        await page.Hover(await page.OnStrand(9));
        await page.WaitLit("9");
        await page.Mouse.MoveAsync(5, 5);
        await page.WaitLit("3");
        await page.Keyboard.PressAsync("Escape");
        await page.WaitLit("");
        await page.Click(await page.OnPosition("TRUNK/near:4"));
        await page.Mouse.MoveAsync(5, 5);
        await page.WaitLit("10");
        await page.ClickAsync("#diagram-clear");
        await page.WaitLit("");
    }

    [SkippableFact]
    public async Task A_tap_on_a_strand_a_position_or_a_port_lights_it()
    {
        IPage page = await Open(ReportPages.Duplex, width: 360, height: 740, options: o => (o.HasTouch, o.IsMobile) = (true, true));
        await page.Tap(await page.OnStrand(5));
        await page.WaitLit("5");
        await page.Tap(await page.OnPosition("SW-R/6:A"));
        await page.WaitLit("12");
        Assert.Contains("At SW-R/6:A", await Words(page), StringComparison.Ordinal);
        await page.Tap(await page.OnPort("K-R/1"));
        await page.WaitLit("1 2");
        await page.TapAsync("#diagram-clear");
        await page.WaitLit("");
    }

    [SkippableFact]
    public async Task A_tap_close_beside_a_strand_finds_it()
    {
        IPage page = await Open(ReportPages.OperaHouse, width: 360, height: 740, options: o => (o.HasTouch, o.IsMobile) = (true, true));
        float[] at = await page.OnStrand(1);
        await page.Tap([at[0], at[1] - 7]);
        await page.WaitLit("1");
    }

    [SkippableFact]
    public async Task The_keyboard_alone_lights_strands_from_the_table()
    {
        IPage page = await Open(ReportPages.Duplex);
        await TabTo(page, "document.activeElement.closest('tr')?.id === 'strand-6'");
        await page.WaitLit("6");
        await page.Keyboard.PressAsync("Enter");
        Assert.Equal("true", await page.GetAttributeAsync("#strand-6 button", "aria-pressed"));
        await page.Keyboard.PressAsync("Tab");
        await page.WaitLit("7");
        await page.Keyboard.PressAsync("Shift+Tab");
        await page.Keyboard.PressAsync("Space");
        Assert.Equal("false", await page.GetAttributeAsync("#strand-6 button", "aria-pressed"));
        Assert.Equal(Enumerable.Range(1, 12).Select(n => $"Strand {n}"), await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('.diagram tbody button')].map(b => b.textContent)"));
    }

    [SkippableFact]
    public async Task The_keyboard_alone_goes_from_position_to_position_on_a_sheet()
    {
        IPage page = await Open(ReportPages.Duplex);
        await TabTo(page, "document.activeElement.matches('.spot')");
        await page.WaitLit("1");
        Assert.Contains("At SW-L/1:A", await Words(page), StringComparison.Ordinal);
        foreach ((string key, string lit, string position) in ((string, string, string)[])
            [("ArrowDown", "2", "SW-L/1:B"), ("ArrowDown", "3", "SW-L/2:A"), ("ArrowRight", "3", ""), ("ArrowLeft", "3", "SW-L/2:A"), ("ArrowUp", "2", "SW-L/1:B"), ("End", "11", "SW-R/6:B")])
        {
            await page.Keyboard.PressAsync(key);
            await page.WaitLit(lit);
            Assert.Contains($"At {position}", await Words(page), StringComparison.Ordinal);
            Assert.Contains($"Position {position}", await page.GetAttributeAsync(".spot", "aria-label"), StringComparison.Ordinal);
        }

        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("Tab");
        await page.EvaluateAsync("() => document.activeElement.blur()");
        await page.WaitLit("11");
        await page.Keyboard.PressAsync("Escape");
        await page.WaitLit("");
    }

    [SkippableFact]
    public async Task A_lit_strand_is_wider_has_arrowheads_and_rings_and_is_not_told_by_colour_alone()
    {
        IPage page = await Open(ReportPages.Duplex, "#strand-4");
        await page.WaitLit("4");
        float[] drawn = await Widths(page, "#s1-strand-4 path"), lit = await Widths(page, ".lit-strands path[stroke-width]:not([transform])");
        Assert.Equal(drawn.Length, lit.Length);
        Assert.All(drawn.Zip(lit), w => Assert.True(w.Second >= w.First + 0.79, $"{w.First} becomes {w.Second}"));

        // Interface, cord, cassette, trunk, cassette, cord, interface: a cell at each side of a part.
        Assert.Equal(12, await page.Locator(".rings rect").CountAsync());
        Assert.NotEqual(0, await page.Locator(".lit-strands path[transform]").CountAsync());
        Assert.Equal("0.22", await page.EvaluateAsync<string>("() => getComputedStyle(document.querySelector('#s1-strands')).opacity"));
        Assert.Equal("1", await page.EvaluateAsync<string>("() => getComputedStyle(document.querySelector('.lit-strands')).opacity"));
    }

    [SkippableFact]
    public async Task Arrowheads_point_the_way_that_light_runs()
    {
        // Strand 1 is transmitted at the left, strand 2 at the right; the first stretch of both runs from left to right.
        IPage page = await Open(ReportPages.Duplex, "#strand-1");
        await page.WaitLit("1");
        Assert.True(await page.EvaluateAsync<bool>(Forward));
        await page.EvaluateAsync("() => { location.hash = '#strand-2' }");
        await page.WaitLit("2");
        Assert.False(await page.EvaluateAsync<bool>(Forward));
    }

    [SkippableFact]
    public async Task A_dark_strand_carries_discs_and_is_called_dark()
    {
        IPage page = await Open(ReportPages.OfFile("gallery/faults/P02.yaml"), "#strand-1");
        await page.WaitLit("1");
        Assert.Equal(0, await page.Locator(".lit-strands path[transform]").CountAsync());
        Assert.NotEqual(0, await page.Locator(".lit-strands circle").CountAsync());
        Assert.Contains("Dark: neither end sends light. Treat it as live all the same.", await Words(page), StringComparison.Ordinal);
        Assert.Contains("P02", await Words(page), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task A_strand_that_is_on_two_sheets_is_lit_on_both()
    {
        IPage page = await Open(ReportPages.AsBuilt, "#strand-113");
        await page.WaitLit("113");
        Assert.Equal(2, await page.Locator("figure:has(.lit-strands)").CountAsync());
    }

    private const string Forward = """
        () => [...document.querySelectorAll('.lit-strands path[transform]')].slice(0, 2).every(p => Math.abs(Number(/rotate\(([-\d.e]+)\)/.exec(p.getAttribute('transform'))[1])) < 90)
        """;

    private static Task<double> PanelHeight(IPage page) => page.EvaluateAsync<double>("() => document.querySelector('.panel').getBoundingClientRect().height");

    private static Task<float[]> Widths(IPage page, string selector) =>
        page.EvaluateAsync<float[]>("s => [...document.querySelectorAll(s)].map(p => Number(p.getAttribute('stroke-width')))", selector);
}
