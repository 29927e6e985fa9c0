using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>
/// The end faces of a mating are dirty (trade facts, cause 1). Both faces are, once they have touched. It is taken for all
/// positions of the mating at once: dirt on single positions of an array would make twelve kinds of one place, and the cure is the
/// same.
/// </summary>
internal sealed class Dirty : DeviationKind
{
    public override string Name => "dirty";

    public override string Title => "dirty end faces";

    public override string Symptom => "Light goes its way and loses too much, or drifts; it passes after cleaning.";

    public override double Weight => 3;

    /// <summary>It takes a probe to see it.</summary>
    public override int LookMinutes => 0;

    public override int MendMinutes => 5;

    public override string Source => "that dirt leads the causes of high loss: surveys, second-hand; its place for a link that never worked, weight and minutes are common practice";

    public override string Caution => LiveFibre + " Inspect with a probe that shows the end face on a screen. Cleaning alcohol burns: little of it, moving air, no sparks, and let it dry.";

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        for (int i = 0; i < context.Seats.MatingsAt(part).Length; i++)
        {
            int mating = context.Seats.MatingsAt(part)[i];
            if (context.Once(Id(mating), (Kind: this, context, mating), static f => f.Kind.Make(f.context, f.mating)) is { } deviation)
                yield return deviation;
        }
    }

    private Deviation? Make(DeviationContext context, int index)
    {
        Mating mating = context.Plant.Matings[index];
        if (context.Plant.Port(mating.A).Face.Family == ConnectorFamily.Bare || GraphPatch.PositionsOf(context.Traced, mating) is not { Length: > 0 } positions)
            return null;
        var place = MatingPlace.Of(context, index);
        return new Deviation(Id(index), this, place.Parts, $"the end faces of {place.Words} are dirty", [], GraphPatch.None)
        {
            Lossy = positions,
            Mend = $"inspect and clean both end faces of {place.Words}",
            Port = place.Plug,
        };
    }
}
