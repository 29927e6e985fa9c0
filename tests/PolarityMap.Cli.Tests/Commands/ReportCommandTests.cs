using System.Security.Cryptography;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

public sealed class ReportCommandTests
{
    [Fact]
    public void A_folder_gets_page_papers_and_drawings_and_the_call_says_what_to_open()
    {
        using Workbench bench = Bench();
        Outcome outcome = bench.Run("report", "plant.yaml", "-o", "out/");

        Assert.Equal((0, "", "4 of 4 links are proven. Nothing was found.\nOpen out/index.html\n"), (outcome.Status, outcome.Error, outcome.Out));
        IReadOnlyList<string> files = bench.Files();
        foreach (string expected in (string[])["out/index.html", "out/contents.sha256", "out/drawings/drawings.pdf", "out/drawings/overview.png", "out/papers/connections.html", "out/papers/tests.html", "out/tables/schedules.xlsx", "out/tables/connections.csv"])
            Assert.Contains(expected, files);
        Assert.Contains(files, f => f.StartsWith("out/drawings/", StringComparison.Ordinal) && f.EndsWith(".svg", StringComparison.Ordinal));
    }

    [Fact]
    public void The_list_of_contents_names_every_other_file_with_its_hash()
    {
        using Workbench bench = Bench();
        bench.Run("report", "plant.yaml", "-o", "out", "--svg-only");

        string[] expected = [.. bench.Files().Where(f => f.StartsWith("out/", StringComparison.Ordinal) && f != "out/contents.sha256")
            .Select(f => $"{Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(bench.Path(f))))}  {f["out/".Length..]}")];
        Assert.Equal(expected, bench.Read("out/contents.sha256").Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.DoesNotContain(bench.Files(), f => f.EndsWith(".pdf", StringComparison.Ordinal) || f.EndsWith(".png", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_file_that_the_page_leads_to_is_there()
    {
        using Workbench bench = Bench();
        bench.Run("report", "plant.yaml", "-o", "out");
        string[] hrefs = [.. bench.Read("out/index.html").Split("href=\"").Skip(1).Select(h => h[..h.IndexOf('"', StringComparison.Ordinal)]).Where(h => h[0] != '#')];

        Assert.True(hrefs.Length > 9);
        Assert.All(hrefs, h => Assert.True(File.Exists(bench.Path("out/" + h)), h));
        Assert.Equal(bench.Files().Count(f => f.StartsWith("out/", StringComparison.Ordinal)) - 2, hrefs.Distinct().Count());
    }

    [Fact]
    public void The_same_plant_gives_the_same_bytes()
    {
        using Workbench bench = Bench();
        bench.Run("report", "plant.yaml", "-o", "one");
        bench.Run("report", "plant.yaml", "-o", "two");

        Assert.Equal(bench.Read("one/contents.sha256"), bench.Read("two/contents.sha256"));
    }

    [Fact]
    public void A_name_that_ends_in_html_gets_the_page_alone()
    {
        using Workbench bench = Bench();
        Outcome outcome = bench.Run("report", "plant.yaml", "-o", "page.html");

        Assert.Equal(0, outcome.Status);
        Assert.Equal(["page.html", "plant.yaml"], bench.Files());
        Assert.DoesNotContain("papers/", bench.Read("page.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_give_status_1_and_the_report_is_written()
    {
        using Workbench bench = Bench();
        bench.With("wrong.yaml", Samples.Clean.Replace("A-to-A", "A-to-B", StringComparison.Ordinal));

        Assert.Equal(1, bench.Run("report", "wrong.yaml", "-o", "out", "--svg-only").Status);
        Assert.Contains("Not proven", bench.Read("out/index.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_seen_goes_into_the_report_and_what_does_not_agree_is_status_1()
    {
        using Workbench bench = Bench();
        bench.With("seen.csv", "test,at,seen,value,note\nlamp,SW-R/1,off,,\n").With("right.csv", "test,at,seen,value,note\nlamp,SW-R/1,on,,\n");

        Outcome outcome = bench.Run("report", "plant.yaml", "--seen", "seen.csv", "-o", "out/");
        Assert.Equal((1, ""), (outcome.Status, outcome.Error));
        Assert.Contains("explanations agree with all of it.\nOpen out/index.html\n", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("out/drawings/tests-step-by-step.pdf", bench.Files());
        Json.Parse(bench.Read("out/data/locate.json"), "polaritymap/locate");
        Assert.Contains("Observations from seen.csv", bench.Read("out/index.html"), StringComparison.Ordinal);

        Assert.Equal(0, bench.Run("report", "plant.yaml", "--seen", "right.csv", "-o", "right.html").Status);
        Assert.Contains("agrees with everything that was seen", bench.Read("right.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_in_what_was_seen_is_told_with_its_place_and_nothing_is_written()
    {
        using Workbench bench = Bench();
        bench.With("seen.csv", "test,at,seen,value,note\nlamp,SW-X/1,off,,\n");

        Outcome outcome = bench.Run("report", "plant.yaml", "--seen", "seen.csv", "-o", "out/");
        Assert.Equal(2, outcome.Status);
        Assert.Contains("seen.csv:2:6:", outcome.Error, StringComparison.Ordinal);
        Assert.DoesNotContain(bench.Files(), f => f.StartsWith("out/", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("out.pdf", "ends in .pdf; a report is a folder")]
    [InlineData("plant.yaml", "ends in .yaml; a report is a folder")]
    [InlineData("file", "'file' is a file; name a folder")]
    [InlineData("/", "cannot be replaced; name a folder of its own")]
    [InlineData("full", "holds 'notes.txt', which is no part of a report")]
    public void A_place_that_is_not_a_report_s_is_refused_and_left_alone(string target, string why)
    {
        using Workbench bench = Bench();
        bench.With("file", "mine").With("full/notes.txt", "mine");
        IReadOnlyList<string> before = bench.Files();

        Outcome outcome = bench.Run("report", "plant.yaml", "-o", target);

        Assert.Equal(2, outcome.Status);
        Assert.Contains(why, Assert.Single(outcome.ErrorLines), StringComparison.Ordinal);
        Assert.Equal(before, bench.Files());
    }

    [Fact]
    public void A_report_is_replaced_as_a_whole()
    {
        using Workbench bench = Bench();
        bench.Run("report", "plant.yaml", "-o", "out");
        bench.With("smaller.yaml", Samples.Clean.Replace("  - DESK/1 to LAMP/1\n", "", StringComparison.Ordinal));

        Assert.Equal(0, bench.Run("report", "smaller.yaml", "-o", "out", "--svg-only").Status);
        Assert.Contains("3 of 3 links are proven", bench.Read("out/index.html"), StringComparison.Ordinal);
        Assert.DoesNotContain("out/drawings/drawings.pdf", bench.Files());
        Assert.DoesNotContain(bench.Files(), f => f[0] == '.');
    }

    [Fact]
    public void A_file_that_was_changed_or_added_since_is_never_lost()
    {
        using Workbench bench = Bench();
        bench.Run("report", "plant.yaml", "-o", "out", "--svg-only");
        bench.With("out/papers/tests.html", "measured");

        Outcome changed = bench.Run("report", "plant.yaml", "-o", "out");
        Assert.Equal(2, changed.Status);
        Assert.Contains("'papers/tests.html', which was changed", changed.Error, StringComparison.Ordinal);
        Assert.Equal("measured", bench.Read("out/papers/tests.html"));

        File.Delete(bench.Path("out/papers/tests.html"));
        bench.With("out/papers/photo.txt", "mine");
        Assert.Contains("'papers/photo.txt', which is no part", bench.Run("report", "plant.yaml", "-o", "out").Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("index.html", "\n {{ plant.nothing }}", "ours/index.html:2:")]
    [InlineData("paper.html", "{{ for }}", "ours/paper.html:1:")]
    [InlineData("page.css", "</style><p>", "ours/page.css: what goes into a style element cannot hold '</'")]
    public void A_run_that_fails_leaves_the_report_before_it_whole(string template, string text, string why)
    {
        using Workbench bench = Bench();
        bench.Run("report", "plant.yaml", "-o", "out", "--svg-only");
        string before = bench.Read("out/contents.sha256");
        bench.With($"ours/{template}", text);

        Outcome outcome = bench.Run("report", "plant.yaml", "-o", "out", "--templates", "ours");

        Assert.Equal(2, outcome.Status);
        Assert.Contains(why, Assert.Single(outcome.ErrorLines), StringComparison.Ordinal);
        Assert.Equal(before, bench.Read("out/contents.sha256"));
        Assert.DoesNotContain(bench.Files(), f => f[0] == '.');
        Assert.Equal(0, bench.Run("report", "plant.yaml", "-o", "out", "--svg-only").Status);
    }

    [Fact]
    public void Templates_of_a_folder_stand_in_one_by_one_and_a_slip_in_a_name_is_told()
    {
        using Workbench bench = Bench();
        bench.With("ours/cautions.html", "<section id=\"cautions\"><h2>House rules of {{ plant.title }}</h2></section>").With("ours/readin.html", "<p>never seen</p>");

        Outcome outcome = bench.Run("report", "plant.yaml", "-o", "out", "--templates", "ours/", "--svg-only");

        Assert.Equal(0, outcome.Status);
        Assert.Contains("House rules of Three links over one trunk", bench.Read("out/index.html"), StringComparison.Ordinal);
        Assert.Contains("How to read it", bench.Read("out/index.html"), StringComparison.Ordinal);
        Assert.Equal("polaritymap: ours/readin.html is used by no page; did you mean 'reading.html'?", Assert.Single(outcome.ErrorLines));
    }

    [Fact]
    public void A_template_cannot_be_a_link_out_of_its_folder()
    {
        using Workbench bench = Bench();
        bench.With("secret.html", "secret").With("ours/reading.html", "");
        File.CreateSymbolicLink(bench.Path("ours/cautions.html"), bench.Path("secret.html"));

        Outcome outcome = bench.Run("report", "plant.yaml", "-o", "out", "--templates", "ours");

        Assert.Equal(2, outcome.Status);
        Assert.Contains("ours/cautions.html is a link that leaves the folder", outcome.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_of_templates_that_is_not_there_is_told() =>
        Assert.Contains("there is no folder 'ours'", Bench().Run("report", "plant.yaml", "--templates", "ours").Error, StringComparison.Ordinal);

    [Fact]
    public void A_link_in_the_place_of_the_report_keeps_leading_to_it()
    {
        using Workbench bench = Bench();
        Directory.CreateDirectory(bench.Path("disk/report"));
        Directory.CreateSymbolicLink(bench.Path("out"), bench.Path("disk/report"));

        Assert.Equal(0, bench.Run("report", "plant.yaml", "-o", "out", "--svg-only").Status);
        Assert.Equal(0, bench.Run("report", "plant.yaml", "-o", "out", "--svg-only").Status);
        Assert.Equal(bench.Path("disk/report"), new FileInfo(bench.Path("out")).LinkTarget);
        Assert.True(File.Exists(bench.Path("disk/report/index.html")));
    }

    [Fact]
    public void Names_of_networks_that_systems_keep_for_devices_become_other_files()
    {
        using Workbench bench = Bench();
        bench.With("con.yaml", Samples.Clean.Replace("stage", "con", StringComparison.Ordinal).Replace("house", "LPT1", StringComparison.Ordinal));
        bench.Run("report", "con.yaml", "-o", "out", "--svg-only");

        string[] drawings = [.. bench.Files().Where(f => f.StartsWith("out/drawings/", StringComparison.Ordinal)).Select(f => Path.GetFileNameWithoutExtension(f))];
        Assert.Contains("con_", drawings);
        Assert.Contains("LPT1_", drawings);
    }

    [Fact]
    public void Progress_is_one_line_on_a_terminal_that_is_gone_at_the_end_and_nothing_elsewhere()
    {
        using Workbench bench = Bench();
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        Application.Run(["report", "plant.yaml", "-o", "out", "--svg-only"], new CommandContext(output, error) { Folder = bench.Folder, IsErrorTerminal = true });

        string shown = error.ToString();
        Assert.Contains("writing the page", shown, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', shown);
        Assert.All(shown.Split('\r'), line => Assert.InRange(line.Length, 0, 79));
        Assert.Matches(@"\r +\r$", shown);
        Assert.Equal("", bench.Run("report", "plant.yaml", "-o", "out", "--svg-only").Error);
    }

    private static Workbench Bench() => new Workbench().With("plant.yaml", Samples.Clean);
}
