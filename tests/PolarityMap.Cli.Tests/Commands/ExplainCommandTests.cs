using System.Text.Json;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Optics;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

public sealed class ExplainCommandTests
{
    public static TheoryData<string> Codes => [.. RuleCatalogue.All.Select(r => r.Code)];

    [Fact]
    public void Without_a_code_every_rule_is_listed_with_its_title()
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run("explain");
        Assert.Equal(0, outcome.Status);
        Assert.All(RuleCatalogue.All, r => Assert.Contains($"  {r.Code}  {r.Title}", outcome.Out, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_rule_is_told_with_why_what_clears_it_and_both_documents(string code)
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run("explain", code);
        Assert.Equal(0, outcome.Status);
        Rule rule = RuleCatalogue.Find(code)!;
        string flowing = string.Join(' ', outcome.Out.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        foreach (string text in (string[])[rule.Title, rule.Why, rule.Clears, rule.Source])
            Assert.Contains(string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries)), flowing, StringComparison.Ordinal);
        foreach (string line in (rule.Example + rule.Repaired).Split('\n', StringSplitOptions.RemoveEmptyEntries))
            Assert.Contains($"  {line}\n", outcome.Out, StringComparison.Ordinal);
        Assert.All(outcome.Out.Split('\n'), l => Assert.True(l.Length <= 130, l));
    }

    [Fact]
    public void The_case_of_a_code_does_not_matter()
    {
        using var bench = new Workbench();
        Assert.Equal(bench.Run("explain", "P01"), bench.Run("explain", "p01"));
    }

