using Microsoft.Playwright;
using Xunit;

namespace PolarityMap.Browser.Tests;

/// <summary>"I am at this port": what should arrive, from where, which light. Expected words are read off the documents by hand.</summary>
public sealed class PortTests(Chromium chromium) : BrowserTest(chromium)
{
    [SkippableFact]
    public async Task A_port_is_chosen_by_part_and_port_and_tells_the_light_of_each_position()
    {
        // Desk 10 of the lighting network: port 10 of the switch, both ends 10GBASE-SR, which sends at 850 nm.
        IPage page = await Open(ReportPages.OperaHouse);
        await page.SelectOptionAsync("#diagram-part", new SelectOptionValue { Label = "LX-SW" });
        await page.SelectOptionAsync("#diagram-port", new SelectOptionValue { Label = "10" });
        await page.WaitLit("19 20");
        string words = await Words(page);
        Assert.StartsWith("At LX-SW/10, in Equipment room: what should arrive.", words, StringComparison.Ordinal);
        Assert.Contains("Position A: strand 19 RD. Light leaves here: 850 nm, on its way to LX-D10/1:B.", words, StringComparison.Ordinal);
        Assert.Contains("Position B: strand 20 OG. Light should arrive here: 850 nm, from LX-D10/1:A.", words, StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task In_the_middle_of_a_strand_light_enters_a_part_on_one_side_and_comes_out_on_the_other()
    {
        IPage page = await Open(ReportPages.OperaHouse, "#port=LX-K3%2Frear");
        await page.WaitLit("17 18 19 20 21 22 23 24");

        // Strand 20 is sent at the desk, so at the cassette's rear its light goes in; that of strand 19 comes out there.
        string words = await Words(page);
        Assert.Contains("strand 20 OG. Light should arrive here: 850 nm, from LX-D10/1:A, on its way to LX-SW/10:B.", words, StringComparison.Ordinal);
        Assert.Contains("strand 19 RD. Light should come out here: 850 nm, from LX-SW/10:A, on its way to LX-D10/1:B.", words, StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task Where_one_fibre_goes_both_ways_both_lights_are_told()
    {
        // 1000BASE-BX10: 1490 nm from the head end, 1310 nm back (IEEE 802.3 clause 59).
        IPage page = await Open(ReportPages.BothWays, "#port=KIOSK%2F1");
        await page.WaitLit("1");
        string words = await Words(page);
        Assert.Contains("Light should arrive here: 1490 nm, from HEAD/1.", words, StringComparison.Ordinal);
        Assert.Contains("Light leaves here: 1310 nm, on its way to HEAD/1.", words, StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task Lanes_of_a_parallel_port_are_told_by_their_numbers()
    {
        IPage page = await Open(ReportPages.OfFile("gallery/methods/parallel-B.yaml"));
        await page.SelectOptionAsync("#diagram-part", new SelectOptionValue { Index = 1 });
        await page.SelectOptionAsync("#diagram-port", new SelectOptionValue { Index = 1 });
        Assert.Matches("Light leaves here: [^.]*, lane 1, on its way to", await Words(page));
        Assert.Matches("Light should arrive here: [^.]*, lane 4, from", await Words(page));
    }

    [SkippableFact]
    public async Task A_free_port_says_that_nothing_should_arrive()
    {
        IPage page = await Open(ReportPages.BothWays, "#port=HEAD%2F3");
        Assert.Equal("", await page.Lit());
        Assert.Contains("nothing should arrive", await Words(page), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task At_a_panel_the_plug_behind_its_adapter_tells_what_arrives()
    {
        IPage page = await Open(ReportPages.OfFile("gallery/faults/M02.yaml"), "#port=P-L%2F1");
        await page.WaitLit("1 2 3 4 5 6 7 8 9 10 11 12");
        string words = await Words(page);
        Assert.StartsWith("At P-L/1: what should arrive. The plug in it is ", words, StringComparison.Ordinal);
        Assert.Contains("lane 1, from QS-L/1:", words, StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task A_strand_that_comes_out_elsewhere_than_meant_says_so_at_both_ends()
    {
        IPage page = await Open(ReportPages.OfFile("gallery/faults/D04.yaml"));
        string data = await page.EvaluateAsync<string>("""
            () => {
              const data = JSON.parse(document.getElementById('diagram-data').textContent);
              const strand = data.strands.find(s => s.meant);
              return `${strand.n} ${data.ports[strand.meant[0]].name}`;
            }
            """);
        string number = data[..data.IndexOf(' ', StringComparison.Ordinal)], meant = data[(number.Length + 1)..];
        await page.EvaluateAsync("hash => { location.hash = hash }", $"#strand-{number}");
        await page.WaitLit(number);
        Assert.Contains($"It is meant to come out at {meant}", await Words(page), StringComparison.Ordinal);
        await page.EvaluateAsync("hash => { location.hash = hash }", $"#port={Uri.EscapeDataString(meant)}");
        await Assertions.Expect(page.Locator("#diagram-words")).ToContainTextAsync($"Meant to arrive here: strand {number} from ");
    }

    [SkippableFact]
    public async Task From_a_port_one_goes_on_to_each_position_and_back()
    {
        IPage page = await Open(ReportPages.Duplex, "#port=SW-L%2F5");
        await page.WaitLit("9 10");
        await page.GetByRole(AriaRole.Button, new() { Name = "B: strand 10" }).ClickAsync();
        await page.WaitLit("10");
        Assert.StartsWith("At SW-L/5:B.", await Words(page), StringComparison.Ordinal);
        await page.GetByRole(AriaRole.Button, new() { Name = "Port SW-L/5" }).PressAsync("Enter");
        await page.WaitLit("9 10");
        Assert.Equal("SW-L", await page.EvaluateAsync<string>("() => document.getElementById('diagram-part').selectedOptions[0].text"));
        Assert.Equal("5", await page.EvaluateAsync<string>("() => document.getElementById('diagram-port').selectedOptions[0].text"));
    }
}
