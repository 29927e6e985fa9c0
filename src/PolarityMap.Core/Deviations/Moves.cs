using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations;

/// <summary>A plug in another port of the same part that is free.</summary>
internal static class Moves
{
    private static readonly int[] s_steps = [-1, 1];

    /// <summary>The next free ports to the left and right that the plug could sit in.</summary>
    public static IEnumerable<PortRef> Targets(DeviationContext context, Seat seat)
    {
        foreach (int step in s_steps)
        {
            if (context.Seats.NextFree(seat, step) is { } target)
                yield return target;
        }
    }

    /// <summary>The plugs that sit where a part is mated: its own, and those in it.</summary>
    public static IEnumerable<Seat> SeatsAt(DeviationContext context, int part)
    {
        for (int i = 0; i < context.Seats.MatingsAt(part).Length; i++)
        {
            (Seat? first, Seat? second) = context.Seats.In(context.Seats.MatingsAt(part)[i]);
            if (first is not null)
                yield return first;
            if (second is not null)
                yield return second;
        }
    }

    /// <summary>
    /// The plugs that could have been put by mistake into a port in which a plug of the given part waits: light then goes on into it.
    /// </summary>
    public static IEnumerable<(Seat Seat, PortRef Target)> IntoWaiting(DeviationContext context, int part)
    {
        FixedList<PortShape> ports = context.Plant.Parts[part].Shape.Ports;
        for (int port = 0; port < ports.Count; port++)
        {
            if (context.Plugs.AdapterOf(new PortRef(part, port)) is not { } adapter)
                continue;
            foreach (int step in s_steps)
            {
                foreach (Seat seat in Towards(context, adapter, step))
                    yield return (seat, adapter);
            }
        }
    }

    /// <summary>What differs when a plug sits in that port. In an adapter it meets the plug that waits there, or nothing.</summary>
    public static Difference To(DeviationContext context, Seat seat, PortRef target)
    {
        if (!context.Plant.Port(target).IsAdapter)
            return new PlugMoved(seat.Socket, target);
        Mating mating = context.Plant.Matings[seat.Mating];
        return context.Plugs.WaitingIn(target) is { } waiting
            ? new PlugMoved(mating.A == seat.Plug ? mating.B : mating.A, waiting)
            : new PlugPulled(seat.Plug);
    }

    /// <summary>The plugs on one side of an adapter whose next free place is that adapter.</summary>
    private static IEnumerable<Seat> Towards(DeviationContext context, PortRef adapter, int step)
    {
        int count = context.Plant.Parts[adapter.Part].Shape.Ports.Count;
        for (int p = adapter.Port + step, left = SeatRow.Reach; left > 0 && p >= 0 && p < count; p += step, left--)
        {
            var at = new PortRef(adapter.Part, p);
            if (context.Plugs.At(at) is not (>= 0 and int mating))
                continue;
            (Seat? first, Seat? second) = context.Seats.In(mating);
            if (first is not null && context.Seats.NextFree(first, -step) == adapter)
                yield return first;
            if (second is not null && context.Seats.NextFree(second, -step) == adapter)
                yield return second;
        }
    }
}
