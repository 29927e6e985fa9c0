using System.Text.Json;
using Json.Schema;
using PolarityMap.Cli.Output;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

/// <summary>What <c>plan --from PLANT --to BRIEF</c> writes, tells and refuses.</summary>
public sealed class GrowthCommandTests
{
    private const string Brief = """
        brief: Two boxes
        networks:
          house: { label: H, colour: red, key: K1 }
        rooms:
          Main:
          Stage: { distance: 40 m }
        outlets:
          D[1..2]: { room: Stage, distance: 10 m, links: { house: 4 } }
        application: 10GBASE-SR
        later: 400GBASE-SR4
        fibre: OM4
        method: U1
        base: 8
        array-loss: 0.35 dB
        duplex-loss: 0.25 dB

        """;

    private static readonly string Arrays = Brief.Replace("later: 400GBASE-SR4", "later: 400GBASE-SR4\nlater-links: arrays", StringComparison.Ordinal);

    private static readonly string Parallel = Brief.Replace("house: 4", "house: 1", StringComparison.Ordinal)
        .Replace("later: 400GBASE-SR4\n", "", StringComparison.Ordinal).Replace("10GBASE-SR", "400GBASE-SR4", StringComparison.Ordinal);

    private static readonly string Fifth = Brief.Replace("K1 }", "K1 }\n  more: { label: M, colour: blue, key: K2 }", StringComparison.Ordinal).Replace("house: 4", "house: 4, more: 1", StringComparison.Ordinal);

