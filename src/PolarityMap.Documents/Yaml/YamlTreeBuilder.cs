using PolarityMap.Documents.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace PolarityMap.Documents.Yaml;

/// <summary>Builds the tree from the library's events and reports what is YAML but not read here.</summary>
internal sealed class YamlTreeBuilder(string text, string fileName, ProblemList problems, string? instead = null)
{
    private const string CoreTags = "tag:yaml.org,2002:";
    private const string WriteShared = "write the shared attributes as an entry of types and name it";

    private readonly Stack<OpenCollection> open = new();
    private int lastTabLine = -1;
    private SourcePlace? end;
    private YamlNode? root;
    private int nodes;
    private bool hasHole;
    private bool started;

    /// <summary>The last scalar that was read, for explaining a syntax error after it.</summary>
    public YamlScalar? LastScalar { get; private set; }

    /// <summary>The index in the text up to which events have been read.</summary>
    public int ReadTo { get; private set; }

    /// <summary>The indexes of the flow brackets that are open, the innermost first.</summary>
    public IEnumerable<int> OpenBrackets()
    {
        foreach (var collection in open)
        {
            if (collection.IsFlow && collection.Index >= 0)
                yield return collection.Index;
        }
    }

    public bool StartDocument(DocumentStart start)
    {
        if (started)
        {
            problems.Add(Place(start.Start), "a second document begins here; one file holds one document: put the second into a file of its own");
            return false;
        }

        started = true;
        return true;
    }

    public bool AddScalar(Scalar scalar)
    {
        if (!CountNode(scalar))
            return false;
        CheckTab(scalar);
        CheckAnchor(scalar);
        var isText = CheckTag(scalar, "str", "int", "float", "bool", "null");

        var place = Place(scalar.Start);
        var style = scalar.Style switch
        {
            ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted => YamlScalarStyle.Quoted,
            ScalarStyle.Literal or ScalarStyle.Folded => YamlScalarStyle.Block,
            _ => YamlScalarStyle.Plain,
        };
        var value = scalar.Value;
        if (value.Length > YamlReader.MaxScalarLength)
        {
            Hole(place, $"this text has {value.Length} characters, at most {YamlReader.MaxScalarLength} are read");
            (value, isText) = ("", true);
        }
        else if (scalar.Style == ScalarStyle.DoubleQuoted && ForbiddenCharacters.IndexIn(value) is var at and >= 0)
        {
            Hole(place, "an escape in this text makes a character that is not allowed: " + ForbiddenCharacters.Describe(value[at]));
        }

        var (endLine, endColumn) = Position(scalar.End);
        LastScalar = new YamlScalar(value, style, isText, place, endLine, endColumn);
        Add(LastScalar);
        return true;
    }

    public bool AddAlias(AnchorAlias alias)
    {
        if (!CountNode(alias))
            return false;
        Hole(Place(alias.Start), $"aliases such as '*{Short(alias.Value.Value)}' are not read; {instead ?? WriteShared}");
        var (endLine, endColumn) = Position(alias.End);
        Add(Filler(Place(alias.Start), endLine, endColumn));
        return true;
    }

    public bool Open(NodeEvent start, bool isMapping, bool isFlow)
    {
        if (!CountNode(start))
            return false;
        var place = Place(start.Start);
        if (open.Count == YamlReader.MaxDepth)
        {
            problems.Add(place, $"lists and mappings are nested more than {YamlReader.MaxDepth} deep here; no plant needs that");
            return false;
        }

        if (!isFlow)
            CheckTab(start);
        CheckAnchor(start);
        CheckTag(start, isMapping ? "map" : "seq");

        // The library gives no place to a pair without braces in a flow sequence, [key: value]; its first key gives it one.
        var isBarePair = isMapping && isFlow && open.TryPeek(out var parent) && !parent.IsMapping && parent.IsFlow && start.Start.Index == 0;
        if (!isBarePair && open.TryPeek(out var outer) && outer.IsMapping && outer.Key is null)
            Hole(place, KeyAdvice(isMapping));
        open.Push(new OpenCollection(place, isBarePair ? -1 : BracketIndex(start, isFlow), isMapping, isFlow));
        return true;
    }

