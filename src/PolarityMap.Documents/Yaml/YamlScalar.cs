
namespace PolarityMap.Documents.Yaml;

/// <summary>How a scalar is written.</summary>
public enum YamlScalarStyle
{
    /// <summary>Without quotes.</summary>
    Plain,

    /// <summary>In single or double quotes.</summary>
    Quoted,

    /// <summary>After <c>|</c> or <c>&gt;</c>, on lines of its own.</summary>
    Block,
}

/// <summary>A piece of text: a key or a value.</summary>
public sealed class YamlScalar : YamlNode
{
    private readonly bool isText;

    internal YamlScalar(string value, YamlScalarStyle style, bool isText, SourcePlace place, int endLine, int endColumn)
        : base(place, endLine, endColumn)
    {
        Value = value;
        Style = style;
        this.isText = isText;
    }

    /// <summary>The text, without quotes, with escapes replaced and lines folded. Line breaks are LF.</summary>
    public string Value { get; }

    public YamlScalarStyle Style { get; }

    /// <summary>Whether nothing is written here, or one of the words for nothing of the YAML 1.2 core schema.</summary>
    public bool IsNull => Style == YamlScalarStyle.Plain && !isText && Value is "" or "~" or "null" or "Null" or "NULL";

    /// <summary>
    /// Whether the text looks like <c>key:value</c> with the space after the colon forgotten, in which case YAML reads one
    /// text and no mapping.
    /// </summary>
    public bool LooksLikeEntryWithoutSpace => Style == YamlScalarStyle.Plain && MissingSpace.IndexIn(Value) >= 0;

    /// <summary>
    /// The place of a character of <see cref="Value"/>. Exact for plain and quoted text on one line without escapes; else
    /// the place where the scalar starts.
    /// </summary>
    /// <param name="index">Counted from 0; the length of the value is the place just after it.</param>
    public SourcePlace PlaceAt(int index)
    {
        if (index < 0 || index > Value.Length || EndLine != Place.Line || Style == YamlScalarStyle.Block)
            return Place;

        // Every escape and every tag makes the source longer than the value, so equal lengths mean that neither is there.
        var quote = Style == YamlScalarStyle.Quoted ? 1 : 0;
        return EndColumn - Place.Column == Value.Length + (2 * quote)
            ? Place with { Column = Place.Column + quote + index }
            : Place;
    }

    public override string ToString() => Value;
}
