using AngleSharp.Html.Dom;
using PolarityMap.Core.Schedules;
using PolarityMap.Reports.Pages;
using PolarityMap.Reports.Templates;
using Xunit;

namespace PolarityMap.Reports.Tests.Pages;

public sealed class PaperPageTests
{
    public static TheoryData<string> Names { get; } = [.. ScheduleCatalogue.All.Select(k => k.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_paper_has_every_row_of_its_schedule_and_needs_nothing_beside_it(string name)
    {
        ReportInput input = Plants.FromGallery("opera-house/as-built.yaml");
        Schedule schedule = input.Schedules.Single(s => s.Name == name);
        IHtmlDocument page = ReportPageTests.Parse(PaperPage.Write(input, schedule, new TemplateFolder()));

        int[] shown = [.. Enumerable.Range(0, schedule.Columns.Count).Where(c => !schedule.Columns[c].ForPrograms)];
        Assert.Equal(
            schedule.Rows.Select(row => string.Join('|', shown.Select(c => Told(schedule.Columns[c].Kind, row[c])))),
            page.QuerySelectorAll("tbody tr").Select(r => string.Join('|', r.Children.Select(c => decimal.TryParse(c.TextContent, out decimal n) ? $"{n / 1.000000m:0.######}" : c.TextContent))));
        ReportPageTests.AssertIdsAreUniqueAndFound(page);
        ReportPageTests.AssertNothingOutside(page);
        ReportPageTests.AssertTablesAreNamed(page);
        Assert.Contains("never look into a fibre end", page.Body!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Hostile_texts_come_out_as_text(string name)
    {
        ReportInput input = Plants.Written(Plants.Hostile);

        HostileTexts.AssertHarmless(ReportPageTests.Parse(PaperPage.Write(input, input.Schedules.Single(s => s.Name == name), new TemplateFolder())));
    }

    [Fact]
    public void A_template_can_build_the_table_cell_by_cell()
    {
        ReportInput input = Plants.FromGallery("methods/duplex-B.yaml");
        Schedule schedule = input.Schedules.Single(s => s.Name == "patching");
        const string own = "<head></head>{{ for r in paper.schedule.rows }}{{ for c in r.cells }}[{{ c.key }}={{ c.text }}]{{ end }}{{ end }}";
        var folder = new TemplateFolder(n => n == "paper.html" ? own : null, "mine");

        string page = PaperPage.Write(input, schedule, folder);

        Assert.Equal(schedule.Rows.Count, page.Split("[number=").Length - 1);
    }

    /// <summary>Decibels are printed with two decimals, everything else as it is.</summary>
    private static string Told(CellKind kind, Cell cell) =>
        cell.Number is { } number ? $"{(kind == CellKind.Decibels ? Math.Round(number, 2, MidpointRounding.AwayFromZero) : number):0.######}" : cell.Text ?? "";
}