    public void Close(Mark closing)
    {
        var closed = open.Pop();
        if (closed.Key is not null)
            AddEntry(closed, new YamlScalar("", YamlScalarStyle.Plain, false, closed.Key.Place, closed.LastEnd.Line, closed.LastEnd.Column));

        // The library ends a block collection where the next token starts, often lines below; a flow one before its bracket.
        var (line, column) = closed.LastEnd;
        if (closed.IsFlow && closed.Index >= 0)
        {
            (line, column) = ((int)closing.Line, (int)closing.Column + 1);
            ReadTo = (int)closing.Index + 1;
        }

        Add(closed.IsMapping
            ? new YamlMapping(closed.Entries, closed.Keys, closed.Place, line, column)
            : new YamlSequence(closed.Items, closed.Place, line, column));
    }

    public YamlNode? Finish()
    {
        if (root is null or YamlScalar { Value: "", Style: YamlScalarStyle.Plain } && !hasHole)
        {
            problems.Add(new SourcePlace(fileName, 1, 1), "the document is empty", "lines such as 'key: value'");
            return null;
        }

        return hasHole ? null : root;
    }

    private static string KeyAdvice(bool isMapping) => isMapping
        ? "a mapping cannot be a key; write a text before the ':', and quote a text that begins with '{'"
        : "a list cannot be a key; write a text before the ':', and quote a name that begins with '['";

    private void Add(YamlNode node)
    {
        if (!open.TryPeek(out var parent))
        {
            root ??= node;
        }
        else if (!parent.IsMapping)
        {
            parent.Items.Add(node);
            parent.LastEnd = (node.EndLine, node.EndColumn);
        }
        else if (parent.Key is null)
        {
            parent.Key = AsKey(node);
            parent.LastEnd = (node.EndLine, node.EndColumn);
            if (parent.Index < 0 && parent.Entries.Count == 0)
                parent.Place = node.Place;
        }
        else
        {
            AddEntry(parent, node);
            parent.LastEnd = (node.EndLine, node.EndColumn);
        }
    }

    private YamlScalar AsKey(YamlNode node)
    {
        // A collection as a key has been reported when it was opened; it leaves a hole in any case.
        if (node is not YamlScalar scalar)
            return Filler(node.Place, node.EndLine, node.EndColumn);

        if (scalar is { Value: "<<", Style: YamlScalarStyle.Plain })
            Hole(scalar.Place, $"merge keys '<<' are not read; {instead ?? WriteShared}");
        else if (scalar is { Value: "", IsNull: true })
            Hole(scalar.Place, "there is no key before the ':'", "'key: value'");
        return scalar;
    }

    private void AddEntry(OpenCollection mapping, YamlNode value)
    {
        var key = mapping.Key!;
        mapping.Key = null;
        var earlier = mapping.Keys.Find(mapping.Entries, key.Value);
        if (earlier >= 0)
        {
            if (!hasHole || key.Value.Length > 0)
                problems.Add(key.Place, $"key '{Short(key.Value)}' is here a second time; the first is at {mapping.Entries[earlier].Key.Place}");
            return;
        }

        // {a:1} is the key 'a:1' without a value: there is no ':' behind it to begin one.
        if (mapping.IsFlow && value is YamlScalar { IsNull: true, Value: "" } && key.Style == YamlScalarStyle.Plain
            && MissingSpace.IndexIn(key.Value) is var colon and >= 0)
        {
            Hole(key.PlaceAt(colon), "a space is missing after this ':'", $"'{Short(key.Value[..colon])}: {Short(key.Value[(colon + 1)..])}'");
        }

        mapping.Entries.Add(new YamlEntry(key, value));
        mapping.Keys.Added(mapping.Entries);
    }

