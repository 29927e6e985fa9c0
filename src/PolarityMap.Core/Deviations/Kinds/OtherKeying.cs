using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>
/// Array adapters with keys opposed where they should be aligned, or the reverse (trade facts, cause 8): those of a part, or a
/// single one of a panel, whose adapters are snapped in one by one.
/// </summary>
internal sealed class OtherKeying : DeviationKind
{
    /// <summary>Variants: the attribute that says the keys of a part, then one adapter alone.</summary>
    private static readonly string[] s_attributes = ["keys", "front-keys"];

    public override string Name => "other-keying";

    public override string Title => "array adapter of the other keying";

    public override string Symptom => "Light comes out at the mirror place, 1 at 12, as with a wrong trunk, but only at what goes through that cassette, module or panel.";

    public override double Weight => 6;

    public override int LookMinutes => 3;

    public override int MendMinutes => 10;

    public override string Source => "Type-A and Type-B adapters: TIA-568, five public sources; symptom by tracing; weight and minutes are common practice";

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        for (int variant = 0; variant < s_attributes.Length; variant++)
        {
            if (Whole(context, part, variant) is { } deviation)
                yield return deviation;
        }

        for (int i = 0; i < context.Seats.MatingsAt(part).Length; i++)
        {
            Mating mating = context.Plant.Matings[context.Seats.MatingsAt(part)[i]];
            if (!context.Plant.Fits(mating))
                continue;
            foreach (PortRef? port in (PortRef?[])[mating.A, mating.B, mating.Through])
            {
                if (port is not { } at || context.Plant.Port(at).Keys is null || context.Plant.Port(at).KeysFixed)
                    continue;
                if (context.Plant.Port(at).IsAdapter && One(context, at) is { } one)
                    yield return one;
                for (int variant = 0; variant < s_attributes.Length && at.Part != part; variant++)
                {
                    if (Whole(context, at.Part, variant) is { } deviation)
                        yield return deviation;
                }
            }
        }
    }

    private Deviation? Whole(DeviationContext context, int part, int variant) =>
        context.Once(Id(part, variant: variant), (Kind: this, context, part, variant), static f => f.Kind.MakeWhole(f.context, f.part, f.variant));

    private Deviation? One(DeviationContext context, PortRef port) =>
        context.Once(Id(port.Part, port.Port, s_attributes.Length), (Kind: this, context, port), static f => f.Kind.MakeOne(f.context, f.port));

    private Deviation? MakeWhole(DeviationContext context, int part, int variant)
    {
        Part made = context.Plant.Parts[part];
        if (made.Values?.Word(s_attributes[variant]) is not { } own || !KeyingWords.TryParse(own, out Keying keys))
            return null;
        string other = Other(keys).Word();
        if (context.With(part, s_attributes[variant], other) is not { } differs || context.Patch(differs) is not { } patch)
            return null;
        bool isPanel = made.Shape.Ports.Count > 1 && made.Shape.Ports[0].IsAdapter;
        string side = s_attributes[variant] == "front-keys" ? " at its front" : "";
        return new Deviation(Id(part, variant: variant), this, [part], $"{made.Kind} {made.Name} has array adapters with {other} keys{side} instead of {own}", [differs], patch)
        {
            Mend = $"put {own} array adapters ({TypeOf(keys)}) into {made.Name}{side}, or put another {made.Kind} in its place",
            Share = isPanel ? 0.5 : 1,
        };
    }

    private Deviation? MakeOne(DeviationContext context, PortRef port)
    {
        Part panel = context.Plant.Parts[port.Part];
        PortShape shape = context.Plant.Port(port);
        if (panel.Shape.Ports.Count < 2 || shape.Keys is not { } own || context.Plugs.At(port) is not (>= 0 and int index))
            return null;
        Keying other = Other(own);
        Mating mating = context.Plant.Matings[index];
        GraphPatch patch = GraphPatch.OfMatings(context.Traced, (index, mating with { Keys = other }));
        if (patch.IsEmpty || context.Plant.Port(mating.A).KeysFixed || context.Plant.Port(mating.B).KeysFixed)
            return null;
        string address = context.Plant.Address(port);
        var differences = new LateDifference(() => new PartDiffers(port.Part, panel with { Shape = panel.Shape.WithPort(port.Port, shape with { Keys = other }) }, "", ""));
        return new Deviation(Id(port.Part, port.Port, s_attributes.Length), this, [port.Part], $"the adapter {address} has {other.Word()} keys instead of {own.Word()}", differences, patch)
        {
            Mend = $"put an {own.Word()} adapter ({TypeOf(own)}) into {address}",
            Port = port,
            Share = 0.5 / panel.Shape.Ports.Count,
        };
    }

    private static Keying Other(Keying keys) => keys == Keying.Opposed ? Keying.Aligned : Keying.Opposed;

    private static string TypeOf(Keying keys) => keys == Keying.Opposed ? "Type-A" : "Type-B";
}
