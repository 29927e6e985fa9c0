using Xunit;

namespace PolarityMap.Cli.Tests.Calls;

/// <summary>
/// What documents refer to lies in their folder, links followed, unless the user says otherwise: a document from elsewhere
/// must not fetch files of the reader's. The links are made by the system, not by the program.
/// </summary>
public sealed class OutsideTests
{
    private const string Cords = "catalogue: Cords\ntypes:\n  red cord: { kind: A-to-B cord, length: 3 m }\n";

    private static string Plant(string include) =>
        $"plant: P\ninclude: {include}\nparts:\n  SW-[1..2]: duplex interface\nruns:\n  - SW-1/1, red cord, SW-2/1\nlinks:\n  - SW-1/1 to SW-2/1\n";

    private static Workbench Bench(string include) =>
        new Workbench().With("site/plant.yaml", Plant(include)).With("site/parts/cords.yaml", Cords).With("elsewhere/cords.yaml", Cords);

    private static void Link(Workbench bench, string link, string target) => File.CreateSymbolicLink(bench.Path(link), target);

    private static void LinkFolder(Workbench bench, string link, string target) => Directory.CreateSymbolicLink(bench.Path(link), target);

    private static void Refused(Workbench bench, string problem)
    {
        Outcome outcome = bench.Run("check", "site/plant.yaml");
        Assert.Equal((2, ""), (outcome.Status, outcome.Out));
        Assert.Equal(problem + "\n", outcome.Error);
    }

    [Fact]
    public void A_catalogue_file_is_found_beside_the_document_and_not_in_the_working_folder()
    {
        using Workbench bench = Bench("parts/cords.yaml");
        Assert.Equal(0, bench.Run("check", "site/plant.yaml").Status);
    }

    [Fact]
    public void A_path_that_leaves_the_folder_is_refused_with_the_flag_that_allows_it()
    {
        using Workbench bench = Bench("../elsewhere/cords.yaml");
        Refused(bench, "site/plant.yaml:2:10: '../elsewhere/cords.yaml' leaves the folder of this document; expected a path inside the folder, or the flag --allow-outside if that is meant");
        Assert.Equal(0, bench.Run("check", "site/plant.yaml", "--allow-outside").Status);
    }

    [Fact]
    public void A_path_from_the_root_is_refused_with_the_flag_that_allows_it()
    {
        using Workbench bench = Bench("X");
        string path = bench.Path("elsewhere/cords.yaml").Replace('\\', '/');
        bench.With("site/plant.yaml", Plant(path));

        Assert.Contains("leaves the folder of this document", bench.Run("check", "site/plant.yaml").Error, StringComparison.Ordinal);
        Assert.Equal(0, bench.Run("check", "site/plant.yaml", "--allow-outside").Status);
    }

    [Theory]
    [InlineData("../elsewhere/cords.yaml")]
    [InlineData("parts/../../elsewhere/cords.yaml")]
    public void A_link_that_leaves_the_folder_is_refused_with_the_flag_that_allows_it(string target)
    {
        using Workbench bench = Bench("linked.yaml");
        Link(bench, "site/linked.yaml", target);

        Refused(bench, "site/plant.yaml:2:10: 'site/linked.yaml' is a link that leaves the folder of this document; expected a file inside the folder, or the flag --allow-outside if that is meant");
        Assert.Equal(0, bench.Run("check", "site/plant.yaml", "--allow-outside").Status);
    }

    [Fact]
    public void A_link_from_the_root_is_followed_as_well()
    {
        using Workbench bench = Bench("linked.yaml");
        Link(bench, "site/linked.yaml", bench.Path("elsewhere/cords.yaml"));

        Assert.Equal(2, bench.Run("check", "site/plant.yaml").Status);
        Assert.Equal(0, bench.Run("check", "site/plant.yaml", "--allow-outside").Status);
    }

    [Fact]
    public void A_linked_folder_on_the_way_is_followed_as_well()
    {
        using Workbench bench = Bench("more/cords.yaml");
        LinkFolder(bench, "site/more", "../elsewhere");

        Refused(bench, "site/plant.yaml:2:10: 'site/more/cords.yaml' is a link that leaves the folder of this document; expected a file inside the folder, or the flag --allow-outside if that is meant");
    }

