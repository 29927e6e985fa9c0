namespace PolarityMap.Core.Parts.Kinds;

/// <summary>The wiring of cassettes, outlets and harnesses: array positions to duplex ports, by name or written out.</summary>
internal static class TransitionWiring
{
    public static AttributeSpec Spec(string? standard = null) =>
        new("wiring", AttributeSort.Wiring, "A named wiring, or per duplex port its array positions for A and B, such as [[1, 2], [3, 4]].")
        {
            Words = Transition.Names,
            Default = standard,
            Required = standard is null,
        };

    public static AttributeSpec Base { get; } =
        AttributeSpec.OneOf("base", "Fibres of the array connector; 8 fibres use positions 1-4 and 9-12 of 12.", ArrayBase.Sizes, 12);

    public static AttributeSpec Keys { get; } =
        AttributeSpec.Choice("keys", "Keying of the array adapter: opposed (key up to key down) or aligned (key up to key up).", ["opposed", "aligned"], "opposed");

    /// <summary>The pair of every duplex port, or null after reporting what is wrong with a wiring.</summary>
    public static IReadOnlyList<DuplexPair>? Pairs(AttributeValues values, List<AttributeFault> faults)
    {
        ArrayBase array = ArrayBase.Of(values.WholeNumber("base"));
        IReadOnlyList<DuplexPair>? list = values.WiringList("wiring");
        if (list is null)
        {
            Transition wiring = Transition.ByName(values.Word("wiring")!);
            if (wiring.IsFor(array.Face.Rows))
                return wiring.Pairs(array);
            string rows = array.IsOneRow ? "one row" : "two rows";
            faults.Add(new AttributeFault("wiring", $"{wiring.Name} is not defined for {rows} ({array.Words}): one of {string.Join(", ", Transition.NamesFor(array.Face.Rows))}, or pairs such as [[1, 2], [3, 4]]"));
            return null;
        }

        bool sound = WrittenPositions.Check(WrittenPositions.Of(list), "wiring", "position",
            p => array.Used.Contains(p) ? null : $"position {p} carries no fibre; a base-{array.Fibres} array uses {string.Join(", ", array.Used)}", faults);
        return sound ? list : null;
    }

    /// <summary>Joins the duplex ports to the array port.</summary>
    public static void Join(ShapeBuilder shape, int arrayPort, IReadOnlyList<int> duplexPorts, IReadOnlyList<DuplexPair> pairs)
    {
        for (int k = 0; k < pairs.Count; k++)
        {
            shape.Join(duplexPorts[k], 1, arrayPort, pairs[k].A);
            shape.Join(duplexPorts[k], 2, arrayPort, pairs[k].B);
        }
    }

    /// <summary>The wiring's name, or "own wiring" for a list.</summary>
    public static string Word(AttributeValues values) => values.WiringList("wiring") is null ? values.Word("wiring")! : "own wiring";
}
