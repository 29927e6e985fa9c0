using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>
/// A cable of another fibre class than planned: the next lower one of the family, or, for the lowest multimode class, the next one
/// with another core (trade facts, cause 20). Light goes the same way and loses more, in one direction or at speed. Single-mode has
/// no class below OS1, so that a cable of OS1 has none. Where no class is stated, it is another than that of the parts around it.
/// </summary>
internal sealed class OtherFibre : DeviationKind
{
    public override string Name => "other-fibre";

    public override string Title => "cable of another fibre class";

    public override string Symptom => "Light goes its way and loses too much, more in one direction where cores differ; where only the class is lower, errors come at speed.";

    public override double Weight => 1;

    public override int LookMinutes => 2;

    public override int MendMinutes => 20;

    public override string Source => "classes: ISO/IEC 11801-1; weight and minutes are common practice";

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        Part cable = context.Plant.Parts[part];
        if (cable.Shape.IsCable && cable.Kind != "splice" && context.Once(Id(part), (Kind: this, context, part), static f => f.Kind.Make(f.context, f.part)) is { } deviation)
            yield return deviation;
    }

    /// <summary>The class that is met instead: lower of the same core, or the neighbour of another core; null when there is none.</summary>
    private static FibreClass? Instead(FibreClass own)
    {
        IReadOnlyList<FibreClass> all = FibreClass.All;
        for (int i = 0; i < all.Count; i++)
        {
            if (all[i] != own)
                continue;
            FibreClass? below = i > 0 && all[i - 1].IsMultimode == own.IsMultimode ? all[i - 1] : null;
            return below ?? (own.IsMultimode ? all[i + 1] : null);
        }

        return null;
    }

    private Deviation? Make(DeviationContext context, int part)
    {
        Part cable = context.Plant.Parts[part];
        FibreClass? other = cable.Fibre is { } own ? Instead(own) : null;
        if (other is null && cable.Fibre is not null)
            return null;
        IReadOnlyList<Difference> differences = other is null
            ? []
            : new LateDifference(() => context.With(part, "fibre", other.Name) ?? new PartDiffers(part, cable with { Fibre = other }, "fibre", other.Name));
        string what = other is null ? "of another fibre class than the parts around it" : $"{other.Name} instead of {cable.Fibre}";
        return new Deviation(Id(part), this, [part], $"{cable.Kind} {cable.Name} is {what}", differences, GraphPatch.None)
        {
            Lossy = [.. Enumerable.Range(context.Graph.FirstPositionOf(part), cable.Shape.PositionCount)],
            Mend = $"put {(cable.Fibre is null ? "one of the class of its neighbours" : $"a {cable.Kind} of {cable.Fibre}")} in the place of {cable.Name}",
        };
    }
}
