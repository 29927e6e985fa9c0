using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using PolarityMap.Core.Checks;
using Xunit;

namespace PolarityMap.Acceptance.Data;

/// <summary>SARIF logs judged by the standard's own schema, and their places by the text of the documents.</summary>
public sealed class SarifTests
{
    private static readonly JsonSchema s_schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Repository.Root, "tests", "PolarityMap.Acceptance", "Data", "Sarif", "sarif-2.1.0.json")));

    private static readonly EvaluationOptions s_options = new() { RequireFormatValidation = true };

    public static TheoryData<string> Documents => GalleryDocuments.All;

    [Theory]
    [MemberData(nameof(Documents))]
    public void A_log_follows_the_schema_of_the_standard(string document)
    {
        Outcome outcome = GalleryDocuments.Run(document, "check", "--format", "sarif");
        Assert.Equal("", outcome.Error);
        Assert.True(IsValid(outcome.Out));
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void Its_results_are_the_findings_with_their_places(string document)
    {
        JsonElement log = Log(GalleryDocuments.Run(document, "check", "--format", "sarif"));
        JsonElement findings = JsonDocument.Parse(GalleryDocuments.Run(document, "check", "--format", "json").Out).RootElement.GetProperty("findings");
        IEnumerable<string> expected = findings.EnumerateArray().Select(f => $"{f.GetProperty("severity").GetString()} {f.GetProperty("code").GetString()} {f.GetProperty("file").GetString()}:{f.GetProperty("line").GetInt32()}:{f.GetProperty("column").GetInt32()} +{f.GetProperty("related").GetArrayLength()}");
        Assert.Equal(expected, log.GetProperty("results").EnumerateArray().Select(r => $"{r.GetProperty("level").GetString()} {r.GetProperty("ruleId").GetString()} {PlaceOf(r)} +{(r.TryGetProperty("relatedLocations", out JsonElement related) ? related.GetArrayLength() : 0)}"));
        JsonElement[] rules = [.. log.GetProperty("tool").GetProperty("driver").GetProperty("rules").EnumerateArray()];
        Assert.All(log.GetProperty("results").EnumerateArray(), r => Assert.Equal(r.GetProperty("ruleId").GetString(), rules[r.GetProperty("ruleIndex").GetInt32()].GetProperty("id").GetString()));
    }

    [Fact]
    public void Every_rule_is_described_with_a_name_of_its_own_and_its_level()
    {
        JsonElement[] rules = [.. Log(GalleryDocuments.Run("opera-house/plant.yaml", "check", "--format", "sarif")).GetProperty("tool").GetProperty("driver").GetProperty("rules").EnumerateArray()];
        Assert.Equal(RuleCatalogue.All.Select(r => r.Code), rules.Select(r => r.GetProperty("id").GetString()));
        Assert.Equal(rules.Length, rules.Select(r => r.GetProperty("name").GetString()).Distinct().Count());
        Assert.All(rules, r => Assert.Matches("^[A-Z][A-Za-z0-9]+$", r.GetProperty("name").GetString()));
        Assert.All(rules, r => Assert.Matches(@"^[A-Z].+[.']$", r.GetProperty("help").GetProperty("text").GetString()));
        Assert.Equal(RuleCatalogue.All.Select(r => r.Severity == Severity.Error ? "error" : "warning"), rules.Select(r => r.GetProperty("defaultConfiguration").GetProperty("level").GetString()));
    }

    [Fact]
    public void A_fingerprint_stays_when_lines_are_added_above_and_no_two_results_share_one()
    {
        string text = File.ReadAllText(Path.Combine(Repository.Gallery, "faults", "D05.yaml"));
        string[] before = Fingerprints(text), after = Fingerprints("# moved\n# down\n" + text);
        Assert.NotEmpty(before);
        Assert.Equal(before, after);
        Assert.Equal(before.Length, before.Distinct().Count());

        string[] many = [.. Log(GalleryDocuments.Run("opera-house/as-built.yaml", "check", "--format", "sarif")).GetProperty("results").EnumerateArray().Select(Fingerprint)];
        Assert.Equal(many.Length, many.Distinct().Count());
    }

    [Fact]
    public void What_keeps_a_document_from_being_read_is_a_result_at_its_place_and_the_run_no_success()
    {
        Outcome outcome = RunOn("plant.yaml", "plant: x\nparts:\n  SW-L: { kind: duplx interface }\n  SW-R: { kind: duplex interface, prts: 6 }\n");
        Assert.Equal(2, outcome.Status);
        Assert.True(IsValid(outcome.Out));
        JsonElement log = Log(outcome);
        Assert.False(log.GetProperty("invocations")[0].GetProperty("executionSuccessful").GetBoolean());
        Assert.Equal(2, log.GetProperty("invocations")[0].GetProperty("exitCode").GetInt32());
        Assert.Equal(["plant.yaml:3:17", "plant.yaml:4:35"], log.GetProperty("results").EnumerateArray().Select(PlaceOf));
        Assert.Contains("did you mean 'duplex interface'?", log.GetProperty("results")[0].GetProperty("message").GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_document_that_is_not_there_has_a_log_without_a_region()
    {
        Outcome outcome = Product.Run(Repository.Gallery, "check", "there is none.yaml", "--format", "sarif");
        Assert.True(IsValid(outcome.Out));
        JsonElement place = Log(outcome).GetProperty("results")[0].GetProperty("locations")[0].GetProperty("physicalLocation");
        Assert.False(place.TryGetProperty("region", out _));
        Assert.Equal("there%20is%20none.yaml", place.GetProperty("artifactLocation").GetProperty("uri").GetString());
    }

    // RFC 3986: a colon in the first segment would read as a scheme, a sharp as a fragment, a percent as an escape.
    [Theory]
    [InlineData("a b#1%.yaml")]
    [InlineData("host:1.yaml")]
    [InlineData("größe?.yaml")]
    public void A_file_of_any_name_is_found_again_from_its_reference(string name)
    {
        Outcome outcome = RunOn(name, File.ReadAllText(Path.Combine(Repository.Gallery, "faults", "P01.yaml")));
        Assert.True(IsValid(outcome.Out));
        string uri = Log(outcome).GetProperty("results")[0].GetProperty("locations")[0].GetProperty("physicalLocation").GetProperty("artifactLocation").GetProperty("uri").GetString()!;
        Assert.False(Uri.IsWellFormedUriString(uri, UriKind.Absolute));
        Assert.Equal($"/plants/{name}", new Uri(new Uri("file:///plants/"), uri).LocalPath);
    }

    [Fact]
    public void The_schema_can_refuse()
    {
        JsonNode log = JsonNode.Parse(GalleryDocuments.Run("faults/P01.yaml", "check", "--format", "sarif").Out)!;
        log["runs"]![0]!["results"]![0]!["level"] = "fatal";
        Assert.False(IsValid(log.ToJsonString()));
        log["runs"]![0]!["results"]![0]!["level"] = "error";
        Assert.True(IsValid(log.ToJsonString()));
        log["runs"]![0]!["results"]![0]!["colour"] = "red";
        Assert.False(IsValid(log.ToJsonString()));
    }

    private static bool IsValid(string log) => s_schema.Evaluate(JsonDocument.Parse(log).RootElement, s_options).IsValid;

    private static JsonElement Log(Outcome outcome) => JsonDocument.Parse(outcome.Out).RootElement.GetProperty("runs")[0];

    private static string PlaceOf(JsonElement result)
    {
        JsonElement place = result.GetProperty("locations")[0].GetProperty("physicalLocation");
        string file = Uri.UnescapeDataString(place.GetProperty("artifactLocation").GetProperty("uri").GetString()!);
        return place.TryGetProperty("region", out JsonElement region) ? $"{file}:{region.GetProperty("startLine").GetInt32()}:{region.GetProperty("startColumn").GetInt32()}" : $"{file}:0:0";
    }

    private static string Fingerprint(JsonElement result) => result.GetProperty("partialFingerprints").GetProperty("ruleAndMessage/v1").GetString()!;

    private static string[] Fingerprints(string text) => [.. Log(RunOn("plant.yaml", text)).GetProperty("results").EnumerateArray().Select(Fingerprint)];

    private static Outcome RunOn(string name, string text)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("sarif-");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, name), text);
            return Product.Run(folder.FullName, "check", name, "--format", "sarif");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
