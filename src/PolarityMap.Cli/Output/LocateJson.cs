using System.Text.Json;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Observations;

namespace PolarityMap.Cli.Output;

/// <summary>What a search found, for programs; the shape is in docs/json.md.</summary>
internal sealed class LocateJson
{
    private readonly TracedPlant _traced;
    private readonly LocateResult _result;
    private readonly Dictionary<Observation, int> _observations = [];
    private readonly Dictionary<string, int> _explanations = [];

    private LocateJson(TracedPlant traced, LocateResult result)
    {
        _traced = traced;
        _result = result;
        for (int i = 0; i < result.Observations.Count; i++)
            _observations.TryAdd(result.Observations[i], i);
        for (int i = 0; i < result.Explanations.Count; i++)
            _explanations.TryAdd(KeyOf(result.Explanations[i]), i);
    }

    /// <param name="traced">The plant.</param>
    /// <param name="result">What was found.</param>
    /// <param name="remarks">What to know about the observations.</param>
    /// <param name="plan">The decision tree, or null where none is asked for.</param>
    /// <param name="output">Where it is written.</param>
    public static void Write(TracedPlant traced, LocateResult result, IReadOnlyList<SeenRemark> remarks, TestPlan? plan, TextWriter output)
    {
        var writer = new LocateJson(traced, result);
        JsonText.Write(output, "polaritymap/locate", json => writer.WriteBody(json, remarks, plan));
    }

    private void WriteBody(Utf8JsonWriter json, IReadOnlyList<SeenRemark> remarks, TestPlan? plan)
    {
        json.WriteString("plant", _traced.Plant.Title.Title);
        json.WriteString("verdict", LocateWords.Verdict(_result));
        json.WriteBoolean("asDescribed", _result.IsAsDescribed);
        WriteList(json, "observations", _result.Observations, WriteObservation);
        WriteList(json, "remarks", remarks, static (json, remark) =>
        {
            json.WriteString("text", remark.Text);
            JsonText.WritePlace(json, remark.Place);
        });
        WriteList(json, "contradictions", _result.Contradictions, (json, c) =>
        {
            json.WriteNumber("first", _observations[c.First]);
            json.WriteNumber("second", _observations[c.Second]);
            json.WriteString("why", c.Why);
        });
        JsonText.WriteNumbers(json, "doubtful", _result.Doubtful.Select(o => _observations[o]));
        WriteList(json, "explanations", _result.Explanations, WriteExplanation);
        WriteSearched(json);
        WriteNext(json, _result.Next, i => _result.Next!.Outcomes[i].Explanations);
        if (plan is null)
            json.WriteNull("plan");
        else
            WritePlan(json, "plan", plan);
    }

    private void WriteObservation(Utf8JsonWriter json, Observation observation)
    {
        WriteFields(json, observation);
        json.WriteString("note", observation.Note);
        JsonText.WritePlace(json, observation.Place);
    }

    /// <summary>An observation in the words of a file, and in a sentence.</summary>
    private void WriteFields(Utf8JsonWriter json, Observation observation)
    {
        SeenFields fields = SeenFields.Of(_traced, observation);
        json.WriteString("test", fields.Test);
        json.WriteString("at", fields.At);
        json.WriteString("seen", fields.Seen);
        if (observation is LossMeasured loss)
        {
            json.WriteNumber("value", loss.Loss.Value);
            json.WriteNumber("limit", loss.Limit.Value);
        }
        else
        {
            json.WriteNull("value");
            json.WriteNull("limit");
        }

        json.WriteString("text", FieldWords.Saw(_traced, observation));
    }

    private void WriteExplanation(Utf8JsonWriter json, Explanation explanation)
    {
        json.WriteNumber("share", Math.Round(explanation.Share, 6));
        json.WriteNumber("group", explanation.Group);
        WriteList(json, "deviations", explanation.Deviations, WriteDeviation);
        WriteList(json, "evidence", explanation.Evidence, (json, evidence) =>
        {
            json.WriteNumber("observation", _observations[evidence.Observation]);
            json.WriteBoolean("telling", evidence.IsTelling);
            json.WriteString("text", evidence.Words);
        });
    }

