using System.Text;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Editing;

/// <summary>
/// Writes entries into the as-built section of a document and leaves everything else as its author wrote it, byte for byte: lines
/// are added, and the value of one attribute is replaced, nothing more. What cannot be done so is a problem with its place.
/// </summary>
public static class OverlayEditor
{
    private static ReadOnlySpan<byte> Mark => [0xEF, 0xBB, 0xBF];

    /// <summary>The document with the entries in it, or null after a report.</summary>
    /// <param name="bytes">The document as it is.</param>
    /// <param name="fileName">Its name for places.</param>
    /// <param name="entries">What its as-built section is to say besides.</param>
    /// <param name="problems">Takes what stands in the way.</param>
    public static byte[]? Apply(ReadOnlySpan<byte> bytes, string fileName, IReadOnlyList<OverlayEntry> entries, ProblemList problems)
    {
        if (!TextLoader.TryDecode(bytes, fileName, problems, out string text) || YamlReader.Read(text, fileName, problems) is not { } root || !problems.IsEmpty)
            return null;
        if (root is not YamlMapping mapping)
        {
            problems.Add(root.Place, "this is no mapping, so nothing can be added to it", "a plant document");
            return null;
        }

        var edit = new TextEdit(text);
        Write(new SectionWriter(edit, problems), mapping, entries);
        if (!problems.IsEmpty)
            return null;
        byte[] edited = Encoding.UTF8.GetBytes(edit.Result());
        return bytes.StartsWith(Mark) ? [.. Mark, .. edited] : edited;
    }

    private static void Write(SectionWriter writer, YamlMapping root, IReadOnlyList<OverlayEntry> entries)
    {
        if (!writer.IsBlock(root, "the document is written in braces as a whole"))
            return;
        int indent = root.Entries[0].Key.Place.Column - 1;
        int at = EntryOf(root, DocumentKeys.AsBuilt);
        if (at < 0)
        {
            writer.AppendSection(root, OverlayText.SectionLines(entries, indent));
            return;
        }

        YamlEntry section = root.Entries[at];
        if (section.Value is YamlScalar { IsNull: true })
        {
            writer.InsertBelow(section.Key, OverlayText.SectionLines(entries, indent).Skip(1));
            return;
        }

        if (!writer.IsBlock(section.Value, "the as-built section is written in braces"))
            return;
        if (section.Value is not YamlMapping lists)
        {
            writer.Refuse(section.Value.Place, "there is a list where the parts of an as-built section were expected");
            return;
        }

        foreach (string key in DocumentKeys.OfAsBuilt)
        {
            OverlayEntry[] own = [.. entries.Where(e => OverlayText.KeyOf(e) == key)];
            if (own.Length > 0)
                WriteList(writer, lists, key, own);
        }
    }

    private static void WriteList(SectionWriter writer, YamlMapping lists, string key, OverlayEntry[] entries)
    {
        int indent = lists.Entries[0].Key.Place.Column - 1;
        int at = EntryOf(lists, key);
        if (at < 0)
        {
            writer.InsertAfter(lists, OverlayText.ListLines(key, entries, indent));
            return;
        }

        YamlEntry list = lists.Entries[at];
        if (list.Value is YamlScalar { IsNull: true })
        {
            writer.InsertBelow(list.Key, OverlayText.ListLines(key, entries, indent).Skip(1));
            return;
        }

        if (!writer.IsBlock(list.Value, $"the list '{key}' is written in brackets"))
            return;
        if (list.Value is YamlMapping parts && key == DocumentKeys.Parts)
            WriteParts(writer, parts, entries.OfType<PartEntry>());
        else if (list.Value is YamlSequence items && key != DocumentKeys.Parts)
            writer.InsertAfter(items, entries.SelectMany(e => OverlayText.EntryLines(e, items.Place.Column - 1)));
        else
            writer.Refuse(list.Value.Place, $"what stands under '{key}' is of another form than expected");
    }

    /// <summary>A part that has an entry has its attributes changed in it; the others get an entry of their own.</summary>
    private static void WriteParts(SectionWriter writer, YamlMapping parts, IEnumerable<PartEntry> entries)
    {
        int indent = parts.Entries[0].Key.Place.Column - 1;
        foreach (PartEntry entry in entries)
        {
            int at = EntryOf(parts, entry.Part);
            if (at < 0)
                writer.InsertAfter(parts, OverlayText.EntryLines(entry, indent));
            else if (parts.Entries[at].Value is YamlMapping attributes)
                WriteAttributes(writer, attributes, entry);
            else
                writer.Refuse(parts.Entries[at].Value.Place, $"the entry of {entry.Part} holds no attributes");
        }
    }

    private static void WriteAttributes(SectionWriter writer, YamlMapping attributes, PartEntry entry)
    {
        var added = new List<(string Attribute, string Value)>();
        foreach ((string attribute, string value) in entry.Attributes)
        {
            int at = EntryOf(attributes, attribute);
            if (at < 0)
                added.Add((attribute, value));
            else
                writer.Replace(attributes.Entries[at].Value, value);
        }

        if (added.Count > 0)
            writer.AddAttributes(attributes, added);
    }

    private static int EntryOf(YamlMapping mapping, string key)
    {
        for (int i = 0; i < mapping.Entries.Count; i++)
        {
            if (mapping.Entries[i].Key.Value == key)
                return i;
        }

        return -1;
    }
}
