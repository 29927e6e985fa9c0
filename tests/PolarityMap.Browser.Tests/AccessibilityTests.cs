using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Xunit;

namespace PolarityMap.Browser.Tests;

/// <summary>The page for readers who do not see it, do not use a mouse, or see it in other colours. Oracle: axe-core, WCAG 2.2.</summary>
public sealed class AccessibilityTests(Chromium chromium) : BrowserTest(chromium)
{
    [SkippableFact]
    public async Task Axe_finds_no_violation_in_any_state()
    {
        IPage page = await Open(ReportPages.OfFile("gallery/faults/D06.yaml"));
        await AssertNoViolation(page, "fresh");
        await page.FillAsync("#diagram-find", "1");
        await page.SelectOptionAsync("#diagram-finding", "with");
        await page.Locator(".diagram tbody button").First.ClickAsync();
        Assert.NotEqual("", await page.Lit());
        await page.EvaluateAsync("() => { Object.defineProperty(navigator, 'clipboard', { value: undefined }) }");
        await page.ClickAsync("#diagram-copy");
        await AssertNoViolation(page, "searched, filtered, lit and with a link to copy");
    }

    [SkippableFact]
    public async Task Axe_finds_no_violation_in_what_was_seen_on_site()
    {
        await AssertNoViolation(await Open(ReportPages.DarkDesk), "wide");
        await AssertNoViolation(await Open(ReportPages.DarkDesk, "#seen", 360, 740, o => (o.HasTouch, o.IsMobile) = (true, true)), "phone");
    }

    [SkippableFact]
    public async Task Axe_finds_no_violation_on_a_phone_in_forced_colours()
    {
        IPage phone = await Open(ReportPages.Duplex, "#strand-3", 360, 740, o => (o.HasTouch, o.IsMobile, o.ForcedColors) = (true, true, ForcedColors.Active));
        await phone.WaitLit("3");
        await AssertNoViolation(phone, "phone");
    }

    [SkippableFact]
    public async Task Every_control_has_a_name_and_is_at_least_24_pixels_large()
    {
        IPage page = await Open(ReportPages.OperaHouse, "#port=LX-SW%2F7", 360, 740, o => (o.HasTouch, o.IsMobile) = (true, true));
        await page.FillAsync("#diagram-find", "DESK1");
        await page.ClickAsync("summary");
        string small = await page.EvaluateAsync<string>("""
            () => [...document.querySelectorAll('.diagram :is(button, select, input, summary, a)')].filter(e => e.checkVisibility())
              .map(e => [e.outerHTML.slice(0, 80), e.getBoundingClientRect(), (e.getAttribute('aria-label') ?? (e.labels?.[0]?.textContent || e.textContent)).trim()])
              .filter(([, box, name]) => box.width < 24 || box.height < 24 || !name).map(([html, box, name]) => `${html} ${box.width} x ${box.height} '${name}'`).join('\n')
            """);
        Assert.Equal("", small);
    }

    [SkippableFact]
    public async Task What_has_the_focus_is_framed_by_two_pixels_and_not_hidden_by_the_panel()
    {
        IPage page = await Open(ReportPages.Duplex, "#strand-1", 768, 700);
        await page.WaitLit("1");
        await page.EvaluateAsync("() => scrollTo(0, 0)");
        int framed = 0;
        for (int i = 0; i < 60; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            string fault = await page.EvaluateAsync<string>("""
                () => {
                  const e = document.activeElement, style = getComputedStyle(e), box = e.getBoundingClientRect();
                  if (e === document.body) return 'end';
                  if (e.matches('.spot')) {
                    const frame = e.querySelector('rect'), foot = document.querySelector('.panel').getBoundingClientRect().top;
                    return getComputedStyle(frame).visibility === 'visible' && frame.getBoundingClientRect().bottom < foot && frame.getBoundingClientRect().top > 0 ? '' : 'the frame of the position is hidden';
                  }
                  if (style.outlineStyle !== 'solid' || parseFloat(style.outlineWidth) < 2) return `${e.outerHTML.slice(0, 60)} has the outline ${style.outline}`;
                  if (e.closest('.panel') || e.matches('.view, .rows')) return '';
                  const top = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
                  return e === top || e.contains(top) || top?.contains(e) ? '' : `${e.outerHTML.slice(0, 60)} is hidden by ${top?.outerHTML.slice(0, 60)}`;
                }
                """);
            if (fault == "end")
                break;
            Assert.Equal("", fault);
            framed++;
        }

        Assert.InRange(framed, 30, 60);
    }

