using System.Globalization;
using System.Text;
using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Parts;

/// <summary>The attributes of a part as a document would write them.</summary>
public static class AttributeWords
{
    /// <summary>
    /// Every attribute that was given, in the order of the kind's list, and those that the plant's defaults stand for, so that
    /// the part can be described again where there are no defaults.
    /// </summary>
    /// <param name="kind">The kind of the part.</param>
    /// <param name="values">What was said of it.</param>
    /// <param name="shape">The shape that the kind built.</param>
    public static IEnumerable<(string Name, string Value)> Of(PartKind kind, AttributeValues values, Shape shape)
    {
        foreach (AttributeSpec spec in kind.AllAttributes)
        {
            if (values.Raw(spec.Name) is { } value)
                yield return (spec.Name, Words(value, spec));
            else if (spec.Name == "fibre" && values.Defaults.Fibre is { } fibre && HasFibres(shape))
                yield return (spec.Name, fibre.Name);
            else if (spec.Name == "pins" && values.Defaults.TrunksArePinned && kind.PinsBesidePinnedTrunks is { } pins && HasFibres(shape))
                yield return (spec.Name, pins);
        }
    }

    /// <summary>
    /// All of <see cref="Of"/> in one line, such as <c>type: Type-B, base: 8, legs: 8</c>: what stands between the braces of a
    /// description in a document.
    /// </summary>
    public static string Line(PartKind kind, AttributeValues values, Shape shape, Func<string, bool>? without = null)
    {
        var line = new StringBuilder();
        foreach ((string name, string value) in Of(kind, values, shape))
        {
            if (without?.Invoke(name) == true)
                continue;
            if (line.Length > 0)
                line.Append(", ");
            line.Append(name).Append(": ").Append(value);
        }

        return line.ToString();
    }

    /// <summary>A text as it stands between the brackets of a document: as it is, or in quotes where it would mean something else.</summary>
    public static string Quoted(string text)
    {
        if (IsPlain(text))
            return text;
        var quoted = new StringBuilder("\"", text.Length + 8);
        foreach (char c in text)
        {
            if (c is '"' or '\\')
                quoted.Append('\\').Append(c);
            else if (char.IsControl(c) || c is '\u2028' or '\u2029' or '\uFEFF')
                quoted.Append("\\u").Append(((int)c).ToString("X4", CultureInfo.InvariantCulture));
            else
                quoted.Append(c);
        }

        return quoted.Append('"').ToString();
    }

    /// <summary>Letters and digits with single marks between them mean themselves wherever they stand.</summary>
    private static bool IsPlain(string text)
    {
        if (text.Length == 0 || text == "null" || !char.IsLetterOrDigit(text[0]) || text[^1] == ' ')
            return false;
        for (int i = 1; i < text.Length; i++)
        {
            char c = text[i];
            bool safe = char.IsLetterOrDigit(c) || c is '-' or '_' or '.' or '/' or '+' or '~' or '(' or ')' or ' '
                || (c == '#' && text[i - 1] != ' ');
            if (!safe)
                return false;
        }

        return true;
    }

    private static bool HasFibres(Shape shape)
    {
        foreach (int partner in shape.Inside.Span)
        {
            if (partner >= 0)
                return true;
        }

        return false;
    }

    private static string Words(object value, AttributeSpec spec) => value switch
    {
        string word => Quoted(word),
        int number => number.ToString(CultureInfo.InvariantCulture),
        Length length => length.ToString(),
        Decibel loss => loss.Value.ToString(CultureInfo.InvariantCulture) + " dB",
        Attenuation attenuation => attenuation.DecibelPerKm.ToString(CultureInfo.InvariantCulture) + " dB/km",
        IReadOnlyList<DuplexPair> pairs => List(pairs.Select(p => $"[{p.A}, {p.B}]")),
        IReadOnlyList<IReadOnlyList<WidePosition>> ports => List(ports.Select(p => List(p.Select(Wide)))),
        IReadOnlyList<int> numbers => List(numbers.Select(n => n.ToString(CultureInfo.InvariantCulture))),
        IReadOnlyList<string> words => List(words.Select(Quoted)),
        _ => throw new InvalidOperationException($"no words for a value of '{spec.Name}'"),
    };

    private static string List(IEnumerable<string> items) => $"[{string.Join(", ", items)}]";

    private static string Wide(WidePosition wide) => wide.Position == 0 ? "none" : wide.Port == 1 ? $"{wide.Position}" : $"{wide.Port}:{wide.Position}";
}
