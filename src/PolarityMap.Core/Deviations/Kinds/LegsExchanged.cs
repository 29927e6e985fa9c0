using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>
/// Two legs sit in each other's ports (trade facts, causes 12 and 13): any two legs at one end of a trunk or harness, two plugs
/// of cables that stay side by side at one part or panel, or at two parts of a kind that stand side by side.
/// </summary>
internal sealed class LegsExchanged : DeviationKind
{
    public override string Name => "legs-exchanged";

    public override string Title => "two legs exchanged";

    public override string Symptom => "All pairs of one leg come out at the ports of the other and the reverse; with parallel ports all lanes of two links are dark or join the wrong ports.";

    public override double Weight => 7;

    public override int LookMinutes => 4;

    public override int MendMinutes => 5;

    public override string Source => "symptom by tracing; which legs, weight and minutes are common practice";

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        for (int i = 0; i < context.Seats.MatingsAt(part).Length; i++)
        {
            Mating mating = context.Plant.Matings[context.Seats.MatingsAt(part)[i]];
            foreach (Deviation deviation in With(context, mating.A).Concat(With(context, mating.B)))
                yield return deviation;
        }
    }

    private IEnumerable<Deviation> With(DeviationContext context, PortRef plug)
    {
        if (!context.Plant.Parts[plug.Part].Shape.IsCable || context.Seats.IsCord(plug.Part) || context.Plant.Port(plug).Face.Family == ConnectorFamily.Bare)
            yield break;
        foreach ((PortRef other, double share) in Partners(context, plug))
        {
            (PortRef low, PortRef high) = context.Plant.NumberOf(plug) < context.Plant.NumberOf(other) ? (plug, other) : (other, plug);
            DeviationId id = Id(context.Plant.NumberOf(low), context.Plant.NumberOf(high));
            if (context.Once(id, (Kind: this, context, low, high, share), static f => f.Kind.Make(f.context, f.low, f.high, f.share)) is { } deviation)
                yield return deviation;
        }
    }

    /// <summary>The plugs that a leg can be taken for, and the share of each in the weight.</summary>
    private static IEnumerable<(PortRef Plug, double Share)> Partners(DeviationContext context, PortRef plug)
    {
        Seat? seat = context.Seats.Of(plug);
        List<PortRef> own = OwnLegs(context, plug);
        foreach (PortRef other in own)
            yield return (other, 1.0 / own.Count);
        if (seat is null)
            yield break;
        int end = seat.Row.End(seat.Index);
        for (int i = SeatRow.First(seat.Index); i < end; i++)
        {
            if (seat.Row.Seats[i].Plug.Part != plug.Part)
                yield return (seat.Row.Seats[i].Plug, seat.Row.Share);
        }

        for (int step = -1; step <= 1; step += 2)
        {
            if (NextPart(context, seat, step) is { } other && other.Part != plug.Part)
                yield return (other, 0.5);
        }
    }

    /// <summary>The other legs at the same end of the cable that are plugged in.</summary>
    private static List<PortRef> OwnLegs(DeviationContext context, PortRef plug)
    {
        PortShape own = context.Plant.Port(plug);
        FixedList<PortShape> legs = context.Plant.Parts[plug.Part].Shape.Ports;
        var others = new List<PortRef>();
        for (int leg = 0; leg < legs.Count; leg++)
        {
            if (leg != plug.Port && legs[leg].Side == own.Side && legs[leg].Face == own.Face && context.Plugs.At(plug with { Port = leg }) >= 0)
                others.Add(plug with { Port = leg });
        }

        return others;
    }

    /// <summary>The leg in the same port of the part that stands next to the left or right.</summary>
    private static PortRef? NextPart(DeviationContext context, Seat seat, int step)
    {
        int next = context.Beside.Of(seat.Socket.Part, step);
        PortShape own = context.Plant.Port(seat.Socket);
        if (next < 0 || own.IsAdapter || context.Plant.Parts[next].Shape.Ports is not { } ports || seat.Socket.Port >= ports.Count || ports[seat.Socket.Port].Name != own.Name)
            return null;
        PortRef? plug = context.Plugs.PartnerOf(new PortRef(next, seat.Socket.Port));
        return plug is { } found && context.Seats.Of(found) is { IsCord: false, Position: 0 } && context.Plant.Port(found).Face == context.Plant.Port(seat.Plug).Face ? plug : null;
    }

    private Deviation? Make(DeviationContext context, PortRef low, PortRef high, double share)
    {
        Plant plant = context.Plant;
        Seat? seatLow = context.Seats.Of(low), seatHigh = context.Seats.Of(high);
        if ((seatHigh is not null && seatLow is not null) && (!context.Seats.GoesIn(seatLow, seatHigh.Socket) || !context.Seats.GoesIn(seatHigh, seatLow.Socket)))
            return null;
        var differs = new PlugsExchanged(low, high);
        if (context.Patch(differs) is not { } patch)
            return null;
        string legs = $"{plant.Address(low)} and {plant.Address(high)}";
        string places = seatLow is null || seatHigh is null ? "" : $", {plant.Address(seatLow.Socket)} and {plant.Address(seatHigh.Socket)}";
        return new Deviation(
            Id(plant.NumberOf(low), plant.NumberOf(high)), this, Parts(low, high, seatLow, seatHigh),
            $"legs {legs} sit in each other's ports{places}", [differs], patch)
        {
            Mend = $"exchange the plugs {legs}{(places.Length > 0 ? $" in {places[2..]}" : "")}",
            Port = seatLow?.Socket ?? low,
            Share = share,
        };
    }

    private static List<int> Parts(PortRef low, PortRef high, Seat? seatLow, Seat? seatHigh)
    {
        var parts = new List<int> { low.Part };
        foreach (int? part in (ReadOnlySpan<int?>)[high.Part, seatLow?.Socket.Part, seatHigh?.Socket.Part])
        {
            if (part is { } index && !parts.Contains(index))
                parts.Add(index);
        }

        return parts;
    }
}
