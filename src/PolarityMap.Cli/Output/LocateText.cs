using PolarityMap.Core.Locate;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Observations;

namespace PolarityMap.Cli.Output;

/// <summary>What a search found, for the person at the rack.</summary>
/// <param name="context">Where it is written.</param>
/// <param name="traced">The plant.</param>
/// <param name="all">Whether every explanation and all evidence is written out.</param>
internal sealed class LocateText(CommandContext context, TracedPlant traced, bool all)
{
    /// <summary>The most explanations written out.</summary>
    private const int MostShown = 10;

    private const int Width = 110;

    private readonly Paint _paint = new(context.Colour);
    private readonly Dictionary<string, int> _evidence = [];

    private TextWriter Out => context.Out;

    public void Write(LocateResult result, IReadOnlyList<SeenRemark> remarks)
    {
        Out.WriteLine(_paint.Strong(traced.Plant.Title.Title));
        WriteVerdict(result);
        WriteContradictions(result);
        WriteDoubtful(result);
        WriteExplanations(result);
        WriteGroups(result);
        WriteNext(result);
        WriteRemarks(remarks);
        WriteSearched(result.Searched);
        WriteCautions(Out, Shown(result));
    }

    public void WriteVerdict(LocateResult result)
    {
        string verdict = LocateWords.Verdict(result);
        foreach (string line in Wrapped.Lines(verdict, "", Width))
            Out.WriteLine(result.IsAsDescribed ? _paint.Good(line) : result.Contradictions.Count > 0 ? _paint.Error(line) : _paint.Warning(line));
    }

    /// <summary>Each pair of observations that exclude each other, with the lines that say them.</summary>
    public void WriteContradictions(LocateResult result)
    {
        foreach (Contradiction contradiction in result.Contradictions)
        {
            Out.WriteLine();
            Out.WriteLine(_paint.Error("contradiction"));
            foreach (Observation observation in (Observation[])[contradiction.First, contradiction.Second])
                Wrapped.Write(Out, LocateWords.Saw(traced, observation), $"  {observation.Place}: ", Width);
            Wrapped.Write(Out, contradiction.Why, "  why  ", Width);
        }
    }

    /// <summary>Where nothing explains everything: what to look at again.</summary>
    public void WriteDoubtful(LocateResult result)
    {
        if (result.Doubtful.Count == 0)
            return;
        Out.WriteLine();
        Wrapped.Write(Out, LocateWords.Doubtful, "", Width);
        foreach (Observation observation in result.Doubtful)
            Wrapped.Write(Out, LocateWords.Saw(traced, observation), $"  {observation.Place}: ", Width);
    }

    /// <summary>The explanations, the first of them at length.</summary>
    public void WriteExplanations(LocateResult result)
    {
        if (result.IsAsDescribed)
            return;
        int shown = Shown(result).Count();
        for (int i = 0; i < shown; i++)
        {
            Out.WriteLine();
            WriteExplanation(result.Explanations[i], i + 1);
        }

        if (LocateWords.Rest(result, shown) is { } rest)
        {
            Out.WriteLine();
            Out.WriteLine($"{rest}; --all shows them");
        }
    }

    private void WriteExplanation(Explanation explanation, int number)
    {
        string head = $"{number,3}  {LocateWords.Percent(explanation.Share),5}  ";
        string[] lines = [.. Wrapped.Lines(FieldWords.Wrong(explanation), head, Width)];
        Out.WriteLine(_paint.Strong(lines[0]));
        foreach (string line in lines.Skip(1))
            Out.WriteLine(_paint.Strong(line));
        string indent = new(' ', head.Length);
        foreach (string mend in FieldWords.Mends(explanation))
            Wrapped.Write(Out, mend, $"{indent}mend     ", Width);
        foreach (Core.Deviations.Deviation deviation in explanation.Deviations)
        {
            if (LocateWords.Look(traced, deviation) is { } look)
                Wrapped.Write(Out, look, $"{indent}look     ", Width);
        }

        WriteEvidence(explanation, number, indent);
    }

