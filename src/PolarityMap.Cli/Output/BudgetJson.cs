using System.Text.Json;
using PolarityMap.Core.Budget;
using PolarityMap.Core.Strands;

namespace PolarityMap.Cli.Output;

/// <summary>The budgets for programs; the shape is in docs/json.md.</summary>
internal static class BudgetJson
{
    public static void Write(BudgetReport report, TextWriter output) => JsonText.Write(output, "polaritymap/budget", json =>
    {
        json.WriteString("plant", report.Plant.Title.Title);
        json.WriteString("limits", report.Table.Limits.Name);
        json.WriteString("formula", LossSum.Formula);
        json.WriteString("verdict", report.Verdict());
        json.WriteNumber("exceeding", report.Exceeding);
        OpticsJson.Number(json, "askedMargin", report.Margin?.Value);
        json.WriteStartArray("links");
        foreach (BudgetRow row in report.Rows)
            WriteRow(json, report, row);
        json.WriteEndArray();
    });

    private static void WriteRow(Utf8JsonWriter json, BudgetReport report, BudgetRow row)
    {
        json.WriteStartObject();
        json.WriteString("from", report.Plant.Address(row.From));
        json.WriteString("to", report.Plant.Address(row.To));
        if (row.Link >= 0)
            json.WriteNumber("link", row.Link);
        else
            json.WriteNull("link");
        json.WriteBoolean("lit", row.Budget is not null);
        json.WriteBoolean("judged", row.Budget is { IsJudged: true });
        json.WriteBoolean("exceeds", row.Budget is { Exceeds: true });
        json.WriteBoolean("failsByStandard", row.Budget is { FailsByStandard: true });
        json.WriteString("verdict", BudgetReport.VerdictOf(row));
        json.WriteStartArray("strands");
        if (row.Budget is { } link)
        {
            foreach (StrandBudget strand in report.Told(link))
                WriteStrand(json, report, strand);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteStrand(Utf8JsonWriter json, BudgetReport report, StrandBudget strand)
    {
        TracedPlant traced = report.Table.Traced;
        json.WriteStartObject();
        json.WriteNumber("number", traced.NumberOf(strand.Strand));
        json.WriteString("from", traced.Address(strand.Sender));
        json.WriteString("to", traced.Address(strand.Receiver));
        json.WriteString("application", strand.Application?.Name);
        OpticsJson.Number(json, "wavelength", strand.Wavelength?.Nanometres);
        json.WriteBoolean("wavelengthIsAssumed", strand.WavelengthIsAssumed);
        json.WriteString("fibre", strand.Fibre?.Name);
        json.WriteNumber("fibresMissing", strand.FibresMissing);
        OpticsJson.Number(json, "length", OpticsJson.Metres(strand.Length));
        json.WriteNumber("lengthsMissing", strand.LengthsMissing);
        OpticsJson.Number(json, "distanceLimit", strand.DistanceLimit is { } distance ? OpticsJson.Metres(distance) : null);
        json.WriteNumber("matings", strand.Stated.MatingCount);
        json.WriteNumber("splices", strand.Stated.SpliceCount);
        WriteSum(json, "standard", strand.Standard);
        WriteSum(json, "stated", strand.Stated);
        WriteSum(json, "expected", strand.Expected);
        OpticsJson.Number(json, "limit", strand.LossLimit?.Value);
        OpticsJson.Number(json, "margin", strand.Margin?.Value);
        OpticsJson.Number(json, "delay", strand.Delay is { } delay ? Math.Round(delay.Nanoseconds, 1, MidpointRounding.AwayFromZero) : null);
        json.WriteString("verdict", BudgetWords.Verdict(strand));
        json.WriteStartArray("remarks");
        foreach (string remark in BudgetWords.Remarks(strand, report.Margin))
            json.WriteStringValue(remark);
        json.WriteEndArray();
        WriteAcceptance(json, traced, report.Table.Acceptance(strand));
        json.WriteEndObject();
    }

    private static void WriteSum(Utf8JsonWriter json, string name, LossSum sum)
    {
        json.WriteStartObject(name);
        OpticsJson.Number(json, "fibre", sum.Fibre.Value);
        OpticsJson.Number(json, "matings", sum.Matings.Value);
        OpticsJson.Number(json, "splices", sum.Splices.Value);
        OpticsJson.Number(json, "total", sum.Total.Value);
        json.WriteEndObject();
    }

    private static void WriteAcceptance(Utf8JsonWriter json, TracedPlant traced, AcceptanceLimit? acceptance)
    {
        if (acceptance is null)
        {
            json.WriteNull("acceptance");
            return;
        }

        json.WriteStartObject("acceptance");
        json.WriteString("from", traced.Address(acceptance.From));
        json.WriteString("to", traced.Address(acceptance.To));
        json.WriteBoolean("singleCord", acceptance.IsSingleCord);
        OpticsJson.Number(json, "length", OpticsJson.Metres(acceptance.Length));
        json.WriteString("method", acceptance.Method);
        OpticsJson.Number(json, "referencePlug", acceptance.ReferencePlug.Value);
        json.WriteStartArray("tests");
        foreach (TestLimit test in acceptance.Tests)
        {
            json.WriteStartObject();
            OpticsJson.Number(json, "wavelength", test.Wavelength.Nanometres);
            OpticsJson.Number(json, "limit", test.Limit.Value);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
