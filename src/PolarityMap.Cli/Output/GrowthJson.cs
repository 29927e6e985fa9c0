using System.Text.Json;
using PolarityMap.Core.Planning.Growth;
using PolarityMap.Core.Plants;

namespace PolarityMap.Cli.Output;

/// <summary>How a plant grows, for programs; the shape is in docs/json.md.</summary>
internal static class GrowthJson
{
    public static void Write(GrowthResult result, IReadOnlyList<string> written, TextWriter output) => JsonText.Write(output, "polaritymap/growth", json =>
    {
        json.WriteString("brief", result.Brief.Title.Title);
        json.WriteBoolean("met", result.IsMet);
        json.WriteString("reason", result.Reason);
        json.WriteStartObject("before");
        json.WriteString("verdict", result.Before.Verdict());
        WriteFibres(json, result.FibresBefore);
        WriteWords(json, "findings", result.Before.Findings.Select(f => $"{f.Rule.Code} {f.Message}"));
        json.WriteEndObject();
        json.WritePropertyName("after");
        if (result is { Difference: { } difference, After: { } after })
        {
            json.WriteStartObject();
            json.WriteString("method", result.Candidate!.Value.Method.Name);
            json.WriteNumber("base", result.Candidate.Value.Base);
            json.WriteString("verdict", after.Report!.Verdict());
            WriteFibres(json, result.FibresAfter);
            WriteDifference(json, result, difference);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNullValue();
        }

        WriteWords(json, "remarks", result.Remarks);
        json.WriteString("searched", GrowthWords.Searched);
        WriteWords(json, "cautions", GrowthWords.Cautions);
        WriteWords(json, "written", written);
    });

    private static void WriteDifference(Utf8JsonWriter json, GrowthResult result, GrowthDifference difference)
    {
        Plant old = result.Before.Traced.Plant;
        json.WriteStartArray("links");
        foreach (GrownLink link in difference.Links)
        {
            json.WriteStartObject();
            json.WriteString("name", link.Name);
            json.WriteString("asked", link.Asked);
            json.WriteBoolean("untouched", link.IsKept);
            WriteEnds(json, "before", link.Before < 0 ? null : [old.Address(old.Links[link.Before].From), old.Address(old.Links[link.Before].To)]);
            WriteEnds(json, "after", link.After is { } now ? [GrowthWords.Address(difference, now.From.Port), GrowthWords.Address(difference, now.To.Port)] : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("staying", difference.Staying);
        WriteLots(json, "added", difference, difference.Added);
        WriteLots(json, "moved", difference, difference.Moved);
        WriteLots(json, "takenOut", difference, difference.TakenOut);
        json.WriteStartArray("changed");
        foreach (Exchange exchange in difference.Exchanged)
        {
            json.WriteStartObject();
            json.WriteString("old", difference.Parts[exchange.Old].Name);
            json.WriteString("new", difference.Parts[exchange.New].Name);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteWords(json, "relabelled", difference.Relabelled.Select(p => difference.Parts[p].Name));
        json.WriteStartArray("labels");
        foreach (int cord in difference.Moved.Where(p => difference.Parts[p] is { IsInline: true } part && part.Shape.IsCable))
        {
            json.WriteStartObject();
            json.WriteString("old", difference.Parts[cord].Name);
            json.WriteString("new", GrowthWords.Label(difference, cord));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("darkLinkSteps", result.DarkLinkSteps);
        json.WriteStartArray("steps");
        foreach (GrowthStep step in result.Steps)
            WriteStep(json, difference, step);
        json.WriteEndArray();
    }

    private static void WriteStep(Utf8JsonWriter json, GrowthDifference difference, GrowthStep step)
    {
        json.WriteStartObject();
        json.WriteNumber("number", step.Number);
        json.WriteString("kind", step.Kind switch { StepKind.Add => "add", StepKind.CutOver => "cut-over", _ => "clear" });
        json.WriteString("title", GrowthWords.Title(difference, step));
        WriteJoints(json, "heldMeanwhile", difference, step.Held);
        WriteJoints(json, "unplug", difference, step.Opened);
        WriteWords(json, "partsOut", step.PartsOut.Select(p => difference.Parts[p].Name));
        WriteWords(json, "partsIn", step.PartsIn.Select(p => difference.Parts[p].Name));
        WriteJoints(json, "plugIn", difference, step.Made);
        WriteJoints(json, "thenUnplug", difference, step.Cleared);
        WriteWords(json, "dark", step.Dark.Select(l => difference.Links[l].Name));
        WriteWords(json, "ended", step.Ended.Select(l => difference.Links[l].Name));
        WriteWords(json, "up", step.Up.Select(l => difference.Links[l].Name));
        json.WriteNumber("live", step.Live.Count);
        json.WriteNumber("proven", step.Proven);
        WriteWords(json, "errors", step.Errors);
        json.WriteEndObject();
    }

    private static void WriteJoints(Utf8JsonWriter json, string name, GrowthDifference difference, IEnumerable<Joint> joints)
    {
        json.WriteStartArray(name);
        foreach (Joint joint in joints)
        {
            json.WriteStartObject();
            json.WriteString("a", GrowthWords.Address(difference, joint.A));
            json.WriteString("b", joint.IsOpen ? null : GrowthWords.Address(difference, joint.B));
            json.WriteString("adapter", joint.Through is { } adapter ? GrowthWords.Address(difference, adapter) : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteLots(Utf8JsonWriter json, string name, GrowthDifference difference, IReadOnlyList<int> parts)
    {
        json.WriteStartArray(name);
        foreach (GrowthLot lot in GrowthParts.Lots(difference, parts))
        {
            json.WriteStartObject();
            json.WriteNumber("quantity", lot.Parts.Count);
            json.WriteString("what", lot.What);
            json.WriteNumber("fibres", lot.Fibres);
            if (lot.Length is { } length)
                json.WriteNumber("length", length.Millimetres / 1000m);
            else
                json.WriteNull("length");
            json.WriteString("network", lot.Network);
            WriteWords(json, "names", lot.Parts.Select(p => difference.Parts[p].Name));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteEnds(Utf8JsonWriter json, string name, string[]? ends)
    {
        if (ends is null)
            json.WriteNull(name);
        else
            WriteWords(json, name, ends);
    }

    private static void WriteFibres(Utf8JsonWriter json, FibreCount fibres)
    {
        json.WriteNumber("fibresUsed", fibres.Used);
        json.WriteNumber("fibresIdle", fibres.Idle);
    }

    private static void WriteWords(Utf8JsonWriter json, string name, IEnumerable<string> words)
    {
        json.WriteStartArray(name);
        foreach (string word in words)
            json.WriteStringValue(word);
        json.WriteEndArray();
    }
}
