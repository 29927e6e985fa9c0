using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>An A-to-A cord where an A-to-B cord belongs, or the other way round (trade facts, causes 2 and 3).</summary>
internal sealed class OtherCord : DeviationKind
{
    public override string Name => "other-cord";

    public override string Title => "A-to-A cord for A-to-B, or the reverse";

    public override string Symptom => "Both ends of one link hear nothing, and both transmitters send; exchanging the two fibres of one plug cures it.";

    public override double Weight => 10;

    public override int LookMinutes => 2;

    public override int MendMinutes => 3;

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        Part cord = context.Plant.Parts[part];
        if (cord.Kind != "duplex cord" || cord.Values?.Word("type") is not { } type)
            yield break;
        string other = type == "A-to-A" ? "A-to-B" : "A-to-A";
        if (context.With(part, "type", other) is { } differs && context.Patch(differs) is { } patch)
        {
            yield return new Deviation(new DeviationId(DeviationCatalogue.IndexOf(this), part), this, [part], $"cord {cord.Name} is {other} instead of {type}", [differs], patch)
            {
                Mend = $"put an {type} cord in the place of {cord.Name}",
            };
        }
    }
}
