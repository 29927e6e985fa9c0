using PolarityMap.Core.Locate;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Observations;

namespace PolarityMap.Cli.Ask;

/// <summary>What somebody typed.</summary>
internal abstract record Answer;

/// <summary>An observation to note down, still to be understood.</summary>
internal sealed record Noted(SeenFields Fields) : Answer;

/// <summary>The test cannot be made; one of these parts cannot be reached.</summary>
internal sealed record Unreached(IReadOnlyList<int> Parts, string Note) : Answer;

/// <summary>Leave, and go on another time.</summary>
internal sealed record Leave : Answer;

/// <summary>Nothing that is understood; the message says what is.</summary>
internal sealed record NotUnderstood(string Message) : Answer;

/// <summary>Understands what is typed at the rack: a number, what was seen, or an observation of any kind.</summary>
internal sealed class AnswerReader(TracedPlant traced)
{
    private static readonly string[] s_leave = ["quit", "q", "exit"];
    private static readonly string[] s_unreached = ["can't", "can’t", "cant", "cannot"];

    /// <summary>Ways to say an observation of one's own, with names of the plant, for prompts.</summary>
    public string Examples
    {
        get
        {
            Plant plant = traced.Plant;
            PortRef from = plant.Links.Count > 0 ? plant.Links[0].From.Port : default, to = plant.Links.Count > 0 ? plant.Links[0].To.Port : default;
            string part = plant.Parts.FirstOrDefault(p => p is { IsInline: false, Shape.IsInterface: false })?.Name ?? plant.Parts[0].Name;
            return plant.Links.Count > 0
                ? $"'lamp {plant.Address(to)} off', 'light {plant.Address(from, 1)} nowhere', 'loss {plant.Address(from, 1)} {plant.Address(to, 1)} 4.2 dB', 'look {part} different'"
                : $"'light SW-L/1:A nowhere', 'look {part} different'";
        }
    }

    /// <param name="typed">The line; null at the end of the input.</param>
    /// <param name="next">The test that was asked for, or null.</param>
    public Answer Read(string? typed, NextTest? next)
    {
        if (typed is null)
            return new Leave();
        (string said, string note) = Parted(typed);
        if (s_leave.Contains(said.ToLowerInvariant()))
            return new Leave();
        string word = said.Split([' ', ','], 2)[0].ToLowerInvariant();
        if (SeenWords.Tests.Contains(word) && said.Length > word.Length)
            return Own(said, word, note);
        if (next is null)
            return new NotUnderstood($"expected an observation such as {Examples}, or quit");
        if (s_unreached.Contains(said.ToLowerInvariant()))
            return new Unreached(PartsOf(next.Test), note);
        if (said.Length == 0)
            return new NotUnderstood("expected " + Possible(next));
        if (next.Test is not LossTest && int.TryParse(said, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out int number))
        {
            return number >= 1 && number <= next.Outcomes.Count
                ? new Noted(SeenFields.Of(traced, next.Outcomes[number - 1].Observation) with { Note = note })
                : new NotUnderstood("expected " + Possible(next));
        }

        return new Noted(Free(next.Test, said) with { Note = note });
    }

    /// <summary>What may be answered to a test, to follow a word such as "expected".</summary>
    public static string Possible(NextTest next)
    {
        string free = next.Test switch
        {
            LightTest => "where it came out, such as SW-R/1:B, or nowhere",
            LampTest => "on or off",
            LossTest => "the loss with its unit, such as 4.2 dB, or where the light came out instead, or nowhere",
            _ => "as described or different",
        };
        string number = next.Test is LossTest || next.Outcomes.Count == 0 ? "" : next.Outcomes.Count == 1 ? "1, " : $"{string.Join(", ", Enumerable.Range(1, next.Outcomes.Count - 1))} or {next.Outcomes.Count}; ";
        return $"{number}{free}; can't where you cannot get there; another observation; or quit";
    }

    /// <summary>What is typed and the note behind <c> #</c>.</summary>
    private static (string Said, string Note) Parted(string typed)
    {
        int mark = typed.IndexOf(" #", StringComparison.Ordinal);
        return mark < 0 ? (typed.Trim(), "") : (typed[..mark].Trim(), typed[(mark + 2)..].Trim());
    }

    /// <summary>An answer in words to the test that was asked for.</summary>
    private SeenFields Free(SiteTest test, string said) => test switch
    {
        LightTest { Look: >= 0 } light when Is(said, SeenWords.Nowhere) => new(SeenWords.Light, traced.Address(light.From), SeenWords.NowhereAt + FieldWords.Name(traced, light.Look)),
        LightTest light => new(SeenWords.Light, traced.Address(light.From), said),
        LossTest loss when Is(said, SeenWords.Nowhere) => new(SeenWords.Light, traced.Address(loss.From), SeenWords.NowhereAt + FieldWords.Name(traced, traced.Graph.PartOf(loss.Seen))),
        LampTest lamp => new(SeenWords.Lamp, traced.Plant.Address(lamp.Port), said),
        LossTest loss when said.Contains('/', StringComparison.Ordinal) => new(SeenWords.Light, traced.Address(loss.From), said),
        LossTest loss => new(SeenWords.Loss, traced.Address(loss.From), traced.Address(loss.Seen), said),
        LookTest look => new(SeenWords.Look, FieldWords.Name(traced, look.Part), said),
        _ => throw new ArgumentOutOfRangeException(nameof(test), test.GetType().Name, "no answers to this test"),
    };

    /// <summary>An observation of one's own, with blanks or commas between its fields.</summary>
    private Answer Own(string said, string test, string note)
    {
        bool commas = said.Contains(',', StringComparison.Ordinal);
        string[] fields = [.. said.Split(commas ? ',' : ' ', test == SeenWords.Loss ? 4 : 3, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
        int needed = test == SeenWords.Loss ? 4 : 3;
        if (fields.Length < needed)
            return new NotUnderstood($"expected an observation such as {Examples}; commas between the fields where names have blanks");
        return new Noted(new SeenFields(test, fields[1], fields[2], needed == 4 ? fields[3] : "", note));
    }

    private int[] PartsOf(SiteTest test) => test switch
    {
        LightTest light => [.. new[] { traced.Graph.PartOf(light.From), light.Look }.Where(p => p >= 0).Distinct()],
        LampTest lamp => [lamp.Port.Part],
        LossTest loss => [.. new[] { traced.Graph.PartOf(loss.From), traced.Graph.PartOf(loss.Seen) }.Distinct()],
        LookTest look => [look.Part],
        _ => [],
    };

    private static bool Is(string said, string word) => said.Equals(word, StringComparison.OrdinalIgnoreCase);
}
