using PolarityMap.Core.Locate;
using PolarityMap.Core.Strands;
using PolarityMap.Reports.Drawings;

namespace PolarityMap.Reports.Model;

/// <summary>What was seen on site, what explains it, and what to test next, in the words of <c>locate</c>.</summary>
internal sealed class SeenModel
{
    /// <summary>The most explanations that are told with their evidence.</summary>
    public const int MostTold = 10;

    /// <summary>The most explanations in the table.</summary>
    public const int MostListed = 100;

    private readonly ReportInput _input;
    private readonly SeenInput _seen;
    private readonly Dictionary<string, int> _evidence = new(StringComparer.Ordinal);

    private SeenModel(ReportInput input, SeenInput seen)
    {
        _input = input;
        _seen = seen;
    }

    private TracedPlant Traced => _input.Traced;

    private LocateResult Result => _seen.Result;

    /// <summary>What a template sees; null where nothing was seen.</summary>
    public static ModelObject? Of(ReportInput input) => input.Seen is { } seen ? new SeenModel(input, seen).Of() : null;

    private ModelObject Of()
    {
        HashSet<int> refuting = [.. Result.Refuting];
        SuspectFigure? figure = _seen.Suspects is { } suspects ? SuspectFigure.Of(_input.View, suspects) : null;
        return new ModelObject()
            .Text("file", _seen.File)
            .Text("state", Result.Contradictions.Count > 0 ? "contradicted" : Result.IsAsDescribed ? "agrees" : Result.Explanations.Count == 0 ? "unexplained" : "explained")
            .Text("verdict", LocateWords.Verdict(Result))
            .Texts("cautions", LocateWords.CautionsFor(Result.Explanations.Take(MostTold)))
            .List("observations", Result.Observations.Select((o, i) => Saw(o).Number("number", i + 1).Flag("telling", refuting.Contains(i))))
            .List("contradictions", Result.Contradictions.Select(c => new ModelObject().Inner("first", Saw(c.First)).Inner("second", Saw(c.Second)).Text("why", c.Why)))
            .Text("doubtful_words", LocateWords.Doubtful).List("doubtful", Result.Doubtful.Select(Saw))
            .Inner("next", Result.Next is { } next ? Next(next) : null)
            .List("explanations", Result.IsAsDescribed ? [] : Result.Explanations.Take(MostListed).Select(Explanation))
            .Number("count", Result.IsAsDescribed ? 0 : Result.Explanations.Count).Text("rest", LocateWords.Rest(Result, MostListed))
            .Texts("groups", LocateWords.Groups(Traced, Result))
            .List("steps", _seen.Plan is { } plan ? PlanSteps.Of(plan).Select(Step) : [])
            .Texts("searched", LocateWords.Searched(Result.Searched))
            .List("remarks", _seen.Remarks.Select(r => new ModelObject().Number("line", r.Place.Line).Text("text", r.Text)))
            .Flag("is_drawn", figure is not null).Html("described", figure?.Described ?? default).Html("built", figure?.Built ?? default)
            .List("signs", (_seen.Suspects?.Findings ?? []).Select(f => new ModelObject().Text("code", f.Rule.Code).Text("title", f.Rule.Title).Text("text", f.Message.TrimEnd('.'))))
            .Flag("all_strands_drawn", figure is not { IsWhole: false });
    }

    private ModelObject Saw(Observation observation) => new ModelObject().Number("line", observation.Place.Line).Text("text", LocateWords.Saw(Traced, observation));

    private ModelObject Explanation(Explanation explanation, int index)
    {
        bool isTold = index < MostTold;
        Evidence[] telling = [.. explanation.Evidence.Where(e => e.IsTelling)];
        string key = string.Join('\n', telling.Select(e => e.Words));
        int sameAs = isTold && telling.Length > 0 && !_evidence.TryAdd(key, index + 1) ? _evidence[key] : 0;
        int others = explanation.Evidence.Count - telling.Length;
        return new ModelObject()
            .Number("number", index + 1).Text("id", $"explanation-{index + 1}").Flag("told", isTold)
            .Text("share", LocateWords.Percent(explanation.Share)).Text("wrong", FieldWords.Wrong(explanation))
            .Texts("parts", explanation.Deviations.SelectMany(d => d.Parts).Distinct().Select(p => FieldWords.Name(Traced, p)))
            .Texts("mends", FieldWords.Mends(explanation))
            .Texts("looks", explanation.Deviations.Select(d => LocateWords.Look(Traced, d)).OfType<string>())
            .Text("next_shows", Shows(index))
            .Text("same_as", sameAs > 0 ? LocateWords.SameAs(sameAs) : null)
            .List("because", sameAs > 0 ? [] : telling.Select(e => new ModelObject().Number("line", e.Observation.Place.Line).Text("words", e.Words)))
            .Text("agrees", others > 0 ? LocateWords.Agrees(others) : null);
    }

    /// <summary>What the next test would show under an explanation; null where there is none, or it was chosen without it.</summary>
    private string? Shows(int index) => Result.Next?.Outcomes.Where(o => o.Explanations.Contains(index)).Select(o => FieldWords.Outcome(Traced, o.Observation)).ToArray() is { Length: > 0 } outcomes
        ? string.Join(" or ", outcomes) : null;

    private ModelObject Next(NextTest next) => new ModelObject()
        .Text("words", LocateWords.NextTest(next) + FieldWords.Do(Traced, next.Test))
        .Flag("confirms", next.IsToConfirm)
        .List("places", FieldWords.Places(Traced, next.Test).Select(p => new ModelObject()
            .Text("what", FieldWords.Sentence(p.What)).Text("where", p.Where).Text("room", RoomsOf(p.Part))))
        .List("outcomes", next.Outcomes.Select(o => new ModelObject()
            .Text("outcome", FieldWords.Sentence(FieldWords.Outcome(Traced, o.Observation))).Text("share", LocateWords.Percent(o.Share))
            .Number("left", o.Explanations.Count).Text("leaves", LocateWords.Numbers(o.Explanations))));

    /// <summary>The room of a part, or those of the parts that it is plugged into; null where none is named.</summary>
    private string? RoomsOf(int part)
    {
        if (part < 0)
            return null;
        if (Traced.Plant.Parts[part].Room is { } own)
            return own;
        int first = Traced.Graph.FirstPositionOf(part);
        string[] rooms = [.. Enumerable.Range(first, Traced.Plant.Parts[part].Shape.PositionCount).Select(p => Traced.Graph.Outside[p]).Where(p => p >= 0)
            .Select(p => Traced.Plant.Parts[Traced.Graph.PartOf(p)].Room).OfType<string>().Distinct()];
        return rooms.Length == 0 ? null : string.Join(" and ", rooms);
    }

    private ModelObject Step(PlanStep step) => new ModelObject()
        .Number("number", step.Number).Text("words", $"{FieldWords.Sentence(FieldWords.Do(Traced, step.Test))} ({step.Test.Minutes} min)")
        .List("answers", step.Answers.Select(a => new ModelObject()
            .Text("outcome", FieldWords.Sentence(FieldWords.Outcome(Traced, a.Outcome))).Number("go_to", a.GoTo)
            .List("ends", a.GoTo > 0 ? [] : FieldWords.Ends(a.Remaining).Select(e => new ModelObject().Text("what", e.What).Text("mend", e.Mend)))));
}