    [SkippableFact]
    public async Task The_colour_of_the_focus_frame_has_three_to_one_on_white()
    {
        IPage page = await Open(ReportPages.Duplex);
        await page.FocusAsync("#diagram-part");
        await page.Keyboard.PressAsync("Shift+Tab");
        int[] rgb = await page.EvaluateAsync<int[]>("() => getComputedStyle(document.activeElement).outlineColor.match(/\\d+/g).slice(0, 3).map(Number)");
        double luminance = Luminance(rgb);
        Assert.True(1.05 / (luminance + 0.05) >= 3, $"{1.05 / (luminance + 0.05)} : 1");
    }

    [SkippableFact]
    public async Task In_forced_colours_the_drawing_keeps_its_own_and_the_rest_follows_the_system()
    {
        IPage page = await Open(ReportPages.Duplex, options: o => (o.ForcedColors, o.ColorScheme) = (ForcedColors.Active, ColorScheme.Dark));
        Assert.Equal("none", await page.EvaluateAsync<string>("() => getComputedStyle(document.querySelector('.view svg')).forcedColorAdjust"));
        Assert.Equal("auto", await page.EvaluateAsync<string>("() => getComputedStyle(document.querySelector('#diagram-clear')).forcedColorAdjust"));
        Assert.Equal("rgb(244, 154, 193)", await page.EvaluateAsync<string>("() => getComputedStyle(document.querySelectorAll('#s1-strand-1 path')[2]).stroke"));
    }

    [SkippableFact]
    public async Task Nothing_moves_by_itself()
    {
        IPage page = await Open(ReportPages.Duplex, "#strand-5", options: o => o.ReducedMotion = ReducedMotion.NoPreference);
        await page.WaitLit("5");
        Assert.Equal(0, await page.EvaluateAsync<int>("() => document.getAnimations().length"));
        Assert.Equal("", await page.EvaluateAsync<string>("() => [...document.querySelectorAll('*')].filter(e => parseFloat(getComputedStyle(e).transitionDuration) > 0).map(e => e.tagName).join()"));
    }

    [SkippableFact]
    public async Task Without_script_sheets_and_table_are_there_and_no_control_is()
    {
        IPage page = await Open(ReportPages.OperaHouse, options: o => o.JavaScriptEnabled = false);
        int sheets = ReportPages.SheetsOf("gallery/opera-house/plant.yaml");
        await Assertions.Expect(page.Locator(".view svg")).ToHaveCountAsync(sheets);
        Assert.True(await page.Locator($"#sheet-{sheets} svg").IsVisibleAsync());
        Assert.Equal(128, await page.Locator(".diagram tbody tr").CountAsync());
        foreach (ILocator control in await page.Locator("button, select, input").AllAsync())
            Assert.False(await control.IsVisibleAsync());
        string row = await page.InnerTextAsync("#strand-20");
        foreach (string told in (string[])["20", "OG orange", "LX-SW/10:B, receive 850 nm, in Equipment room", "LX-D10/1:A, transmit 850 nm, in Stage", "LX-T near3:2→far3:11", "lighting", "none"])
            Assert.Contains(told, row, StringComparison.Ordinal);
    }

    private static async Task AssertNoViolation(IPage page, string state)
    {
        AxeResult result = await page.RunAxe();
        Assert.True(result.Violations.Length == 0, $"{state}: {string.Join("; ", result.Violations.Select(v => $"{v.Id} {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Html))}"))}");
        Assert.NotEmpty(result.Passes);
    }

    /// <summary>Relative luminance of an sRGB colour (WCAG 2.2).</summary>
    private static double Luminance(int[] rgb)
    {
        double[] linear = [.. rgb.Select(c => c / 255.0).Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4))];
        return (0.2126 * linear[0]) + (0.7152 * linear[1]) + (0.0722 * linear[2]);
    }
}
