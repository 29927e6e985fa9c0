using PolarityMap.Core.Schedules;
using PolarityMap.Core.Schedules.Kinds;

namespace PolarityMap.Core.Planning;

/// <summary>The parts that a plan takes, as the parts list of its plant has them.</summary>
public static class PlanParts
{
    /// <summary>The parts list of a plan.</summary>
    /// <exception cref="ArgumentException">The proof has no plant.</exception>
    public static Schedule Of(PlanProof proof) => proof.Report is { } report
        ? new PartsList().Of(new ScheduleInput(report.Traced, report.Context))
        : throw new ArgumentException("nothing was built", nameof(proof));

    /// <summary>The list in short lines, such as <c>16 A-to-B cord, 2 m each, lighting</c>.</summary>
    public static IReadOnlyList<string> Lines(Schedule parts)
    {
        int description = Column(parts, "description"), quantity = Column(parts, "quantity"), type = Column(parts, "type"), kind = Column(parts, "kind"), fibres = Column(parts, "fibres");
        int length = Column(parts, "length"), networks = Column(parts, "networks"), names = Column(parts, "names");
        var lines = new List<string>();
        foreach (IReadOnlyList<Cell> row in parts.Rows)
        {
            string what = row[kind].Text is { } k && row[type].Text is { } t && t.Contains(k.Split(' ')[^1], StringComparison.Ordinal) ? t : $"{row[type].Text} {row[kind].Text}";
            string much = row[fibres].Number is { } f ? $", {Number(f)} fibres" : "";
            string many = row[length].Number is { } m ? $", {Number(m)} m each{Feet(m)}" : "";
            string who = row[networks].Text is { } n ? $", {n}" : "";
            lines.Add($"{Number(row[quantity].Number ?? 0)} x {what}{much}{Connectors(row[description].Text ?? "", row[kind].Text ?? "")}{many}{who}{(row[names].Text is { } name ? $": {name}" : "")}");
        }

        return lines;
    }

    /// <summary>What has to be said to a maker of ports, legs and array connectors, such as <c>, 24 legs of 12, angled, with pins</c>.</summary>
    private static string Connectors(string description, string kind)
    {
        string Of(string attribute) => PartFacts.Attribute(description, attribute) ?? "";
        string legs = Of("legs") is { Length: > 0 } n && n != "1" && Of("base") is { Length: > 0 } each ? $", {n} legs of {each}" : "";
        string ports = Of("ports") is { Length: > 0 } p && p != "1" ? $" of {p} ports" : "";
        string face = Of("polish") is { Length: > 0 } near ? $", {(Of("far-polish") is { Length: > 0 } far && far != near ? $"{near} near and {far} far" : near)}" : "";
        string pins = Of("pins") switch
        {
            "none" or "unpinned" => ", no pins",
            "both" or "pinned" => ", with pins",
            "near" => ", pins at the near end",
            "far" => ", pins at the far end",
            _ => "",
        };
        return kind.EndsWith("interface", StringComparison.Ordinal) ? ports : ports + legs + face + pins;
    }

    /// <summary>Whole or half feet, where a length is these to the millimetre and no round number of centimetres.</summary>
    private static string Feet(decimal metres)
    {
        const decimal half = 0.1524m;
        decimal halves = Math.Round(metres / half);
        return metres * 100 % 1 != 0 && halves > 0 && Math.Abs(metres - (halves * half)) <= 0.0005m ? $" ({Number(halves / 2)} ft)" : "";
    }

    private static int Column(Schedule parts, string key)
    {
        for (int i = 0; i < parts.Columns.Count; i++)
        {
            if (parts.Columns[i].Key == key)
                return i;
        }

        throw new InvalidOperationException($"the parts list has no column '{key}'");
    }

    private static string Number(decimal number) => number.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
}
