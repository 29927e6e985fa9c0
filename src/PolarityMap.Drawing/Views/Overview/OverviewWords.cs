using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>What the boxes and lines of an overview say.</summary>
internal sealed class OverviewWords(TracedPlant traced)
{
    /// <summary>A blank at which no line is broken.</summary>
    private const char Fixed = '\u00A0';

    /// <summary>The widest lines of text about a network.</summary>
    private const double NetworkWidth = 28;

    private readonly Plant _plant = traced.Plant;

    private readonly Dictionary<BoxGroup, (string Names, IReadOnlyList<string> Lines)> _ofBox = [];
    private readonly Dictionary<LineGroup, (string Names, IReadOnlyList<string> Lines)> _ofLine = [];

    /// <summary>The names of the parts of a box, empty for a joint or an end; and what it stands for.</summary>
    public (string Names, IReadOnlyList<string> Lines) Of(BoxGroup box)
    {
        if (!_ofBox.TryGetValue(box, out (string Names, IReadOnlyList<string> Lines) words))
            _ofBox[box] = words = (Names(box), [.. Lines(box)]);
        return words;
    }

    /// <summary>The names of the cables of a line, without those that have none of their own; and what it stands for.</summary>
    public (string Names, IReadOnlyList<string> Lines) Of(LineGroup line)
    {
        if (!_ofLine.TryGetValue(line, out (string Names, IReadOnlyList<string> Lines) words))
            _ofLine[line] = words = (Names(line), [.. Lines(line)]);
        return words;
    }

    /// <summary>The words of a box in one line, for those who hear it.</summary>
    public string Spoken(BoxGroup box) => Spoken(Of(box));

    /// <summary>The words of a line in one line, and what it joins.</summary>
    public string Spoken(LineGroup line)
    {
        string fibres = Fibres(line) switch { "" => "", "1" => ", 1 fibre in use of each", var n => $", {n} fibres in use of each" };
        return $"{Spoken(Of(line))}{fibres}, from {Short(line.From)} to {Short(line.To)}";
    }

    private static string Spoken((string Names, IReadOnlyList<string> Lines) words) =>
        (words.Names.Length > 0 ? words.Names + ", " : "") + string.Join(", ", words.Lines);

    private string Short(BoxGroup box) => Of(box) is { Names.Length: > 0 } words ? words.Names : Of(box).Lines[0];

    private string Names(BoxGroup box) => box.Sort != BoxSort.Part ? "" : NameRange.Of([.. box.Parts.Select(p => _plant.Parts[p].Name)]) + (box.IsAgain ? " (again)" : "");

    /// <summary>What a box stands for and how many strands pass it, in lines.</summary>
    private IEnumerable<string> Lines(BoxGroup box)
    {
        Part part = _plant.Parts[box.Parts[0]];
        int count = box.Parts.Count;
        yield return box.Sort switch
        {
            BoxSort.Joint => Times(count, "cable to cable"),
            BoxSort.OpenEnd => Counted(count, "open end"),
            BoxSort.Refused => Counted(count, "end") + " not joined",
            BoxSort.NoFibre => "no fibre here",
            BoxSort.Loop => "closes on itself",
            _ => Times(count, Caption(part)),
        };
        if (box.Sort == BoxSort.Part && part.Room is { Length: > 0 } room)
            yield return "+" + room;
        yield return Counted(box.Strands, "strand");
        if (box.Sort == BoxSort.Part && !part.Shape.IsInterface && box.Ends > 0)
            yield return Counted(box.Ends, "strand") + (box.Ends == 1 ? " ends here" : " end here");
        if (box.Networks.Count > 1)
            yield return $"{box.Networks.Count} networks share {(count == 1 ? "this" : "these")}";
    }

    private string Names(LineGroup line) => NameRange.Of([.. line.Cables.Where(c => !_plant.Parts[c.Part].IsInline).Select(c => _plant.Parts[c.Part].Name)]);

