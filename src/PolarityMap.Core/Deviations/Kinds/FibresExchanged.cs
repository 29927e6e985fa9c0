using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>
/// Two fibres of a splice tray or field termination have changed places (trade facts, causes 9 and 10). Of all pairs those are
/// taken that a hand confuses: fibres next to each other, n and n + 1, and fibres of one colour in units next to each other, n and
/// n + 12 (common practice). Two fibres of one port of a termination are a crossed pair, which is a kind of its own.
/// </summary>
internal sealed class FibresExchanged : DeviationKind
{
    /// <summary>Fibres of one unit, after which the colours begin anew (TIA-598).</summary>
    private const int Unit = 12;

    private static readonly int[] s_steps = [1, Unit];

    public override string Name => "fibres-exchanged";

    public override string Title => "two fibres exchanged in a splice tray or termination";

    public override string Symptom => "Exactly two strands come out at each other's places: one circuit dead if they are a pair, two circuits disturbed if not.";

    public override double Weight => 5;

    public override int LookMinutes => 15;

    public override int MendMinutes => 30;

    public override string Source => "symptom by tracing; colours repeat after twelve fibres, TIA-598; which fibres, weight and minutes are common practice";

    public override string Caution => OpenFibre;

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        Part made = context.Plant.Parts[part];
        int bare = made.Kind == "splice" ? 0 : TerminationWiring.IsTermination(made) ? made.Shape.Ports.Count - 1 : -1;
        if (bare < 0)
            yield break;
        int first = context.Graph.PositionOf(new PortRef(part, bare), 1);
        int count = made.Shape.Ports[bare].Face.Count;
        for (int n = 0; n < count; n++)
        {
            foreach (int step in s_steps)
            {
                if (n + step < count && context.Once(Id(first + n, first + n + step), (Kind: this, context, part, n: first + n, m: first + n + step), static f => f.Kind.Make(f.context, f.part, f.n, f.m)) is { } deviation)
                    yield return deviation;
            }
        }
    }

    private Deviation? Make(DeviationContext context, int part, int a, int b)
    {
        if (context.Exchanged(a, b) is not { } patch || IsPair(context, a, b))
            return null;
        int n = context.Graph.PlaceOf(a).Position, m = context.Graph.PlaceOf(b).Position;
        string name = context.Plant.Parts[part].Name;
        return new Deviation(Id(a, b), this, [part], $"fibres {n} and {m} have changed places in {name}", TerminationWiring.Of(context, part, patch), patch)
        {
            Mend = $"exchange fibres {n} and {m} in {name}",
            Share = 0.5,
        };
    }

    private static bool IsPair(DeviationContext context, int a, int b)
    {
        PortRef port = context.Graph.PlaceOf(context.Graph.Inside[a]).Port;
        return context.Plant.Port(port).Face == Face.Duplex && context.Graph.PlaceOf(context.Graph.Inside[b]).Port == port;
    }
}
