using System.Text.Json.Nodes;
using Json.Schema;
using PolarityMap.Documents.Planning;
using PolarityMap.Documents.Schema;
using PolarityMap.Documents.Tests.Schema;
using Xunit;

namespace PolarityMap.Documents.Tests.Planning;

/// <summary>The schema of briefs knows what the reader knows. Judged by a JSON Schema library.</summary>
public sealed class BriefSchemaTests
{
    private static readonly JsonSchema s_schema = JsonSchema.FromText(BriefSchema.Text());

    public static TheoryData<string> Briefs => [.. Directory.EnumerateFiles(Path.Combine(Repository.Root, "gallery"), "*.brief.yml", SearchOption.AllDirectories)
        .Append(Path.Combine(Repository.Root, "templates", "starter-brief.yml")).Select(f => Path.GetRelativePath(Repository.Root, f))];

    [Theory]
    [MemberData(nameof(Briefs))]
    public void Every_brief_of_ours_is_valid(string path)
    {
        EvaluationResults told = s_schema.Evaluate(Json(File.ReadAllText(Path.Combine(Repository.Root, path))), new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(told.IsValid, string.Join('\n', (told.Details ?? []).Where(d => d.Errors is not null).Select(d => $"{d.InstanceLocation}: {string.Join(", ", d.Errors!.Values)}")));
    }

    [Theory]
    [InlineData("fibre: OM4", "fibre: OM6")]
    [InlineData("method: compare", "method: D")]
    [InlineData("base: compare", "base: 10")]
    [InlineData("spare: 25 %", "spare: 25")]
    [InlineData("slack: 5 %", "slack: 5")]
    [InlineData("distance: 58 m", "distance: 58")]
    [InlineData("distance: 58 m", "distance: 0 m")]
    [InlineData("switch: 2 m", "switch: 0.00 m")]
    [InlineData("one-cassette: yes", "one-cassette: maybe")]
    [InlineData("room: Stage, ", "")]
    [InlineData("ports-per-switch: 24", "ports-per-switch: 0")]
    [InlineData("method: compare", "method: compare\nweights: { kinds: -1 }")]
    [InlineData("method: compare", "method: compare\nweights: { kind: 1 }")]
    [InlineData("cassettes-per-panel", "cassettes-per-pannel")]
    public void What_the_reader_refuses_the_schema_refuses(string right, string wrong)
    {
        string sound = File.ReadAllText(Path.Combine(Repository.Root, "templates", "starter-brief.yml"));
        Assert.Contains(right, sound, StringComparison.Ordinal);
        string broken = sound.Replace(right, wrong, StringComparison.Ordinal);
        Assert.False(s_schema.Evaluate(Json(broken)).IsValid);
        Assert.Null(BriefReadingTests.Read(broken).Brief);
    }

    [Fact]
    public void Every_key_of_the_reader_is_in_the_schema()
    {
        JsonNode properties = JsonNode.Parse(BriefSchema.Text())!["properties"]!;
        Assert.Equal(BriefKeys.OfBrief.Order(StringComparer.Ordinal), properties.AsObject().Select(p => p.Key).Order(StringComparer.Ordinal));
        Assert.Equal(Of(BriefKeys.OfNetwork), Keys(properties["networks"]!["additionalProperties"]!));
        Assert.Equal(Of(BriefKeys.OfRoom), Keys(properties["rooms"]!["additionalProperties"]!));
        Assert.Equal(Of(BriefKeys.OfOutlets), Keys(properties["outlets"]!["additionalProperties"]!));
        Assert.Equal(Of(BriefKeys.OfCords), Keys(properties["cords"]!));
        Assert.Equal(Of(BriefKeys.OfWeights), Keys(properties["weights"]!));
    }

    private static IEnumerable<string> Of(IEnumerable<string> keys) => keys.Order(StringComparer.Ordinal);

    private static IEnumerable<string> Keys(JsonNode of) => Of(of["properties"]!.AsObject().Select(p => p.Key));

    private static System.Text.Json.JsonElement Json(string yaml) => YamlAsJson.Convert(yaml)!.Value;
}
