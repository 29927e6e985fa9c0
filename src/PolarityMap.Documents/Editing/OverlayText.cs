using System.Text;
using PolarityMap.Documents.Binding;

namespace PolarityMap.Documents.Editing;

/// <summary>Entries of an as-built section as lines of a document.</summary>
public static class OverlayText
{
    /// <summary>Blanks that a section is indented by beside the one around it.</summary>
    internal const int Step = 2;

    /// <summary>A whole as-built section, its lines ended by LF.</summary>
    public static string Section(IEnumerable<OverlayEntry> entries)
    {
        var text = new StringBuilder();
        foreach (string line in SectionLines(entries, 0))
            text.Append(line).Append('\n');
        return text.ToString();
    }

    /// <summary>The lines of a whole section, its key indented by so many blanks.</summary>
    internal static IEnumerable<string> SectionLines(IEnumerable<OverlayEntry> entries, int indent)
    {
        OverlayEntry[] all = [.. entries];
        yield return Blanks(indent) + DocumentKeys.AsBuilt + ":";
        foreach (string key in DocumentKeys.OfAsBuilt)
        {
            OverlayEntry[] own = [.. all.Where(e => KeyOf(e) == key)];
            if (own.Length == 0)
                continue;
            foreach (string line in ListLines(key, own, indent + Step))
                yield return line;
        }
    }

    /// <summary>The lines of one list with its key.</summary>
    internal static IEnumerable<string> ListLines(string key, IEnumerable<OverlayEntry> entries, int indent)
    {
        yield return Blanks(indent) + key + ":";
        foreach (OverlayEntry entry in entries)
        {
            foreach (string line in EntryLines(entry, indent + Step))
                yield return line;
        }
    }

    /// <summary>The lines of one entry.</summary>
    internal static IEnumerable<string> EntryLines(OverlayEntry entry, int indent)
    {
        if (entry.Comment is { } comment)
            yield return $"{Blanks(indent)}# {OneLine(comment)}";
        yield return Blanks(indent) + entry switch
        {
            PartEntry part => $"{Key(part.Part)}: {{ {string.Join(", ", part.Attributes.Select(a => $"{a.Attribute}: {a.Value}"))} }}",
            ListEntry item => $"- {Key(item.Text)}",
            _ => throw new ArgumentException("no line is known for this entry", nameof(entry)),
        };
    }

    /// <summary>The key of the list that an entry belongs to.</summary>
    internal static string KeyOf(OverlayEntry entry) => entry is ListEntry item ? item.List : DocumentKeys.Parts;

    internal static string Blanks(int count) => new(' ', count);

    /// <summary>A text as it stands as a key or in a block list: as it is, or in quotes where it would mean something else.</summary>
    internal static string Key(string text)
    {
        bool plain = text.Length > 0 && char.IsLetterOrDigit(text[0]) && text[^1] != ':' && text is not ("null" or "Null" or "NULL")
            && !text.Contains(": ", StringComparison.Ordinal) && !text.Contains(" #", StringComparison.Ordinal)
            && text.All(c => char.IsLetterOrDigit(c) || c is ' ' or '-' or '_' or '.' or '/' or '+' or '~' or '#' or '(' or ')' or ':');
        return plain ? text : $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
    }

    private static string OneLine(string text) => text.ReplaceLineEndings(" ");
}