    /// <summary>Stands where a problem was reported, so that no second one is reported about it.</summary>
    private static YamlScalar Filler(SourcePlace place, int endLine, int endColumn) =>
        new("", YamlScalarStyle.Plain, true, place, endLine, endColumn);

    private bool CountNode(ParsingEvent parsed)
    {
        ReadTo = (int)parsed.End.Index;
        if (++nodes <= YamlReader.MaxNodes)
            return true;
        problems.Add(Place(parsed.Start), $"the document has more than {YamlReader.MaxNodes} keys and values; split it into several files");
        return false;
    }

    private void CheckAnchor(NodeEvent node)
    {
        if (!node.Anchor.IsEmpty)
            Hole(Place(node.Start), $"anchors such as '&{Short(node.Anchor.Value)}' are not read; {instead ?? WriteShared}");
    }

    /// <summary>Reports a tag that is not among the allowed core ones.</summary>
    /// <returns>Whether the tag says that the scalar is text.</returns>
    private bool CheckTag(NodeEvent node, params ReadOnlySpan<string> allowed)
    {
        if (node.Tag.IsEmpty)
            return false;
        var tag = node.Tag.Value;
        if (tag.StartsWith(CoreTags, StringComparison.Ordinal) && allowed.Contains(tag[CoreTags.Length..]))
            return tag.EndsWith(":str", StringComparison.Ordinal);

        var written = tag.StartsWith(CoreTags, StringComparison.Ordinal) ? "!!" + tag[CoreTags.Length..] : tag;
        Hole(Place(node.Start), $"the tag '{Short(written)}' is not read here; delete it, or quote a text that begins with '!'");
        return false;
    }

    /// <summary>
    /// A tab before the first text of a line has no width in YAML, so that what follows can belong elsewhere than it seems.
    /// In flow brackets, quotes and block text the indentation carries no meaning.
    /// </summary>
    private void CheckTab(NodeEvent node)
    {
        if (open.TryPeek(out var parent) && parent.IsFlow)
            return;
        var index = (int)Math.Min(node.Start.Index, text.Length);
        if (index == text.Length)
            return;
        var start = index;
        while (start > 0 && text[start - 1] is ' ' or '\t')
            start--;
        if (start > 0 && text[start - 1] is not ('\n' or '\r'))
            return;
        var tab = text.AsSpan(start, index - start).IndexOf('\t');

        // A collection and its first key begin at the same place; only the first of them reports.
        if (tab < 0 || start == lastTabLine)
            return;
        lastTabLine = start;
        problems.Add(Place(node.Start) with { Column = tab + 1 }, YamlSyntaxError.TabMessage);
    }

    private void Hole(SourcePlace place, string message, string? expected = null)
    {
        hasHole = true;
        problems.Add(place, message, expected);
    }

    private SourcePlace Place(Mark mark)
    {
        var (line, column) = Position(mark);
        return new SourcePlace(fileName, line, column);
    }

    /// <summary>The library counts a line too many at the end of a text that does not end in a line break.</summary>
    private (int Line, int Column) Position(Mark mark)
    {
        if (mark.Index < text.Length)
            return ((int)mark.Line, (int)mark.Column);
        end ??= SourceLines.PlaceAt(text, text.Length, fileName);
        return (end.Value.Line, end.Value.Column);
    }

    private int BracketIndex(NodeEvent start, bool isFlow)
    {
        var index = (int)start.Start.Index;
        if (!isFlow)
            return index;

        // With an anchor or a tag in front the event starts there; the bracket is the character at its end.
        while (index < text.Length && index < (int)start.End.Index && text[index] is not ('[' or '{'))
            index++;
        return index;
    }

    private static string Short(string value)
    {
        const int Most = 40;
        var line = value.AsSpan().IndexOfAny('\n', '\r');
        var length = line < 0 ? value.Length : line;
        if (length <= Most)
            return line < 0 ? value : value[..length] + "…";
        return value[..(char.IsHighSurrogate(value[Most - 1]) ? Most - 1 : Most)] + "…";
    }
}
