using System.Text;
using PolarityMap.Core.Parts;

namespace PolarityMap.Documents.Tables.Import;

/// <summary>A column of a table that is read.</summary>
/// <param name="Index">Its place in a row, counted from 0.</param>
/// <param name="Header">Its heading as it stands.</param>
/// <param name="Meaning">What it is taken for, or null where nothing is made of it.</param>
/// <param name="Unit">The unit that the heading names, such as <c>m</c>; empty for none.</param>
public sealed record TableColumn(int Index, string Header, string? Meaning, string Unit);

/// <summary>
/// What headings mean. Case, blanks, hyphens and a unit in brackets make no difference; common synonyms and the names of all
/// attributes are known.
/// </summary>
internal static class TableColumns
{
    /// <summary>For each meaning but attributes the headings that are taken for it, without blanks and marks.</summary>
    private static readonly (string Meaning, string[] Headings)[] s_meanings =
    [
        ("strand", ["strand", "strandno", "strandnumber"]),
        ("hop", ["hop", "hopno", "hopnumber", "step", "sequence", "seq"]),
        ("state", ["state", "status"]),
        ("part", ["part", "partname", "device", "equipment", "component"]),
        ("kind", ["kind", "partkind", "kindofpart"]),
        ("attributes", ["attributes", "properties"]),
        ("in", ["in", "inaddress", "inport", "enters", "entersat"]),
        ("out", ["out", "outaddress", "outport", "leaves", "leavesat"]),
        ("meets", ["meets", "mateswith", "matedwith", "mating"]),
        ("keys", ["keying", "keyorientation", "keypositions"]),
        ("through", ["through", "adapter", "inadapter", "panelport", "via"]),
        ("link", ["link", "links", "channel", "circuit"]),
        ("from", ["from", "fromport", "fromaddress", "source", "sourceport", "nearport", "aend", "enda", "porta", "a"]),
        ("to", ["to", "toport", "toaddress", "destination", "destinationport", "dest", "farport", "bend", "endb", "portb", "zend", "b"]),
        ("cord", ["cord", "cordtype", "patchcord", "cable", "cablename", "cordorcable"]),
        ("setting", ["setting"]),
        ("value", ["value"]),
        ("colour", ["colour", "networkcolour"]),
        ("plain-fits", ["plainfits"]),
        ("may-share", ["mayshare"]),
        ("length", ["cordlength", "cablelength", "len"]),
        ("fibre", ["fibreclass", "fibretype", "class"]),
        ("fibre-number", ["fibreno", "fibrenumber", "fibrecolour"]),
        ("room", ["location", "place"]),
        ("network", ["networkname", "system"]),
        ("note", ["notes", "remark", "remarks", "comment", "comments"]),
        ("key", ["keycode"]),
    ];

    private static readonly Lazy<Dictionary<string, string>> s_known = new(Known);
    private static readonly Lazy<Dictionary<string, AttributeSpec>> s_attributes = new(Attributes);

    /// <summary>The meanings that <paramref name="row"/> has as headings; a second column of the same meaning has none.</summary>
    public static IReadOnlyList<TableColumn> Read(TableRow row)
    {
        var columns = new List<TableColumn>();
        var taken = new HashSet<string>();
        for (int i = 0; i < row.Cells.Count; i++)
        {
            string header = row[i];
            if (header.Length == 0)
                continue;
            (string plain, string unit) = Plain(header);
            string? meaning = s_known.Value.GetValueOrDefault(plain);
            columns.Add(new TableColumn(i, header, meaning is not null && taken.Add(meaning) ? meaning : null, unit));
        }

        return columns;
    }

    /// <summary>The attribute of this name of any kind, or null: what differs between kinds does not matter here.</summary>
    public static AttributeSpec? Attribute(string name) => s_attributes.Value.GetValueOrDefault(name);

    /// <summary>A heading in small letters and digits, with the spelling of documents, and the unit behind it in brackets.</summary>
    private static (string Plain, string Unit) Plain(string header)
    {
        string unit = "";
        int bracket = header.LastIndexOfAny(['(', '[']);
        if (bracket > 0 && header[^1] is ')' or ']')
        {
            unit = header[(bracket + 1)..^1].Trim();
            header = header[..bracket];
        }

        var plain = new StringBuilder();
        foreach (char c in header)
        {
            if (char.IsLetterOrDigit(c))
                plain.Append(char.ToLowerInvariant(c));
        }

        return (plain.Replace("fiber", "fibre").Replace("color", "colour").ToString(), unit);
    }

    private static Dictionary<string, string> Known()
    {
        var known = new Dictionary<string, string>();
        foreach ((string meaning, string[] headings) in s_meanings)
        {
            foreach (string heading in headings)
                known[heading] = meaning;
        }

        // Names of attributes come after the rest, which they may not displace.
        foreach (string name in s_attributes.Value.Keys)
            known.TryAdd(Plain(name).Plain, name);
        return known;
    }

    private static Dictionary<string, AttributeSpec> Attributes()
    {
        var attributes = new Dictionary<string, AttributeSpec>();
        foreach (PartKind kind in PartKinds.All)
        {
            foreach (AttributeSpec spec in kind.AllAttributes)
                attributes.TryAdd(spec.Name, spec);
        }

        return attributes;
    }
}
