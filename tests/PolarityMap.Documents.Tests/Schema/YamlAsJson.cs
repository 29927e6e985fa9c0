using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Tests.Schema;

/// <summary>
/// A document as an editor hands it to a schema: plain scalars resolved by the core schema of YAML 1.2.2, section 10.3.2,
/// whose expressions are used as they stand there (from memory).
/// </summary>
internal static partial class YamlAsJson
{
    /// <summary>The document, or null when it is no YAML that is read here.</summary>
    public static JsonElement? Convert(string text)
    {
        var problems = new ProblemList();
        YamlNode? root = YamlReader.Read(text, "p", problems);
        return root is null || !problems.IsEmpty ? null : JsonSerializer.SerializeToElement(Node(root));
    }

    private static JsonNode? Node(YamlNode node) => node switch
    {
        YamlMapping mapping => new JsonObject(mapping.Entries.Select(e => KeyValuePair.Create(e.Key.Value, Node(e.Value)))),
        YamlSequence sequence => new JsonArray([.. sequence.Items.Select(Node)]),
        YamlScalar { Style: YamlScalarStyle.Plain } plain => Plain(plain.Value),
        YamlScalar other => JsonValue.Create(other.Value),
        _ => throw new InvalidOperationException("unknown kind of node"),
    };

    private static JsonNode? Plain(string value)
    {
        if (Null().IsMatch(value))
            return null;
        if (Boolean().IsMatch(value))
            return JsonValue.Create(value[0] is 't' or 'T');
        if (Octal().IsMatch(value))
            return JsonValue.Create(System.Convert.ToInt64(value[2..], 8));
        if (Hexadecimal().IsMatch(value))
            return JsonValue.Create(System.Convert.ToInt64(value[2..], 16));
        return Number().IsMatch(value) && decimal.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal number)
            ? JsonValue.Create(number)
            : JsonValue.Create(value);
    }

    [GeneratedRegex(@"\A(null|Null|NULL|~|)\z")]
    private static partial Regex Null();

    [GeneratedRegex(@"\A(true|True|TRUE|false|False|FALSE)\z")]
    private static partial Regex Boolean();

    [GeneratedRegex(@"\A0o[0-7]{1,15}\z")]
    private static partial Regex Octal();

    [GeneratedRegex(@"\A0x[0-9a-fA-F]{1,15}\z")]
    private static partial Regex Hexadecimal();

    [GeneratedRegex(@"\A[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?\z")]
    private static partial Regex Number();
}
