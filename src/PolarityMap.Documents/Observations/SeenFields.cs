using PolarityMap.Core.Locate;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;

namespace PolarityMap.Documents.Observations;

/// <summary>One observation in the words of a file, ready to be written; empty where there is nothing to say.</summary>
/// <param name="Test">One of <see cref="SeenWords.Tests"/>.</param>
/// <param name="At">The address where something was done.</param>
/// <param name="Seen">What was seen.</param>
/// <param name="Value">What was measured.</param>
/// <param name="Note">What the observer writes beside it.</param>
public sealed record SeenFields(string Test, string At, string Seen, string Value = "", string Note = "")
{
    /// <summary>The words for an observation; reading them gives it again. A loss that is still to be measured has no value yet.</summary>
    public static SeenFields Of(TracedPlant traced, Observation observation)
    {
        string Name(int part) => traced.Plant.Parts[part].Name;
        SeenFields fields = observation switch
        {
            LightSeen { Seen: >= 0 } light => new(SeenWords.Light, traced.Address(light.From), traced.Address(light.Seen)),
            LightSeen { Look: >= 0 } light => new(SeenWords.Light, traced.Address(light.From), SeenWords.NowhereAt + Name(light.Look)),
            LightSeen light => new(SeenWords.Light, traced.Address(light.From), SeenWords.Nowhere),
            LampSeen lamp => new(SeenWords.Lamp, traced.Plant.Address(lamp.Port), lamp.IsOn ? SeenWords.On : SeenWords.Off),
            LossMeasured loss => new(SeenWords.Loss, traced.Address(loss.From), traced.Address(loss.Seen), loss.Loss.ToString()),
            LossExpected loss => new(SeenWords.Loss, traced.Address(loss.From), traced.Address(loss.Seen)),
            PartLooked look => new(SeenWords.Look, Name(look.Part), look.IsAsDescribed ? SeenWords.AsDescribed : SeenWords.Different),
            NotReached reached => new(SeenWords.Reached, Name(reached.Part), SeenWords.No),
            _ => throw new ArgumentOutOfRangeException(nameof(observation), observation.GetType().Name, "no words for this observation"),
        };
        return fields with { Note = observation.Note ?? "" };
    }

    /// <summary>As an entry of a list in YAML: <c>{ light: SW-L/1:A, seen: nowhere }</c>.</summary>
    public string ToYaml()
    {
        var pairs = new List<string> { $"{Test}: {Plain(At)}", $"{SeenWords.OutcomeKey(Test)}: {Plain(Seen)}" };
        if (Value.Length > 0)
            pairs.Add($"{SeenWords.Value}: {Plain(Value)}");
        if (Note.Length > 0)
            pairs.Add($"{SeenWords.Note}: {AttributeWords.Quoted(Note)}");
        return $"{{ {string.Join(", ", pairs)} }}";
    }

    /// <summary>The field under a heading of a table.</summary>
    internal string Under(string column) => column switch
    {
        SeenWords.Test => Test,
        SeenWords.At => At,
        SeenWords.Seen => Seen,
        SeenWords.Value => Value,
        _ => Note,
    };

    /// <summary>A colon between two marks that are no blanks means nothing in YAML, so that addresses need no quotes.</summary>
    private static string Plain(string text) =>
        AttributeWords.Quoted(text.Replace(':', '.')) == text.Replace(':', '.') && !text.Contains(": ", StringComparison.Ordinal) && text[^1] != ':' ? text : AttributeWords.Quoted(text);
}
