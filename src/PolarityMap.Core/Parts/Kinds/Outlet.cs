namespace PolarityMap.Core.Parts.Kinds;

/// <summary>
/// A wall or desk outlet. With an array at the rear it is wired like a cassette; with duplex adapters a duplex plug enters
/// each port from behind and the outlet has no fibre of its own.
/// </summary>
public sealed class Outlet : PartKind
{
    /// <summary>The attributes that only an array at the rear has.</summary>
    private static readonly string[] s_ofArray =
        ["wiring", "base", "keys", "pins", "polish", "fibre", "array-loss", "expected-array-loss", "duplex-loss", "expected-duplex-loss", "duplex-polish"];

    public override string Name => "outlet";

    public override string Summary => "A wall or desk outlet with duplex ports, fed by an array cable or by duplex plugs.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        AttributeSpec.Choice("rear", "What arrives from behind: one array connector, or a duplex plug per port.", ["array", "duplex"], "array"),
        TransitionWiring.Spec("straight"),
        TransitionWiring.Base,
        TransitionWiring.Keys,
        AttributeSpec.WholeNumber("ports", "Number of ports of an outlet with duplex plugs; with an array the wiring decides.", 1, 48, 4),
        Connectors.Fibre, Connectors.PortNetworks, Connectors.PortPins, Connectors.ArrayPolish, Connectors.DuplexPolish, Connectors.Connector, Connectors.Keyed, Connectors.Key,
        Connectors.ArrayLoss, Connectors.ExpectedArrayLoss, Connectors.DuplexLoss, Connectors.ExpectedDuplexLoss,
    ];

    public override string? PinsBesidePinnedTrunks => "unpinned";

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        if (values.Word("rear") == "array")
        {
            if (values.Has("ports"))
                faults.Add(new AttributeFault("ports", "the wiring decides how many ports an outlet with an array has; leave ports out"));
            return PartKinds.Find("cassette")!.Build(values, faults) is { } shape && faults.Count == 0 ? shape : null;
        }

        foreach (string name in s_ofArray)
        {
            if (values.Has(name))
                faults.Add(new AttributeFault(name, $"an outlet with duplex plugs at its rear has no {name}"));
        }

        return faults.Count == 0 ? Adapters.Build(Connectors.Duplex("", Face.Duplex, Side.Near, values, values.Word("keyed") == "yes"), values.WholeNumber("ports")) : null;
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) =>
        values.Word("rear") == "array" ? ["outlet", TransitionWiring.Word(values)] : ["outlet"];
}