    [Fact]
    public void An_unknown_code_has_status_2_and_all_codes_are_named()
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run("explain", "P99");
        Assert.Equal(2, outcome.Status);
        Assert.Contains("there is no rule 'P99'", outcome.Error, StringComparison.Ordinal);
        Assert.All(RuleCatalogue.All, r => Assert.Contains(r.Code, outcome.Error, StringComparison.Ordinal));
    }

    public static TheoryData<string> Topics => ["budget", "deviations", .. Core.Optics.Application.Names, .. FibreClass.Names, .. DeviationCatalogue.All.Select(k => k.Name)];

    [Fact]
    public void Without_a_code_the_other_topics_are_listed_too()
    {
        using var bench = new Workbench();
        string[] words = [.. bench.Run("explain").Out.Split(['\n', ','], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];

        // A name of two words may stand over the end of a line.
        string flowing = string.Join(' ', bench.Run("explain").Out.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("budget", words);
        Assert.All(Core.Optics.Application.Names.Concat(FibreClass.Names).Concat(DeviationCatalogue.All.Select(k => k.Name)), t => Assert.Contains(t, flowing, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Topics))]
    public void Every_topic_is_told_in_text_and_as_json_in_either_letter_case(string topic)
    {
        using var bench = new Workbench();
        Outcome text = bench.Run("explain", topic);
        Assert.Equal((0, ""), (text.Status, text.Error));
        Assert.StartsWith(topic, text.Out, StringComparison.Ordinal);
        Assert.All(text.Out.Split('\n'), l => Assert.InRange(l.Length, 0, 120));
        Assert.Equal(text, bench.Run("explain", topic.ToLowerInvariant()));
        Outcome json = bench.Run("explain", topic, "--format", "json");
        Assert.Equal((0, ""), (json.Status, json.Error));
        bool isDeviation = topic == "deviations" || DeviationCatalogue.Find(topic) is not null;
        string format = topic == "budget" ? "limits" : isDeviation ? "deviations" : FibreClass.Find(topic) is null ? "application" : "fibre";
        JsonElement root = Json.Parse(json.Out, $"polaritymap/{format}");
        if (topic != "budget" && !isDeviation)
            Assert.Equal(topic, root.GetProperty("name").GetString());
    }

    // Source: interface facts 4.1 and 4.2.
    [Fact]
    public void The_limits_have_a_row_for_every_figure_with_its_confidence()
    {
        using var bench = new Workbench();
        JsonElement root = Json.Parse(bench.Run("explain", "budget", "--format", "json").Out, "polaritymap/limits");
        JsonElement[] profiles = [.. root.GetProperty("profiles").EnumerateArray()];
        Assert.Equal(LimitProfile.Names, profiles.Select(p => p.GetProperty("name").GetString()));
        Assert.Equal([true, false, false], profiles.Select(p => p.GetProperty("default").GetBoolean()));
        foreach (JsonElement profile in profiles)
        {
            JsonElement[] rows = [.. profile.GetProperty("limits").EnumerateArray()];

            // Mating, splice, two reference plugs, then two columns of each class and a third of OM5.
            Assert.Equal(4 + (2 * FibreClass.All.Count) + 1, rows.Length);
            Assert.All(rows, r => Assert.Equal(["what", "fibre", "wavelength", "value", "unit", "confidence", "from"], Json.Names(r)));
            Assert.All(rows, r => Assert.NotEqual("not known", r.GetProperty("confidence").GetString()));
            Assert.Equal(0.75m, rows[0].GetProperty("value").GetDecimal());
        }

        Assert.Equal(8, root.GetProperty("estimates").GetArrayLength());
    }

    [Fact]
    public void An_application_has_the_documented_fields()
    {
        using var bench = new Workbench();
        JsonElement root = Json.Parse(bench.Run("explain", "400GBASE-SR8", "--format", "json").Out, "polaritymap/application");
        Assert.Equal(
            ["format", "version", "name", "clause", "clauseConfidence", "wavelengths", "wavelengthConfidence", "wavelengthRange", "counterpart", "layouts", "limits", "breakouts", "note"],
            Json.Names(root));
        Assert.Equal(["name", "face", "receptacles", "angled", "source", "lanes"], Json.Names(root.GetProperty("layouts")[0]));
        Assert.Equal(["receptacle", "position", "use", "lane", "sends", "hears"], Json.Names(root.GetProperty("layouts")[0].GetProperty("lanes")[0]));
        Assert.Equal(
            ["profile", "fibre", "distance", "distanceConfidence", "loss", "lossConfidence", "connectionShare", "connectionShareConfidence", "assumedCable", "leastLoss", "note"],
            Json.Names(root.GetProperty("limits")[0]));
        Assert.Equal(["name", "from", "to", "groups", "lanesPerGroup", "source"], Json.Names(root.GetProperty("breakouts")[0]));
        Assert.Equal(2, root.GetProperty("breakouts").GetArrayLength());
    }

    public static TheoryData<string> Deviations => [.. DeviationCatalogue.All.Select(k => k.Name)];

    [Fact]
    public void All_deviations_are_listed_with_title_weight_and_minutes()
    {
        using var bench = new Workbench();
        string[] lines = bench.Run("explain", "deviations").Out.Split('\n');
        foreach (DeviationKind kind in DeviationCatalogue.All)
        {
            string line = Assert.Single(lines, l => l.StartsWith($"  {kind.Name} ", StringComparison.Ordinal));
            string[] words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            Assert.Equal([$"{kind.Weight}", kind.LookMinutes > 0 ? $"{kind.LookMinutes}" : "-", $"{kind.MendMinutes}"], words[1..4]);
            Assert.EndsWith($"  {kind.Title}", line, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Deviations))]
    public void A_deviation_is_told_with_symptom_work_source_and_caution(string name)
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run("explain", name);
        DeviationKind kind = DeviationCatalogue.Find(name)!;
        string flowing = string.Join(' ', outcome.Out.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        foreach (string text in (string[])[$"{kind.Name}: {kind.Title}", kind.Symptom, kind.Source, kind.Caution, $"{kind.MendMinutes} minute", "common practice"])
            Assert.Contains(text, flowing, StringComparison.Ordinal);
        Assert.Equal(kind.LookMinutes == 0, flowing.Contains("looking at the part does not show it", StringComparison.Ordinal));
        Assert.All(outcome.Out.Split('\n'), l => Assert.True(l.Length <= 100, l));
    }

    [Fact]
    public void Deviations_have_the_documented_fields_all_and_one()
    {
        using var bench = new Workbench();
        JsonElement[] all = [.. Json.Parse(bench.Run("explain", "deviations", "--format", "json").Out, "polaritymap/deviations").GetProperty("deviations").EnumerateArray()];
        Assert.Equal(DeviationCatalogue.All.Select(k => k.Name), all.Select(d => d.GetProperty("name").GetString()));
        Assert.All(all, d => Assert.Equal(["name", "title", "symptom", "weight", "seenByLooking", "lookMinutes", "mendMinutes", "source", "caution"], Json.Names(d)));
        Assert.All(all, d => Assert.Equal(d.GetProperty("lookMinutes").GetInt32() > 0, d.GetProperty("seenByLooking").GetBoolean()));
        foreach (JsonElement kind in all)
        {
            JsonElement one = Assert.Single(Json.Parse(bench.Run("explain", kind.GetProperty("name").GetString()!, "--format", "json").Out, "polaritymap/deviations").GetProperty("deviations").EnumerateArray());
            Assert.Equal(kind.GetRawText(), one.GetRawText());
        }
    }

    [Fact]
    public void A_class_of_fibre_has_the_documented_fields()
    {
        using var bench = new Workbench();
        JsonElement root = Json.Parse(bench.Run("explain", "OM4", "--format", "json").Out, "polaritymap/fibre");
        Assert.Equal(["format", "version", "name", "core", "modalBandwidth", "source", "groupIndex", "profiles", "applications"], Json.Names(root));
        Assert.Equal(["wavelength", "value", "confidence"], Json.Names(root.GetProperty("groupIndex")[0]));
        Assert.Equal(["name", "distance", "distanceConfidence", "loss", "lossConfidence"], Json.Names(root.GetProperty("applications")[0]));
    }

    [Theory]
    [InlineData("10GBASE-SX", "did you mean '10GBASE-SR'?")]
    [InlineData("bugdet", "did you mean 'budget'?")]
    [InlineData("OM44", "did you mean 'OM4'?")]
    [InlineData("400GBASE-LR4", "did you mean '400GBASE-LR4-6' or '400G-LR4-10'?")]
    [InlineData("other-chord", "did you mean 'other-cord'?")]
    [InlineData("deviation", "did you mean 'deviations'?")]
    [InlineData("nonsense", "to explain; expected a rule's code, 'budget', an application, a class of fibre or a deviation")]
    public void An_unknown_topic_is_told_what_there_is(string topic, string expected)
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run("explain", topic);
        Assert.Equal((2, ""), (outcome.Status, outcome.Out));
        Assert.Contains(expected, outcome.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_lists_the_rules_with_all_their_texts()
    {
        using var bench = new Workbench();
        JsonElement[] rules = [.. Json.Parse(bench.Run("explain", "--format", "json").Out, "polaritymap/rules").GetProperty("rules").EnumerateArray()];
        Assert.Equal(RuleCatalogue.All.Select(r => r.Code), rules.Select(r => r.GetProperty("code").GetString()));
        Assert.All(rules, r => Assert.Equal(["code", "title", "family", "severity", "why", "clears", "example", "repaired", "source"], Json.Names(r)));
        JsonElement one = Assert.Single(Json.Parse(bench.Run("explain", "D04", "--format", "json").Out, "polaritymap/rules").GetProperty("rules").EnumerateArray());
        Assert.Equal("D04", one.GetProperty("code").GetString());
    }
}
