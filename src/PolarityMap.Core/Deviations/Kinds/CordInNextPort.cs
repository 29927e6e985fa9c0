using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>
/// The plug of a cord sits in the next free port to the left or right of the one that it belongs in, on the same side of the same
/// part (trade facts, cause 11). Ports that are taken are passed over: there the cords are exchanged. A simplex plug in the other
/// half of a port is left out; where both halves are used the two cords are exchanged.
/// </summary>
internal sealed class CordInNextPort : DeviationKind
{
    public override string Name => "cord-in-next-port";

    public override string Title => "cord in the neighbouring port";

    public override string Symptom => "One link is dark, or comes up with the wrong neighbour; its own port is empty and one that should be empty is taken.";

    public override double Weight => 8;

    public override int LookMinutes => 2;

    public override int MendMinutes => 2;

    public override string Source => "symptom by tracing; which ports, weight and minutes are common practice";

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        foreach (Seat seat in Moves.SeatsAt(context, part))
        {
            foreach (Deviation deviation in Of(context, seat))
                yield return deviation;
        }

        foreach ((Seat seat, PortRef target) in Moves.IntoWaiting(context, part))
        {
            if (seat.IsCord && Once(context, seat, target) is { } deviation)
                yield return deviation;
        }
    }

    private IEnumerable<Deviation> Of(DeviationContext context, Seat seat)
    {
        if (!seat.IsCord)
            yield break;
        foreach (PortRef target in Moves.Targets(context, seat))
        {
            if (Once(context, seat, target) is { } deviation)
                yield return deviation;
        }
    }

    private Deviation? Once(DeviationContext context, Seat seat, PortRef target) =>
        context.Once(Id(context.Plant.NumberOf(seat.Plug), context.Plant.NumberOf(target)), (Kind: this, context, seat, target), static f => f.Kind.Make(f.context, f.seat, f.target));

    private Deviation? Make(DeviationContext context, Seat seat, PortRef target)
    {
        Plant plant = context.Plant;
        Difference differs = Moves.To(context, seat, target);
        if (context.Patch(differs) is not { } patch)
            return null;
        string cord = plant.Parts[seat.Plug.Part].Name;
        return new Deviation(
            Id(plant.NumberOf(seat.Plug), plant.NumberOf(target)), this, [seat.Plug.Part, target.Part],
            $"cord {cord} sits in {plant.Address(target)} instead of {plant.Address(seat.Socket)}", [differs], patch)
        {
            Mend = $"move the plug of {cord} from {plant.Address(target)} to {plant.Address(seat.Socket)}",
            Port = target,
            Share = 1.0 / Moves.Targets(context, seat).Count(),
        };
    }
}