    [Fact]
    public void A_link_to_a_link_is_followed_to_its_end()
    {
        using Workbench bench = Bench("one.yaml");
        Link(bench, "site/one.yaml", "parts/two.yaml");
        Link(bench, "site/parts/two.yaml", "../../elsewhere/cords.yaml");

        Assert.Contains("is a link that leaves the folder", bench.Run("check", "site/plant.yaml").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_link_within_the_folder_is_read()
    {
        using Workbench bench = Bench("linked.yaml");
        Link(bench, "site/linked.yaml", "parts/cords.yaml");

        Assert.Equal(0, bench.Run("check", "site/plant.yaml").Status);
    }

    [Fact]
    public void A_folder_of_the_same_beginning_is_another_folder()
    {
        using Workbench bench = Bench("linked.yaml").With("site-of-others/cords.yaml", Cords);
        Link(bench, "site/linked.yaml", "../site-of-others/cords.yaml");

        Assert.Equal(2, bench.Run("check", "site/plant.yaml").Status);
    }

    [Fact]
    public void Links_in_a_circle_lead_nowhere()
    {
        using Workbench bench = Bench("one.yaml");
        Link(bench, "site/one.yaml", "two.yaml");
        Link(bench, "site/two.yaml", "one.yaml");

        Refused(bench, "site/plant.yaml:2:10: 'site/one.yaml' is a link that leads nowhere");
    }

    [Fact]
    public void A_link_to_nothing_is_a_file_that_is_missing()
    {
        using Workbench bench = Bench("linked.yaml");
        Link(bench, "site/linked.yaml", "parts/cord.yaml");

        Refused(bench, "site/plant.yaml:2:10: there is no file 'site/linked.yaml'; did you mean 'cords.yaml'?");
    }

    [Fact]
    public void The_document_itself_may_be_a_link_and_then_its_folder_is_where_the_link_lies()
    {
        using Workbench bench = Bench("parts/cords.yaml").With("elsewhere/plan.yaml", Plant("parts/cords.yaml"));
        File.Delete(bench.Path("site/plant.yaml"));
        Link(bench, "site/plant.yaml", "../elsewhere/plan.yaml");

        Assert.Equal(0, bench.Run("check", "site/plant.yaml").Status);
    }

    [Fact]
    public void A_folder_reached_by_a_link_is_a_folder_like_others()
    {
        using Workbench bench = Bench("parts/cords.yaml");
        LinkFolder(bench, "here", "site");

        Assert.Equal(0, bench.Run("check", "here/plant.yaml").Status);
    }

    [Fact]
    public void A_design_is_held_to_the_same()
    {
        using Workbench bench = new Workbench().With("site/built.yaml", "design: plan.yaml\nas-built: {}\n").With("elsewhere/plan.yaml", Samples.Clean);
        Link(bench, "site/plan.yaml", "../elsewhere/plan.yaml");

        Assert.Contains("is a link that leaves the folder", bench.Run("check", "site/built.yaml").Error, StringComparison.Ordinal);
        Assert.Equal(0, bench.Run("check", "site/built.yaml", "--allow-outside").Status);
    }

    [Theory]
    [InlineData("check site/plant.yaml")]
    [InlineData("trace site/plant.yaml SW-1/1")]
    [InlineData("draw site/plant.yaml -o out.svg")]
    public void Every_command_that_reads_a_plant_has_the_flag(string call)
    {
        using Workbench bench = Bench("../elsewhere/cords.yaml");

        Assert.Equal(2, bench.Run(call.Split(' ')).Status);
        Assert.Equal(0, bench.Run([.. call.Split(' '), "--allow-outside"]).Status);
        Assert.Contains("--allow-outside", bench.Run(call.Split(' ')[0], "--help").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("explain")]
    [InlineData("schema")]
    [InlineData("new")]
    public void Commands_that_read_none_have_it_not(string command)
    {
        using var bench = new Workbench();

        Assert.DoesNotContain("--allow-outside", bench.Run(command, "--help").Out, StringComparison.Ordinal);
    }
}
