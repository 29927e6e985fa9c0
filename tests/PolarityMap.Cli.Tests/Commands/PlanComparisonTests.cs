using System.Text.Json;
using Json.Schema;
using PolarityMap.Cli.Output;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

/// <summary>What <c>plan --compare</c> writes, tells and refuses.</summary>
public sealed class PlanComparisonTests
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
        later: 40GBASE-SR4
        fibre: OM4
        method: U1
        array-loss: 0.35 dB
        duplex-loss: 0.25 dB

        """;

    [Theory]
    [InlineData("", 0)]
    [InlineData("prices: prices.csv\ncurrency: EUR\nweights: { price: 1, idle: 0.5 }\n", 0)]
    [InlineData("margin: 30 dB\n", 1)]
    public void The_json_is_as_its_schema_says_and_as_the_call_ends(string more, int status)
    {
        using var bench = new Workbench().With("brief.yaml", Brief + more).With("prices.csv", "kind,price\ncassette,41\n");
        Outcome outcome = bench.Run("plan", "brief.yaml", "--compare", "--format", "json");
        Assert.Equal(status, outcome.Status);
        JsonElement root = Json.Parse(outcome.Out, "polaritymap/plan-comparison");
        EvaluationResults told = JsonSchema.FromText(OutputSchemas.Text("plan-comparison")).Evaluate(root, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(told.IsValid, string.Join('\n', (told.Details ?? []).Where(d => d.Errors is not null).Select(d => $"{d.InstanceLocation}: {string.Join(", ", d.Errors!.Values)}")));
        Assert.Equal(20, root.GetProperty("candidates").GetInt32());
        Assert.Equal(20, root.GetProperty("plans").GetArrayLength() + root.GetProperty("excluded").GetArrayLength());
        Assert.Equal(more.Contains("price", StringComparison.Ordinal), root.GetProperty("priceLeftOut").GetBoolean());
    }

    // Four-lane ports go with arrays of 8 or 12 (their positions 1-4 and 9-12), so that later excludes the others.
    [Fact]
    public void What_cannot_serve_is_told_with_its_code_and_what_can_is_sorted()
    {
        using var bench = new Workbench().With("brief.yaml", Brief.Replace("fibre: OM4", "fibre: OM4\nangled: yes", StringComparison.Ordinal));
        string told = bench.Run("plan", "brief.yaml", "--compare").Out;
        Assert.Contains("6 of 20 ways to build it serve", told, StringComparison.Ordinal);
        Assert.Contains("M06", told, StringComparison.Ordinal);
        Assert.Contains("stays      1 x Type-B trunk", told, StringComparison.Ordinal);
        JsonElement root = Json.Parse(bench.Run("plan", "brief.yaml", "--compare", "--format", "json").Out, "polaritymap/plan-comparison");
        decimal[] sums = [.. root.GetProperty("plans").EnumerateArray().Select(p => p.GetProperty("sum").GetDecimal())];
        Assert.Equal(sums.Order(), sums);
        Assert.Equal(["U1", "U1"], root.GetProperty("plans").EnumerateArray().Where(p => p.GetProperty("asked").GetBoolean()).Select(p => p.GetProperty("method").GetString()));
    }

    // Eight links that all change; how many go on is told by the plant that was built for later.
    [Fact]
    public void How_many_links_go_on_later_stands_in_the_table_and_in_the_json()
    {
        using var bench = new Workbench().With("brief.yaml", Brief);
        string told = bench.Run("plan", "brief.yaml", "--compare").Out;
        Assert.Contains("links later", told, StringComparison.Ordinal);
        foreach (JsonElement plan in Json.Parse(bench.Run("plan", "brief.yaml", "--compare", "--format", "json").Out, "polaritymap/plan-comparison").GetProperty("plans").EnumerateArray())
        {
            JsonElement links = plan.GetProperty("measures").GetProperty("linksLater");
            Assert.Equal(8, links.GetProperty("now").GetInt32());
            int bought = plan.GetProperty("later").GetProperty("buy").EnumerateArray()
                .Where(i => i.GetProperty("kind").GetString() == "array cord").Sum(i => i.GetProperty("quantity").GetInt32());

            // An array cord at each end of every link that goes on.
            Assert.Equal(bought, 2 * links.GetProperty("goOn").GetInt32());
            Assert.Contains($"{links.GetProperty("goOn").GetInt32()} of 8", told, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_call_may_leave_methods_and_bases_out_and_weigh_otherwise()
    {
        using var bench = new Workbench().With("brief.yaml", Brief);
        JsonElement root = Json.Parse(bench.Run("plan", "brief.yaml", "--compare", "--base", "12", "--weights", "ends=0, kinds=2.5", "--format", "json").Out, "polaritymap/plan-comparison");
        Assert.Equal(5, root.GetProperty("candidates").GetInt32());
        Assert.Equal(2.5m, root.GetProperty("weights").GetProperty("kinds").GetDecimal());
        Assert.Equal(0, root.GetProperty("weights").GetProperty("ends").GetDecimal());
        Assert.Equal(3, root.GetProperty("weights").GetProperty("parts").GetDecimal());
    }

    [Theory]
    [InlineData("kind=3", "there is no weight 'kind'; expected one of kinds, parts, idle, matings, ends, rows, later, margin, price; did you mean kinds?")]
    [InlineData("kinds=many", "'kinds=many' is no weight; expected kinds= and a number from 0 to 1000, such as kinds=3")]
    [InlineData("kinds=-1", "'kinds=-1' is no weight")]
    public void A_wrong_weight_is_refused(string weights, string expected)
    {
        using var bench = new Workbench().With("brief.yaml", Brief);
        Outcome outcome = bench.Run("plan", "brief.yaml", "--compare", "--weights", weights);
        Assert.Equal(2, outcome.Status);
        Assert.Contains(expected, outcome.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("figure.svg")]
    [InlineData("figure.pdf")]
    [InlineData("figure.png")]
    public void The_figure_is_written_in_each_form(string target)
    {
        using var bench = new Workbench().With("brief.yaml", Brief);
        Outcome outcome = bench.Run("plan", "brief.yaml", "--compare", "-o", target);
        Assert.Equal(0, outcome.Status);
        Assert.Contains($"Wrote {target}", outcome.Out, StringComparison.Ordinal);
        Assert.True(new FileInfo(bench.Path(target)).Length > 1000);
    }

    [Fact]
    public void A_figure_is_no_plant_and_nothing_is_written_of_a_wrong_call()
    {
        using var bench = new Workbench().With("brief.yaml", Brief);
        Outcome outcome = bench.Run("plan", "brief.yaml", "--compare", "-o", "plant.yaml", "--parts", "prices.csv");
        Assert.Equal(2, outcome.Status);
        Assert.Contains("'plant.yaml' ends in .yaml; expected .svg, .pdf or .png", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(["brief.yaml"], bench.Files());
    }

    // The list that the program writes, filled in with one price for every part, gives each plan its number of parts times that.
    [Theory]
    [InlineData("prices.csv")]
    [InlineData("prices.xlsx")]
    public void The_price_list_that_is_written_is_read_back(string list)
    {
        using var bench = new Workbench().With("brief.yaml", Brief);
        Assert.Equal(0, bench.Run("plan", "brief.yaml", "--compare", "--parts", list).Status);
        bench.With("priced.yaml", Brief + $"prices: {list}\n");
        if (list.EndsWith(".csv", StringComparison.Ordinal))
            bench.With(list, bench.Read(list).Replace(",\r\n", ",2.50\r\n", StringComparison.Ordinal));
        JsonElement root = Json.Parse(bench.Run("plan", "priced.yaml", "--compare", "--format", "json").Out, "polaritymap/plan-comparison");
        Assert.NotEqual(0, root.GetProperty("plans").GetArrayLength());
        foreach (JsonElement plan in root.GetProperty("plans").EnumerateArray())
        {
            bool filled = list.EndsWith(".csv", StringComparison.Ordinal);
            Assert.Equal(filled, plan.GetProperty("price").GetProperty("complete").GetBoolean());
            Assert.Equal(filled ? 2.5m * plan.GetProperty("measures").GetProperty("parts").GetInt32() : 0, plan.GetProperty("price").GetProperty("total").GetDecimal());
        }
    }

    [Fact]
    public void An_incomplete_price_list_is_told()
    {
        using var bench = new Workbench().With("brief.yaml", Brief + "prices: prices.csv\ncurrency: EUR without tax\nweights: { price: 1 }\n").With("prices.csv", "kind;price\nduplex cord;3,50\n");
        string told = bench.Run("plan", "brief.yaml", "--compare").Out;
        Assert.Contains("Prices are left out of the sum, as some parts have none.", told, StringComparison.Ordinal);
        Assert.Contains("Price: in EUR without tax, by your list.", string.Join(' ', told.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);

        // 16 cords of 3.50.
        Assert.Contains("over 56.00", told, StringComparison.Ordinal);
        Assert.Contains("Without a price", told, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "prices.csv")]
    [InlineData("site/", "site/prices.csv")]
    public void A_brief_may_name_the_price_list_that_the_call_writes(string folder, string list)
    {
        using var bench = new Workbench().With(folder + "brief.yaml", Brief + "prices: prices.csv\nweights: { price: 1 }\n");
        Assert.Equal(2, bench.Run("plan", folder + "brief.yaml", "--compare").Status);
        Assert.Equal(2, bench.Run("plan", folder + "brief.yaml", "--parts", list).Status);
        Outcome outcome = bench.Run("plan", folder + "brief.yaml", "--compare", "--parts", list);
        Assert.Equal(0, outcome.Status);
        Assert.DoesNotContain("Prices are left out", outcome.Out, StringComparison.Ordinal);
        Assert.StartsWith("kind,type,fibres", bench.Read(list), StringComparison.Ordinal);
        Assert.Equal(0, bench.Run("plan", folder + "brief.yaml", "--compare").Status);
    }

    [Fact]
    public void A_price_that_fits_no_part_is_told_with_its_row()
    {
        using var bench = new Workbench().With("brief.yaml", Brief + "prices: prices.csv\n").With("prices.csv", "kind,fibres,price\ncassette,,41\ncassette,13,7\ntrunc,,9\n");
        string told = bench.Run("plan", "brief.yaml", "--compare").Out;
        Assert.Contains("  prices.csv:3:1: cassette, 13 fibres\n  prices.csv:4:1: trunc\n", told, StringComparison.Ordinal);
        JsonElement root = Json.Parse(bench.Run("plan", "brief.yaml", "--compare", "--format", "json").Out, "polaritymap/plan-comparison");
        Assert.True(JsonSchema.FromText(OutputSchemas.Text("plan-comparison")).Evaluate(root).IsValid);
        Assert.Equal([3, 4], root.GetProperty("pricesUnused").EnumerateArray().Select(p => p.GetProperty("line").GetInt32()));
    }

    [Theory]
    [InlineData("method: U1", "method: U1\nfibre: OM4", "The one way to build it serves;")]
    [InlineData("method: U1", "fibre: OM1", "The one way to build it does not serve;")]
    public void One_way_is_told_in_the_singular(string right, string other, string expected)
    {
        using var bench = new Workbench().With("brief.yaml", Brief.Replace("fibre: OM4\n", "", StringComparison.Ordinal).Replace(right, other, StringComparison.Ordinal));
        Assert.Contains(expected, bench.Run("plan", "brief.yaml", "--compare", "--method", "U1", "--base", "8").Out, StringComparison.Ordinal);
    }
}
