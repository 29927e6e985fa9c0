using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Binding;

/// <summary>Reads the stops of a run: keying words, addresses, and cords without a name.</summary>
internal sealed class StopReader(NodeReader reader, PartNames parts, PartTypes types, AddressReader addresses)
{
    /// <summary>
    /// The stops of one run, written as one text with commas or as a list. A stop that could not be read is missing, and
    /// <paramref name="sound"/> is false.
    /// </summary>
    public List<Stop> Read(YamlNode run, out bool sound)
    {
        var stops = new List<Stop>();
        sound = true;
        switch (run)
        {
            case YamlScalar { IsNull: false } text when text.Value.Length > 0:
                foreach ((int start, int length) in Pieces(text.Value))
                    sound &= !reader.Allowance.IsSpent && AddStop(text.Value.Substring(start, length), i => text.PlaceAt(start + i), stops);
                break;
            case YamlSequence list:
                foreach (YamlNode item in list.Items)
                {
                    if (reader.Allowance.IsSpent)
                        sound = false;
                    else if (reader.Text(item, "a stop", "a port such as SW-1/3, a cord such as 'A-to-B cord 2 m', opposed or aligned") is { } stop)
                        sound &= AddStop(stop.Value, stop.PlaceAt, stops);
                    else
                        sound = false;
                }

                break;
            default:
                reader.Problems.Add(run.Place, "a run is a line of stops", "stops with commas between them, such as 'SW-1/3, A-to-B cord 2 m, K-1/3'");
                sound = false;
                break;
        }

        return stops;
    }

    /// <summary>The parts of a text between commas, without the commas that stand inside brackets, trimmed.</summary>
    private static IEnumerable<(int Start, int Length)> Pieces(string text)
    {
        int start = 0, depth = 0;
        for (int i = 0; i <= text.Length; i++)
        {
            if (i < text.Length)
            {
                depth += text[i] switch { '[' => 1, ']' => -1, _ => 0 };
                if (text[i] != ',' || depth > 0)
                    continue;
            }

            int from = start, to = i;
            while (from < to && text[from] == ' ')
                from++;
            while (to > from && text[to - 1] == ' ')
                to--;
            yield return (from, to - from);
            start = i + 1;
        }
    }

    private bool AddStop(string text, Func<int, SourcePlace> placeAt, List<Stop> stops)
    {
        SourcePlace place = placeAt(0);
        if (text.Length == 0)
        {
            reader.Problems.Add(place, "there is an empty stop here", "a port, a cord, opposed or aligned");
            return false;
        }

        if (KeyingWords.TryParse(text, out Keying keys))
        {
            stops.Add(new KeyingStop(place, text, keys));
            return true;
        }

        if (!text.Contains('/') && !parts.TryFind(text, out _) && !text.Contains('['))
        {
            if (Inline(text, placeAt) is not { } inline)
                return false;
            stops.Add(inline);
            return true;
        }

        if (addresses.Read(text, placeAt) is not { } list)
            return false;
        stops.Add(new AddressStop(place, text, list));
        return true;
    }

    /// <summary>A type or kind of cable, with a length after it if wanted.</summary>
    private InlineStop? Inline(string text, Func<int, SourcePlace> placeAt)
    {
        SourcePlace place = placeAt(0);
        if (types.Find(text) is { } whole)
            return Build(whole, text, place, length: null);

        // The length is the last word or the last two: 2m, 2 m.
        int last = text.LastIndexOf(' ');
        int secondLast = last > 0 ? text.LastIndexOf(' ', last - 1) : -1;
        foreach (int cut in (ReadOnlySpan<int>)[secondLast, last])
        {
            if (cut <= 0 || types.Find(text[..cut].TrimEnd()) is not { } type)
                continue;
            string lengthText = text[(cut + 1)..];
            if (Length.TryParse(lengthText, out Length length, out string why))
                return Build(type, text, place, length);
            reader.Problems.Add(placeAt(cut + 1), $"'{PartNames.Shorten(lengthText)}' is no length: {PartNames.Shorten(why)}");
            return null;
        }

        int cutName = secondLast > 0 && char.IsAsciiDigit(text[secondLast + 1]) ? secondLast : last > 0 && char.IsAsciiDigit(text[last + 1]) ? last : text.Length;
        parts.ReportUnknown(reader, place, text[..cutName], CableNames(), "the name of a part, or a cord with its length");
        return null;
    }

    /// <summary>Made only when asked for: a document may have very many types.</summary>
    private IEnumerable<string> CableNames()
    {
        foreach (string name in types.Names)
        {
            if (types.Find(name)!.Kind.IsCable)
                yield return name;
        }
    }

    private InlineStop? Build(PartType type, string text, SourcePlace place, Length? length)
    {
        if (!type.Kind.IsCable)
        {
            reader.Problems.Add(place, $"{NodeReader.A(type.Name)} needs a name of its own before a run can come to it", "a part from the section parts, or a cord");
            return null;
        }

        var own = new PartType(type.Name, type.Kind, types.NewValues(type.Kind));
        if (length is { } l)
            own.Values.Set("length", l);
        own.Values.FillFrom(type.Values);
        Shape? shape = types.Build(own, place);
        return shape is null ? null : new InlineStop(place, text, own, shape);
    }
}
