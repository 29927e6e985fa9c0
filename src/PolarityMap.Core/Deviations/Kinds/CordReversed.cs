using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>
/// The two plugs of one end of a reversible cord have changed places, or have not where they should have. Reversing one end turns
/// A-to-B into A-to-A and back, reversing both changes nothing (mechanism: two public sources; the algebra is proved).
/// </summary>
internal sealed class CordReversed : DeviationKind
{
    public override string Name => "cord-reversed";

    public override string Title => "reversible cord reversed at one end";

    public override string Symptom => "As with an A-to-A cord: both ends of one link hear nothing and both transmitters send, though the right cord was bought.";

    public override double Weight => 9;

    public override int LookMinutes => 3;

    public override int MendMinutes => 2;

    public override string Source => "mechanism: two public sources; symptom by tracing; weight and minutes are common practice";

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        if (!context.Plant.Parts[part].IsReversible)
            yield break;
        for (int end = 0; end < 2; end++)
        {
            if (context.Once(Id(part, variant: end), (Kind: this, context, part, end), static f => f.Kind.Make(f.context, f.part, f.end)) is { } deviation)
                yield return deviation;
        }
    }

    private Deviation? Make(DeviationContext context, int part, int end)
    {
        Part cord = context.Plant.Parts[part];
        string was = cord.Values?.Word("reversed") ?? "none";
        string now = Turned(was, end == 0 ? "near" : "far");
        int first = context.Graph.FirstPositionOf(part);
        if (context.Exchanged(first, first + 1) is not { } patch)
            return null;
        string words = was == "none" ? $"is reversed at its {now} end" : now == "none" ? $"is not reversed at its {was} end" : $"is reversed at {Ends(now)} instead of {Ends(was)}";
        return new Deviation(
            Id(part, variant: end), this, [part], $"cord {cord.Name} {words}",
            new LateDifference(() => context.With(part, "reversed", now) ?? context.Rewired(part, patch)), patch)
        {
            Mend = $"let the two plugs at the {(end == 0 ? "near" : "far")} end of {cord.Name} change places",
            Share = 0.5,
        };
    }

    /// <summary>The word for the reversed ends once one more has been turned.</summary>
    private static string Turned(string was, string end) =>
        was == "none" ? end : was == end ? "none" : was == "both" ? (end == "near" ? "far" : "near") : "both";

    private static string Ends(string word) => word == "both" ? "both ends" : $"its {word} end";
}
