using System.Text.Json;
using CsCheck;
using Json.Schema;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Documents.Schema;
using PolarityMap.Documents.Tests.Hostile;
using Xunit;

namespace PolarityMap.Documents.Tests.Schema;

/// <summary>The published schema, judged by a validator that is not ours.</summary>
public class SchemaTests
{
    private static readonly JsonElement Text = JsonDocument.Parse(PlantSchema.Text()).RootElement;
    private static readonly JsonSchema Schema = JsonSchema.FromText(PlantSchema.Text());

    private static bool Accepts(string document) => YamlAsJson.Convert(document) is { } json && Schema.Evaluate(json).IsValid;

    [Fact]
    public void The_schema_is_a_valid_schema_of_draft_2020_12()
    {
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", Text.GetProperty("$schema").GetString());
        Assert.True(MetaSchemas.Draft202012.Evaluate(Text).IsValid);
    }

    [Fact]
    public void The_validator_can_refuse_a_schema() =>
        Assert.False(MetaSchemas.Draft202012.Evaluate(JsonDocument.Parse("""{ "type": "sting" }""").RootElement).IsValid);

    [Fact]
    public void Every_reference_in_the_schema_has_its_definition()
    {
        string[] references = [.. References(Text).Distinct().Order(StringComparer.Ordinal)];

        Assert.Equal(["#/$defs/attributes", "#/$defs/description", "#/$defs/pairs"], references);
        Assert.Equal(["attributes", "description", "pairs"], Text.GetProperty("$defs").EnumerateObject().Select(p => p.Name).Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> References(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => p.Name == "$ref" ? [p.Value.GetString()!] : References(p.Value)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(References),
        _ => [],
    };

    public static TheoryData<string> Examples => [.. Repository.Examples()];

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_document_that_is_shown_is_accepted(string path) => Assert.True(Accepts(File.ReadAllText(Path.Combine(Repository.Root, path))));

    public static TheoryData<string> Codes => [.. RuleCatalogue.All.Select(r => r.Code)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_examples_of_a_rule_are_accepted(string code)
    {
        Assert.True(Accepts(RuleCatalogue.Find(code)!.Example));
        Assert.True(Accepts(RuleCatalogue.Find(code)!.Repaired));
    }

    public static TheoryData<string> Kinds => [.. PartKinds.All.Select(k => k.Name)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_attribute_of_a_kind_is_in_its_branch_of_the_schema_and_no_other(string name)
    {
        PartKind kind = PartKinds.Find(name)!;
        JsonElement branch = Text.GetProperty("$defs").GetProperty("description").GetProperty("anyOf").EnumerateArray()
            .Single(b => b.TryGetProperty("title", out JsonElement title) && title.GetString() == name);
        JsonElement properties = branch.GetProperty("properties");

        Assert.Equal(
            kind.AllAttributes.Select(a => a.Name).Append("kind").Order(StringComparer.Ordinal),
            properties.EnumerateObject().Select(p => p.Name).Order(StringComparer.Ordinal));
        Assert.False(branch.GetProperty("additionalProperties").GetBoolean());
        Assert.All(kind.AllAttributes, a => Assert.Equal(a.Meaning, properties.GetProperty(a.Name).GetProperty("description").GetString()));
        Assert.Equal(
            Catalogue.All.Where(t => t.Kind == name).Select(t => t.Name).Prepend(name),
            properties.GetProperty("kind").GetProperty("enum").EnumerateArray().Select(w => w.GetString()));
    }

    [Fact]
    public void The_attributes_of_own_types_are_those_of_all_kinds() =>
        Assert.Equal(
            PartKinds.All.SelectMany(k => k.AllAttributes).Select(a => a.Name).Append("kind").Distinct().Order(StringComparer.Ordinal),
            Text.GetProperty("$defs").GetProperty("attributes").GetProperty("properties").EnumerateObject().Select(p => p.Name).Order(StringComparer.Ordinal));

    /// <summary>Whatever a person may type: where the reader is content, an editor must not complain.</summary>
    [Fact]
    public void What_the_reader_accepts_the_schema_accepts() =>
        MutationTests.Documents.Sample(
            text =>
            {
                (Core.Plants.Plant? plant, _) = Reading.Read("p", new MemorySource().Add("p", text));
                if (plant is not null)
                    Assert.True(Accepts(text), text);
            },
            iter: 250);
}
