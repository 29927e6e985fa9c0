using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>
/// Two cords sit in each other's ports of one part, or in each other's adapters of one panel (trade facts, cause 11). Any two on
/// the same side are meant: cords come in bundles, so the right one may lie far from the wrong one.
/// </summary>
internal sealed class CordsExchanged : DeviationKind
{
    public override string Name => "cords-exchanged";

    public override string Title => "two cords exchanged";

    public override string Symptom => "Two links reach each other's far ports, or both hear nothing.";

    public override double Weight => 8;

    public override int LookMinutes => 4;

    public override int MendMinutes => 3;

    public override string Source => "symptom by tracing; which ports, weight and minutes are common practice";

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        for (int i = 0; i < context.Seats.MatingsAt(part).Length; i++)
        {
            (Seat? first, Seat? second) = context.Seats.In(context.Seats.MatingsAt(part)[i]);
            foreach (Deviation deviation in With(context, part, first))
                yield return deviation;
            foreach (Deviation deviation in With(context, part, second))
                yield return deviation;
        }
    }

    /// <summary>A cord with every other one that sits beside it; at the part that holds both, each pair once.</summary>
    private IEnumerable<Deviation> With(DeviationContext context, int part, Seat? seat)
    {
        if (seat is not { IsCord: true })
            yield break;
        int end = seat.Row.End(seat.Index);
        for (int i = seat.Socket.Part == part ? seat.Index + 1 : SeatRow.First(seat.Index); i < end; i++)
        {
            Seat other = seat.Row.Seats[i];
            if (i != seat.Index && other.Plug.Part != seat.Plug.Part && Once(context, seat, other) is { } deviation)
                yield return deviation;
        }
    }

    private Deviation? Once(DeviationContext context, Seat a, Seat b)
    {
        (Seat low, Seat high) = a.Index < b.Index ? (a, b) : (b, a);
        return context.Once(Id(context.Plant.NumberOf(low.Plug), context.Plant.NumberOf(high.Plug)), (Kind: this, context, low, high), static f => f.Kind.Make(f.context, f.low, f.high));
    }

    private Deviation? Make(DeviationContext context, Seat low, Seat high)
    {
        if (!context.Seats.GoesIn(low, high.Socket) || !context.Seats.GoesIn(high, low.Socket))
            return null;
        Plant plant = context.Plant;

        // Whole ports are named as a document names them; simplex plugs and plugs in adapters have no port of their own there.
        var differs = low.Position > 0 || plant.Port(low.Socket).IsAdapter ? new PlugsExchanged(low.Plug, high.Plug) : new PlugsExchanged(low.Socket, high.Socket);
        if (context.Patch(differs) is not { } patch)
            return null;
        string places = $"{Place(plant, low)} and {Place(plant, high)}";
        return new Deviation(
            Id(plant.NumberOf(low.Plug), plant.NumberOf(high.Plug)), this, [low.Plug.Part, high.Plug.Part, low.Socket.Part],
            $"cords {plant.Parts[low.Plug.Part].Name} and {plant.Parts[high.Plug.Part].Name} sit in each other's ports, {places}", [differs], patch)
        {
            Mend = $"exchange the plugs in {places}",
            Port = low.Socket,
            Share = low.Row.Share,
        };
    }

    private static string Place(Plant plant, Seat seat) => seat.Position > 0 ? plant.Address(seat.Socket, seat.Position) : plant.Address(seat.Socket);
}
