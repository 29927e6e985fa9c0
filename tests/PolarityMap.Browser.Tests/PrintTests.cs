using Microsoft.Playwright;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using Xunit;

namespace PolarityMap.Browser.Tests;

/// <summary>Printed to PDF: each sheet is one page of its own size, drawn as if nothing was lit. Oracle: PdfPig reads the pages.</summary>
public sealed class PrintTests(Chromium chromium) : BrowserTest(chromium)
{
    [SkippableFact]
    public async Task Each_sheet_is_one_page_of_its_own_size()
    {
        IPage page = await Open(ReportPages.OperaHouse);
        int[] sizes = await page.EvaluateAsync<int[]>("() => [...document.querySelectorAll('.view svg')].flatMap(s => [s.getAttribute('width'), s.getAttribute('height')].map(l => Math.round(parseFloat(l))))");
        int sheets = ReportPages.SheetsOf("gallery/opera-house/plant.yaml");
        Assert.Equal(2 * sheets, sizes.Length);
        using PdfDocument pdf = await Print(page);
        Page[] pages = [.. pdf.GetPages()];
        int first = Enumerable.Range(0, pages.Length).First(i => Words(pages[i]).Contains($" 1 of {sheets}", StringComparison.Ordinal));
        for (int sheet = 0; sheet < sheets; sheet++)
        {
            Page printed = pages[first + sheet];
            Assert.Equal(sizes[2 * sheet], Millimetres(printed.Width), 1.0);
            Assert.Equal(sizes[(2 * sheet) + 1], Millimetres(printed.Height), 1.0);
            Assert.Contains($"{sheet + 1} of {sheets}", Words(printed), StringComparison.Ordinal);
        }

        // The table of strands comes behind the last of them.
        Assert.Contains("Strands in a table", Words(pages[first + sheets]), StringComparison.Ordinal);
        string rows = string.Join(' ', pages.Skip(first + sheets).Select(Words));
        foreach (int number in (int[])[1, 64, 128])
            Assert.Contains($" {number} ", rows, StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task The_scale_bar_is_a_hundred_millimetres_long()
    {
        using PdfDocument pdf = await Print(await Open(ReportPages.Duplex, width: 360));
        Page sheet = pdf.GetPages().Single(p => Words(p).Contains("Scale check", StringComparison.Ordinal));
        double[] widths = [.. sheet.Paths.Where(p => p.GetBoundingRectangle() is not null).Select(p => Millimetres(p.GetBoundingRectangle()!.Value.Width))];
        Assert.Contains(widths, w => Math.Abs(w - 100) < 0.5);
    }

    [SkippableFact]
    public async Task What_is_lit_filtered_or_zoomed_on_screen_prints_as_if_it_were_not()
    {
        IPage page = await Open(ReportPages.AsBuilt);
        using PdfDocument before = await Print(page);
        await page.SelectOptionAsync("#diagram-finding", "with");
        await page.EvaluateAsync("() => { location.hash = '#strand-20' }");
        await page.WaitLit("20");
        await page.GetByRole(AriaRole.Button, new() { Name = "Zoom in, sheet 5", Exact = true }).ClickAsync();
        using PdfDocument after = await Print(page);
        Assert.Equal(before.NumberOfPages, after.NumberOfPages);
        foreach ((Page one, Page other) in before.GetPages().Zip(after.GetPages()))
        {
            Assert.Equal(one.Text, other.Text);
            Assert.Equal(one.Paths.Count, other.Paths.Count);
        }

        string text = string.Join(' ', after.GetPages().Select(Words));
        foreach (string control in (string[])["Find a label", "I am at this port", "Show only", "Whole width", "Copy link", "Go to a sheet", "Point at a strand"])
            Assert.DoesNotContain(control, text, StringComparison.Ordinal);
    }

    private static async Task<PdfDocument> Print(IPage page) => PdfDocument.Open(await page.PdfAsync(new() { PreferCSSPageSize = true, Tagged = true, Outline = true }));

    private static string Words(Page page) => string.Join(' ', page.GetWords().Select(w => w.Text));

    private static double Millimetres(double points) => points / 72 * 25.4;
}
