using PolarityMap.Core.Schedules;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

public sealed class ExportImportTests
{
    private static Workbench Bench() => new Workbench().With("plant.yaml", Samples.Clean);

    [Fact]
    public void A_folder_gets_a_table_for_every_schedule()
    {
        using Workbench bench = Bench();
        Outcome outcome = bench.Run("export", "plant.yaml", "-o", "tables/");
        Assert.Equal((0, ""), (outcome.Status, outcome.Error));
        Assert.Equal(ScheduleCatalogue.All.Select(k => Path.Combine("tables", k.Name + ".csv")).Append("plant.yaml").Order(StringComparer.Ordinal), bench.Files());
    }

    [Theory]
    [InlineData("tables/")]
    [InlineData("tables.xlsx")]
    public void What_is_exported_is_imported_and_checks_as_before(string target)
    {
        using Workbench bench = Bench();
        Assert.Equal(0, bench.Run("export", "plant.yaml", "-o", target).Status);
        Outcome outcome = bench.Run("import", target.TrimEnd('/'), "-o", "again.yaml");
        Assert.Equal((0, ""), (outcome.Status, outcome.Error));
        Assert.Contains("polaritymap check again.yaml", outcome.Out, StringComparison.Ordinal);
        Outcome before = bench.Run("check", "plant.yaml"), after = bench.Run("check", "again.yaml");
        Assert.Equal(before.Status, after.Status);
        Assert.Equal(before.Out.TrimEnd().Split('\n')[^1], after.Out.TrimEnd().Split('\n')[^1]);
    }

    [Fact]
    public void One_schedule_goes_to_one_file()
    {
        using Workbench bench = Bench();
        Assert.Equal(0, bench.Run("export", "plant.yaml", "--schedule", "connections", "-o", "c.csv").Status);
        Assert.StartsWith("strand,hop,state,", bench.Read("c.csv"), StringComparison.Ordinal);
        Assert.Equal(0, bench.Run("import", "c.csv", "-o", "c.yaml").Status);
    }

    [Theory]
    [InlineData("takes one schedule; name it with --schedule", "export", "plant.yaml", "-o", "all.csv")]
    [InlineData("did you mean 'patching'?", "export", "plant.yaml", "--schedule", "pathing", "-o", "p.csv")]
    [InlineData("did you mean .xlsx?", "export", "plant.yaml", "-o", "all.xls")]
    [InlineData("has no ending", "export", "plant.yaml", "-o", "all")]
    [InlineData("there is no file 'nothing.csv'", "import", "nothing.csv")]
    [InlineData("'plant.yaml' is there already", "import", "table.csv", "-o", "plant.yaml")]
    [InlineData("there is no sheet 'tabel'; did you mean 'table'?", "import", "table.csv", "--sheet", "tabel")]
    public void A_wrong_call_says_what_to_do_and_writes_nothing(string expected, params string[] call)
    {
        using Workbench bench = Bench().With("table.csv", "part,kind\n");
        Outcome outcome = bench.Run(call);
        Assert.Equal(2, outcome.Status);
        Assert.Contains(expected, outcome.Error, StringComparison.Ordinal);
        Assert.Equal(["plant.yaml", "table.csv"], bench.Files());
    }

    [Fact]
    public void A_plant_that_cannot_be_read_leaves_what_was_there()
    {
        using var bench = new Workbench().With("broken.yaml", Samples.Broken).With("all.xlsx", "old");
        Assert.Equal(2, bench.Run("export", "broken.yaml", "-o", "all.xlsx").Status);
        Assert.Equal("old", bench.Read("all.xlsx"));
    }

    private const string Parts = "part,kind,ports\nS,duplex interface,2\nT,duplex interfac,2\n";

    [Fact]
    public void Rejected_rows_are_told_and_nothing_is_written_without_keep_good()
    {
        using var bench = new Workbench().With("t.csv", Parts);
        Outcome outcome = bench.Run("import", "t.csv");
        Assert.Equal(2, outcome.Status);
        Assert.StartsWith("t.csv: sheet t, row 3, column B: there is no kind or type 'duplex interfac'", outcome.ErrorLines[0], StringComparison.Ordinal);
        Assert.Contains("did you mean 'duplex interface'?", outcome.ErrorLines[0], StringComparison.Ordinal);
        Assert.Contains("--keep-good", outcome.ErrorLines[^1], StringComparison.Ordinal);
        Assert.Equal(["t.csv"], bench.Files());

        Outcome kept = bench.Run("import", "t.csv", "--keep-good");
        Assert.Equal(1, kept.Status);
        Assert.Contains("row 3", kept.Error, StringComparison.Ordinal);
        Assert.Equal(["t.csv", "t.yaml"], bench.Files());
        Assert.DoesNotContain("T:", bench.Read("t.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_preview_prints_the_mapping_and_the_first_rows_and_writes_nothing()
    {
        using var bench = new Workbench().With("t.csv", "Part;Kind;Ports;Colour of the door\nS;duplex interface;2;red\u0007\n");
        Outcome outcome = bench.Run("import", "t.csv", "--preview");
        Assert.Equal(0, outcome.Status);
        string[] lines = outcome.Out.Split('\n');
        Assert.Contains("sheet t: a part a row, headings in row 1, 1 rows", lines);
        Assert.Contains(lines, l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries) is ["C", "Ports", "ports"]);
        Assert.Contains(lines, l => l.TrimEnd().EndsWith("not read", StringComparison.Ordinal));
        Assert.Contains("  row 2: S | duplex interface | 2 | red?", lines);
        Assert.Equal(["t.csv"], bench.Files());
    }

    [Fact]
    public void A_file_that_is_no_table_is_refused_in_one_line()
    {
        using var bench = new Workbench();
        File.WriteAllBytes(bench.Path("t.xlsx"), [0x50, 0x4B, 3, 4, 9, 9]);
        Outcome outcome = bench.Run("import", "t.xlsx");
        Assert.Equal(2, outcome.Status);
        Assert.Contains("t.xlsx: the workbook is damaged", Assert.Single(outcome.ErrorLines), StringComparison.Ordinal);
    }

    [Fact]
    public void A_faulty_plant_is_exported_with_a_warning()
    {
        using var bench = new Workbench().With("faulty.yaml", Samples.Clean.Replace("A-to-B cord", "A-to-A cord", StringComparison.Ordinal));
        Outcome outcome = bench.Run("export", "faulty.yaml", "-o", "f.xlsx");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("Build nothing by these schedules", outcome.Out, StringComparison.Ordinal);
    }
}
