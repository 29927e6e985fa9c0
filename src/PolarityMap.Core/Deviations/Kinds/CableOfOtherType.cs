using PolarityMap.Core.Parts;
using PolarityMap.Core.Parts.Kinds;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>An array cable of another of the types that are named for its rows; all its legs are.</summary>
internal abstract class CableOfOtherType(string partKind) : DeviationKind
{
    public override int LookMinutes => 3;

    public override string Source => "types A, B and C: TIA-568, more than eight public sources; symptom by tracing; weight and minutes are common practice";

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        Part cable = context.Plant.Parts[part];
        if (cable.Kind != partKind || cable.Values is null)
            yield break;
        int rows = cable.Shape.Ports[0].Face.Rows;
        for (int map = 0; map < ArrayMap.All.Count; map++)
        {
            if (ArrayMap.All[map].Rows == rows && context.Once(Id(part, variant: map), (Kind: this, context, part, map), static f => f.Kind.Make(f.context, f.part, f.map)) is { } deviation)
                yield return deviation;
        }
    }

    private Deviation? Make(DeviationContext context, int part, int map)
    {
        Part cable = context.Plant.Parts[part];
        string other = ArrayMap.All[map].Name;
        if (context.With(part, "type", other) is not { } differs || context.Patch(differs) is not { } patch)
            return null;
        string own = ArrayCable.Word(cable.Values!);
        return new Deviation(Id(part, variant: map), this, [part], $"{partKind} {cable.Name} is {other} instead of {own}", [differs], patch)
        {
            Mend = $"put {(own == "own wiring" ? $"a {partKind} of the wiring that the plan writes out" : $"a {own} {partKind}")} in the place of {cable.Name}",
            Share = 1.0 / ArrayMap.All.Count(m => m.Rows == ArrayMap.All[map].Rows && m.Name != own),
        };
    }
}
