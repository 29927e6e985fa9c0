using System.Text.Json;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

public sealed class SchemaCommandTests
{
    [Fact]
    public void The_schema_is_json_of_the_2020_12_dialect()
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run("schema");
        Assert.Equal(0, outcome.Status);
        JsonElement schema = JsonDocument.Parse(outcome.Out).RootElement;
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", schema.GetProperty("$schema").GetString());
    }

    [Fact]
    public void Into_a_file_goes_the_same_text()
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run("schema", "-o", "plant.schema.json");
        Assert.Equal(0, outcome.Status);
        Assert.Equal(bench.Run("schema").Out, bench.Read("plant.schema.json"));
        Assert.Equal(["plant.schema.json"], bench.Files());
    }
}
