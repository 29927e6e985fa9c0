using System.Buffers;
using PolarityMap.Core.Parts;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Tables.Import;

/// <summary>An attribute as a document writes it, and where the table has it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Value">Its value between the brackets of a document.</param>
/// <param name="Words">The words of the value, for networks that have to be declared.</param>
/// <param name="Column">The column of the table, counted from 1.</param>
internal readonly record struct CellAttribute(string Name, string Value, IReadOnlyList<string> Words, int Column);

/// <summary>Reads attributes out of cells: one from a column of its own, or all from one text such as <c>type: Type-B, base: 8</c>.</summary>
internal sealed class AttributeCells
{
    private static readonly SearchValues<char> s_digits = SearchValues.Create("0123456789.");

    private readonly Dictionary<string, (List<(string Name, string Value, List<string> Words)>? Read, string Why)> _seen = new(StringComparer.Ordinal);

    /// <summary>The attributes of a text; null when it is none, and <paramref name="why"/> says why.</summary>
    public IReadOnlyList<CellAttribute>? Line(string text, int column, out string why)
    {
        if (!_seen.TryGetValue(text, out var seen))
            _seen[text] = seen = Parse(text);
        why = seen.Why;
        return seen.Read is null ? null : [.. seen.Read.Select(a => new CellAttribute(a.Name, a.Value, a.Words, column))];
    }

    /// <summary>The attribute of a column of its own.</summary>
    /// <param name="spec">What the heading means.</param>
    /// <param name="text">The cell.</param>
    /// <param name="unit">The unit that the heading names.</param>
    /// <param name="column">The column, counted from 1.</param>
    /// <param name="why">What is wrong when null is returned.</param>
    public static CellAttribute? Column(AttributeSpec spec, string text, string unit, int column, out string why)
    {
        why = "";
        switch (spec.Sort)
        {
            case AttributeSort.Length:
                return new(spec.Name, AttributeWords.Quoted(WithUnit(text, unit, ["m", "cm", "mm", "km", "ft"])), [], column);
            case AttributeSort.Loss:
                return new(spec.Name, AttributeWords.Quoted(WithUnit(text, unit, ["dB"])), [], column);
            case AttributeSort.Attenuation:
                return new(spec.Name, AttributeWords.Quoted(WithUnit(text, unit, ["dB/km"])), [], column);
            case AttributeSort.Networks or AttributeSort.Legs or AttributeSort.Pairs or AttributeSort.Conversion or AttributeSort.Wiring
                when text.Contains(',') || text[0] == '[':
                string list = text[0] == '[' ? text : $"[{text}]";
                if (Parse($"{spec.Name}: {list}") is { Read: [var (name, value, words)] })
                    return new(name, value, words, column);
                why = $"'{Short(text)}' is no list; expected one such as 5, 6 or [[1, 12], [2, 11]]";
                return null;
            default:
                return new(spec.Name, AttributeWords.Quoted(text), [text], column);
        }
    }

    /// <summary>A number with the unit of its heading. A comma before the decimals is what some spreadsheet programs write.</summary>
    public static string WithUnit(string text, string unit, ReadOnlySpan<string> units)
    {
        int comma = text.IndexOf(',');
        if (comma > 0 && text.IndexOf(',', comma + 1) < 0 && char.IsAsciiDigit(text[0]))
            text = $"{text[..comma]}.{text[(comma + 1)..]}";
        bool isBare = text.Length > 0 && !text.AsSpan().ContainsAnyExcept(s_digits);
        return isBare && units.Contains(unit) ? $"{text} {unit}" : text;
    }

    public static string Short(string text) => text.Length <= 40 ? text : text[..40] + "…";

    private static (List<(string Name, string Value, List<string> Words)>? Read, string Why) Parse(string text)
    {
        const string expected = "expected attributes such as type: Type-B, base: 8, length: 62 m";
        var problems = new ProblemList(1);
        if (YamlReader.Read($"{{{text}}}", "", problems) is not YamlMapping mapping || !problems.IsEmpty)
            return (null, problems.IsEmpty ? $"these are no attributes; {expected}" : $"{problems.Items[0].Message}; {expected}");
        var attributes = new List<(string Name, string Value, List<string> Words)>(mapping.Entries.Count);
        foreach (YamlEntry entry in mapping.Entries)
        {
            var words = new List<string>();
            if (Written(entry.Value, words) is not { } value)
                return (null, $"'{Short(entry.Key.Value)}' has no value; {expected}");
            attributes.Add((entry.Key.Value, value, words));
        }

        return (attributes, "");
    }

    private static string? Written(YamlNode node, List<string> words)
    {
        switch (node)
        {
            case YamlScalar { IsNull: false, Value: { Length: > 0 } text }:
                words.Add(text);
                return AttributeWords.Quoted(text);
            case YamlSequence list:
                string?[] items = [.. list.Items.Select(i => Written(i, words))];
                return items.Contains(null) ? null : $"[{string.Join(", ", items)}]";
            default:
                return null;
        }
    }
}
