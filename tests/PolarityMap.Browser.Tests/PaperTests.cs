using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using Xunit;

namespace PolarityMap.Browser.Tests;

/// <summary>The field papers on a screen and on paper. Oracles: axe-core, and PdfPig on what the browser prints.</summary>
public sealed class PaperTests(Chromium chromium) : BrowserTest(chromium)
{
    [SkippableFact]
    public async Task Axe_finds_no_violation_in_any_paper_and_none_is_wider_than_its_window()
    {
        Assert.Equal(14, ReportPages.Papers.Count);
        foreach (string paper in ReportPages.Papers)
        {
            IPage page = await Open(paper, width: 360, height: 740);
            foreach (int width in (int[])[360, 768, 1440])
            {
                await page.SetViewportSizeAsync(width, 900);
                int[] widths = await page.EvaluateAsync<int[]>("() => [document.documentElement.scrollWidth, innerWidth]");
                Assert.True(widths[0] <= widths[1], $"{paper} is {widths[0]} wide in a window of {width}");
            }

            AxeResult result = await page.RunAxe();
            Assert.True(result.Violations.Length == 0, $"{paper}: {string.Join("; ", result.Violations.Select(v => $"{v.Id} {v.Nodes[0].Html}"))}");
        }
    }

    [SkippableFact]
    public async Task A_printed_paper_has_every_row_of_its_table_and_its_heads_on_every_page()
    {
        string tests = ReportPages.PapersOf("gallery/opera-house/plant.yaml", "opera").First(p => Path.GetFileName(p) == "tests.html");
        IPage page = await Open(tests);
        string[] firsts = await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('table tbody tr')].map(r => r.cells[0].textContent.trim())");
        string head = await page.EvaluateAsync<string>("() => document.querySelector('table thead th').textContent.trim()");
        Assert.True(firsts.Length >= 128);
        using PdfDocument pdf = PdfDocument.Open(await page.PdfAsync(new() { PreferCSSPageSize = true }));
        string[][] words = [.. pdf.GetPages().Select(p => p.GetWords().Select(w => w.Text).ToArray())];
        Assert.True(words.Length > 1);
        string[] all = [.. words.SelectMany(w => w)];
        Assert.All(firsts.Distinct(), f => Assert.True(all.Count(w => w == f) >= firsts.Count(other => other == f), $"'{f}' is missing in print"));
        string[][] withRows = [.. words.Where(w => w.Contains(firsts[0]) || w.Contains(firsts[^1]))];
        Assert.All(withRows, w => Assert.Contains(head.Split(' ')[0], w));
    }
}
