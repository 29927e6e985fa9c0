namespace PolarityMap.Core.Parts.Kinds;

/// <summary>
/// A cassette: an array connector at the rear, duplex ports 1, 2, 3, … at the front. The duplex positions are those of the
/// inner connectors, so plug A enters at inner position B.
/// </summary>
public sealed class Cassette : PartKind
{
    public override string Name => "cassette";

    public override string Summary => "Breaks the array connector at its rear out to duplex ports at its front.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
        [TransitionWiring.Spec(), TransitionWiring.Base, TransitionWiring.Keys];

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        IReadOnlyList<DuplexPair>? pairs = TransitionWiring.Pairs(values, faults);
        if (pairs is null)
            return null;
        var shape = new ShapeBuilder();
        var front = new int[pairs.Count];
        for (int k = 0; k < pairs.Count; k++)
            front[k] = shape.AddPort(new PortShape($"{k + 1}", Face.Duplex, Side.Near));
        Keying keys = KeyingWords.Parse(values.Word("keys")!);
        int rear = shape.AddPort(new PortShape("rear", ArrayBase.Of(values.WholeNumber("base")).Face, Side.Far) { Keys = keys });
        TransitionWiring.Join(shape, rear, front, pairs);
        return shape.Build();
    }

    public override IReadOnlyList<string> Caption(AttributeValues values) => ["cassette", TransitionWiring.Word(values)];
}
