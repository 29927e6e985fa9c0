using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Xunit;

namespace PolarityMap.Acceptance.Data;

/// <summary>What the program really writes, judged against the published schemas by a validator that is not ours.</summary>
public sealed class OutputSchemaTests
{
    private static readonly string s_folder = Path.Combine(Repository.Root, "docs", "schemas");

    /// <summary>Every format that a schema is published for.</summary>
    private static readonly string[] s_names = [.. Directory.EnumerateFiles(s_folder, "*-1.json").Select(f => Path.GetFileName(f)[..^"-1.json".Length]).Order(StringComparer.Ordinal)];

    private static readonly Dictionary<string, JsonSchema> s_schemas = s_names.ToDictionary(n => n, n => JsonSchema.FromText(File.ReadAllText(PathOf(n))));

    private static readonly EvaluationOptions s_told = new() { OutputFormat = OutputFormat.List };

    public static TheoryData<string> Names => [.. s_names];

    public static TheoryData<string> Documents => GalleryDocuments.All;

    [Theory]
    [MemberData(nameof(Names))]
    public void A_schema_is_valid_and_the_program_prints_it_as_published(string name)
    {
        string text = File.ReadAllText(PathOf(name));
        Assert.True(MetaSchemas.Draft202012.Evaluate(JsonDocument.Parse(text).RootElement).IsValid);
        Assert.Equal(new Outcome(0, text, ""), Product.Run(Repository.Root, "schema", name));
    }