    private void WriteDeviation(Utf8JsonWriter json, Deviation deviation)
    {
        json.WriteString("kind", deviation.Kind.Name);
        json.WriteString("title", deviation.Kind.Title);
        json.WriteString("text", deviation.Text);
        json.WriteString("mend", deviation.Mend);
        json.WriteString("caution", deviation.Kind.Caution);
        json.WriteNumber("mendMinutes", deviation.Kind.MendMinutes);
        json.WriteNumber("lookMinutes", deviation.Kind.LookMinutes);
        json.WriteStartArray("parts");
        foreach (int part in deviation.Parts)
            json.WriteStringValue(FieldWords.Name(_traced, part));
        json.WriteEndArray();
        json.WriteString("port", deviation.Port is { } port ? _traced.Plant.Address(port) : null);
    }

    private void WriteSearched(Utf8JsonWriter json)
    {
        json.WriteStartObject("searched");
        WriteList(json, "sizes", _result.Searched.Sizes, static (json, size) =>
        {
            json.WriteNumber("deviations", size.Size);
            json.WriteNumber("tried", size.Tried);
            json.WriteNumber("found", size.Found);
            json.WriteBoolean("complete", size.IsComplete);
        });
        json.WriteString("bound", _result.Searched.Bound);
        json.WriteEndObject();
    }

    /// <summary>A test with its outcomes, or null.</summary>
    /// <param name="json">Takes it.</param>
    /// <param name="next">The test.</param>
    /// <param name="remaining">For the index of an outcome the indices of the explanations that it leaves.</param>
    private void WriteNext(Utf8JsonWriter json, NextTest? next, Func<int, IReadOnlyList<int>> remaining)
    {
        if (next is null)
        {
            json.WriteNull("next");
            return;
        }

        json.WriteStartObject("next");
        WriteTest(json, next.Test);
        json.WriteNumber("bits", Math.Round(next.Bits, 6));
        WriteList(json, "outcomes", next.Outcomes.Index(), (json, outcome) =>
        {
            WriteFields(json, outcome.Item.Observation);
            json.WriteNumber("share", Math.Round(outcome.Item.Share, 6));
            JsonText.WriteNumbers(json, "explanations", remaining(outcome.Index));
        });
        json.WriteEndObject();
    }

    /// <summary>What to do: where something is done, and where one looks or measures.</summary>
    private void WriteTest(Utf8JsonWriter json, SiteTest test)
    {
        (string word, string at, string? look) = test switch
        {
            LightTest light => (SeenWords.Light, _traced.Address(light.From), light.Look < 0 ? null : FieldWords.Name(_traced, light.Look)),
            LampTest lamp => (SeenWords.Lamp, _traced.Plant.Address(lamp.Port), null),
            LossTest loss => (SeenWords.Loss, _traced.Address(loss.From), _traced.Address(loss.Seen)),
            LookTest part => (SeenWords.Look, FieldWords.Name(_traced, part.Part), (string?)null),
            _ => throw new ArgumentOutOfRangeException(nameof(test), test.GetType().Name, "no words for this test"),
        };
        json.WriteString("test", word);
        json.WriteString("at", at);
        json.WriteString("look", look);
        json.WriteNumber("minutes", test.Minutes);
        json.WriteString("text", FieldWords.Do(_traced, test));
    }

    /// <summary>A decision tree. Its explanations are those of the result, by index.</summary>
    private void WritePlan(Utf8JsonWriter json, string? name, TestPlan plan)
    {
        if (name is null)
            json.WriteStartObject();
        else
            json.WriteStartObject(name);
        JsonText.WriteNumbers(json, "remaining", Indices(plan.Remaining));
        WriteNext(json, plan.Next, i => Indices(plan.Branches[i].Remaining));
        json.WriteStartArray("branches");
        foreach (TestPlan branch in plan.Branches)
            WritePlan(json, null, branch);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>Where explanations stand in the result; their shares may have changed since.</summary>
    private int[] Indices(IEnumerable<Explanation> explanations) => [.. explanations.Select(e => _explanations[KeyOf(e)])];

    private static string KeyOf(Explanation explanation) => string.Join('|', explanation.Deviations.Select(d => d.Id));

    private static void WriteList<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> body)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            body(json, item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
