using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Remarks;

/// <summary>
/// Fibres of array connectors that no interface lights, and fibres that a part's own wiring leads nowhere. Spare legs are
/// left out, and so is a part none of whose fibres is in use, which rules of their own speak of.
/// </summary>
internal static class UnusedFibres
{
    public static void Add(CheckContext context, List<Remark> remarks)
    {
        // Parts of one description say the same: one remark for them all.
        var alike = new Dictionary<(string Words, SourcePlace Place), List<string>>();
        var dark = new List<int>();
        var nowhere = new List<int>();
        for (int index = 0; index < context.Plant.Parts.Count; index++)
        {
            Part part = context.Plant.Parts[index];
            if (part.Shape.IsInterface)
                continue;
            for (int p = 0; p < part.Shape.Ports.Count; p++)
            {
                PortShape port = part.Shape.Ports[p];

                // The two ends of a leg have the same fibres; where one side is narrower, each side has its own.
                if (port.Base == 0 || part.SpareLegs.Contains(port.Leg) || (port.Side == Side.Far && IsTwin(part.Shape, port)))
                    continue;
                if (Words(context, new PortRef(index, p), port, dark, nowhere) is not { } words)
                    continue;
                if (!alike.TryGetValue((words, part.Place), out List<string>? names))
                    alike[(words, part.Place)] = names = [];
                names.Add(port.Leg > 0 || part.Shape.Ports.Count(o => o.Base > 0) > 2 ? context.Plant.Address(new PortRef(index, p)) : part.Name);
            }
        }

        foreach (((string words, SourcePlace place), List<string> names) in alike)
        {
            string who = names.Count <= 2 ? string.Join(" and ", names) : $"{names[0]}, {names[1]} and {names.Count - 2} more";
            remarks.Add(new Remark($"{who}: {words}{(names.Count > 1 ? " each" : "")}", place));
        }
    }

    /// <summary>True when the leg's near end shows the same fibres.</summary>
    private static bool IsTwin(Shape shape, PortShape far)
    {
        if (!shape.IsCable)
            return false;
        foreach (PortShape port in shape.Ports)
        {
            if (port.Side == Side.Near && port.Leg == far.Leg && port.Base == far.Base)
                return true;
        }

        return false;
    }

    /// <summary>What to say of a port, or null. The lists are filled again for port after port.</summary>
    private static string? Words(CheckContext context, PortRef port, PortShape shape, List<int> dark, List<int> nowhere)
    {
        dark.Clear();
        nowhere.Clear();
        bool anyLit = false;
        int first = context.Traced.Graph.PositionOf(port, 1);
        foreach (int position in ArrayBase.Of(shape.Base).Used)
        {
            int p = first + position - 1;
            if (context.Traced.Graph.Inside[p] < 0)
                nowhere.Add(position);
            else if (context.Traced.IsActive(context.Traced.StrandOf(p)))
                anyLit = true;
            else
                dark.Add(position);
        }

        if (!anyLit || dark.Count + nowhere.Count == 0)
            return null;
        string text = "";
        if (dark.Count > 0)
            text = $"{dark.Count} of {shape.Base} fibres unused, at {Ranges(dark)}";
        if (nowhere.Count > 0)
            text += $"{(text.Length > 0 ? "; " : "")}{nowhere.Count} of {shape.Base} fibres lead nowhere, at {Ranges(nowhere)}";
        return text;
    }

    /// <summary>Ascending numbers with runs drawn together, such as <c>1, 5-8</c>.</summary>
    internal static string Ranges(IReadOnlyList<int> numbers)
    {
        var pieces = new List<string>();
        for (int i = 0; i < numbers.Count;)
        {
            int last = i;
            while (last + 1 < numbers.Count && numbers[last + 1] == numbers[last] + 1)
                last++;
            pieces.Add(last == i ? $"{numbers[i]}" : $"{numbers[i]}-{numbers[last]}");
            i = last + 1;
        }

        return string.Join(", ", pieces);
    }
}
