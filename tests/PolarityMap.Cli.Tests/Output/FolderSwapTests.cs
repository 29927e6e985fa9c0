using PolarityMap.Cli.Output;
using Xunit;

namespace PolarityMap.Cli.Tests.Output;

/// <summary>Wherever a run is ended, the next one finds one whole report under the name.</summary>
public sealed class FolderSwapTests
{
    private static readonly Func<string, string, bool> s_cannot = static (_, _) => false;

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_new_folder_stands_in_the_place_of_the_old_one(bool inOneStep)
    {
        using Workbench bench = new Workbench().With("report/old.txt", "old").With(".report.1.part/new.txt", "new");
        if (inOneStep)
            FolderSwap.Place(bench.Path(".report.1.part"), bench.Path("report"));
        else
            FolderSwap.Place(bench.Path(".report.1.part"), bench.Path("report"), s_cannot);

        Assert.Equal(["report/new.txt"], bench.Files());
    }

    [Fact]
    public void A_first_report_simply_takes_its_place()
    {
        using Workbench bench = new Workbench().With(".report.1.part/new.txt", "new");
        FolderSwap.Place(bench.Path(".report.1.part"), bench.Path("report"));

        Assert.Equal(["report/new.txt"], bench.Files());
    }

    [Fact]
    public void When_the_new_folder_cannot_be_moved_the_old_one_comes_back()
    {
        using Workbench bench = new Workbench().With("report/old.txt", "old");

        Assert.ThrowsAny<IOException>(() => FolderSwap.Place(bench.Path(".report.1.part"), bench.Path("report"), s_cannot));
        Assert.Equal(["report/old.txt"], bench.Files());
    }

    [Fact]
    public void A_run_ended_between_the_two_moves_is_put_right_by_the_next()
    {
        using Workbench bench = new Workbench().With(".report.before/old.txt", "old").With($".report.{NoProcess}.part/new.txt", "new");
        FolderSwap.Recover(bench.Path("report"));

        Assert.Equal(["report/old.txt"], bench.Files());
    }

    [Fact]
    public void A_run_ended_before_the_old_folder_was_deleted_is_cleared_up()
    {
        using Workbench bench = new Workbench().With(".report.before/old.txt", "old").With("report/new.txt", "new").With($".report.{NoProcess}.part/older.txt", "older");
        FolderSwap.Recover(bench.Path("report"));

        Assert.Equal(["report/new.txt"], bench.Files());
    }

    [Fact]
    public void What_another_run_is_writing_and_what_only_looks_like_it_is_left_alone()
    {
        string[] files = [".other.1.part/a.txt", $".report.{LivingProcess}.part/a.txt", ".report.mine.part/a.txt", ".reports.1.part/a.txt", "report.before/a.txt"];
        using var bench = new Workbench();
        foreach (string file in files)
            bench.With(file, "a");
        FolderSwap.Recover(bench.Path("report"));

        Assert.Equal(files.Order(StringComparer.Ordinal), bench.Files());
    }

    /// <summary>Above the largest number that Linux gives a process.</summary>
    private static int NoProcess => int.MaxValue;

    /// <summary>The first process of the system, which runs as long as the system does.</summary>
    private static int LivingProcess => 1;
}
