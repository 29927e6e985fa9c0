using PolarityMap.Core.Parts;
using PolarityMap.Core.Parts.Kinds;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations.Kinds;

/// <summary>
/// A cassette, outlet, harness or termination of another of the wirings that are named for its rows, or a conversion of another
/// kind with the same ports (trade facts, cause 7).
/// </summary>
internal sealed class OtherWiring : DeviationKind
{
    public override string Name => "other-wiring";

    public override string Title => "cassette, outlet or harness of another wiring";

    public override string Symptom => "All ports of one cassette are wrong and those of its neighbours are right: transmitters meet, or the order of the ports is reversed.";

    public override double Weight => 6;

    public override int LookMinutes => 4;

    public override int MendMinutes => 15;

    public override string Source => "wirings: TIA-568.3, four public sources; symptom by tracing; weight and minutes are common practice";

    public override IEnumerable<Deviation> At(DeviationContext context, int part)
    {
        Part made = context.Plant.Parts[part];
        if (made.Values is null || PartKinds.Find(made.Kind) is not { } kind)
            yield break;
        foreach ((string attribute, string word, int variant) in Others(kind, made))
        {
            if (context.Once(Id(part, variant: variant), (Kind: this, context, part, attribute, word, variant), static f => f.Kind.Make(f.context, f.part, f.attribute, f.word, f.variant)) is { } deviation)
                yield return deviation;
        }
    }

    /// <summary>The attribute and word of everything else that the part could be.</summary>
    private static IEnumerable<(string Attribute, string Word, int Variant)> Others(PartKind kind, Part part)
    {
        int variant = 0;
        if (part.Values!.Word("conversion") is { } conversion)
        {
            yield return ("type", part.Values.Word("type") == "reversed" ? "straight" : "reversed", variant);
            foreach (Conversion other in Conversion.All)
            {
                variant++;
                if (other.Name != conversion && HasPortsOf(other, Conversion.ByName(conversion)))
                    yield return ("conversion", other.Name, variant);
            }

            yield break;
        }

        int rows = RowsOf(part.Shape);
        foreach (AttributeSpec spec in kind.Attributes)
        {
            if (spec.Name != "wiring" || spec.Sort != AttributeSort.Wiring)
                continue;
            foreach (string word in spec.Words)
            {
                variant++;
                if (word != part.Values.Word("wiring") && (rows == 0 || Transition.ByName(word).IsFor(rows)))
                    yield return ("wiring", word, variant);
            }
        }
    }

    /// <summary>The rows of the array connector that a part breaks out; 0 where there is none.</summary>
    private static int RowsOf(Shape shape)
    {
        foreach (PortShape port in shape.Ports)
        {
            if (port.Face.Family == ConnectorFamily.Array)
                return port.Face.Rows;
        }

        return 0;
    }

    private static bool HasPortsOf(Conversion a, Conversion b) => a.Wide.SequenceEqual(b.Wide) && a.Narrow.SequenceEqual(b.Narrow);

    private Deviation? Make(DeviationContext context, int part, string attribute, string word, int variant)
    {
        Part made = context.Plant.Parts[part];
        if (context.With(part, attribute, word) is not { } differs || context.Patch(differs) is not { } patch)
            return null;
        string own = attribute == "wiring" ? TransitionWiring.Word(made.Values!) : made.Values!.Word(attribute)!;
        return new Deviation(Id(part, variant: variant), this, [part], $"{made.Kind} {made.Name} is {word} instead of {own}", [differs], patch)
        {
            Mend = made.Kind == "field termination"
                ? $"bring the fibres of {made.Name} to its ports as the plan has it: {own}"
                : $"put a {own} {made.Kind} in the place of {made.Name}",
            Share = 1.0 / Others(PartKinds.Find(made.Kind)!, made).Count(),
        };
    }
}
