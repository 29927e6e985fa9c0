using System.Globalization;
using System.Text;
using System.Text.Json;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Output;

/// <summary>
/// Findings as a log in the Static Analysis Results Interchange Format, version 2.1.0 (OASIS), for editors and build servers.
/// The problems of a document that cannot be read are results too, as those of a compiler are. A remedy is words and no edit of
/// the document, so no result claims a fix.
/// </summary>
internal static class SarifLog
{
    private const string Schema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    /// <summary>The rule that stands for whatever keeps a document from being read.</summary>
    private const string Unreadable = "unreadable";

    /// <summary>What was found in a plant.</summary>
    public static byte[] Bytes(CheckReport report) => Log(
        report.Errors > 0 ? ExitStatus.Findings : ExitStatus.Clean,
        json =>
        {
            foreach (Rule rule in RuleCatalogue.All)
                WriteRule(json, rule);
        },
        json => WriteFindings(json, report));

    /// <summary>Why a document could not be read.</summary>
    public static byte[] Bytes(ProblemList problems) => Log(
        ExitStatus.Wrong,
        json =>
        {
            json.WriteStartObject();
            json.WriteString("id", Unreadable);
            json.WriteString("name", "Unreadable");
            WriteText(json, "shortDescription", "The document cannot be read");
            WriteText(json, "fullDescription", "Nothing was traced or proven, because the document says something that the program cannot take.");
            WriteText(json, "help", "Put right what the message names. A document may have further problems that show when these are gone.");
            WriteLevel(json, Severity.Error);
            json.WriteEndObject();
        },
        json =>
        {
            var marks = new Fingerprints();
            foreach (Problem problem in problems.Items)
            {
                string message = problem.ToString()[(problem.Place.ToString().Length + 2)..];
                WriteResult(json, Unreadable, 0, Severity.Error, message, problem.Place, marks);
                json.WriteEndObject();
            }
        });

    private static byte[] Log(int status, Action<Utf8JsonWriter> rules, Action<Utf8JsonWriter> results) => JsonText.Bytes(json =>
    {
        json.WriteString("$schema", Schema);
        json.WriteString("version", "2.1.0");
        json.WriteStartArray("runs");
        json.WriteStartObject();
        json.WriteStartObject("tool");
        json.WriteStartObject("driver");
        json.WriteString("name", "PolarityMap");
        json.WriteString("semanticVersion", typeof(SarifLog).Assembly.GetName().Version!.ToString(3));
        json.WriteStartArray("rules");
        rules(json);
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteStartArray("invocations");
        json.WriteStartObject();
        json.WriteNumber("exitCode", status);
        json.WriteBoolean("executionSuccessful", status != ExitStatus.Wrong);
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteString("columnKind", "utf16CodeUnits");
        json.WriteStartArray("results");
        results(json);
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
    });

    private static void WriteRule(Utf8JsonWriter json, Rule rule)
    {
        json.WriteStartObject();
        json.WriteString("id", rule.Code);
        json.WriteString("name", Identifier(rule.Title));
        WriteText(json, "shortDescription", Sentence(rule.Title));
        WriteText(json, "fullDescription", rule.Why);
        WriteText(json, "help", $"{rule.Clears} 'polaritymap explain {rule.Code}' shows an example, the same repaired, and the source: {rule.Source}.");
        WriteLevel(json, rule.Severity);
        json.WriteStartObject("properties");
        json.WriteStartArray("tags");
        json.WriteStringValue(rule.Family);
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteFindings(Utf8JsonWriter json, CheckReport report)
    {
        var marks = new Fingerprints();
        foreach (Finding finding in report.Findings)
        {
            WriteResult(json, finding.Rule.Code, RuleIndex(finding.Rule), finding.Rule.Severity, $"{finding.Message}. Expected: {finding.Expected}. Actual: {finding.Actual}.", finding.Place, marks);
            if (finding.Related.Count > 0)
            {
                json.WriteStartArray("relatedLocations");
                for (int i = 0; i < finding.Related.Count; i++)
                {
                    json.WriteStartObject();
                    json.WriteNumber("id", i + 1);
                    WritePhysical(json, finding.Related[i]);
                    WriteText(json, "message", "This place has to do with it.");
                    json.WriteEndObject();
                }

                json.WriteEndArray();
            }

            json.WriteStartObject("properties");
            JsonText.WriteNumbers(json, "links", finding.Links);
            JsonText.WriteNumbers(json, "strands", finding.Strands.Select(report.Traced.NumberOf));
            json.WriteStartArray("remedies");
            foreach (Remedy remedy in finding.Remedies)
                json.WriteStringValue(remedy.Text);
            json.WriteEndArray();
            json.WriteEndObject();
            json.WriteEndObject();
        }
    }

    /// <summary>Begins a result and leaves it open for what only some have.</summary>
    private static void WriteResult(Utf8JsonWriter json, string rule, int index, Severity severity, string message, SourcePlace place, Fingerprints marks)
    {
        json.WriteStartObject();
        json.WriteString("ruleId", rule);
        json.WriteNumber("ruleIndex", index);
        json.WriteString("level", Level(severity));
        WriteText(json, "message", message);
        json.WriteStartArray("locations");
        json.WriteStartObject();
        WritePhysical(json, place);
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteStartObject("partialFingerprints");
        json.WriteString("ruleAndMessage/v1", marks.Of(rule, message));
        json.WriteEndObject();
    }

    private static void WritePhysical(Utf8JsonWriter json, SourcePlace place)
    {
        json.WriteStartObject("physicalLocation");
        json.WriteStartObject("artifactLocation");
        json.WriteString("uri", SarifUri.Of(place.File));
        json.WriteEndObject();
        if (place.Line > 0)
        {
            json.WriteStartObject("region");
            json.WriteNumber("startLine", place.Line);
            json.WriteNumber("startColumn", Math.Max(1, place.Column));
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteLevel(Utf8JsonWriter json, Severity severity)
    {
        json.WriteStartObject("defaultConfiguration");
        json.WriteString("level", Level(severity));
        json.WriteEndObject();
    }

    /// <summary>
    /// A text as it stands. The format reads braces as placeholders and a bracket with a parenthesis behind it as a link, so those
    /// of names are escaped as it asks.
    /// </summary>
    private static void WriteText(Utf8JsonWriter json, string name, string text)
    {
        text = text.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal);
        if (text.Contains("](", StringComparison.Ordinal))
            text = text.Replace("\\", @"\\", StringComparison.Ordinal).Replace("[", @"\[", StringComparison.Ordinal).Replace("]", @"\]", StringComparison.Ordinal);
        json.WriteStartObject(name);
        json.WriteString("text", text);
        json.WriteEndObject();
    }

    private static string Level(Severity severity) => severity == Severity.Error ? "error" : "warning";

    private static int RuleIndex(Rule rule)
    {
        for (int i = 0; i < RuleCatalogue.All.Count; i++)
        {
            if (RuleCatalogue.All[i] == rule)
                return i;
        }

        return -1;
    }

    private static string Sentence(string title) => char.ToUpper(title[0], CultureInfo.InvariantCulture) + title[1..];

    /// <summary>A title as one word, such as <c>TransmitMeetsTransmit</c>.</summary>
    private static string Identifier(string title)
    {
        var name = new StringBuilder();
        bool begins = true;
        foreach (char c in title)
        {
            if (char.IsAsciiLetterOrDigit(c))
                name.Append(begins ? char.ToUpperInvariant(c) : c);
            begins = !char.IsAsciiLetterOrDigit(c);
        }

        return name.ToString();
    }
}
