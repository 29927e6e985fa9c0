using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>
/// An A-to-A cord where an A-to-B cord belongs, or the other way round (trade facts, causes 2 and 3). Two of them in one link
/// cancel, so that the fault shows when one of the two is replaced.
/// </summary>
internal sealed class OtherCord : DeviationKind
{
    public override string Name => "other-cord";

    public override string Title => "A-to-A cord for A-to-B, or the reverse";

    public override string Symptom => "Both ends of one link hear nothing, and both transmitters send; exchanging the two fibres of one plug cures it.";

    public override double Weight => 10;

    public override int LookMinutes => 2;

    public override int MendMinutes => 3;

    public override string Source => "A-to-B and A-to-A: TIA-568 and ISO/IEC 11801, six public sources; symptom by tracing; weight and minutes are common practice";

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        if (context.Plant.Parts[part].Kind == "duplex cord" && context.Once(Id(part), (Kind: this, context, part), static f => f.Kind.Make(f.context, f.part)) is { } deviation)
            yield return deviation;
    }

    private Deviation? Make(DeviationContext context, int part)
    {
        Part cord = context.Plant.Parts[part];
        int near = context.Graph.FirstPositionOf(part);
        if (cord.Values?.Word("type") is not { } type || context.Exchanged(near, near + 1) is not { } patch)
            return null;
        string other = type == "A-to-A" ? "A-to-B" : "A-to-A";
        return new Deviation(
            Id(part), this, [part], $"cord {cord.Name} is {other} instead of {type}",
            new LateDifference(() => context.With(part, "type", other) ?? context.Rewired(part, patch)), patch)
        {
            Mend = $"put an {type} cord in the place of {cord.Name}",
        };
    }
}
