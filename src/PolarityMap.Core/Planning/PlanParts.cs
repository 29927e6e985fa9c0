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
        int quantity = Column(parts, "quantity"), type = Column(parts, "type"), kind = Column(parts, "kind"), fibres = Column(parts, "fibres");
        int length = Column(parts, "length"), networks = Column(parts, "networks"), names = Column(parts, "names");
        var lines = new List<string>();
        foreach (IReadOnlyList<Cell> row in parts.Rows)
        {
            string what = row[kind].Text is { } k && row[type].Text is { } t && t.Contains(k.Split(' ')[^1], StringComparison.Ordinal) ? t : $"{row[type].Text} {row[kind].Text}";
            string much = row[fibres].Number is { } f ? $", {Number(f)} fibres" : "";
            string many = row[length].Number is { } m ? $", {Number(m)} m each" : "";
            string who = row[networks].Text is { } n ? $", {n}" : "";
            lines.Add($"{Number(row[quantity].Number ?? 0)} x {what}{much}{many}{who}{(row[names].Text is { } name ? $": {name}" : "")}");
        }

        return lines;
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
