using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using PolarityMap.Core.Locate;
using Xunit;

namespace PolarityMap.Reports.Tests.Pages;

/// <summary>What was seen on site as the page tells it, read by an HTML parser of another house.</summary>
public sealed class SeenSectionTests
{
    private const string Demo = "opera-house/plant.yaml";

    /// <summary>
    /// Desk 7 is dark and its neighbour is not; everything but the cord at the zone box was compared with the description, and that
    /// differs. Light from one console comes out on the other's transmitter, so the pair is crossed once too often, and one cord
    /// alone is left (followed by hand in gallery/faultfinding).
    /// </summary>
    private const string OneCord = "lamp,LX-SW/7,off,,\nlamp,LX-D7/1,off,,\nlook,LX-SW/7~LX-K2/3,as described,,\nlook,LX-Z2/3~ZB7/1,different,,\nlight,LX-SW/7:A,LX-D7/1:A,,\n";

    [Theory]
    [InlineData("lamp,LX-SW/7,off,,\n")]
    [InlineData(OneCord)]
    [InlineData("lamp,LX-SW/7,on,,\n")]
    [InlineData("lamp,LX-SW/7,on,,\nlamp,LX-SW/7,off,,after lunch\n")]
    [InlineData("loss,LX-SW/7:A,LX-D7/1:B,6.4 dB,\n")]
    public void A_page_with_what_was_seen_is_whole(string seen)
    {
        IHtmlDocument page = Page(seen);

        ReportPageTests.AssertHeadingsInOrder(page);
        ReportPageTests.AssertIdsAreUniqueAndFound(page);
        ReportPageTests.AssertNothingOutside(page);
        ReportPageTests.AssertTablesAreNamed(page);
        Assert.Contains("never look into a fibre end", Section(page).QuerySelector(".caution")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("transmitters at both ends", Section(page).QuerySelector(".caution")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_without_observations_says_nothing_of_them()
    {
        IHtmlDocument page = ReportPageTests.Parse(Plants.Page(Plants.FromGallery(Demo)));

        Assert.Null(page.QuerySelector("#seen"));
        Assert.Empty(page.QuerySelectorAll("a[href='#seen']"));
    }

    [Fact]
    public void Every_explanation_stands_in_the_table_by_rank_with_what_the_next_test_would_show()
    {
        ReportInput input = Plants.Seen(Plants.FromGallery(Demo), "lamp,LX-SW/7,off,,\nlamp,LX-D7/1,off,,\nlamp,LX-SW/8,on,,\n");
        LocateResult result = input.Seen!.Result;
        IElement section = Section(ReportPageTests.Parse(Plants.Page(input)));
        IElement[] rows = [.. section.QuerySelectorAll("table").Single(t => t.QuerySelector("caption")!.TextContent.Contains("most likely first", StringComparison.Ordinal)).QuerySelectorAll("tbody tr")];

        Assert.True(result.Explanations.Count > 10);
        Assert.Equal(result.Explanations.Select(FieldWords.Wrong), rows.Select(r => r.Children[2].TextContent));
        string[] outcomes = [.. result.Next!.Outcomes.Select(o => FieldWords.Outcome(input.Traced, o.Observation))];
        Assert.True(outcomes.Length > 1);
        for (int i = 0; i < rows.Length; i++)
        {
            int expected = Enumerable.Range(0, outcomes.Length).Single(o => result.Next.Outcomes[o].Explanations.Contains(i));
            Assert.Equal(outcomes[expected], rows[i].Children[4].TextContent);
        }

        // The groups that no light test tells apart, in the sentences of the command.
        string[] groups = [.. section.QuerySelectorAll("li").Select(l => l.TextContent).Where(t => t.StartsWith("No light test", StringComparison.Ordinal))];
        Assert.Equal(LocateWords.Groups(input.Traced, result), groups);
        Assert.NotEmpty(groups);
    }

    [Fact]
    public void The_next_test_names_its_two_ends_with_their_rooms_and_what_each_outcome_leaves()
    {
        ReportInput input = Plants.Seen(Plants.FromGallery(Demo), "light,LX-SW/7:A,LX-D8/1:B,,\nlight,LX-SW/8:A,LX-D7/1:B,,\nlook,LX-SW/7~LX-K2/3,as described,,\nreached,ZB7,no,,\nreached,DESK7,no,,\n");
        IElement box = Section(ReportPageTests.Parse(Plants.Page(input))).QuerySelector(".next")!;
        NextTest next = input.Seen!.Result.Next!;

        Assert.StartsWith($"Next test, about {next.Test.Minutes} min: {FieldWords.Do(input.Traced, next.Test)}", box.QuerySelector("h3")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(FieldWords.Places(input.Traced, next.Test).Select(p => p.Where), box.QuerySelectorAll("dd strong").Select(e => e.TextContent));
        Assert.All(box.QuerySelectorAll("dd"), d => Assert.Matches("Equipment room|Stage|zone|box", d.TextContent));
        Assert.Equal(next.Outcomes.Count, box.QuerySelectorAll("tbody tr").Length);
    }

    [Fact]
    public void The_likeliest_cause_is_drawn_beside_the_description_with_the_one_part_to_change()
    {
        IHtmlDocument page = Page(OneCord);
        IElement[] figures = [.. Section(page).QuerySelectorAll("figure svg")];

        Assert.Equal(2, figures.Length);
        string[] described = [.. Texts(figures[0])], built = [.. Texts(figures[1])];
        Assert.DoesNotContain("S1", described);
        Assert.Contains("S1", built);
        Assert.Equal(0, described.Count(t => t.Contains("A-to-A", StringComparison.Ordinal)));
        Assert.Equal(1, built.Count(t => t.Contains("A-to-A", StringComparison.Ordinal)));
        Assert.All(figures, f => Assert.Contains("LX-SW/7", Texts(f)));
        Assert.Contains("suspect, ", Section(page).QuerySelector(".signs")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("LX-Z2/3~ZB7/1 is A-to-A instead of A-to-B", Section(page).QuerySelector(".signs")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Contradictions_are_told_with_both_lines_and_nothing_is_drawn()
    {
        IElement section = Section(Page("lamp,LX-SW/7,on,,\nlamp,LX-SW/7,off,,after lunch\n"));

        Assert.Contains("Line 2: the link lamp of LX-SW/7 is on.", section.TextContent, StringComparison.Ordinal);
        Assert.Contains("Line 3: the link lamp of LX-SW/7 is off (after lunch).", section.TextContent, StringComparison.Ordinal);
        Assert.Empty(section.QuerySelectorAll("svg"));
        Assert.Contains("nothing was searched", section.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_steps_lead_to_steps_that_are_there_and_end_in_a_cause_with_what_to_mend()
    {
        IElement section = Section(Page("lamp,LX-SW/7,off,,\nlamp,LX-D7/1,off,,\n"));
        IElement[] steps = [.. section.QuerySelectorAll("ol.steps > li")];

        Assert.True(steps.Length > 3);
        Assert.Equal(Enumerable.Range(1, steps.Length).Select(n => $"step-{n}"), steps.Select(s => s.Id));
        Assert.Contains("Mend: put an A-to-B cord in the place of LX-Z2/3~ZB7/1", section.QuerySelector("ol.steps")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void How_far_was_searched_is_told()
    {
        ReportInput input = Plants.Seen(Plants.FromGallery(Demo), OneCord);
        string text = Section(ReportPageTests.Parse(Plants.Page(input))).TextContent;

        Assert.All(LocateWords.Searched(input.Seen!.Result.Searched), s => Assert.Contains(s, text, StringComparison.Ordinal));
    }

    [Fact]
    public void Hostile_texts_come_out_as_text()
    {
        ReportInput input = Plants.Seen(Plants.Written(Plants.Hostile), "lamp,SW(b)/1,off,,</li><evil-tag>\nlamp,SW-R/1,off,,\n");
        HostileTexts.AssertHarmless(ReportPageTests.Parse(Plants.Page(input)));
    }

    private static IHtmlDocument Page(string seen) => ReportPageTests.Parse(Plants.Page(Plants.Seen(Plants.FromGallery(Demo), seen)));

    private static IElement Section(IHtmlDocument page) => page.QuerySelector("#seen")!;

    private static IEnumerable<string> Texts(IElement svg) => svg.QuerySelectorAll("text").Select(t => t.TextContent);
}