    [Fact]
    public void A_new_network_is_added_without_a_dark_link_and_the_document_checks_clean()
    {
        using Workbench bench = Planned(Fifth);
        Outcome outcome = bench.Run("plan", "--from", "plant.yaml", "--to", "next.yaml", "-o", "grown.yaml");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("Links: 8 stay untouched, 0 go over, 2 are new, 0 end.", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("Dark: no live link.\n", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("Communication light is invisible", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("10 of 10 links are proven. Nothing was found.", bench.Run("check", "grown.yaml").Out, StringComparison.Ordinal);
    }

    // Four legs lie to each box and pairs take one of them, so that the parallel link is up before the pair goes.
    [Fact]
    public void Where_legs_were_laid_for_what_comes_later_no_link_is_dark_when_it_comes()
    {
        using Workbench bench = Planned(Parallel);
        Outcome outcome = bench.Run("plan", "--from", "plant.yaml", "--to", "next.yaml", "-o", "grown.yaml");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("Dark: no live link.\n", outcome.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("x Type-B trunk", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("2 of 2 links are proven. Nothing was found.", bench.Run("check", "grown.yaml").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Trunks_stay_where_pairs_give_way_to_parallel_links_and_one_link_is_dark_at_a_time()
    {
        using Workbench bench = Planned(Parallel, Arrays);
        Outcome outcome = bench.Run("plan", "--from", "plant.yaml", "--to", "next.yaml", "-o", "grown.yaml");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("Dark: 2 links, each in one step, 1 at a time at most.", outcome.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("x Type-B trunk", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("U1 cassette (house) gives way to opposed panel of 2 (house)", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("2 of 2 links are proven. Nothing was found.", bench.Run("check", "grown.yaml").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_json_is_as_its_schema_says(bool isParallel)
    {
        using Workbench bench = Planned(isParallel ? Parallel : Fifth, isParallel ? Arrays : Brief);
        Outcome outcome = bench.Run("plan", "--from", "plant.yaml", "--to", "next.yaml", "--format", "json");
        Assert.Equal(0, outcome.Status);
        JsonElement root = Json.Parse(outcome.Out, "polaritymap/growth");
        Assert.True(JsonSchema.FromText(OutputSchemas.Text("growth")).Evaluate(root).IsValid);
        JsonElement after = root.GetProperty("after");
        Assert.Equal(isParallel ? 2 : 0, after.GetProperty("darkLinkSteps").GetInt32());
        Assert.All(after.GetProperty("steps").EnumerateArray(), s => Assert.Equal(s.GetProperty("live").GetInt32(), s.GetProperty("proven").GetInt32()));
    }

    [Fact]
    public void A_plant_that_has_nothing_to_do_with_the_brief_is_refused_with_the_reason()
    {
        using Workbench bench = Planned(Brief.Replace("house", "other", StringComparison.Ordinal).Replace("Stage", "Attic", StringComparison.Ordinal).Replace("Main", "Cellar", StringComparison.Ordinal));
        Outcome outcome = bench.Run("plan", "--from", "plant.yaml", "--to", "next.yaml", "-o", "grown.yaml");
        Assert.Equal(1, outcome.Status);
        Assert.Contains("the brief has none of the plant's networks, which are house", Words(outcome), StringComparison.Ordinal);
        Assert.Equal(["brief.yaml", "next.yaml", "plant.yaml"], bench.Files());
        Assert.Equal(JsonValueKind.Null, Json.Parse(bench.Run("plan", "--from", "plant.yaml", "--to", "next.yaml", "--format", "json").Out, "polaritymap/growth").GetProperty("after").ValueKind);
    }

    [Fact]
    public void A_brief_for_other_rooms_takes_nothing_of_the_plant_and_is_refused_with_the_reason()
    {
        using Workbench bench = Planned(Brief.Replace("Stage", "Attic", StringComparison.Ordinal).Replace("Main", "Cellar", StringComparison.Ordinal).Replace("10GBASE-SR", "25GBASE-SR", StringComparison.Ordinal).Replace("D[1..2]", "E[1..2]", StringComparison.Ordinal) + "cords: { switch: 9 m, device: 9 m }\n");
        Outcome outcome = bench.Run("plan", "--from", "plant.yaml", "--to", "next.yaml", "-o", "grown.yaml");
        Assert.Equal(1, outcome.Status);
        Assert.Contains("nothing of the plant serves the brief", Words(outcome), StringComparison.Ordinal);
    }

    [Fact]
    public void A_faulty_plant_is_to_be_mended_first_and_a_brief_that_cannot_be_met_is_refused_as_ever()
    {
        using Workbench bench = Planned(Fifth);
        bench.With("faulty.yaml", bench.Read("plant.yaml").Replace("kind: Type-B trunk", "kind: Type-A trunk", StringComparison.Ordinal));
        Assert.Contains("the plant is to be sound before it grows", Words(bench.Run("plan", "--from", "faulty.yaml", "--to", "next.yaml")), StringComparison.Ordinal);
        bench.With("far.yaml", Fifth.Replace("40 m", "700 m", StringComparison.Ordinal));
        Outcome far = bench.Run("plan", "--from", "plant.yaml", "--to", "far.yaml");
        Assert.Equal(1, far.Status);
        Assert.Contains("far.yaml:7:12: rooms.Stage.distance", far.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--to needs the plant that is there", "--to", "next.yaml")]
    [InlineData("name the brief that the plant is to meet: --to BRIEF", "--from", "plant.yaml")]
    [InlineData("the brief is named twice", "brief.yaml", "--from", "plant.yaml", "--to", "next.yaml")]
    [InlineData("name a brief to plan from")]
    public void A_call_without_its_plant_or_its_brief_is_told(string told, params string[] call)
    {
        using Workbench bench = Planned(Fifth);
        Outcome outcome = bench.Run(["plan", .. call]);
        Assert.Equal(2, outcome.Status);
        Assert.Contains(told, outcome.Error, StringComparison.Ordinal);
    }

    private static string Words(Outcome outcome) => string.Join(' ', outcome.Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static Workbench Planned(string next, string? brief = null)
    {
        Workbench bench = new Workbench().With("brief.yaml", brief ?? Brief).With("next.yaml", next);
        Assert.Equal(0, bench.Run("plan", "brief.yaml", "-o", "plant.yaml").Status);
        return bench;
    }
}
