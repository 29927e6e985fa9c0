using PolarityMap.Cli.Input;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Observations;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Ask;

/// <summary>
/// Asks for the outcome of test after test. All that is known is in the file, which is read anew before each question and written
/// whole after each answer, so that one can leave at any time and go on by calling again.
/// </summary>
/// <param name="context">The terminal.</param>
/// <param name="traced">The plant.</param>
/// <param name="plant">Its document as the call names it, or null where the file does.</param>
/// <param name="path">The observation file; made if it is absent.</param>
/// <param name="locate">The search.</param>
internal sealed class AskSession(CommandContext context, TracedPlant traced, string? plant, string path, Func<IReadOnlyList<Observation>, LocateResult> locate)
{
    /// <summary>The most explanations shown with a question.</summary>
    private const int MostShown = 5;

    private readonly Paint _paint = new(context.Colour);
    private readonly LocateText _text = new(context, traced, all: false);
    private readonly AnswerReader _answers = new(traced);
    private readonly HashSet<string> _told = [];

    private TextWriter Out => context.Out;

    public int Run()
    {
        Out.WriteLine(_paint.Strong(traced.Plant.Title.Title));
        LocateText.WriteCautions(Out, []);
        while (true)
        {
            if (Understood(SeenSource.Bytes(path, mayBeAbsent: true, context)) is not { } notes)
                return ExitStatus.Wrong;
            LocateResult result = locate(notes.Observations);
            Out.WriteLine();
            foreach (SeenRemark remark in notes.Remarks.Where(r => _told.Add(r.Text)))
                Wrapped.Write(Out, $"{remark.Place}: {remark.Text}", "remark  ", Wrapped.Width);
            if (IsOver(result))
            {
                End(result);
                return ExitStatus.Findings;
            }

            Show(result);
            if (!Answered(result.Next))
            {
                Out.WriteLine($"Go on with: polaritymap locate {(plant is null ? "" : plant + " ")}--seen {path} --ask");
                return result.IsAsDescribed ? ExitStatus.Clean : ExitStatus.Findings;
            }
        }
    }

    /// <summary>What the file says, or null after its problems were written.</summary>
    private SeenNotes? Understood(byte[] bytes)
    {
        var problems = new ProblemList();
        SeenNotes? notes = SeenFile.Read(path, bytes, problems, context.Reading.AllowOutside)?.Bind(traced, problems);
        context.Error.Write(problems.ToString());
        return notes;
    }

    /// <summary>True when no further question helps: contradictions, nothing found, or nothing to test. One group may still be told apart by looks.</summary>
    private static bool IsOver(LocateResult result) => result.Contradictions.Count > 0 || (!result.IsAsDescribed && result.Next is null);

    private void End(LocateResult result)
    {
        _text.WriteVerdict(result);
        _text.WriteContradictions(result);
        if (result.Contradictions.Count > 0)
        {
            Out.WriteLine();
            Out.WriteLine($"Look again at both, correct {path}, and call again.");
            return;
        }

        _text.WriteDoubtful(result);
        _text.WriteExplanations(result);
        _text.WriteGroups(result);
        if (result.Explanations.Count > 0 && !LocateWords.IsOneGroup(result))
            Out.WriteLine("No further test tells them apart.");
        _text.WriteSearched(result.Searched);
        LocateText.WriteCautions(Out, result.Explanations.Take(MostShown));
    }

    private void Show(LocateResult result)
    {
        _text.WriteVerdict(result);
        if (!result.IsAsDescribed)
        {
            for (int i = 0; i < Math.Min(MostShown, result.Explanations.Count); i++)
            {
                Explanation explanation = result.Explanations[i];
                Wrapped.Write(Out, FieldWords.Wrong(explanation), $"{i + 1,3}  {LocateWords.Percent(explanation.Share),5}  ", Wrapped.Width);

                // Where only looks are left somebody may rather mend than look.
                if (LocateWords.IsOneGroup(result))
                    Wrapped.Write(Out, string.Join("; then ", FieldWords.Mends(explanation)), "            mend     ", Wrapped.Width);
            }

            if (result.Explanations.Count > MostShown)
                Out.WriteLine($"     and {result.Explanations.Count - MostShown} more");
        }

        if (result.Next is { } next)
        {
            Out.WriteLine();
            _text.WriteTest(next);
            _text.WriteOutcomes(next, numbered: next.Test is not LossTest);
            Wrapped.Write(Out, $"Answer {AnswerReader.Possible(next)}.", "");
        }
        else
        {
            Wrapped.Write(Out, $"What was seen? Type an observation such as {_answers.Examples}; or quit.", "");
        }
    }

    /// <summary>Asks until an answer is noted; false when somebody leaves.</summary>
    private bool Answered(NextTest? next)
    {
        while (true)
        {
            switch (_answers.Read(Prompt("> "), next))
            {
                case Leave:
                    return false;
                case NotUnderstood not:
                    Wrapped.Write(Out, FieldWords.Sentence(not.Message) + ".", "");
                    break;
                case Unreached unreached when Which(unreached.Parts) is { } part:
                    if (Note(SeenFields.Of(traced, new NotReached(part)) with { Note = unreached.Note }))
                        return true;
                    break;
                case Noted noted when Note(noted.Fields):
                    return true;
            }
        }
    }

    /// <summary>Which of several parts cannot be reached; null when nobody says.</summary>
    private int? Which(IReadOnlyList<int> parts)
    {
        if (parts.Count == 1)
            return parts[0];
        Out.WriteLine($"Which cannot be reached? {string.Join(", ", parts.Select((p, i) => $"{i + 1} {FieldWords.Name(traced, p)}"))}");
        string? typed = Prompt("> ")?.Trim();
        for (int i = 0; i < parts.Count; i++)
        {
            if (typed == $"{i + 1}" || typed == FieldWords.Name(traced, parts[i]))
                return parts[i];
        }

        Out.WriteLine("Nothing is noted.");
        return null;
    }

    /// <summary>Adds an observation to the file; false when it is not understood, and then nothing is written.</summary>
    private bool Note(SeenFields fields)
    {
        // Somebody may have written into the file while the question stood.
        byte[] bytes = SeenSource.Bytes(path, mayBeAbsent: true, context);
        if (SeenWriter.Append(path, bytes, fields, out string why) is not { } longer)
            throw new CallException(why);
        var problems = new ProblemList();
        if (SeenFile.Read(path, longer, problems, context.Reading.AllowOutside)?.Bind(traced, problems) is null)
        {
            foreach (Problem problem in problems.Items)
                Wrapped.Write(Out, FieldWords.Sentence(problem.Words), "");
            return false;
        }

        using (var file = new WholeFiles())
        {
            file.Add(context.FullPath(path), longer);
            file.Commit();
        }

        Out.WriteLine(_paint.Faint($"noted in {path}: {fields.ToYaml()}"));
        return true;
    }

    private string? Prompt(string mark)
    {
        Out.Write(mark);
        Out.Flush();
        string? typed = context.In.ReadLine();
        if (typed is null)
            Out.WriteLine();
        return typed;
    }
}
