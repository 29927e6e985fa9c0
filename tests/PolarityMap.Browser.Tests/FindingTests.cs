using Microsoft.Playwright;
using PolarityMap.Core.Checks;
using PolarityMap.Drawing.Views;
using Xunit;

namespace PolarityMap.Browser.Tests;

/// <summary>Search by label, and filters by network, link and finding. Oracle of the filters: what <c>draw</c> chooses by the same words.</summary>
public sealed class FindingTests(Chromium chromium) : BrowserTest(chromium)
{
    [SkippableFact]
    public async Task A_part_a_port_a_strand_and_a_room_are_found_by_their_labels()
    {
        IPage page = await Open(ReportPages.OperaHouse);
        foreach ((string label, string first) in ((string, string)[])
            [("lx-sw/7", "port LX-SW/7, in Equipment room"), ("DESK12", "part DESK12"), ("17", "strand 17: "), ("strand 17", "strand 17: "), ("stage", "room Stage")])
        {
            await page.FillAsync("#diagram-find", label);
            Assert.StartsWith(first, await page.Locator("#diagram-matches button").First.InnerTextAsync(), StringComparison.Ordinal);
            Assert.Matches("^[0-9]+ match(es)?", await page.InnerTextAsync("#diagram-found"));
        }
    }

    [SkippableFact]
    public async Task A_match_is_chosen_by_the_enter_key_by_a_click_and_by_a_tap()
    {
        IPage page = await Open(ReportPages.OperaHouse, width: 768, height: 1024, options: o => o.HasTouch = true);
        await page.FillAsync("#diagram-find", "Strand 30");
        await page.PressAsync("#diagram-find", "Enter");
        await page.WaitLit("30");
        await page.FillAsync("#diagram-find", "LX-SW/2");
        await page.Locator("#diagram-matches button").First.ClickAsync();
        await page.WaitLit("3 4");
        await page.FillAsync("#diagram-find", "LX-SW/5");
        await page.Locator("#diagram-matches button").First.TapAsync();
        await page.WaitLit("9 10");
    }

    [SkippableFact]
    public async Task A_part_lights_all_strands_that_pass_it_and_a_room_lists_its_parts()
    {
        ViewInput told = ReportPages.Told("gallery/opera-house/plant.yaml");
        IPage page = await Open(ReportPages.OperaHouse);
        await page.FillAsync("#diagram-find", "LX-K3");
        await page.PressAsync("#diagram-find", "Enter");
        int part = Enumerable.Range(0, told.Traced.Plant.Parts.Count).Single(p => told.Traced.Plant.Parts[p].Name == "LX-K3");
        await page.WaitLit(string.Join(' ', Numbers(told, new Choice { Part = part })));
        await page.FillAsync("#diagram-find", "Stage");
        await page.Locator("#diagram-matches button").First.ClickAsync();
        int inRoom = told.Traced.Plant.Parts.Count(p => p.Room == "Stage");
        Assert.StartsWith($"{inRoom} parts in Stage", await page.InnerTextAsync("#diagram-found"), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task What_no_label_holds_is_said_to_be_absent()
    {
        IPage page = await Open(ReportPages.Duplex);
        await page.FillAsync("#diagram-find", "no such <b>label</b>");
        Assert.Equal("Nothing is labelled “no such <b>label</b>”.", await page.InnerTextAsync("#diagram-found"));
        Assert.Equal(0, await page.Locator("#diagram-matches li").CountAsync());
        Assert.Equal(0, await page.Locator("#diagram-found b").CountAsync());
    }

    [SkippableFact]
    public async Task A_filter_by_network_or_link_shows_what_draw_would_choose()
    {
        ViewInput told = ReportPages.Told("gallery/opera-house/plant.yaml");
        IPage page = await Open(ReportPages.OperaHouse);
        for (int network = 0; network < told.Traced.Plant.Networks.Count; network++)
        {
            await page.SelectOptionAsync("#diagram-network", new SelectOptionValue { Label = told.Traced.Plant.Networks[network].Name });
            Assert.Equal(Numbers(told, new Choice { Network = network }), await Rows(page));
            Assert.Equal("32 of 128 strands are shown.", await page.InnerTextAsync("#diagram-count"));
        }

        // Of the office's 32 strands those of one of its links, and none of a link of another network.
        int link = Enumerable.Range(0, told.Traced.Plant.Links.Count).Last();
        await page.SelectOptionAsync("#diagram-link", new SelectOptionValue { Index = link + 1 });
        Assert.Equal(Numbers(told, new Choice { Link = link }), await Rows(page));
        await page.SelectOptionAsync("#diagram-link", new SelectOptionValue { Index = 1 });
        Assert.Empty(await Rows(page));
        Assert.Equal(0, await page.Locator("figure:visible").CountAsync());
        await page.ClickAsync("#diagram-all");
        Assert.Equal(128, (await Rows(page)).Length);
        Assert.Equal("", await page.InputValueAsync("#diagram-network"));
    }

    [SkippableFact]
    public async Task A_filter_by_finding_shows_its_strands_and_fades_the_others_on_their_sheets()
    {
        ViewInput told = ReportPages.Told("gallery/opera-house/as-built.yaml");
        IPage page = await Open(ReportPages.AsBuilt);
        foreach (string code in told.Findings.Where(f => f.Strands.Count > 0).Select(f => f.Rule.Code).Distinct())
        {
            await page.SelectOptionAsync("#diagram-finding", code);
            int[] numbers = Numbers(told, new Choice { Finding = code });
            Assert.Equal(numbers, await Rows(page));
            int[] clear = await page.EvaluateAsync<int[]>("""
                () => [...new Set([...document.querySelectorAll('figure:not([hidden]) .layer-strands > g:not(.left-out)')].map(g => Number(/strand-(\d+)/.exec(g.id)[1])))].sort((a, b) => a - b)
                """);
            Assert.Equal(numbers, clear);
        }

        await page.SelectOptionAsync("#diagram-finding", "with");
        int[] with = await Rows(page);
        await page.SelectOptionAsync("#diagram-finding", "without");
        int[] without = await Rows(page);
        Assert.Equal(Enumerable.Range(1, 128), with.Concat(without).Order());
        Assert.Contains(113, with);
    }

    [SkippableFact]
    public async Task The_filters_work_by_keyboard()
    {
        IPage page = await Open(ReportPages.OperaHouse);
        await TabTo(page, "document.activeElement.id === 'diagram-network'");
        await page.Keyboard.PressAsync("ArrowDown");
        Assert.Equal(32, (await Rows(page)).Length);
        await TabTo(page, "document.activeElement.id === 'diagram-all'");
        await page.Keyboard.PressAsync("Enter");
        Assert.Equal(128, (await Rows(page)).Length);
    }

    private static Task<int[]> Rows(IPage page) =>
        page.EvaluateAsync<int[]>("() => [...document.querySelectorAll('.diagram tbody tr')].filter(r => r.checkVisibility()).map(r => Number(r.id.slice('strand-'.length)))");

    private static int[] Numbers(ViewInput told, Choice choice)
    {
        IReadOnlyList<Finding> findings = Checker.Check(new CheckContext(told.Traced));
        return [.. Selection.Of(told.Traced, findings, choice).Strands.Select(told.Traced.NumberOf)];
    }
}
