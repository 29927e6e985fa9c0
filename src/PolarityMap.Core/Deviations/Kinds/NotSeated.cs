using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>
/// A connector hangs in its port or adapter without touching (trade facts, sections 5 and 1: seating). What touches badly is high
/// loss, as dirt is; what does not touch is taken for dark, all positions at once.
/// </summary>
internal sealed class NotSeated : DeviationKind
{
    public override string Name => "not-seated";

    public override string Title => "connector not seated";

    public override string Symptom => "All that goes through one connector is dark or very weak, and comes when the plug is pushed in until it clicks.";

    public override double Weight => 2;

    public override int LookMinutes => 2;

    public override int MendMinutes => 1;

    public override string Source => "bad seating among the causes of high loss: one public source; weight and minutes are common practice";

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
        if (context.Plant.Port(context.Plant.Matings[index].A).Face.Family == ConnectorFamily.Bare)
            return null;
        GraphPatch patch = GraphPatch.OfMatings(context.Traced, (index, null));
        if (patch.IsEmpty)
            return null;
        var place = MatingPlace.Of(context, index);
        return new Deviation(Id(index), this, place.Parts, $"{place.Words} {(context.Plant.Matings[index].Through is null ? "is" : "are")} not seated", [new PlugPulled(place.Plug)], patch)
        {
            Mend = $"push the plug until it clicks: {place.Words}",
            Port = place.Plug,
        };
    }
}