    [Fact]
    public void Every_format_of_the_page_on_JSON_has_a_schema_and_no_other_has()
    {
        string[] told = [.. File.ReadLines(Path.Combine(Repository.Root, "docs", "json.md")).Where(l => l.StartsWith("## `polaritymap/", StringComparison.Ordinal)).Select(l => l["## `polaritymap/".Length..^1]).Order(StringComparer.Ordinal)];
        Assert.Equal(told, s_names);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void An_object_is_closed_and_misses_nothing_but_what_is_written_only_sometimes(string name)
    {
        string[] sometimes = ["from", "lane", "mating", "to"];
        foreach (JsonElement part in Parts(JsonDocument.Parse(File.ReadAllText(PathOf(name))).RootElement))
        {
            if (!part.TryGetProperty("properties", out JsonElement properties) || properties.TryGetProperty("type", out _))
                continue;
            Assert.False(part.GetProperty("additionalProperties").GetBoolean());
            IEnumerable<string> required = part.GetProperty("required").EnumerateArray().Select(r => r.GetString()!);
            Assert.Empty(properties.EnumerateObject().Select(p => p.Name).Except(required).Except(sometimes));
        }
    }

    [Fact]
    public void What_several_schemas_define_by_the_same_name_is_the_same()
    {
        IEnumerable<(string Name, string Text)> all = s_names.SelectMany(n => Definitions(n).Select(d => (d.Name, d.Value.GetRawText())));
        Assert.All(all.GroupBy(d => d.Name), same => Assert.Single(same.Distinct()));
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void All_that_is_told_of_a_plant_follows_its_schema(string document)
    {
        Accept("check", GalleryDocuments.Run(document, "check", "--format", "json"));
        Accept("budget", GalleryDocuments.Run(document, "budget", "--all", "--format", "json"));
        Accept("separation", GalleryDocuments.Run(document, "separation", "--format", "json"));
        Accept("remedy", GalleryDocuments.Run(document, "remedy", "--format", "json"));
        foreach (string name in (string[])["plant", "strands", "findings"])
            Accept(name, GalleryDocuments.Run(document, "data", name));
        string part = JsonDocument.Parse(GalleryDocuments.Run(document, "data", "plant").Out).RootElement.GetProperty("parts").EnumerateArray()
            .First(p => p.GetProperty("ports").EnumerateArray().Any(q => !q.GetProperty("adapter").GetBoolean())).GetProperty("name").GetString()!;
        Accept("trace", GalleryDocuments.Run(document, "trace", part, "--format", "json"));
    }

    [Fact]
    public void All_that_is_told_without_a_plant_follows_its_schema()
    {
        Accept("catalogue", Product.Run(Repository.Root, "catalogue", "--format", "json"));
        Accept("rules", Product.Run(Repository.Root, "explain", "--format", "json"));
        Accept("limits", Product.Run(Repository.Root, "explain", "budget", "--format", "json"));
        Accept("deviations", Product.Run(Repository.Root, "explain", "deviations", "--format", "json"));
        foreach (string fibre in Core.Optics.FibreClass.Names)
            Accept("fibre", Product.Run(Repository.Root, "explain", fibre, "--format", "json"));
        foreach (string application in Core.Optics.Application.Names)
            Accept("application", Product.Run(Repository.Root, "explain", application, "--format", "json"));
        Accept("problems", Product.Run(Repository.Root, "check", "there-is-none.yaml", "--format", "json"));
    }

    [Theory]
    [InlineData("opera-house/plant.yaml", "lamp,LX-SW/7,off,,\nlamp,LX-D7/1,off,,")]
    [InlineData("opera-house/plant.yaml", "light,LX-SW/7:A,nowhere,,\nlight,LX-SW/8:A,LX-D8/1:B,,twice")]
    [InlineData("opera-house/plant.yaml", "lamp,LX-SW/7,off,,\nlamp,LX-SW/7,on,,")]
    [InlineData("opera-house/plant.yaml", "loss,LX-SW/7:A,LX-D7/1:B,12 dB,\nreached,ZB7,no,,\nlook,LX-T,as described,,")]
    public void What_explains_what_was_seen_follows_its_schema(string document, string seen)
    {
        string file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".csv");
        File.WriteAllText(file, $"test,at,seen,value,note\n{seen}\n");
        try
        {
            Accept("locate", GalleryDocuments.Run(document, "locate", "--seen", file, "--plan", "--most", "1", "--format", "json"));
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Theory]
    [InlineData("plant", "parts")]
    [InlineData("strands", "strands")]
    [InlineData("findings", "findings")]
    public void A_field_that_is_not_documented_is_refused(string name, string list)
    {
        JsonNode whole = JsonNode.Parse(GalleryDocuments.Run("opera-house/as-built.yaml", "data", name).Out)!;
        Assert.True(IsValid(name, whole));
        whole[list]![0]!["further"] = 1;
        Assert.False(IsValid(name, whole));
        ((JsonObject)whole[list]![0]!).Remove("further");
        whole["further"] = 1;
        Assert.False(IsValid(name, whole));
    }

    [Theory]
    [InlineData("plant", "parts")]
    [InlineData("strands", "strands")]
    [InlineData("findings", "findings")]
    public void A_field_that_is_left_out_is_missed(string name, string list)
    {
        JsonNode whole = JsonNode.Parse(GalleryDocuments.Run("opera-house/as-built.yaml", "data", name).Out)!;
        ((JsonObject)whole).Remove(list);
        Assert.False(IsValid(name, whole));
    }

    private static string PathOf(string name) => Path.Combine(s_folder, $"{name}-1.json");

    private static IEnumerable<JsonProperty> Definitions(string name) =>
        JsonDocument.Parse(File.ReadAllText(PathOf(name))).RootElement.TryGetProperty("$defs", out JsonElement own) ? own.EnumerateObject() : [];

    private static IEnumerable<JsonElement> Parts(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => Parts(p.Value)).Prepend(element),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Parts),
        _ => [],
    };

    private static bool IsValid(string name, JsonNode text) => s_schemas[name].Evaluate(JsonDocument.Parse(text.ToJsonString()).RootElement).IsValid;

    private static void Accept(string name, Outcome outcome)
    {
        JsonElement text = JsonDocument.Parse(outcome.Out).RootElement;
        Assert.Equal($"polaritymap/{name}", text.GetProperty("format").GetString());
        if (s_schemas[name].Evaluate(text).IsValid)
            return;
        EvaluationResults told = s_schemas[name].Evaluate(text, s_told);
        Assert.Fail(string.Join('\n', (told.Details ?? []).Where(d => d.Errors is not null).Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Select(e => e.Value))}").Take(10)));
    }
}
