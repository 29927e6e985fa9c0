namespace PolarityMap.Core.Parts.Kinds;

/// <summary>What array cords and trunks have in common: legs of one array connector at each end.</summary>
internal static class ArrayCable
{
    public static AttributeSpec Type { get; } = AttributeSpec.OptionalChoice(
        "type",
        "How the two ends are joined. One row: Type-A straight, Type-B reversed, Type-C pair-flipped. Two rows: by what the map does.",
        ArrayMap.Names);

    public static AttributeSpec Wiring { get; } =
        new("wiring", AttributeSort.Pairs, "The near and far positions joined, instead of a type, such as [[1, 12], [2, 11]].") { InsteadOf = "type" };

    public static AttributeSpec Base { get; } =
        AttributeSpec.OneOf("base", "Fibres in the connector; 8 fibres use positions 1-4 and 9-12 of 12.", ArrayBase.Sizes, 12);

    public static Shape? Build(AttributeValues values, int legs, bool pinnedByDefault, List<AttributeFault> faults)
    {
        ArrayBase array = ArrayBase.Of(values.WholeNumber("base"));
        if (Joins(values, array, faults) is not { } joins)
            return null;
        var shape = new ShapeBuilder();
        string pins = values.Word("pins") ?? (pinnedByDefault ? "both" : "none");
        for (int leg = 1; leg <= legs; leg++)
        {
            string suffix = legs == 1 ? "" : $"{leg}";
            int number = legs == 1 ? 0 : leg;
            int near = shape.AddPort(Connectors.Array("near" + suffix, array, Side.Near, values, Connectors.Names(pins, Side.Near)) with { Leg = number });
            int far = shape.AddPort(Connectors.Array("far" + suffix, array, Side.Far, values, Connectors.Names(pins, Side.Far)) with { Leg = number });
            foreach (DuplexPair join in joins)
                shape.Join(near, join.A, far, join.B);
        }

        return shape.Build(isCable: true);
    }

    /// <summary>The type's name, or "own wiring" for a list.</summary>
    public static string Word(AttributeValues values) => values.WiringList("wiring") is null ? values.Word("type") ?? "no type" : "own wiring";

    private static IReadOnlyList<DuplexPair>? Joins(AttributeValues values, ArrayBase array, List<AttributeFault> faults)
    {
        if (values.WiringList("wiring") is { } list)
            return CheckedPairs(list, array.Used, array.Used, $"a base-{array.Fibres} array", faults) ? list : null;
        if (values.Word("type") is not { } type)
        {
            faults.Add(new AttributeFault("type", $"the cable needs a type or a wiring: one of {string.Join(", ", ArrayMap.NamesFor(array.Face.Rows))}, or pairs such as [[1, 12], [2, 11]]"));
            return null;
        }

        ArrayMap map = ArrayMap.ByName(type);
        if (map.Rows == array.Face.Rows)
            return [.. array.Used.Select(p => new DuplexPair(p, map.Far(p, array.Face)))];
        string rows = array.IsOneRow ? "one row" : "two rows";
        string why = array.IsOneRow ? "" : "; the letters are read differently for two rows, so say what the cable does";
        faults.Add(new AttributeFault("type", $"{type} is not defined for {rows} ({array.Words}){why}: one of {string.Join(", ", ArrayMap.NamesFor(array.Face.Rows))}"));
        return null;
    }

    /// <summary>Checks that a list of pairs uses places that carry fibres, each once.</summary>
    public static bool CheckedPairs(IReadOnlyList<DuplexPair> list, IReadOnlyList<int> firsts, IReadOnlyList<int> seconds, string what, List<AttributeFault> faults)
    {
        int before = faults.Count;
        var seenFirst = new HashSet<int>();
        var seenSecond = new HashSet<int>();
        foreach (DuplexPair pair in list)
        {
            Check(pair.A, firsts, seenFirst);
            Check(pair.B, seconds, seenSecond);
        }

        return faults.Count == before;

        // A splice of very many fibres has a short message all the same.
        static string Words(IReadOnlyList<int> used) =>
            used[^1] - used[0] == used.Count - 1 ? $"{used[0]} to {used[^1]}" : string.Join(", ", used);

        void Check(int position, IReadOnlyList<int> allowed, HashSet<int> seen)
        {
            if (!allowed.Contains(position))
                faults.Add(new AttributeFault("wiring", $"position {position} carries no fibre; {what} uses {Words(allowed)}"));
            else if (!seen.Add(position))
                faults.Add(new AttributeFault("wiring", $"position {position} is used twice"));
        }
    }
}
