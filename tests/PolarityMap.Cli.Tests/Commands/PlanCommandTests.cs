using System.Text.Json;
using Json.Schema;
using PolarityMap.Cli.Output;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

/// <summary>What <c>plan</c> writes, tells and refuses.</summary>
public sealed class PlanCommandTests
{
    private const string Brief = """
        brief: Eight links
        networks:
          house: { label: H }
        rooms:
          Main:
          Stage: { distance: 40 m }
        outlets:
          D[1..8]: { room: Stage, links: { house: 1 } }
        application: 10GBASE-SR
        fibre: OM4
        method: U1
        base: 8
        array-loss: 0.35 dB
        duplex-loss: 0.25 dB

        """;

    [Fact]
    public void The_sample_brief_is_planned_and_its_plant_checks_clean()
    {
        using var bench = new Workbench();
        Outcome made = bench.Run("new", "--brief");
        Assert.Equal(0, made.Status);
        string[] call = made.Out.Split('\n').Single(l => l.StartsWith("  polaritymap ", StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries)[1..];
        Assert.Equal(["plan", "brief.yaml", "-o", "plant.yaml"], call);
        Assert.Equal(0, bench.Run(call).Status);
        Outcome check = bench.Run("check", "plant.yaml");
        Assert.Equal(0, check.Status);
        Assert.Contains("32 of 32 links are proven. Nothing was found.", check.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_is_written_with_its_parts_list()
    {
        using var bench = new Workbench().With("brief.yaml", Brief);
        Outcome outcome = bench.Run("plan", "brief.yaml", "-o", "out/plant.yaml", "--parts", "out/parts.csv");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("Planned with method U1, base 8. 8 of 8 links are proven. Nothing was found.", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("8 x A-to-B cord, 2 fibres, 2 m each, house", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(["brief.yaml", "out/parts.csv", "out/plant.yaml"], bench.Files());
        Assert.Equal(bench.Read("out/parts.csv"), Exported(bench));
    }

    [Fact]
    public void Without_a_target_nothing_is_written()
    {
        using var bench = new Workbench().With("brief.yaml", Brief);
        Outcome outcome = bench.Run("plan", "brief.yaml");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("Nothing was written", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(["brief.yaml"], bench.Files());
    }

    [Fact]
    public void A_brief_that_cannot_be_met_is_refused_with_its_place_and_the_nearest_that_can()
    {
        using var bench = new Workbench().With("brief.yaml", Brief.Replace("40 m", "700 m", StringComparison.Ordinal).Replace("0.35", "0.2", StringComparison.Ordinal));
        Outcome outcome = bench.Run("plan", "brief.yaml", "-o", "plant.yaml");
        Assert.Equal(1, outcome.Status);
        Assert.Contains("brief.yaml:6:12: rooms.Stage.distance", outcome.Out, StringComparison.Ordinal);

        // 10GBASE-SR reaches 400 m on OM4 (IEEE 802.3; public overviews); both cords take 5 m of it.
        Assert.Contains("rooms.Stage.distance: at most 395 m", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(["brief.yaml"], bench.Files());
    }

    [Fact]
    public void An_existing_file_is_left_alone_unless_forced()
    {
        using var bench = new Workbench().With("brief.yaml", Brief).With("plant.yaml", "mine");
        Outcome refused = bench.Run("plan", "brief.yaml", "-o", "plant.yaml");
        Assert.Equal(2, refused.Status);
        Assert.Equal("mine", bench.Read("plant.yaml"));
        Assert.Equal(0, bench.Run("plan", "brief.yaml", "-o", "plant.yaml", "--force").Status);
        Assert.StartsWith("# Planned from a brief", bench.Read("plant.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_faulty_brief_is_told_line_by_line_and_nothing_is_written()
    {
        using var bench = new Workbench().With("brief.yaml", Brief.Replace("method: U1", "method: U3", StringComparison.Ordinal));
        Outcome outcome = bench.Run("plan", "brief.yaml", "-o", "plant.yaml");
        Assert.Equal(2, outcome.Status);
        Assert.StartsWith("brief.yaml:11:9: 'U3' is no method; expected one of A, B, C, U1, U2, compare; did you mean 'U1'?", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(["brief.yaml"], bench.Files());
        Json.Parse(bench.Run("plan", "brief.yaml", "--format", "json").Out, "polaritymap/problems");
    }

    [Fact]
    public void The_call_goes_before_the_brief()
    {
        using var bench = new Workbench().With("brief.yaml", Brief);
        Assert.Contains("Planned with method B, base 24.", bench.Run("plan", "brief.yaml", "--method", "B", "--base", "24").Out, StringComparison.Ordinal);
        Assert.Equal(2, bench.Run("plan", "brief.yaml", "--method", "D").Status);
    }

    [Theory]
    [InlineData("fibre: OM4", "fibre: OM4", 0)]
    [InlineData("method: U1\nbase: 8", "method: compare", 0)]
    [InlineData("fibre: OM4", "fibre: OS2", 1)]
    public void The_json_is_as_its_schema_says(string right, string wrong, int status)
    {
        using var bench = new Workbench().With("brief.yaml", Brief.Replace(right, wrong, StringComparison.Ordinal));
        Outcome outcome = bench.Run("plan", "brief.yaml", "--format", "json");
        Assert.Equal(status, outcome.Status);
        JsonElement root = Json.Parse(outcome.Out, "polaritymap/plan");
        Assert.True(JsonSchema.FromText(OutputSchemas.Text("plan")).Evaluate(root).IsValid);
        Assert.Equal(status == 0, root.GetProperty("planned").GetBoolean());
        Assert.Equal(status == 0 ? 0 : 1, root.GetProperty("refusals").GetArrayLength());
    }

    [Theory]
    [InlineData("'plant.svg' ends in .svg; a plant document ends in .yaml or .yml, and figures are made with --compare", "brief.yaml", "-o", "plant.svg")]
    [InlineData("'plant' has no ending; a plant document ends in .yaml or .yml", "brief.yaml", "-o", "plant")]
    [InlineData("'parts.pdf' ends in .pdf; a list of parts ends in .csv or .xlsx", "brief.yaml", "--parts", "parts.pdf")]
    [InlineData("'parts/' has no ending; a list of parts ends in .csv or .xlsx", "brief.yaml", "--parts", "parts/")]
    [InlineData("'brief.yaml' is the brief that is read; name another file", "brief.yaml", "-o", "brief.yaml", "--force")]
    [InlineData("'./brief.yaml' is the brief that is read; name another file", "brief.yaml", "-o", "./brief.yaml", "--force")]
    [InlineData("'list.csv' is the plant that is read; name another file", "--from", "list.csv", "--to", "brief.yaml", "--parts", "list.csv", "--force")]
    public void A_target_that_cannot_be_meant_is_refused(string expected, params string[] call)
    {
        using var bench = new Workbench().With("brief.yaml", Brief).With("list.csv", "mine");
        Outcome outcome = bench.Run(["plan", .. call]);
        Assert.Equal(2, outcome.Status);
        Assert.Contains(expected, outcome.Error, StringComparison.Ordinal);
        Assert.Equal((Brief, "mine"), (bench.Read("brief.yaml"), bench.Read("list.csv")));
        Assert.Equal(["brief.yaml", "list.csv"], bench.Files());
    }

    [Fact]
    public void A_plant_is_written_over_by_what_it_grows_to_only_when_forced()
    {
        using var bench = new Workbench().With("brief.yaml", Brief).With("more.yaml", Brief.Replace("D[1..8]", "D[1..9]", StringComparison.Ordinal));
        Assert.Equal(0, bench.Run("plan", "brief.yaml", "-o", "plant.yaml").Status);
        string before = bench.Read("plant.yaml");
        Assert.Equal(2, bench.Run("plan", "--from", "plant.yaml", "--to", "more.yaml", "-o", "plant.yaml").Status);
        Assert.Equal(before, bench.Read("plant.yaml"));
        Assert.Equal(0, bench.Run("plan", "--from", "plant.yaml", "--to", "more.yaml", "-o", "plant.yaml", "--force").Status);
        Assert.NotEqual(before, bench.Read("plant.yaml"));
    }

    [Fact]
    public void A_price_list_elsewhere_is_read_with_the_flag_that_the_error_names()
    {
        using var bench = new Workbench().With("site/brief.yaml", Brief + "prices: ../prices.csv\n").With("prices.csv", "kind,price\ntrunk,1\n");
        Outcome refused = bench.Run("plan", "site/brief.yaml");
        Assert.Equal(2, refused.Status);
        Assert.Contains("or the flag --allow-outside if that is meant", refused.Error, StringComparison.Ordinal);
        Assert.Equal(0, bench.Run("plan", "site/brief.yaml", "--allow-outside").Status);
    }

    [Fact]
    public void What_nobody_uses_is_told_with_its_place()
    {
        using var bench = new Workbench().With("brief.yaml", Brief.Replace("  Main:", "  Main:\n  Cellar: { distance: 3 m }", StringComparison.Ordinal));
        Assert.Contains("brief.yaml:6:3: No outlet is in Cellar.", bench.Run("plan", "brief.yaml").Out, StringComparison.Ordinal);
        JsonElement remark = Assert.Single(Json.Parse(bench.Run("plan", "brief.yaml", "--format", "json").Out, "polaritymap/plan").GetProperty("remarks").EnumerateArray());
        Assert.Equal(("rooms.Cellar", 6), (remark.GetProperty("about").GetString(), remark.GetProperty("line").GetInt32()));
    }

    private static string Exported(Workbench bench)
    {
        Assert.Equal(0, bench.Run("export", "out/plant.yaml", "--schedule", "parts", "-o", "again.csv").Status);
        return bench.Read("again.csv");
    }
}
