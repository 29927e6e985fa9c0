using System.Text;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;
using Xunit;

namespace PolarityMap.Documents.Tests.Yaml;

/// <summary>Reads a text and prints what came of it, for comparing with lines written by hand.</summary>
internal static class YamlText
{
    public static (YamlNode? Root, string Problems) Read(string text)
    {
        var problems = new ProblemList();
        var root = YamlReader.Read(text, "p", problems);
        return (root, problems.ToString());
    }

    /// <summary>The problems of a text that gives no tree.</summary>
    public static string Problems(string text)
    {
        var (root, problems) = Read(text);
        Assert.Null(root);
        return problems;
    }

    /// <summary>A tree without places: scalars bare, quoted ones in quotes, block ones after a bar.</summary>
    public static string Shape(YamlNode node) => Print(node, places: false);

    /// <summary>A tree with the start and end of each node, as <c>1:4-1:7</c>.</summary>
    public static string Places(YamlNode node) => Print(node, places: true);

    private static string Print(YamlNode node, bool places)
    {
        var text = new StringBuilder();
        if (places)
            text.Append($"{node.Place.Line}:{node.Place.Column}-{node.EndLine}:{node.EndColumn} ");
        switch (node)
        {
            case YamlScalar scalar:
                var value = scalar.Value.Replace("\n", "\\n", StringComparison.Ordinal);
                text.Append(scalar.Style switch
                {
                    YamlScalarStyle.Quoted => $"\"{value}\"",
                    YamlScalarStyle.Block => "|" + value,
                    _ => scalar.IsNull ? "null" : value,
                });
                break;
            case YamlSequence sequence:
                text.Append('[').AppendJoin(", ", sequence.Items.Select(item => Print(item, places))).Append(']');
                break;
            case YamlMapping mapping:
                text.Append('{').AppendJoin(", ", mapping.Entries.Select(entry => Print(entry.Key, places) + ": " + Print(entry.Value, places))).Append('}');
                break;
            default:
                throw new InvalidOperationException("unknown kind of node");
        }

        return text.ToString();
    }
}
