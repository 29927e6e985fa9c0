using PolarityMap.Documents.Text;

namespace PolarityMap.Documents.Binding;

/// <summary>
/// Reads addresses with ranges: <c>PART</c>, <c>PART/PORT</c>, <c>PART/PORT:POSITION</c>. Ranges stand for several addresses,
/// the leftmost changing slowest.
/// </summary>
internal sealed class AddressReader(NodeReader reader, PartNames parts)
{
    /// <summary>The most addresses one text may stand for.</summary>
    private const int MostAddresses = NamePattern.MaxNames;

    /// <summary>The parts that a text has stood for: runs and links come to the same parts again and again.</summary>
    private readonly Dictionary<string, int[]> _known = [];

    /// <summary>
    /// Whether a text is an address of parts that there are, with a port that has no space in its name, as none has. Reports
    /// nothing but that a document stands for too much.
    /// </summary>
    public bool Reads(string text, SourcePlace place)
    {
        if (reader.Allowance.IsSpent)
            return false;
        int stroke = text.IndexOf('/');
        if (stroke >= 0 && text.IndexOf(' ', stroke) >= 0)
            return false;
        static void Ignore(int index, string message, string? expected)
        {
        }

        return NamePattern.TryExpand(stroke < 0 ? text : text[..stroke], Ignore, out IReadOnlyList<string> names)
            && reader.Allowance.Names(names.Count, place)
            && names.All(n => parts.TryFind(n, out _));
    }

    /// <summary>
    /// Reads a text that starts at <paramref name="placeAt"/>(0). Null after a report.
    /// </summary>
    public AddressList? Read(string text, Func<int, SourcePlace> placeAt)
    {
        if (reader.Allowance.IsSpent)
            return null;
        int stroke = text.IndexOf('/');
        int colon = stroke < 0 ? -1 : text.IndexOf(':', stroke);
        string partText = stroke < 0 ? text : text[..stroke];
        string? portText = stroke < 0 ? null : colon < 0 ? text[(stroke + 1)..] : text[(stroke + 1)..colon];
        string? positionText = colon < 0 ? null : text[(colon + 1)..];

        IReadOnlyList<string>? partNames = null;
        bool known = _known.TryGetValue(partText, out int[]? found);
        if (known ? !reader.Allowance.Names(found!.Length, placeAt(0)) : (partNames = Names(partText, 0, placeAt, token: false)) is null)
            return null;
        int partCount = found?.Length ?? partNames!.Count;
        IReadOnlyList<string?> portNames = [null];
        IReadOnlyList<string?> positions = [null];
        if (portText is not null)
        {
            if (Names(portText, stroke + 1, placeAt, token: true) is not { } ports)
                return null;
            portNames = ports;
        }

        if (positionText is not null)
        {
            if (Names(positionText, colon + 1, placeAt, token: true) is not { } names)
                return null;
            positions = names;
        }

        if ((long)partCount * portNames.Count * positions.Count > MostAddresses)
        {
            reader.Problems.Add(placeAt(0), $"this stands for more than {MostAddresses} addresses");
            return null;
        }

        int count = partCount * portNames.Count * positions.Count;
        bool multiplied = count > Math.Max(partCount, Math.Max(portNames.Count, positions.Count));
        if (multiplied && !reader.Allowance.Names(count, placeAt(0)))
            return null;
        if (found is null && (found = Find(partNames!, placeAt)) is null)
            return null;
        _known[partText] = found;
        return new AddressList(found, portNames, positions);
    }

    private int[]? Find(IReadOnlyList<string> names, Func<int, SourcePlace> placeAt)
    {
        var found = new int[names.Count];
        for (int i = 0; i < found.Length; i++)
        {
            if (parts.TryFind(names[i], out found[i]))
                continue;
            parts.ReportUnknown(reader, placeAt(0), names[i], []);
            return null;
        }

        return found;
    }

    private IReadOnlyList<string>? Names(string text, int offset, Func<int, SourcePlace> placeAt, bool token)
    {
        void Report(int index, string message, string? expected) => reader.Problems.Add(placeAt(offset + index), message, expected);
        IReadOnlyList<string> names;
        bool sound = token
            ? NamePattern.TryExpandToken(text, Report, out names)
            : NamePattern.TryExpand(text, Report, out names);
        return sound && reader.Allowance.Names(names.Count, placeAt(0)) ? names : null;
    }
}