    /// <summary>What a line stands for, in lines: number, kind and length; the legs left over.</summary>
    private IEnumerable<string> Lines(LineGroup line)
    {
        if (line.Cables.Count == 0)
        {
            yield return "without a cable";
            yield return Counted(line.Strands, "strand");
            yield break;
        }

        Part sample = _plant.Parts[line.Cables[0].Part];
        string what = Caption(sample) + Lengths(line);
        int legs = 0;
        foreach (CableUse use in line.Cables)
            legs += System.Numerics.BitOperations.PopCount(use.Legs);
        string cables = Times(line.Cables.Count, what);
        yield return legs == 0 ? cables : $"{Counted(legs, "leg")} of {cables}";
        (int spare, int unused) = LegsLeft(line);
        if (spare > 0)
            yield return Counted(spare, "leg") + " spare";
        if (unused > 0)
            yield return Counted(unused, "leg") + " unused";
        if (line.Networks.Count > 1)
            yield return $"{line.Networks.Count} networks";
    }

    /// <summary>The number beside the slash: fibres in use of each cable, the least and the most where they differ.</summary>
    public static string Fibres(LineGroup line)
    {
        int least = int.MaxValue, most = 0;
        foreach (CableUse use in line.Cables)
        {
            least = Math.Min(least, use.Fibres);
            most = Math.Max(most, use.Fibres);
        }

        return line.Cables.Count == 0 ? "" : least == most ? $"{most}" : $"{least}\u2026{most}";
    }

    /// <summary>A network's name, its colour word, and how many of the chosen strands are of it.</summary>
    public TextBlock Network(int network, int strands)
    {
        Network of = _plant.Networks[network];
        IReadOnlyList<string> lines = of.Colour is { Length: > 0 } colour ? [colour, Counted(strands, "strand")] : [Counted(strands, "strand")];
        return new TextBlock((of.Name, lines), NetworkWidth, isLow: false);
    }

    /// <summary>What a part is, such as <c>cassette U1</c>.</summary>
    public static string Caption(Part part) => string.Join(' ', part.Caption);

    /// <summary>A number and a noun, of one or several, such as <c>16 strands</c>.</summary>
    public static string Counted(int count, string noun) => $"{count}{Fixed}{noun}{(count == 1 ? "" : "s")}";

    /// <summary>A length with a blank at which no line is broken.</summary>
    public static string Of(Length length) => length.ToString().Replace(' ', Fixed);

    private static string Times(int count, string what) => count == 1 ? what : $"{count}{Fixed}x{Fixed}{what}";

    private string Lengths(LineGroup line)
    {
        Length? least = null, most = null;
        foreach (CableUse use in line.Cables)
        {
            if (_plant.Parts[use.Part].Length is not { } length)
                continue;
            least = least is { } l && l < length ? l : length;
            most = most is { } m && m > length ? m : length;
        }

        return least is not { } from || most is not { } to ? "" : from == to ? $" {Of(to)}" : $" {Of(from)} to {Of(to)}";
    }

    /// <summary>Legs of a line's cables that no light is on: left over on purpose, and otherwise.</summary>
    private (int Spare, int Unused) LegsLeft(LineGroup line)
    {
        int spare = 0, unused = 0;
        foreach (CableUse use in line.Cables)
        {
            if (use.Legs == 0)
                continue;
            Part part = _plant.Parts[use.Part];
            ulong dark = DarkLegs(use.Part, part.Shape, use.Legs);
            for (int leg = 1; dark != 0; leg++, dark >>= 1)
            {
                if ((dark & 1) == 0)
                    continue;
                if (part.SpareLegs.Contains(leg))
                    spare++;
                else
                    unused++;
            }
        }

        return (spare, unused);
    }

    private ulong DarkLegs(int part, Shape shape, ulong used)
    {
        ulong all = 0, lit = used;
        for (int i = 0; i < shape.Ports.Count; i++)
        {
            int leg = shape.Ports[i].Leg;
            if (leg == 0)
                continue;
            ulong bit = 1UL << (leg - 1);
            all |= bit;
            if ((lit & bit) != 0)
                continue;
            int first = traced.Graph.PositionOf(new PortRef(part, i), 1);
            for (int k = 0; k < shape.Ports[i].PositionCount; k++)
            {
                if (traced.IsActive(traced.StrandOf(first + k)))
                {
                    lit |= bit;
                    break;
                }
            }
        }

        return all & ~lit;
    }
}
