using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Observations;

/// <summary>Reads observations from YAML: a list of mappings under <c>seen:</c>.</summary>
internal sealed class SeenYaml(ProblemList problems)
{
    private const string ListExpected = "a list such as '- { light: SW-L/1:A, seen: nowhere }'";

    private static readonly string[] s_keys = [SeenWords.Plant, SeenWords.Seen];

    private readonly NodeReader _reader = new(problems);
    private readonly List<SeenEntry> _entries = [];

    /// <summary>The list under <c>seen:</c>, or null where there is none.</summary>
    public YamlSequence? List { get; private set; }

    /// <summary>The node that names the plant, or null.</summary>
    public YamlNode? Plant { get; private set; }

    public IReadOnlyList<SeenEntry> Read(YamlNode root)
    {
        if (_reader.Mapping(root, "an observation file", "keys 'plant:' and 'seen:' at the start of a line") is not { } top)
            return _entries;
        _reader.CheckKeys(top, s_keys, "an observation file");
        Plant = top.Find(SeenWords.Plant);
        YamlNode? seen = top.Find(SeenWords.Seen);
        if (seen is null or YamlScalar { IsNull: true })
            return _entries;
        List = seen as YamlSequence;
        foreach (YamlNode item in _reader.Items(seen, $"'{SeenWords.Seen}'", ListExpected))
        {
            if (_entries.Count == SeenFile.MostObservations)
            {
                problems.Add(item.Place, $"there are more than {SeenFile.MostObservations} observations; what was seen at one plant is less");
                break;
            }

            if (_reader.Mapping(item, "an observation", "a mapping such as '{ light: SW-L/1:A, seen: nowhere }'") is { } mapping)
                Add(mapping);
        }

        return _entries;
    }

    private void Add(YamlMapping mapping)
    {
        if (TestOf(mapping) is not { } test)
            return;
        int before = problems.Count;
        IReadOnlyList<string> keys = SeenWords.KeysOf(test);
        string key = SeenWords.OutcomeKey(test);
        foreach (YamlEntry entry in mapping.Entries)
        {
            // Some things are seen somewhere, others are so or so.
            bool isOther = entry.Key.Value is SeenWords.Seen or SeenWords.Is && entry.Key.Value != key;
            if (isOther)
                problems.Add(entry.Key.Place, $"a {test} test has no key '{entry.Key.Value}'", NodeReader.OneOf(keys), key);
            else if (!keys.Contains(entry.Key.Value))
                _reader.Unknown(entry.Key.Place, $"a {test} test has no key '{PartNames.Shorten(entry.Key.Value)}'", entry.Key.Value, keys);
        }

        if (problems.Count > before || Cell(mapping, test, mapping.Place, "an address such as SW-L/1:A") is not { } at)
            return;
        if (Cell(mapping, key, mapping.Place, SeenWords.Expected(test)) is not { } outcome)
            return;
        SeenCell? value = test == SeenWords.Loss && mapping.Find(SeenWords.Value) is not null ? Cell(mapping, SeenWords.Value, mapping.Place, "a loss such as 4.2 dB") : null;
        SeenCell? note = mapping.Find(SeenWords.Note) is not null ? Cell(mapping, SeenWords.Note, mapping.Place, "a text") : null;
        if (problems.Count == before)
            _entries.Add(new SeenEntry(mapping.Place, test, at, outcome, value, note?.Text));
    }

    /// <summary>The one test that a mapping tells of, or null after a report.</summary>
    private string? TestOf(YamlMapping mapping)
    {
        YamlEntry? first = null;
        foreach (YamlEntry entry in mapping.Entries)
        {
            if (!SeenWords.Tests.Contains(entry.Key.Value))
                continue;
            if (first is { } other)
            {
                problems.Add(entry.Key.Place, $"this observation tells of two tests, {other.Key.Value} and {entry.Key.Value}", "one test in each entry of the list");
                return null;
            }

            first = entry;
        }

        if (first is { } test)
            return test.Key.Value;
        YamlEntry[] unknown = [.. mapping.Entries.Where(e => e.Key.Value is not (SeenWords.Seen or SeenWords.Is or SeenWords.Value or SeenWords.Note))];
        if (unknown.Length > 0)
            _reader.Unknown(unknown[0].Key.Place, $"there is no test '{PartNames.Shorten(unknown[0].Key.Value)}'", unknown[0].Key.Value, SeenWords.Tests);
        else
            problems.Add(mapping.Place, "this observation has no test", NodeReader.OneOf(SeenWords.Tests));
        return null;
    }

    private SeenCell? Cell(YamlMapping mapping, string key, SourcePlace missing, string expected)
    {
        if (mapping.Find(key) is not { } node)
        {
            problems.Add(missing, $"this observation has no '{key}:'", expected);
            return null;
        }

        return _reader.Text(node, $"'{key}'", expected) is { } text ? new SeenCell(text.Value, text.PlaceAt) : null;
    }
}
