using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>
/// A cassette, outlet, module, termination or panel is mounted upside down, and the ports are counted from the left all the same
/// (trade facts, cause 6). By its printed labels nothing changes: it is a rigid turn. Counted from the left the order is reversed.
/// A duplex plug turns with its port, because its key lets it in one way only, so that A and B of it stay (proved); two simplex
/// plugs go into the halves by hand, and there left is B. Where keys keep a plug out of the mirrored port nobody would leave it so.
/// </summary>
internal sealed class UpsideDown : DeviationKind
{
    public override string Name => "upside-down";

    public override string Title => "cassette or panel mounted upside down";

    public override string Symptom => "Light comes out at the mirror place, the first port at the last, with polarity right; by the printed labels all is as planned.";

    public override double Weight => 5;

    public override int LookMinutes => 1;

    public override int MendMinutes => 10;

    public override string Source => "that only those who count places see it, and that A and B stay: proved by geometry; weight and minutes are common practice";

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        Shape shape = context.Plant.Parts[part].Shape;
        if (!shape.IsCable && !shape.IsInterface && Once(context, part) is { } own)
            yield return own;
        for (int i = 0; shape.IsCable && i < context.Seats.MatingsAt(part).Length; i++)
        {
            if (context.Plant.Matings[context.Seats.MatingsAt(part)[i]].Through is { } adapter && Once(context, adapter.Part) is { } panel)
                yield return panel;
        }

        for (int port = 0; shape.IsCable && port < shape.Ports.Count; port++)
        {
            if (context.Plugs.AdapterOf(new PortRef(part, port)) is { } adapter && Once(context, adapter.Part) is { } panel)
                yield return panel;
        }
    }

    private Deviation? Once(DeviationContext context, int part) =>
        context.Once(Id(part), (Kind: this, context, part), static f => f.Kind.Make(f.context, f.part));

    private Deviation? Make(DeviationContext context, int part)
    {
        Part made = context.Plant.Parts[part];
        bool isPanel = made.Shape.Ports is [{ IsAdapter: true }, ..];
        Difference[]? differences = isPanel ? Panel(context, part) : Fronts(context, part) is { } differs ? [differs] : null;
        if (differences is null || context.Patch(differences) is not { } patch)
            return null;
        return new Deviation(Id(part), this, [part], $"{made.Kind} {made.Name} is mounted upside down, and its ports were counted from the left", differences, patch)
        {
            Mend = $"turn {made.Name} the right way up, or plug by its printed port numbers",
        };
    }

    /// <summary>The part with its front ports in reversed order; null where they are not alike.</summary>
    private static PartDiffers? Fronts(DeviationContext context, int part)
    {
        Part made = context.Plant.Parts[part];
        PortShape[] fronts = [.. made.Shape.Ports.Where(p => p.Side == Side.Near)];
        if (fronts.Length == 0 || fronts.Any(p => p.Face != fronts[0].Face || p.Face.Family == ConnectorFamily.Bare))
            return null;
        int[] inside = made.Shape.Inside.Span.ToArray();
        int count = fronts[0].Face.Count;
        for (int k = 0; k < fronts.Length; k++)
        {
            var place = new PortRef(part, made.Shape.FindPort(fronts[k].Name));
            var mirrored = new PortRef(part, made.Shape.FindPort(fronts[^(k + 1)].Name));
            if (context.Plugs.PartnerOf(place) is { } plug && context.Seats.Of(plug) is { } seat && !context.Seats.GoesIn(seat, mirrored))
                return null;
            bool byHand = context.Plugs.HoldsSimplex(place);
            for (int i = 0; i < count; i++)
            {
                int here = fronts[k].FirstPosition + i;
                int partner = made.Shape.Inside[fronts[^(k + 1)].FirstPosition + (byHand ? count - 1 - i : i)];
                inside[here] = partner;
                if (partner >= 0)
                    inside[partner] = here;
            }
        }

        return new PartDiffers(part, made with { Shape = made.Shape.WithInside(inside) }, "", "");
    }

    /// <summary>The plugs of one side in mirrored adapters: each meets what is behind the other, or nothing.</summary>
    private static Difference[]? Panel(DeviationContext context, int part)
    {
        var differences = new List<Difference>();
        int count = context.Plant.Parts[part].Shape.Ports.Count;
        for (int k = 0; k < count / 2; k++)
        {
            var left = new PortRef(part, k);
            var right = new PortRef(part, count - 1 - k);
            bool isLeft = context.Plugs.At(left) >= 0, isRight = context.Plugs.At(right) >= 0;
            if ((isLeft && !context.Seats.GoesIn(Front(context, left), right)) || (isRight && !context.Seats.GoesIn(Front(context, right), left)))
                return null;
            if (isLeft && isRight)
                differences.Add(new PlugsExchanged(Front(context, left).Plug, Front(context, right).Plug));
            else if (isLeft)
                differences.Add(Alone(context, left, right));
            else if (isRight)
                differences.Add(Alone(context, right, left));
        }

        return differences.Count > 0 ? [.. differences] : null;
    }

    private static Seat Front(DeviationContext context, PortRef adapter)
    {
        (Seat? first, Seat? second) = context.Seats.In(context.Plugs.At(adapter));
        return first!.IsFront ? first : second!;
    }

    /// <summary>Two plugs before an adapter in which at most one waits: one of the two meets it, the other nothing.</summary>
    private static Difference Alone(DeviationContext context, PortRef taken, PortRef other)
    {
        Seat front = Front(context, taken);
        Mating mating = context.Plant.Matings[context.Plugs.At(taken)];
        PortRef behind = mating.A == front.Plug ? mating.B : mating.A;
        return context.Plugs.WaitingIn(other) is not { } waiting ? new PlugPulled(front.Plug)
            : context.Seats.IsCord(waiting.Part) ? new PlugMoved(front.Plug, waiting)
            : new PlugMoved(behind, waiting);
    }
}
