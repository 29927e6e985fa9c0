using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Editing;

/// <summary>Places lines and values beside nodes of a document, or says why it cannot.</summary>
internal sealed class SectionWriter(TextEdit edit, ProblemList problems)
{
    private const string ByHand = "lines of its own for each entry, or the entry put in by hand";

    /// <summary>True for a collection on lines of its own; one in brackets is refused.</summary>
    public bool IsBlock(YamlNode node, string whyNot)
    {
        char first = edit.CharAt(edit.IndexOf(node.Place));
        if (first is not ('{' or '[' or '!'))
            return node is not YamlScalar || Refuse(node.Place, "there is a text where entries were expected");
        return Refuse(node.Place, first == '!' ? "there is a tag here" : whyNot);
    }

    /// <summary>Says that something cannot be changed without a hand; always false.</summary>
    public bool Refuse(SourcePlace place, string why)
    {
        problems.Add(place, $"{why}, which is not changed without a hand", ByHand);
        return false;
    }

    /// <summary>Lines at the end of the document, set off by an empty line.</summary>
    public void AppendSection(YamlMapping root, IEnumerable<string> lines)
    {
        // An empty line would become part of a text in lines of its own that goes on to the end.
        bool setOff = !EndsInBlockText(root);
        edit.AppendLines(setOff ? ["", .. lines] : lines);
    }

    /// <summary>Lines below a key that has nothing under it yet.</summary>
    public void InsertBelow(YamlScalar key, IEnumerable<string> lines) => edit.InsertLines(key.EndLine, lines);

    /// <summary>Lines after the last line of a collection.</summary>
    public void InsertAfter(YamlNode collection, IEnumerable<string> lines)
    {
        if (EndsInBlockText(collection))
            Refuse(collection.Place, "what stands here ends in a text on lines of its own");
        else
            edit.InsertLines(collection.EndLine, lines);
    }

    /// <summary>Another value in the place of one.</summary>
    public void Replace(YamlNode value, string with)
    {
        int from = edit.IndexOf(value.Place), to = edit.IndexOf(value.EndLine, value.EndColumn);
        bool isFlow = edit.CharAt(from) is '[' or '{';
        if (edit.CharAt(from) == '!' || value is YamlScalar { Style: YamlScalarStyle.Block } || (value is not YamlScalar && !isFlow) || (value is YamlScalar && value.EndLine != value.Place.Line))
            Refuse(value.Place, "this value stands on several lines or has a tag");
        else if (value is YamlScalar { IsNull: true, Value: "" })
            Refuse(value.Place, "there is no value here");
        else
            edit.Replace(from, to - from, with);
    }

    /// <summary>Attributes added to those of a part, in braces or on lines of their own.</summary>
    public void AddAttributes(YamlMapping attributes, IReadOnlyList<(string Attribute, string Value)> added)
    {
        char first = edit.CharAt(edit.IndexOf(attributes.Place));
        if (first == '!')
        {
            Refuse(attributes.Place, "there is a tag here");
        }
        else if (first != '{')
        {
            int indent = attributes.Entries[0].Key.Place.Column - 1;
            InsertAfter(attributes, added.Select(a => $"{OverlayText.Blanks(indent)}{a.Attribute}: {a.Value}"));
        }
        else if (attributes.Entries.Count == 0)
        {
            edit.Replace(edit.IndexOf(attributes.Place) + 1, 0, $" {Words(added)} ");
        }
        else
        {
            YamlNode last = attributes.Entries[^1].Value;
            edit.Replace(edit.IndexOf(last.EndLine, last.EndColumn), 0, $", {Words(added)}");
        }
    }

    private static string Words(IReadOnlyList<(string Attribute, string Value)> added) => string.Join(", ", added.Select(a => $"{a.Attribute}: {a.Value}"));

    private static bool EndsInBlockText(YamlNode node) => node switch
    {
        YamlScalar scalar => scalar.Style == YamlScalarStyle.Block,
        YamlMapping { Entries.Count: > 0 } mapping => EndsInBlockText(mapping.Entries[^1].Value),
        YamlSequence { Items.Count: > 0 } list => EndsInBlockText(list.Items[^1]),
        _ => false,
    };
}
