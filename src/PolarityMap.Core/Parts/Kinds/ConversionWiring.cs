namespace PolarityMap.Core.Parts.Kinds;

/// <summary>The wiring that conversion modules and harnesses have in common.</summary>
internal static class ConversionWiring
{
    public static AttributeSpec Spec { get; } =
        AttributeSpec.Choice("conversion", "From which wide array ports to which narrow ones.", Conversion.Names);

    public static AttributeSpec Type { get; } = AttributeSpec.Choice(
        "type",
        "Straight: narrow positions as the conversion lists them; reversed: each narrow port end for end, as a harness plugged straight into a parallel port needs.",
        ["straight", "reversed"],
        "straight");

    public static AttributeSpec Wiring { get; } = new(
        "wiring",
        AttributeSort.Conversion,
        "For each narrow port the wide positions behind its positions in order, instead of the conversion's own; 2:5 is position 5 of the second wide port, none is no fibre.");

    /// <summary>For each narrow port, by its used positions, the wide position behind it; null after a report.</summary>
    public static IReadOnlyList<IReadOnlyList<WidePosition>>? Rows(AttributeValues values, List<AttributeFault> faults)
    {
        Conversion conversion = Conversion.ByName(values.Word("conversion")!);
        if (values.ConversionList("wiring") is { } own)
            return Check(own, conversion, faults) ? own : null;
        return conversion.Rows();
    }

    /// <summary>Adds wide and narrow ports by their makers and joins them.</summary>
    public static void Join(ShapeBuilder shape, Conversion conversion, IReadOnlyList<int> wide, IReadOnlyList<int> narrow, IReadOnlyList<IReadOnlyList<WidePosition>> rows, bool reversed)
    {
        for (int port = 0; port < rows.Count; port++)
        {
            IReadOnlyList<int> used = ArrayBase.Of(conversion.Narrow[port]).Used;
            for (int i = 0; i < rows[port].Count; i++)
            {
                WidePosition behind = rows[port][i];
                if (behind.Port > 0)
                    shape.Join(narrow[port], used[reversed ? used.Count - 1 - i : i], wide[behind.Port - 1], behind.Position);
            }
        }
    }

    /// <summary>The conversion's name, or "own wiring" for a list.</summary>
    public static string Word(AttributeValues values) => values.ConversionList("wiring") is null ? values.Word("conversion")! : "own wiring";

    private static bool Check(IReadOnlyList<IReadOnlyList<WidePosition>> rows, Conversion conversion, List<AttributeFault> faults)
    {
        if (rows.Count != conversion.Narrow.Count)
        {
            faults.Add(new AttributeFault("wiring", $"the wiring has {rows.Count} narrow ports and {conversion.Name} has {conversion.Narrow.Count}"));
            return false;
        }

        int before = faults.Count;
        var seen = new HashSet<WidePosition>();
        for (int port = 0; port < rows.Count; port++)
        {
            int fibres = conversion.Narrow[port];
            if (rows[port].Count != fibres)
                faults.Add(new AttributeFault("wiring", $"narrow port {port + 1} carries {fibres} fibres and its list has {rows[port].Count}; write none where there is no fibre"));
            foreach (WidePosition wide in rows[port])
            {
                if (wide.Port == 0)
                    continue;
                if (wide.Port > conversion.Wide.Count)
                    faults.Add(new AttributeFault("wiring", $"there is no wide port {wide.Port}: {conversion.Name} has {conversion.Wide.Count}"));
                else if (!ArrayBase.Of(conversion.Wide[wide.Port - 1]).Used.Contains(wide.Position))
                    faults.Add(new AttributeFault("wiring", $"wide port {wide.Port} has no fibre at position {wide.Position}"));
                else if (!seen.Add(wide))
                    faults.Add(new AttributeFault("wiring", $"position {wide.Position} of wide port {wide.Port} is used twice"));
            }
        }

        return faults.Count == before;
    }
}
