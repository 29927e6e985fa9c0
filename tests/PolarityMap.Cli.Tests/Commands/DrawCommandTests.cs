using System.Xml.Linq;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

public sealed class DrawCommandTests
{
    [Fact]
    public void It_writes_one_whole_drawing_and_nothing_beside_it()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("draw", "plant.yaml", "-o", "out.svg");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("Look at out.svg", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(["out.svg", "plant.yaml"], bench.Files());

        // Three links of two strands each over the trunk, and one link at the desk.
        Assert.Equal(8, Strands(bench.Read("out.svg")));
    }

    [Fact]
    public void Without_a_name_the_drawing_is_named_after_the_plant()
    {
        using var bench = new Workbench().With("theatre.yaml", Samples.Clean);
        Assert.Equal(0, bench.Run("draw", "theatre.yaml").Status);
        Assert.Contains("theatre.svg", bench.Files());
    }

    [Fact]
    public void Findings_are_drawn_and_leave_status_0()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Fault("D02"));
        Outcome outcome = bench.Run("draw", "plant.yaml", "-o", "out.svg");
        Assert.Equal(0, outcome.Status);
        Assert.Contains(XDocument.Parse(bench.Read("out.svg")).Descendants().Where(e => e.Name.LocalName == "text"), t => t.Value.StartsWith("D02", StringComparison.Ordinal));
    }

    [Fact]
    public void Two_runs_give_the_same_bytes()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        bench.Run("draw", "plant.yaml", "-o", "one.svg");
        bench.Run("draw", "plant.yaml", "-o", "two.svg");
        Assert.Equal(File.ReadAllBytes(bench.Path("one.svg")), File.ReadAllBytes(bench.Path("two.svg")));
    }

    [Fact]
    public void Into_a_folder_goes_one_sheet_for_each_network_the_same_as_by_name_but_for_its_number()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Assert.Equal(0, bench.Run("draw", "plant.yaml", "-o", "sheets/").Status);
        Assert.Equal(["plant.yaml", "sheets/house.svg", "sheets/index.svg", "sheets/overview.svg", "sheets/stage.svg"], bench.Files());
        Assert.Equal(0, bench.Run("draw", "plant.yaml", "--network", "house", "-o", "house.svg").Status);
        Assert.Contains(">1 of 4</text>", bench.Read("sheets/index.svg"), StringComparison.Ordinal);
        Assert.Contains(">2 of 4</text>", bench.Read("sheets/overview.svg"), StringComparison.Ordinal);
        Assert.Contains(">4 of 4</text>", bench.Read("sheets/house.svg"), StringComparison.Ordinal);
        Assert.Equal(bench.Read("sheets/house.svg").Replace("4 of 4</text>", "1 of 1</text>", StringComparison.Ordinal), bench.Read("house.svg"));
        Assert.Equal(2, Strands(bench.Read("sheets/house.svg")));
        Assert.Equal(6, Strands(bench.Read("sheets/stage.svg")));
    }

    [Fact]
    public void A_folder_that_is_there_needs_no_stroke()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Directory.CreateDirectory(bench.Path("sheets"));
        Assert.Equal(0, bench.Run("draw", "plant.yaml", "-o", "sheets").Status);
        Assert.Equal(["plant.yaml", "sheets/house.svg", "sheets/index.svg", "sheets/overview.svg", "sheets/stage.svg"], bench.Files());
    }

    [Fact]
    public void A_PDF_holds_all_sheets_and_takes_the_date_and_revision_of_the_call()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("draw", "plant.yaml", "--paper", "A4", "--date", "2026-05-04", "--revision", "C", "-o", "plant.pdf");
        Assert.Equal(0, outcome.Status);
        Assert.EndsWith("Look at plant.pdf\n", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(["plant.pdf", "plant.yaml"], bench.Files());
        Assert.StartsWith("%PDF-", bench.Read("plant.pdf"), StringComparison.Ordinal);
        Assert.Equal(0, bench.Run("draw", "plant.yaml", "--paper", "A4", "--date", "2026-05-04", "--revision", "C", "-o", "sheets/").Status);
        Assert.Contains(">2026-05-04</text>", bench.Read("sheets/index.svg"), StringComparison.Ordinal);
        Assert.Contains(">C</text>", bench.Read("sheets/index.svg"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("4 May", "--date")]
    [InlineData("SW/99", "--link")]
    [InlineData("900", "--strand")]
    [InlineData("D05", "--finding")]
    public void What_is_not_there_is_refused_and_nothing_is_written(string value, string option)
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("draw", "plant.yaml", option, value, "-o", "out.svg");
        Assert.Equal(2, outcome.Status);
        Assert.Contains(value, outcome.Error, StringComparison.Ordinal);
        Assert.Equal(["plant.yaml"], bench.Files());
    }

    [Fact]
    public void A_series_of_steps_needs_a_folder_or_a_PDF()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("draw", "plant.yaml", "--steps", "-o", "out.svg");
        Assert.Equal(2, outcome.Status);
        Assert.Contains("name a folder", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(0, bench.Run("draw", "plant.yaml", "--steps", "-o", "steps/").Status);
        Assert.Contains("steps/step-1.svg", bench.Files());
    }

    [Fact]
    public void One_part_has_only_the_strands_that_pass_it()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Assert.Equal(0, bench.Run("draw", "plant.yaml", "--part", "LAMP", "-o", "lamp.svg").Status);
        Assert.Equal(2, Strands(bench.Read("lamp.svg")));
    }

    [Fact]
    public void Strands_without_light_are_drawn_when_asked_for()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.EmptyOfLight);
        Outcome nothing = bench.Run("draw", "plant.yaml", "-o", "out.svg");
        Assert.Equal(2, nothing.Status);
        Assert.Contains("add --dark", nothing.Error, StringComparison.Ordinal);
        Assert.Equal(["plant.yaml"], bench.Files());
        Assert.Equal(0, bench.Run("draw", "plant.yaml", "--dark", "-o", "out.svg").Status);
        Assert.Equal(12, Strands(bench.Read("out.svg")));
    }

    [Fact]
    public void The_font_is_in_the_file_unless_it_is_left_out()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        bench.Run("draw", "plant.yaml", "-o", "out.svg");
        Assert.Contains("data:font/ttf;base64,", bench.Read("out.svg"), StringComparison.Ordinal);
        bench.Run("draw", "plant.yaml", "-o", "bare.svg", "--without-font");
        Assert.DoesNotContain("data:font", bench.Read("bare.svg"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("broken.yaml")]
    [InlineData("missing.yaml")]
    public void A_wrong_document_leaves_the_drawing_that_is_there_untouched(string document)
    {
        using var bench = new Workbench().With("broken.yaml", Samples.Broken).With("out.svg", "yesterday's drawing");
        Outcome outcome = bench.Run("draw", document, "-o", "out.svg");
        Assert.Equal(2, outcome.Status);
        Assert.Equal("yesterday's drawing", bench.Read("out.svg"));
        Assert.Equal(["broken.yaml", "out.svg"], bench.Files());
    }

    [Fact]
    public void Where_no_folder_can_be_nothing_is_written()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean).With("taken", "a file");
        Outcome outcome = bench.Run("draw", "plant.yaml", "-o", "taken/out.svg");
        Assert.Equal(2, outcome.Status);
        Assert.Contains("cannot be written", outcome.Error, StringComparison.Ordinal);
        Assert.Contains("is a file, not a folder", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(["plant.yaml", "taken"], bench.Files());
        Assert.Equal("a file", bench.Read("taken"));
    }

    [Theory]
    [InlineData("--network", "stge", "there is no network 'stge'; did you mean 'stage'?")]
    [InlineData("--network", "cellar", "there is no network 'cellar'; expected one of stage, house")]
    [InlineData("--part", "TRUNC", "there is no part 'TRUNC'; did you mean 'TRUNK'?")]
    public void A_wrong_choice_is_told_the_nearest(string option, string value, string expected)
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("draw", "plant.yaml", option, value, "-o", "out.svg");
        Assert.Equal(2, outcome.Status);
        Assert.Contains(expected, outcome.Error, StringComparison.Ordinal);
        Assert.Equal(["plant.yaml"], bench.Files());
    }

    [Fact]
    public void A_network_s_name_cannot_lead_out_of_the_folder()
    {
        string document = Samples.Clean.Replace("stage", "\"../../stage\"", StringComparison.Ordinal);
        using var bench = new Workbench().With("inner/plant.yaml", document);
        bench.Run("draw", "inner/plant.yaml", "-o", "inner/sheets/");
        Assert.All(bench.Files(), f => Assert.StartsWith("inner/", f, StringComparison.Ordinal));
        Assert.False(File.Exists(System.IO.Path.Combine(bench.Folder, "..", "stage.svg")));
    }

    private static int Strands(string svg) =>
        XDocument.Parse(svg).Descendants().Count(e => e.Attribute("id")?.Value.StartsWith("strand-", StringComparison.Ordinal) == true);
}
