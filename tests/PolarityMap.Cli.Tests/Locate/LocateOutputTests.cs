using System.Text.Json;
using Json.Schema;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Observations;
using Xunit;

namespace PolarityMap.Cli.Tests.Locate;

/// <summary>What is said of results that are made by hand.</summary>
public sealed class LocateOutputTests
{
    private readonly HandMade _made = new();

    private string Text(LocateResult result, bool all = false, params SeenRemark[] remarks)
    {
        using var output = new StringWriter { NewLine = "\n" };
        new LocateText(new CommandContext(output, TextWriter.Null), _made.Traced, all).Write(result, remarks);
        return output.ToString();
    }

    private JsonElement Written(LocateResult result, TestPlan? plan = null, params SeenRemark[] remarks)
    {
        using var output = new StringWriter { NewLine = "\n" };
        LocateJson.Write(_made.Traced, result, remarks, plan, output);
        JsonElement root = Json.Parse(output.ToString(), "polaritymap/locate");
        EvaluationResults told = JsonSchema.FromText(OutputSchemas.Text("locate")).Evaluate(root, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(told.IsValid, string.Join('\n', (told.Details ?? []).Where(d => d.Errors is not null).Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Select(e => e.Value))}")));
        return root;
    }

    [Fact]
    public void Explanations_stand_with_their_share_their_mend_and_what_speaks_for_them()
    {
        string[] lines = Text(_made.ThreeLeft).Split('\n');
        Assert.Equal("What was seen does not agree with the description; 3 explanations agree with all of it.", lines[1]);
        int first = Array.FindIndex(lines, l => l.StartsWith("  1   62 %  ", StringComparison.Ordinal));
        Assert.Equal(
            [
                $"  1   62 %  {_made.Left.Text}",
                $"            mend     {_made.Left.Mend} (3 min)",
                "            look     a look at SW-L/1~K-L/1 shows it (2 min)",
                "            because  with that cord nothing lights SW-R/1:B: its lamp is off, as was seen (seen.yaml:2)",
                "            agrees   with 1 more observation, which the plant as described would show too",
            ],
            lines.Skip(first).Take(5));
        Assert.Contains(lines, l => l.StartsWith($"  3    8 %  {_made.Right.Text}; and ", StringComparison.Ordinal));
    }

    [Fact]
    public void What_speaks_for_several_alike_is_written_once()
    {
        string[] lines = Text(_made.ThreeLeft).Split('\n');
        Assert.Equal(1, lines.Count(l => l.Contains("with that cord nothing lights SW-R/1:B", StringComparison.Ordinal)));
        Assert.Equal(2, lines.Count(l => l == "            because  the same was seen as for 1"));
    }

    [Fact]
    public void The_next_test_says_what_each_outcome_would_mean_and_what_to_write_down()
    {
        Assert.Contains(
            """
            Next test, about 3 min: put light into SW-L/1:A and look at the ports of K-L
              out of K-L/rear:1   62 %  leaves 1
              nowhere             38 %  leaves 2, 3
              write down what you see, such as { light: SW-L/1:A, seen: K-L/rear:1 }, or answer with --ask

            """,
            Text(_made.ThreeLeft), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_searched_and_the_bound_that_was_hit_is_said() =>
        Assert.Contains(
            """
            searched  single deviations: 312 that can bear on what was seen; 2 agree
                      2 deviations at once: 48,516 that can bear on what was seen, and not all of those; 1 agrees
                      bound hit: stopped after 48828 sets

            """,
            Text(_made.ThreeLeft), StringComparison.Ordinal);

    [Fact]
    public void Explanations_that_no_light_test_tells_apart_are_named()
    {
        string text = Text(_made.ThreeLeft);
        Assert.Contains("No light test tells explanations 2, 3 apart: look at ", text, StringComparison.Ordinal);
        Assert.Contains("2 explanations agree with all of it, and no light test tells them apart.", Text(_made.OneGroupLeft).ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void Contradictions_are_named_with_both_lines_and_nothing_is_concluded()
    {
        string text = Text(_made.Contradicting);
        Assert.Contains("1 pair of observations contradict each other; look again at both before anything is concluded.\n", text, StringComparison.Ordinal);
        Assert.Contains(
            """
            contradiction
              seen.yaml:3:5: light into SW-L/1:A came out at no interface
              seen.yaml:7:5: light into SW-L/1:A came out of SW-R/1:B
              why  light that came out of SW-R/1:B came out at an interface

            """,
            text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plant_that_is_as_described_is_said_to_be_so() =>
        Assert.Contains("\nThe plant as it is described agrees with everything that was seen.\n", Text(HandMade.AsDescribed(_made.Lamp)), StringComparison.Ordinal);

    [Fact]
    public void Where_nothing_agrees_it_is_said_how_far_was_searched() =>
        Assert.Contains("Nothing that was searched agrees with everything that was seen, up to 2 deviations at once.", Text(_made.NothingFound), StringComparison.Ordinal);

    [Fact]
    public void Where_nothing_agrees_the_observations_in_doubt_are_named() =>
        Assert.Contains(
            """
            Without one of these a single deviation would explain the rest. Look at them again, one may be a mistake:
              seen.yaml:2:5: the link lamp of SW-R/1 is off (since Monday)

            """,
            Text(_made.NothingFound with { Doubtful = [_made.Lamp] }), StringComparison.Ordinal);

    [Fact]
    public void Larger_sets_than_needed_are_said_not_to_be_searched() =>
        Assert.Contains("more than 1 deviation at once: not searched, since fewer explain everything\n", Text(_made.OneLeft), StringComparison.Ordinal);

    [Fact]
    public void A_long_list_says_how_many_it_does_not_show()
    {
        LocateResult many = _made.ThreeLeft with { Explanations = [.. Enumerable.Range(0, 14).Select(i => _made.OneLeft.Explanations[0] with { Share = 1 / 14.0, Group = i })] };
        string text = Text(many);
        Assert.Contains("\n 10    7 %  ", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\n 11  ", text, StringComparison.Ordinal);
        Assert.Contains("\nand 4 less likely explanations, 29 % together; --all shows them\n", text, StringComparison.Ordinal);
        Assert.Contains("\n 14    7 %  ", Text(many, all: true), StringComparison.Ordinal);
    }

    [Fact]
    public void All_evidence_is_shown_where_all_is_asked_for() =>
        Assert.Contains("            agrees   light from SW-L/1:A comes out at no interface, as was seen (seen.yaml:3)\n", Text(_made.ThreeLeft, all: true), StringComparison.Ordinal);

    [Fact]
    public void Remarks_and_the_cautions_for_light_stand_at_the_end()
    {
        string text = Text(_made.OneLeft, false, new SeenRemark(new SourcePlace("seen.yaml", 4, 5), "the limit leaves out a cable"));
        Assert.Contains("\nremark  seen.yaml:4:5: the limit leaves out a cable\n", text, StringComparison.Ordinal);
        string end = text[text.IndexOf("Communication light is invisible", StringComparison.Ordinal)..].ReplaceLineEndings(" ");
        Assert.Contains("never look into a fibre end", end, StringComparison.Ordinal);
        Assert.Contains("unplug or power down the transmitters at both ends", end, StringComparison.Ordinal);
        Assert.EndsWith("Local codes, site rules and makers' instructions come before anything said here. ", end, StringComparison.Ordinal);
    }

    [Fact]
    public void What_can_hurt_who_mends_it_is_said_once()
    {
        Explanation[] dirty = [.. new Core.Deviations.DeviationContext(_made.Traced).At(_made.Part("K-L")).Where(d => d.Kind.Name == "dirty").Take(2).Select(d => new Explanation([d], 0.5, 0, []))];
        Assert.Equal(2, dirty.Length);
        string text = string.Join(' ', Text(_made.OneLeft with { Explanations = dirty }).Split('\n'));
        Assert.Equal(2, text.Split("Cleaning alcohol burns").Length);
        Assert.DoesNotContain("Cleaning alcohol burns", string.Join(' ', Text(_made.OneLeft).Split('\n')), StringComparison.Ordinal);
    }

    [Fact]
    public void No_line_is_longer_than_a_terminal_is_wide() =>
        Assert.All(Text(_made.ThreeLeft, all: true).Split('\n'), l => Assert.InRange(l.Length, 0, 120));

    [Fact]
    public void A_plan_is_a_card_of_numbered_steps()
    {
        using var output = new StringWriter { NewLine = "\n" };
        new PlanText(new CommandContext(output, TextWriter.Null), _made.Traced).Write(_made.Plan);
        string text = output.ToString();
        Assert.Contains("\n  1. Put light into SW-L/1:A and look at the ports of K-L (3 min).\n     Out of K-L/rear:1: ", text, StringComparison.Ordinal);
        Assert.Contains("\n     Nowhere: go to 2.\n\n  2. Look at SW-R and compare it with the description:", text, StringComparison.Ordinal);
        string joined = string.Join(' ', text.Split('\n').Select(l => l.Trim()));
        Assert.Contains($"Out of K-L/rear:1: {_made.Left.Text}. Mend: {_made.Left.Mend} (3 min).", joined, StringComparison.Ordinal);
        Assert.Contains($"As described: {_made.Right.Text}. Mend: {_made.Right.Mend} (3 min).", joined, StringComparison.Ordinal);
        Assert.Contains("never look into a fibre end", joined, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_without_a_test_says_what_it_is()
    {
        using var output = new StringWriter { NewLine = "\n" };
        new PlanText(new CommandContext(output, TextWriter.Null), _made.Traced).Write(new TestPlan(null, _made.OneLeft.Explanations, []));
        Assert.Contains($"No test tells more than this:\n  {_made.Left.Text}. Mend:", output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void JSON_follows_its_schema_whatever_was_found()
    {
        foreach (LocateResult result in (LocateResult[])[_made.ThreeLeft, _made.OneLeft, _made.OneGroupLeft, _made.NothingFound, _made.Contradicting, HandMade.AsDescribed(), HandMade.AsDescribed(_made.Lamp, _made.Dark)])
            Written(result, null, new SeenRemark(new SourcePlace("seen.yaml", 0, 0), "a remark"));
        Written(_made.ThreeLeft, _made.Plan);
        int from = _made.At("SW-L/1", 1), to = _made.At("SW-R/1", 2), part = _made.Part("K-L");
        Observation[] further = [new LossMeasured(from, to, new(4.2m), new(3.9m)), new PartLooked(part, false), new NotReached(part), new LightSeen(from, part, -1)];
        Written(HandMade.AsDescribed([.. further.Select(o => o with { Place = _made.Lamp.Place })]));
        foreach (SiteTest test in (SiteTest[])[new LampTest(_made.Port("SW-R", 0), 1), new LookTest(part, 2), new LossTest(from, to, 10)])
            Written(_made.ThreeLeft with { Next = new NextTest(test, 0.5, [new TestOutcome(_made.Lamp, 0.5, [0]), new TestOutcome(new LossExpected(from, to, true), 0.5, [0])]) });
        Written(_made.NothingFound with { Doubtful = [_made.Lamp] });
    }

    [Fact]
    public void JSON_tells_what_the_text_tells()
    {
        JsonElement root = Written(_made.ThreeLeft, _made.Plan);
        Assert.False(root.GetProperty("asDescribed").GetBoolean());
        JsonElement lamp = root.GetProperty("observations")[0];
        Assert.Equal(["lamp", "SW-R/1", "off", "since Monday", "seen.yaml"], new[] { "test", "at", "seen", "note", "file" }.Select(n => lamp.GetProperty(n).GetString()));
        JsonElement first = root.GetProperty("explanations")[0];
        Assert.Equal(0.62, first.GetProperty("share").GetDouble());
        JsonElement deviation = first.GetProperty("deviations")[0];
        Assert.Equal([_made.Left.Text, _made.Left.Mend, "other-cord", "SW-L/1~K-L/1"],
            new[] { deviation.GetProperty("text"), deviation.GetProperty("mend"), deviation.GetProperty("kind"), deviation.GetProperty("parts")[0] }.Select(e => e.GetString()));
        Assert.Equal([0, 1], first.GetProperty("evidence").EnumerateArray().Select(e => e.GetProperty("observation").GetInt32()));
        Assert.Equal("stopped after 48828 sets", root.GetProperty("searched").GetProperty("bound").GetString());
        JsonElement next = root.GetProperty("next");
        Assert.Equal(["light", "SW-L/1:A", "K-L"], new[] { "test", "at", "look" }.Select(n => next.GetProperty(n).GetString()));
        Assert.Equal("[1,2]", string.Concat(next.GetProperty("outcomes")[1].GetProperty("explanations").GetRawText().Where(c => !char.IsWhiteSpace(c))));
        JsonElement second = root.GetProperty("plan").GetProperty("branches")[1];
        Assert.Equal([1, 2], second.GetProperty("remaining").EnumerateArray().Select(e => e.GetInt32()));
        Assert.Equal([2], second.GetProperty("next").GetProperty("outcomes")[1].GetProperty("explanations").EnumerateArray().Select(e => e.GetInt32()));
        Assert.Equal(JsonValueKind.Null, second.GetProperty("branches")[0].GetProperty("next").ValueKind);
    }
}
