using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Where on a sheet the place of a finding is.</summary>
internal enum FaultSpot
{
    /// <summary>In the box of a part, where the strand enters it.</summary>
    Box,

    /// <summary>At a mating: in the gutter, before the box at its right.</summary>
    Gutter,

    /// <summary>At an array mating between large boxes: above the word of its keys, since it is about all its strands.</summary>
    Keys,

    /// <summary>At an open end that the strand begins with.</summary>
    Start,
}

/// <summary>The sign of a finding on a strand, at the part or mating that it is about.</summary>
/// <param name="Finding">The finding.</param>
/// <param name="Way">The strand.</param>
/// <param name="Row">Its row beside the sign.</param>
/// <param name="Spot">What is at fault there.</param>
/// <param name="Column">The column of the row.</param>
/// <param name="AtLeft">True where the row is at the left edge of its box.</param>
internal readonly record struct FaultSign(Finding Finding, Way Way, Row Row, FaultSpot Spot, int Column, bool AtLeft)
{
    private readonly string? _code;

    /// <summary>The finding's code; of suspects and tests at one place all their codes.</summary>
    public string Code
    {
        get => _code ?? Finding.Rule.Code;
        init => _code = value;
    }

    /// <summary>Room for the sign and its code, with a little strand at each side.</summary>
    /// <param name="isTight">True where room is short.</param>
    public double Room(bool isTight) =>
        Measures.Tenths(Lead + Size + Lead + (!HasCode(isTight) ? 0.4 : CodeLead + SheetText.Width(Code) + Underlay.Paper.MarginMm));

    /// <summary>True for a code beside the sign: where room is short only at suspects and tests, which are nothing without it.</summary>
    public bool HasCode(bool isTight) => !isTight || Finding.Rule.Severity == Severity.Note;

    /// <summary>Room for the sign alone, at an open end.</summary>
    public const double StartRoom = 7;

    public const double Size = 4;

    /// <summary>Height above a connector up to which the word of its keys and the sign above it reach.</summary>
    public const double AboveKeys = 9.4;

    public const double Lead = 0.6;

    /// <summary>From the sign to its code.</summary>
    public const double CodeLead = 0.8;
}

/// <summary>Finds where on a layout the signs of findings stand, beside those at the far ends of strands.</summary>
internal static class FaultSigns
{
    public static List<FaultSign> Of(ViewInput input, Layout layout)
    {
        var signs = new List<FaultSign>();
        Finding[] located = [.. input.Findings.Where(f => f.At.Count > 0 && f.Strands.Count > 0)];
        if (located.Length == 0)
            return signs;
        Dictionary<int, Finding> first = StrandsPainter.FindingByStrand(input.Findings);
        (Finding Finding, HashSet<int> Strands)[] onStrands = [.. located.Select(f => (f, f.Strands.ToHashSet()))];

        // Of several findings at one place the first has the sign; all are told at the foot. A test at a suspect is told by both codes.
        var taken = new Dictionary<(Row, FaultSpot), int>();
        foreach (Way way in layout.Ways)
        {
            foreach ((Finding finding, HashSet<int> strands) in onStrands)
            {
                if (!strands.Contains(way.Strand))
                    continue;
                foreach (FaultSign sign in Along(way, finding, ReferenceEquals(first.GetValueOrDefault(way.Strand), finding)))
                {
                    if (taken.TryAdd((sign.Row, sign.Spot), signs.Count))
                        signs.Add(sign);
                    else
                        Join(signs, taken[(sign.Row, sign.Spot)], finding);
                }
            }
        }

        // At a plug of many fibres the topmost of them speaks for all, and of several findings the first.
        var top = new Dictionary<PortRef, FaultSign>();
        foreach (FaultSign sign in signs.Where(s => s.Spot == FaultSpot.Keys))
        {
            if (!top.TryGetValue(sign.Row.Port.Ref, out FaultSign at) || (sign.Finding == at.Finding && sign.Row.Slot < at.Row.Slot))
                top[sign.Row.Port.Ref] = sign;
        }

        signs.RemoveAll(s => s.Spot == FaultSpot.Keys && top[s.Row.Port.Ref] != s);
        return signs;
    }

    private static void Join(List<FaultSign> signs, int at, Finding further)
    {
        FaultSign sign = signs[at];
        if (sign.Finding.Rule.Severity == Severity.Note && further.Rule.Severity == Severity.Note && !sign.Code.Split(' ').Contains(further.Rule.Code))
            signs[at] = sign with { Code = $"{sign.Code} {further.Rule.Code}" };
    }

    /// <summary>Room that signs take inside the boxes of a column, at one side.</summary>
    public static double RoomInBox(Layout layout, int column, bool left, bool isTight) => Room(layout, isTight, s => s.Spot == FaultSpot.Box && s.Column == column && s.AtLeft == left);

    /// <summary>Room that signs take in the gutter before a column.</summary>
    public static double RoomBefore(Layout layout, int column, bool isTight) => Room(layout, isTight, s => s.Spot == FaultSpot.Gutter && s.Column == column);

    /// <summary>Room for signs at open ends before a column.</summary>
    public static double RoomAtStarts(Layout layout, int column) => layout.Faults.Any(s => s.Spot == FaultSpot.Start && s.Column == column) ? FaultSign.StartRoom : 0;

    private static double Room(Layout layout, bool isTight, Func<FaultSign, bool> isHere) => layout.Faults.Where(isHere).Select(s => s.Room(isTight)).DefaultIfEmpty(0).Max();

    /// <summary>The signs along a strand; what its far end shows already is left out.</summary>
    private static IEnumerable<FaultSign> Along(Way way, Finding finding, bool isAtFarEnd)
    {
        for (int i = 0; i < way.Passages.Count; i++)
        {
            int column = way.FirstColumn + i;
            Passage passage = way.Passages[i];
            bool isLast = i + 1 == way.Passages.Count;
            if (i == 0 && passage.In is { Position: >= 0 } start && !way.ComesIn && finding.At.Any(s => s.Port == start.Port.Ref || s.Meets == start.Port.Ref))
                yield return new FaultSign(finding, way, start, FaultSpot.Start, column, true);
            bool showsAtEnd = isLast && isAtFarEnd && passage.Out is null;
            if (passage.Node is { } box && !showsAtEnd && finding.At.Any(s => s.Port is null && s.Part == box.Part))
                yield return new FaultSign(finding, way, passage.In ?? passage.Out!, FaultSpot.Box, column, passage.In is not null);
            if (!isLast && passage.Out is { Position: >= 0 } from && way.Passages[i + 1].In is { Position: >= 0 } to && finding.At.Any(s => IsBetween(s, from, to)))
            {
                bool isOfAll = to.Port.IsArray && from.Mating?.Through is null && passage.Node is { NameInside: false } && way.Passages[i + 1].Node is { NameInside: false };
                yield return new FaultSign(finding, way, to, isOfAll ? FaultSpot.Keys : FaultSpot.Gutter, column + 1, true);
            }
        }
    }

    /// <summary>True for the mating of two rows, one of its ports, and the panel whose adapter it is in.</summary>
    private static bool IsBetween(FindingSite site, Row from, Row to)
    {
        PortRef? adapter = from.Mating?.Through;
        if (site.Port is not { } port)
            return adapter is { } panel && panel.Part == site.Part;
        return IsOf(port) && (site.Meets is not { } other || IsOf(other));

        bool IsOf(PortRef at) => at == from.Port.Ref || at == to.Port.Ref || at == adapter;
    }
}
