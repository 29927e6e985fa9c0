using System.Text.Json;
using Json.Schema;
using PolarityMap.Documents.Observations;
using PolarityMap.Documents.Tests.Schema;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Observations;

/// <summary>The published schema of observation files, judged by a validator that is not ours.</summary>
public sealed class SeenSchemaTests
{
    private static readonly string s_text = File.ReadAllText(Path.Combine(Repository.Root, "docs", "schemas", "seen.json"));

    private static readonly JsonSchema s_schema = JsonSchema.FromText(s_text);

    private static bool Accepts(string document) => YamlAsJson.Convert(document) is { } json && s_schema.Evaluate(json).IsValid;

    [Fact]
    public void It_is_a_valid_schema_of_draft_2020_12() => Assert.True(MetaSchemas.Draft202012.Evaluate(JsonDocument.Parse(s_text).RootElement).IsValid);

    // Where the reader is content an editor must not complain.
    [Theory]
    [InlineData("plant: p.yaml\n")]
    [InlineData("seen:\n")]
    [InlineData("seen: []\n")]
    [InlineData("seen:\n  - { light: SW-L/1:A, seen: SW-R/2:B, note: 3 }\n")]
    [InlineData("seen:\n  - { light: SW-L/1:A, seen: Nowhere }\n")]
    [InlineData("seen:\n  - { light: BX-U/1, seen: nowhere at K-R }\n")]
    [InlineData("seen:\n  - { lamp: SW-R/2, is: off }\n  - { lamp: SW-R/2, is: ON }\n")]
    [InlineData("seen:\n  - { loss: SW-L/1:A, seen: SW-R/1:B, value: 4.2dB }\n")]
    [InlineData("seen:\n  - { look: TRUNK, is: as described }\n  - { look: SW-L/1~K-L/1, is: Different }\n")]
    [InlineData("seen:\n  - { reached: DESK/1, is: no }\n")]
    public void What_the_reader_takes_is_accepted(string document)
    {
        Assert.Equal("", Rack.Read("seen.yaml", document).Problems);
        Assert.True(Accepts(document));
    }

    [Theory]
    [InlineData("sene:\n  - { lamp: SW-R/2, is: off }\n")]
    [InlineData("seen:\n  - { lamp: SW-R/2 }\n")]
    [InlineData("seen:\n  - { lamp: SW-R/2, is: of }\n")]
    [InlineData("seen:\n  - { lamp: SW-R/2, seen: off }\n")]
    [InlineData("seen:\n  - { light: SW-L/1:A, is: nowhere }\n")]
    [InlineData("seen:\n  - { light: SW-L/1:A, seen: nowere }\n")]
    [InlineData("seen:\n  - { light: SW-L/1:A, lamp: SW-R/2, is: off }\n")]
    [InlineData("seen:\n  - { loss: SW-L/1:A, seen: SW-R/1:B }\n")]
    [InlineData("seen:\n  - { loss: SW-L/1:A, seen: SW-R/1:B, value: 4.2 }\n")]
    [InlineData("seen:\n  - { look: TRUNK, is: wrong }\n")]
    [InlineData("seen:\n  - { reached: DESK, is: yes }\n")]
    [InlineData("seen: all\n")]
    public void What_the_reader_refuses_by_its_form_is_refused(string document)
    {
        Assert.NotEqual("", Rack.Read("seen.yaml", document).Problems);
        Assert.False(Accepts(document));
    }

    [Fact]
    public void The_schema_allows_as_many_observations_as_the_reader() =>
        Assert.Equal(SeenFile.MostObservations, JsonDocument.Parse(s_text).RootElement.GetProperty("properties").GetProperty("seen").GetProperty("maxItems").GetInt32());

    [Fact]
    public void More_observations_than_are_read_are_told()
    {
        string rows = string.Concat(Enumerable.Repeat("lamp,SW-R/2,off\n", SeenFile.MostObservations + 1));
        var problems = new ProblemList();
        Assert.Null(SeenFile.Read("seen.csv", System.Text.Encoding.UTF8.GetBytes("test,at,seen\n" + rows), problems));
        Assert.Equal("seen.csv:10002:1: there are more than 10000 observations; what was seen at one plant is less\n", problems.ToString());
    }
}
