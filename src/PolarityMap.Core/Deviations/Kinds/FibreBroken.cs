using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>
/// One fibre is broken somewhere inside a part (trade facts, cause 18): light that enters at either end comes out nowhere. Where in
/// the part makes no difference, so each fibre of each part is one deviation.
/// </summary>
internal sealed class FibreBroken : DeviationKind
{
    public override string Name => "fibre-broken";

    public override string Title => "one fibre broken";

    public override string Symptom => "Exactly one strand is dark, at any wavelength and from both ends; red light may glow at the break.";

    public override double Weight => 1;

    /// <summary>Looking at the part does not show it.</summary>
    public override int LookMinutes => 0;

    public override int MendMinutes => 45;

    public override string Source => "symptom by tracing; the glow of red light at a break: three public sources; weight and minutes are common practice";

    public override string Caution => OpenFibre;

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        Shape shape = context.Plant.Parts[part].Shape;
        if (shape.IsInterface)
            yield break;
        int start = context.Graph.FirstPositionOf(part);
        int fibres = 0;
        for (int i = 0; i < shape.Inside.Count; i++)
            fibres += shape.Inside[i] > i ? 1 : 0;
        for (int i = 0; i < shape.Inside.Count; i++)
        {
            if (shape.Inside[i] > i && context.Once(Id(start + i), (Kind: this, context, part, at: start + i, fibres), static f => f.Kind.Make(f.context, f.part, f.at, f.fibres)) is { } deviation)
                yield return deviation;
        }
    }

    private Deviation Make(DeviationContext context, int part, int at, int fibres)
    {
        int other = context.Graph.Inside[at];
        GraphPatch patch = GraphPatch.OfInside(context.Graph, new(at, -1), new(other, -1));
        string fibre = $"{context.Traced.Address(at)} to {context.Traced.Address(other)}";
        return new Deviation(
            Id(at), this, [part], $"the fibre from {fibre} is broken", new LateDifference(() => context.Rewired(part, patch)), patch)
        {
            Mend = $"repair the fibre from {fibre}, or put another {context.Plant.Parts[part].Kind} in the place of {context.Plant.Parts[part].Name}",
            Share = 1.0 / fibres,
        };
    }
}
