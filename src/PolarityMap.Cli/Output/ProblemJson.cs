using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Output;

/// <summary>The problems of a document as JSON; the shape is in docs/json.md.</summary>
internal static class ProblemJson
{
    public static void Write(ProblemList problems, TextWriter output) => JsonText.Write(output, "polaritymap/problems", json =>
    {
        json.WriteNumber("count", problems.Count);
        json.WriteStartArray("problems");
        foreach (Problem problem in problems.Items)
        {
            json.WriteStartObject();
            JsonText.WritePlace(json, problem.Place);
            json.WriteString("message", problem.Message);
            json.WriteString("expected", problem.Expected);
            json.WriteString("suggestion", problem.Suggestion);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });
}