    /// <summary>What was seen and speaks for an explanation. What speaks for an earlier one in the same words is not repeated.</summary>
    private void WriteEvidence(Explanation explanation, int number, string indent)
    {
        Evidence[] telling = [.. explanation.Evidence.Where(e => e.IsTelling)];
        string key = string.Join('\n', telling.Select(e => e.Words));
        if (!all && telling.Length > 0 && !_evidence.TryAdd(key, number) && _evidence[key] != number)
        {
            Out.WriteLine($"{indent}because  {LocateWords.SameAs(_evidence[key])}");
            telling = [];
        }

        foreach (Evidence evidence in telling)
            Wrapped.Write(Out, $"{evidence.Words}{Line(evidence.Observation)}", $"{indent}because  ", Width);
        Evidence[] others = [.. explanation.Evidence.Where(e => !e.IsTelling)];
        if (all)
        {
            foreach (Evidence evidence in others)
                Wrapped.Write(Out, $"{evidence.Words}{Line(evidence.Observation)}", $"{indent}agrees   ", Width);
        }
        else if (others.Length > 0)
        {
            Wrapped.Write(Out, LocateWords.Agrees(others.Length), $"{indent}agrees   ", Width);
        }
    }

    /// <summary>Which explanations no light test tells apart.</summary>
    public void WriteGroups(LocateResult result)
    {
        bool first = true;
        foreach (string group in LocateWords.Groups(traced, result))
        {
            if (first)
                Out.WriteLine();
            first = false;
            Wrapped.Write(Out, group, "", Width);
        }
    }

    /// <summary>The next test, and what each outcome would mean.</summary>
    public void WriteNext(LocateResult result)
    {
        if (result.Next is not { } next)
            return;
        Out.WriteLine();
        WriteTest(next);
        WriteOutcomes(next, numbered: false);
        if (next.Outcomes.Count > 0)
            Wrapped.Write(Out, $"write down what you see, such as {Entry(next.Outcomes[0].Observation)}, or answer with --ask", "  ", Width);
    }

    public void WriteTest(NextTest next)
    {
        string[] lines = [.. Wrapped.Lines(FieldWords.Do(traced, next.Test), LocateWords.NextTest(next), Width)];
        Out.WriteLine(_paint.Strong(lines[0]));
        foreach (string line in lines.Skip(1))
            Out.WriteLine(_paint.Strong(line));
    }

    /// <summary>The outcomes in columns, numbered where somebody is to choose.</summary>
    public void WriteOutcomes(NextTest next, bool numbered)
    {
        string[] words = [.. next.Outcomes.Select(o => FieldWords.Outcome(traced, o.Observation))];
        int widest = words.Length == 0 ? 0 : words.Max(w => w.Length);
        for (int i = 0; i < words.Length; i++)
        {
            string mark = numbered ? $"{i + 1,3}  " : "  ";
            TestOutcome outcome = next.Outcomes[i];
            Out.WriteLine($"{mark}{words[i].PadRight(widest)}  {LocateWords.Percent(outcome.Share),5}  leaves {LocateWords.Numbers(outcome.Explanations)}");
        }
    }

    private void WriteRemarks(IReadOnlyList<SeenRemark> remarks)
    {
        if (remarks.Count > 0)
            Out.WriteLine();
        foreach (SeenRemark remark in remarks)
            Wrapped.Write(Out, $"{remark.Place}: {remark.Text}", "remark  ", Width);
    }

    public void WriteSearched(SearchReport report)
    {
        string first = "searched  ";
        foreach (string line in LocateWords.Searched(report))
        {
            if (first[0] != ' ')
                Out.WriteLine();
            foreach (string wrapped in Wrapped.Lines(line, first, Width))
                Out.WriteLine(_paint.Faint(wrapped));
            first = new string(' ', first.Length);
        }
    }

    /// <summary>The cautions for putting light in, and for what is to be mended.</summary>
    public static void WriteCautions(TextWriter output, IEnumerable<Explanation> explanations)
    {
        output.WriteLine();
        Wrapped.Write(output, string.Join(' ', LocateWords.CautionsFor(explanations)), "", Width);
    }

    /// <summary>The explanations that are written out.</summary>
    private IEnumerable<Explanation> Shown(LocateResult result) => all ? result.Explanations : result.Explanations.Take(MostShown);

    /// <summary>How an outcome is written into a file; what is measured is an example.</summary>
    private string Entry(Observation outcome)
    {
        SeenFields fields = SeenFields.Of(traced, outcome);
        return (outcome is LossExpected ? fields with { Value = "2.5 dB" } : fields).ToYaml();
    }

    private static string Line(Observation observation) => observation.Place is { File: not null, Line: > 0 } place ? $" ({place.File}:{place.Line})" : "";
}
