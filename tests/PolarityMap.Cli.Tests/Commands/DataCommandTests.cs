using System.Text.Json;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

public sealed class DataCommandTests
{
    [Theory]
    [InlineData("plant", "parts")]
    [InlineData("strands", "strands")]
    [InlineData("findings", "findings")]
    public void Into_a_file_goes_the_same_text_as_to_the_terminal(string what, string list)
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("data", "plant.yaml", what);
        Assert.Equal(0, outcome.Status);
        Assert.Equal(JsonValueKind.Array, Json.Parse(outcome.Out, $"polaritymap/{what}").GetProperty(list).ValueKind);
        Assert.Equal(0, bench.Run("data", "plant.yaml", what, "-o", "out.json").Status);
        Assert.Equal(outcome.Out, bench.Read("out.json"));
    }

    // It hands over; check judges.
    [Fact]
    public void A_plant_with_errors_is_handed_over_with_status_0()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Fault("D02"));
        Outcome outcome = bench.Run("data", "plant.yaml", "findings");
        Assert.Equal(0, outcome.Status);
        Assert.True(Json.Parse(outcome.Out, "polaritymap/findings").GetProperty("errors").GetInt32() > 0);
    }

    [Fact]
    public void A_document_that_cannot_be_read_writes_no_file()
    {
        using var bench = new Workbench().With("broken.yaml", Samples.Broken);
        Outcome outcome = bench.Run("data", "broken.yaml", "plant", "-o", "plant.json");
        Assert.Equal(2, outcome.Status);
        Json.Parse(outcome.Out, "polaritymap/problems");
        Assert.Equal(["broken.yaml"], bench.Files());
    }

    [Theory]
    [InlineData("data", "plant.yaml")]
    [InlineData("data", "plant.yaml", "strnds")]
    [InlineData("schema", "strnds")]
    public void A_wrong_word_is_refused_with_what_there_is(params string[] call)
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run(call);
        Assert.Equal((2, ""), (outcome.Status, outcome.Out));
        if (call[^1] == "strnds")
            Assert.Contains("strands", outcome.Error, StringComparison.Ordinal);
    }
}
