using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>
/// A leg of a trunk or harness sits in a free port beside the one that it belongs in, at the same part or at the next part of
/// its kind; or a leg that should be free was plugged in its place (trade facts, cause 12).
/// </summary>
internal sealed class LegInWrongPort : DeviationKind
{
    private static readonly int[] s_steps = [-1, 1];

    public override string Name => "leg-in-wrong-port";

    public override string Title => "leg of a trunk or harness in the wrong port";

    public override string Symptom => "All pairs of one leg are dark, or come out at the ports of a cassette that should be empty; its neighbours are right.";

    public override double Weight => 7;

    public override int LookMinutes => 4;

    public override int MendMinutes => 5;

    public override string Source => "symptom by tracing; which ports, weight and minutes are common practice";

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        foreach (Seat seat in Moves.SeatsAt(context, part))
        {
            foreach (Deviation deviation in Of(context, seat))
                yield return deviation;
        }

        foreach ((Seat seat, PortRef target) in Moves.IntoWaiting(context, part).Concat(IntoFree(context, part)))
        {
            if (!seat.IsCord && Once(context, seat, target) is { } deviation)
                yield return deviation;
        }
    }

    private IEnumerable<Deviation> Of(DeviationContext context, Seat seat)
    {
        if (seat.IsCord)
            yield break;
        foreach (PortRef target in Targets(context, seat))
        {
            if (Once(context, seat, target) is { } deviation)
                yield return deviation;
        }
    }

    /// <summary>Free ports left and right at the same part, free ports of the next parts, and loose legs of the same end.</summary>
    private static IEnumerable<PortRef> Targets(DeviationContext context, Seat seat)
    {
        foreach (PortRef target in Moves.Targets(context, seat))
            yield return target;
        foreach (int step in s_steps)
        {
            if (NextPart(context, seat, step) is { } target)
                yield return target;
        }

        PortShape own = context.Plant.Port(seat.Plug);
        FixedList<PortShape> legs = context.Plant.Parts[seat.Plug.Part].Shape.Ports;
        for (int leg = 0; leg < legs.Count; leg++)
        {
            if (leg != seat.Plug.Port && legs[leg].Side == own.Side && legs[leg].Face == own.Face && context.Seats.IsLoose(seat.Plug with { Port = leg }))
                yield return seat.Plug with { Port = leg };
        }
    }

    /// <summary>The same port of the next part to the left or right at which it is free.</summary>
    private static PortRef? NextPart(DeviationContext context, Seat seat, int step)
    {
        if (seat.Position > 0 || context.Plant.Port(seat.Socket).IsAdapter)
            return null;
        for (int next = context.Beside.Of(seat.Socket.Part, step), left = Beside.Reach; next >= 0 && left > 0; next = context.Beside.Of(next, step), left--)
        {
            if (Same(context, seat.Socket, next) is { } target && context.Seats.IsFree(target, seat.IsFront) && context.Seats.GoesIn(seat, target))
                return target;
        }

        return null;
    }

    /// <summary>The legs that could have been put by mistake into the free ports of a part.</summary>
    private static IEnumerable<(Seat Seat, PortRef Target)> IntoFree(DeviationContext context, int part)
    {
        FixedList<PortShape> ports = context.Plant.Parts[part].Shape.Ports;
        if (context.Plant.Parts[part].Shape.IsCable || (context.Beside.Of(part, -1) < 0 && context.Beside.Of(part, 1) < 0))
            yield break;
        for (int port = 0; port < ports.Count; port++)
        {
            var free = new PortRef(part, port);
            if (ports[port].IsAdapter || !context.Seats.IsFree(free, ports[port].Side == Side.Near))
                continue;
            foreach (int step in s_steps)
            {
                for (int next = context.Beside.Of(part, step), left = Beside.Reach; next >= 0 && left > 0; next = context.Beside.Of(next, step), left--)
                {
                    if (Same(context, free, next) is { } socket && context.Plugs.PartnerOf(socket) is { } plug
                        && context.Seats.Of(plug) is { IsCord: false } seat && NextPart(context, seat, -step) == free)
                        yield return (seat, free);
                }
            }
        }
    }

    private static PortRef? Same(DeviationContext context, PortRef socket, int part)
    {
        PortShape own = context.Plant.Port(socket);
        FixedList<PortShape> ports = context.Plant.Parts[part].Shape.Ports;
        return socket.Port < ports.Count && ports[socket.Port].Name == own.Name && ports[socket.Port].Face == own.Face && !ports[socket.Port].IsAdapter
            ? new PortRef(part, socket.Port)
            : null;
    }

    private Deviation? Once(DeviationContext context, Seat seat, PortRef target) =>
        context.Once(Id(context.Plant.NumberOf(seat.Plug), context.Plant.NumberOf(target)), (Kind: this, context, seat, target), static f => f.Kind.Make(f.context, f.seat, f.target));

    private Deviation? Make(DeviationContext context, Seat seat, PortRef target)
    {
        Plant plant = context.Plant;
        bool isLeg = target.Part == seat.Plug.Part;
        Difference differs = isLeg ? new PlugMoved(seat.Plug, target) : Moves.To(context, seat, target);
        if (context.Patch(differs) is not { } patch)
            return null;
        string plug = plant.Address(seat.Plug), socket = plant.Address(seat.Socket), other = plant.Address(target);
        return new Deviation(
            Id(plant.NumberOf(seat.Plug), plant.NumberOf(target)), this,
            isLeg || target.Part == seat.Socket.Part ? [seat.Plug.Part, seat.Socket.Part] : [seat.Plug.Part, seat.Socket.Part, target.Part],
            isLeg ? $"leg {other} sits in {socket} instead of leg {plug}" : $"leg {plug} sits in {other} instead of {socket}", [differs], patch)
        {
            Mend = isLeg ? $"plug {plug} into {socket} in the place of {other}" : $"move {plug} from {other} to {socket}",
            Port = isLeg ? seat.Socket : target,
            Share = 1.0 / Targets(context, seat).Count(),
        };
    }
}
