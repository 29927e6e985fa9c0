using PolarityMap.Core.Deviations;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Locate;

/// <summary>Observations and tests in words for the person at the rack, the same on screens and cards.</summary>
public static class FieldWords
{
    /// <summary>What was seen, without a full stop: <c>light into SW-L/1:A came out of SW-R/2:B</c>.</summary>
    public static string Saw(TracedPlant traced, Observation observation) => observation switch
    {
        LightSeen light => $"light into {traced.Address(light.From)} {CameOut(traced, light)}",
        LampSeen lamp => $"the link lamp of {traced.Plant.Address(lamp.Port)} is {(lamp.IsOn ? "on" : "off")}",
        LossMeasured loss => $"{loss.Loss} measured from {traced.Address(loss.From)} to {traced.Address(loss.Seen)}, where at most {loss.Limit} is stated",
        LossExpected loss => $"light from {traced.Address(loss.From)} to {traced.Address(loss.Seen)} loses {(loss.IsTooMuch ? "more than is stated" : "what is stated or less")}",
        PartLooked look => $"{Called(traced, look.Part)} is {(look.IsAsDescribed ? "as described" : "different from the description")}",
        NotReached reached => $"{Called(traced, reached.Part)} cannot be reached",
        _ => throw new ArgumentOutOfRangeException(nameof(observation), observation.GetType().Name, "no words for this observation"),
    };

    /// <summary>What to do, without a full stop: <c>put light into SW-L/1:A and look at the ports of K-R</c>.</summary>
    public static string Do(TracedPlant traced, SiteTest test) => test switch
    {
        LightTest light => $"put light into {traced.Address(light.From)} and look at {Place(traced, light.Look)}",
        LampTest lamp => $"look at the link lamp of {traced.Plant.Address(lamp.Port)}",
        LookTest look => $"look at {Called(traced, look.Part)} and compare it with the description: type, colour, label, which plug sits where",
        LossTest loss => $"measure the loss from {traced.Address(loss.From)} to {traced.Address(loss.Seen)}",
        _ => throw new ArgumentOutOfRangeException(nameof(test), test.GetType().Name, "no words for this test"),
    };

    /// <summary>The places of a test one by one, each with what is done there and the part it is at: where to go with what in hand.</summary>
    public static IEnumerable<(string What, string Where, int Part)> Places(TracedPlant traced, SiteTest test) => test switch
    {
        LightTest light => [("put light into", traced.Address(light.From), PartOf(traced, light.From)), ("look at", Place(traced, light.Look), light.Look)],
        LampTest lamp => [("look at", $"the link lamp of {traced.Plant.Address(lamp.Port)}", lamp.Port.Part)],
        LookTest look => [("look at", Called(traced, look.Part), look.Part)],
        LossTest loss => [("put light into", traced.Address(loss.From), PartOf(traced, loss.From)), ("measure at", traced.Address(loss.Seen), PartOf(traced, loss.Seen))],
        _ => throw new ArgumentOutOfRangeException(nameof(test), test.GetType().Name, "no words for this test"),
    };

    /// <summary>An outcome of a test in few words: <c>out of K-R/1:A</c>, <c>nowhere</c>, <c>off</c>.</summary>
    public static string Outcome(TracedPlant traced, Observation observation) => observation switch
    {
        LightSeen { Seen: >= 0 } light => $"out of {traced.Address(light.Seen)}",
        LightSeen => "nowhere",
        LampSeen lamp => lamp.IsOn ? "on" : "off",
        LossMeasured loss => loss.IsTooMuch ? $"more than {loss.Limit}" : $"{loss.Limit} or less",
        LossExpected loss => loss.IsTooMuch ? "more than is stated" : "what is stated or less",
        PartLooked look => look.IsAsDescribed ? "as described" : "different",
        _ => "cannot be reached",
    };

    /// <summary>What is wrong by an explanation, without a full stop.</summary>
    public static string Wrong(Explanation explanation) =>
        explanation.Deviations.Count == 0 ? "the plant is as described" : string.Join("; and ", explanation.Deviations.Select(d => d.Text));

    /// <summary>What to do about it, in order, with the minutes that it takes.</summary>
    public static IEnumerable<string> Mends(Explanation explanation) =>
        explanation.Deviations.Select(d => d.Kind.MendMinutes > 0 ? $"{d.Mend} ({d.Kind.MendMinutes} min)" : d.Mend);

    /// <summary>What can hurt someone who mends these, beyond live fibres; each sentence once, empty where there is nothing.</summary>
    public static string Cautions(IEnumerable<Explanation> explanations) => string.Join(' ', explanations
        .SelectMany(e => e.Deviations).Select(d => d.Kind.Caution.Replace(DeviationKind.LiveFibre, "", StringComparison.Ordinal).Trim())
        .Where(c => c.Length > 0).Distinct());

    /// <summary>What is left at the end of a plan: for each what it is and what to mend, without capitals and full stops.</summary>
    public static IEnumerable<(string What, string? Mend)> Ends(IReadOnlyList<Explanation> remaining)
    {
        if (remaining.Count == 0)
            return [("none of what was found; note what you saw and search again", null)];
        return remaining.Select(e => (Wrong(e), e.Deviations.Count == 0 ? null : string.Join("; then ", Mends(e))));
    }

    /// <summary>A sentence begins with a capital, unless it begins with a name.</summary>
    public static string Sentence(string words) => words.Length == 0 || !char.IsAsciiLetterLower(words[0]) ? words : char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>The name of a part.</summary>
    public static string Name(TracedPlant traced, int part) => traced.Plant.Parts[part].Name;

    /// <summary>A cord without a name of its own is called by its ends.</summary>
    private static string Called(TracedPlant traced, int part) => traced.Plant.Parts[part].IsInline ? $"the cord {Name(traced, part)}" : Name(traced, part);

    private static int PartOf(TracedPlant traced, int position) => traced.Graph.PartOf(position);

    private static string CameOut(TracedPlant traced, LightSeen light) => light switch
    {
        { Seen: >= 0 } => $"came out of {traced.Address(light.Seen)}",
        { Look: >= 0 } => $"came out of no port of {Name(traced, light.Look)}",
        _ => "came out at no interface",
    };

    private static string Place(TracedPlant traced, int part) =>
        part < 0 ? "every interface" : traced.Plant.Parts[part].Shape.IsInterface ? $"the plugs in {Name(traced, part)}" : $"the ports of {Name(traced, part)}";
}
