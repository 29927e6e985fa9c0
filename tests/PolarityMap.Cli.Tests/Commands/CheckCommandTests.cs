using System.Text.Json;
using PolarityMap.Core.Checks;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

public sealed class CheckCommandTests
{
    [Fact]
    public void A_clean_plant_has_status_0_and_all_links_proven()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("check", "plant.yaml");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("4 of 4 links are proven. Nothing was found.", outcome.Out, StringComparison.Ordinal);
        Assert.Equal("", outcome.Error);
    }

    [Fact]
    public void An_error_has_status_1_and_its_code_place_and_source_line_are_shown()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Fault("D02"));
        Outcome outcome = bench.Run("check", "plant.yaml");
        Assert.Equal(1, outcome.Status);
        Assert.Contains("error D02 crossed pair", outcome.Out, StringComparison.Ordinal);
        string place = outcome.Out.Split('\n').First(l => l.StartsWith("  plant.yaml:", StringComparison.Ordinal));
        int line = int.Parse(place.Split(':')[1]);
        Assert.Contains($"{line,5} | {bench.Read("plant.yaml").Split('\n')[line - 1]}", outcome.Out, StringComparison.Ordinal);
        Assert.Equal("", outcome.Error);
    }

    [Fact]
    public void A_warning_alone_has_status_0()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Fault("W02"));
        Outcome outcome = bench.Run("check", "plant.yaml");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("warning W02", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_document_has_status_2_and_every_mistake_with_its_line_on_the_error_writer()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Broken);
        Outcome outcome = bench.Run("check", "plant.yaml");
        Assert.Equal(2, outcome.Status);
        Assert.Equal("", outcome.Out);

        Assert.Equal(["3", "4", "5"], outcome.ErrorLines.Where(l => l.StartsWith("plant.yaml:", StringComparison.Ordinal)).Select(l => l.Split(':')[1]));
    }

    [Fact]
    public void A_missing_document_has_status_2_and_the_nearest_file_is_named()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("check", "plnt.yaml");
        Assert.Equal(2, outcome.Status);
        Assert.Contains("there is no file 'plnt.yaml'; did you mean 'plant.yaml'?", outcome.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_is_no_document()
    {
        using var bench = new Workbench().With("plants/plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("check", "plants");
        Assert.Equal(2, outcome.Status);
        Assert.Contains("is a folder", outcome.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_format_and_version_first_and_the_documented_fields()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Fault("D02"));
        Outcome outcome = bench.Run("check", "plant.yaml", "--format", "json");
        Assert.Equal(1, outcome.Status);
        JsonElement report = Json.Parse(outcome.Out, "polaritymap/check");
        Assert.Equal(["format", "version", "plant", "verdict", "errors", "warnings", "links", "findings", "remarks"], Json.Names(report));
        Assert.Equal(1, report.GetProperty("errors").GetInt32());
        JsonElement link = report.GetProperty("links")[0];
        Assert.Equal(["from", "to", "proven", "strands", "file", "line", "column"], Json.Names(link));
        JsonElement finding = report.GetProperty("findings")[0];
        Assert.Equal(
            ["code", "title", "family", "severity", "file", "line", "column", "message", "expected", "actual", "links", "strands", "related", "remedies"],
            Json.Names(finding));
        Assert.Equal("D02", finding.GetProperty("code").GetString());
        Assert.Equal("error", finding.GetProperty("severity").GetString());
        JsonElement strand = finding.GetProperty("strands")[0];
        Assert.Equal(["number", "loop", "from", "to", "hops"], Json.Names(strand));
        Assert.Equal(["address", "is", "lane"], Json.Names(strand.GetProperty("from")));
        Assert.Equal(["part", "kind", "in", "out", "mating"], Json.Names(strand.GetProperty("hops")[0]));
        Assert.Equal(JsonValueKind.Null, strand.GetProperty("hops")[0].GetProperty("in").ValueKind);
    }

    // A finding names the links it refutes by their place in the list of links.
    [Fact]
    public void Json_links_that_a_finding_refutes_are_those_not_proven()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Fault("D02"));
        JsonElement report = Json.Parse(bench.Run("check", "plant.yaml", "--format", "json").Out, "polaritymap/check");
        int[] refuted = [.. report.GetProperty("findings").EnumerateArray().SelectMany(f => f.GetProperty("links").EnumerateArray()).Select(l => l.GetInt32()).Distinct().Order()];
        JsonElement[] links = [.. report.GetProperty("links").EnumerateArray()];
        Assert.Equal(Enumerable.Range(0, links.Length).Where(i => !links[i].GetProperty("proven").GetBoolean()), refuted);
        Assert.NotEmpty(refuted);
    }

    // Two links with reversible cords of the wrong type; the findings are alike, and each has its own remedy.
    [Fact]
    public void Proved_remedies_stand_with_their_findings_in_text_and_json()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Reversible);
        string[] text = bench.Run("check", "plant.yaml").Out.Split('\n');
        Assert.Contains("  remedy    exchange the plugs at one end of C1 (reversible in the field)", text);
        Assert.Contains("  proved    transmit SW-L/1:A lands on receive SW-R/1:B and transmit SW-R/1:A lands on receive SW-L/1:B, the ports that are meant", text);
        Assert.Contains("  remedy    exchange the plugs at one end of C2 (reversible in the field)", text.Select(l => l.Replace("      remedy", "  remedy", StringComparison.Ordinal)));
        JsonElement report = Json.Parse(bench.Run("check", "plant.yaml", "--format", "json").Out, "polaritymap/check");
        JsonElement[] findings = [.. report.GetProperty("findings").EnumerateArray()];
        Assert.Equal(2, findings.Length);
        JsonElement remedy = Assert.Single(findings[1].GetProperty("remedies").EnumerateArray());
        Assert.Equal(["text", "proof"], Json.Names(remedy));
        Assert.Equal("exchange the plugs at one end of C2 (reversible in the field)", remedy.GetProperty("text").GetString());
    }

    [Fact]
    public void A_finding_without_a_remedy_shows_none()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Fault("P01"));
        Assert.DoesNotContain("remedy", bench.Run("check", "plant.yaml").Out, StringComparison.Ordinal);
        JsonElement report = Json.Parse(bench.Run("check", "plant.yaml", "--format", "json").Out, "polaritymap/check");
        Assert.Empty(report.GetProperty("findings")[0].GetProperty("remedies").EnumerateArray());
    }

    [Fact]
    public void Problems_are_json_too_when_json_is_asked_for()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Broken);
        Outcome outcome = bench.Run("check", "plant.yaml", "--format", "json");
        Assert.Equal(2, outcome.Status);
        Assert.Equal("", outcome.Error);
        JsonElement problems = Json.Parse(outcome.Out, "polaritymap/problems");
        Assert.Equal(["format", "version", "count", "problems"], Json.Names(problems));
        Assert.Equal(3, problems.GetProperty("count").GetInt32());
        Assert.All(problems.GetProperty("problems").EnumerateArray(), p => Assert.Equal(["file", "line", "column", "message", "expected", "suggestion"], Json.Names(p)));
        Assert.Equal([3, 4, 5], problems.GetProperty("problems").EnumerateArray().Select(p => p.GetProperty("line").GetInt32()));
    }

    [Fact]
    public void Text_and_json_find_the_same()
    {
        foreach (Rule rule in RuleCatalogue.All)
        {
            using var bench = new Workbench().With("plant.yaml", rule.Example);
            Outcome text = bench.Run("check", "plant.yaml", "--every");
            Outcome json = bench.Run("check", "plant.yaml", "--format", "json");
            Assert.Equal(text.Status, json.Status);
            string[] codes = [.. Json.Parse(json.Out, "polaritymap/check").GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("code").GetString()!)];
            string[] heads = [.. text.Out.Split('\n').Where(l => l.StartsWith("error ", StringComparison.Ordinal) || l.StartsWith("warning ", StringComparison.Ordinal)).Select(l => l.Split(' ')[1])];
            Assert.Equal(codes, heads);
        }
    }

    [Fact]
    public void Two_runs_give_the_same_text()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Fault("D05"));
        Assert.Equal(bench.Run("check", "plant.yaml"), bench.Run("check", "plant.yaml"));
    }
}
