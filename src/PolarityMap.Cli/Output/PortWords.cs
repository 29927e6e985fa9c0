using PolarityMap.Core.Optics;

namespace PolarityMap.Cli.Output;

/// <summary>The positions of an interface's port in words.</summary>
internal static class PortWords
{
    public static string Face(PortForm form) => form switch
    {
        PortForm.Simplex => "simplex",
        PortForm.Duplex => "duplex",
        PortForm.Array24 => "array of two rows of 12",
        PortForm.Array32 => "array of two rows of 16",
        _ => $"array of {form.Positions()}",
    };

    /// <summary>What happens at which positions, such as <c>transmit</c> at <c>1-4</c>; each receptacle on its own.</summary>
    public static IEnumerable<(string Word, string Positions)> Uses(PortLayout layout)
    {
        for (int receptacle = 0; receptacle < layout.Receptacles; receptacle++)
        {
            LaneSpec[] lanes = [.. layout.Lanes.Where(l => l.Receptacle == receptacle)];
            string prefix = layout.Receptacles == 1 ? "" : $"receptacle {receptacle + 1}: ";
            foreach (IGrouping<LaneUse, LaneSpec> use in lanes.GroupBy(l => l.Use))
            {
                // Two-way positions differ by the wavelength that they send.
                foreach (IGrouping<Wavelength?, LaneSpec> same in use.GroupBy(l => use.Key == LaneUse.Both ? l.Transmit : null))
                {
                    LaneSpec first = same.First();
                    string light = use.Key == LaneUse.Both ? $", sending {first.Transmit} and hearing {first.Receive}" : "";
                    yield return (Word(use.Key), prefix + Ranges(layout.Form, [.. same.Select(l => l.Position)]) + light);
                }
            }

            if (layout.Form.IsArray() && layout.Form.Positions() > lanes.Length)
                yield return ("unused", prefix + Ranges(layout.Form, [.. Enumerable.Range(1, layout.Form.Positions()).Except(lanes.Select(l => l.Position))]));
        }
    }

    private static string Word(LaneUse use) => use switch { LaneUse.Transmit => "transmit", LaneUse.Receive => "receive", _ => "both ways" };

    /// <summary>Positions in rising order, neighbours as a range: <c>1-4</c>, <c>1, 2, 11-14</c>; A and B of a duplex port.</summary>
    private static string Ranges(PortForm form, int[] positions)
    {
        if (form == PortForm.Simplex)
            return "its one fibre";
        Array.Sort(positions);
        if (form == PortForm.Duplex)
            return string.Join(", ", positions.Select(p => p == 1 ? "A" : "B"));
        var words = new List<string>();
        for (int i = 0, j; i < positions.Length; i = j)
        {
            for (j = i + 1; j < positions.Length && positions[j] == positions[j - 1] + 1; j++)
            {
            }

            words.Add(j - i == 1 ? $"{positions[i]}" : $"{positions[i]}-{positions[j - 1]}");
        }

        return string.Join(", ", words);
    }
}
