using PolarityMap.Core.Plants;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Binding;

/// <summary>Binds a document's sections in their order: title, networks, defaults, included and own types, parts, runs, links, as-built differences.</summary>
internal sealed class PlantBinder
{
    private readonly ProblemList _problems;
    private readonly NodeReader _reader;
    private readonly PlantBuilder _plant = new();
    private readonly PartNames _names;
    private readonly List<PartType> _described = [];
    private readonly AttributeReader _attributes;
    private readonly PartTypes _types;
    private readonly AddressReader _addresses;
    private readonly Joints _joints;

    public PlantBinder(ProblemList problems)
    {
        _problems = problems;
        _names = new PartNames(_plant);
        _reader = new NodeReader(problems);
        _attributes = new AttributeReader(_reader, _plant.Networks);
        _types = new PartTypes(_reader, _attributes);
        _addresses = new AddressReader(_reader, _names);
        _joints = new Joints(_reader, _plant);
    }

    /// <summary>Binds a plant document with the catalogue files that it includes.</summary>
    public void Bind(YamlMapping root, IEnumerable<YamlMapping> catalogues)
    {
        _reader.CheckKeys(root, DocumentKeys.OfPlant, "a plant document");
        BindTitle(root, required: true);
        if (root.Find(DocumentKeys.Networks) is { } networks)
            new NetworkReader(_reader).Read(networks, _plant);
        BindDefaults(root);
        int before = _problems.Count;
        foreach (YamlMapping catalogue in catalogues)
            BindCatalogue(catalogue);
        bool included = _problems.Count == before;
        BindTypes(root);

        // Parts use included types, and runs and links name parts: with those missing they would only repeat what has been said.
        if (included && BindParts(root))
        {
            BindRuns(root);
            BindLinks(root);
        }

        BindAsBuilt(root);
    }

    /// <summary>Binds an as-built document over the design that has been bound.</summary>
    public void BindOverlay(YamlMapping root)
    {
        _reader.CheckKeys(root, DocumentKeys.OfOverlay, "an as-built document");
        BindTitle(root, required: false);
        if (root.Find(DocumentKeys.AsBuilt) is null)
            _problems.Add(root.Place, "the document names a design and no differences", $"a section '{DocumentKeys.AsBuilt}:'");
        BindAsBuilt(root);
    }

    /// <summary>The plant, or null when anything was reported.</summary>
    public Plant? Finish()
    {
        if (!_problems.IsEmpty)
            return null;
        _joints.AddOpenPlugs();
        return _plant.Build();
    }

    private void BindTitle(YamlMapping root, bool required)
    {
        string? Text(string key) => root.Find(key) is { } node ? _reader.Text(node, key, "a text")?.Value : null;
        PlantTitle before = _plant.Title;
        string? title = Text(DocumentKeys.Plant);
        if (title is null && required && root.Find(DocumentKeys.Plant) is null)
            _problems.Add(root.Place, "the document has no title", "'plant:' followed by a title");
        string? date = Text(DocumentKeys.Date);
        if (date is not null && !DateOnly.TryParseExact(date, "yyyy-MM-dd", out _))
            _problems.Add(root.Find(DocumentKeys.Date)!.Place, $"'{PartNames.Shorten(date)}' is no date", "a date such as 2026-03-01");
        _plant.Title = new PlantTitle(title ?? before.Title)
        {
            Site = Text(DocumentKeys.Site) ?? before.Site,
            Revision = Text(DocumentKeys.Revision) ?? before.Revision,
            Date = date ?? before.Date,
            Author = Text(DocumentKeys.Author) ?? before.Author,
            Number = Text(DocumentKeys.Number) ?? before.Number,
        };
    }

    private void BindDefaults(YamlMapping root)
    {
        if (root.Find(DocumentKeys.Defaults) is { } node)
            (_types.Defaults, _plant.Practice) = new DefaultsReader(_reader).Read(node);
    }

    private void BindCatalogue(YamlMapping root)
    {
        if (root.Find(DocumentKeys.Catalogue) is not { } title)
        {
            string what = root.Find(DocumentKeys.Plant) is null ? "this is no catalogue file" : "this is a plant document, and only catalogue files are included";
            _problems.Add(root.Place, what, $"a document with '{DocumentKeys.Catalogue}:' and a title at its start");
            return;
        }

        _reader.Text(title, DocumentKeys.Catalogue, "a title");
        _reader.CheckKeys(root, DocumentKeys.OfCatalogue, "a catalogue file");
        BindTypes(root);
    }

    private void BindTypes(YamlMapping root)
    {
        if (root.Find(DocumentKeys.Types) is not { } node || _reader.Mapping(node, "types", "type names with their kind and attributes") is not { } list)
            return;
        foreach (YamlEntry entry in list.Entries)
        {
            if (!Names.IsValid(entry.Key.Value, out string why))
                _problems.Add(entry.Key.Place, $"this is no name for a type: {why}", Names.Rule);
            else if (_types.PlaceOf(entry.Key.Value) is { } first)
                _problems.Add(entry.Key.Place, $"there is a type '{entry.Key.Value}' already, {NodeReader.Where(first, entry.Key.Place)}", "a name of its own for each type");
            else if (_types.Read(entry.Key.Value, entry.Value) is { } type)
                _types.Add(type, entry.Key.Place);
        }
    }

    private bool BindParts(YamlMapping root)
    {
        int before = _problems.Count;
        if (root.Find(DocumentKeys.Parts) is not { } node)
        {
            _problems.Add(root.Place, "the document has no parts", "a section 'parts:'");
            return false;
        }

        if (_reader.Mapping(node, "parts", "part names with their kind and attributes") is not { } list)
            return false;
        foreach (YamlEntry entry in list.Entries)
        {
            if (!_reader.Allowance.IsSpent)
                BindPart(entry);
        }

        return _problems.Count == before;
    }

    private void BindPart(YamlEntry entry)
    {
        if (!NamePattern.TryExpand(entry.Key.Value, (i, message, expected) => _problems.Add(entry.Key.PlaceAt(i), message, expected), out IReadOnlyList<string> names)
            || !_reader.Allowance.Names(names.Count, entry.Key.Place)
            || _types.Read(entry.Key.Value, entry.Value) is not { } type
            || _types.Build(type, entry.Value.Place) is not { } shape
            || !_reader.Allowance.Parts(names.Count, shape, entry.Key.Place))
            return;

        // Parts that are alike share all but their names.
        Part model = BoundPart.Make(names[0], type, shape, entry.Key.Place, _plant.Networks);
        _plant.Expect(names.Count, 0);
        foreach (string name in names)
        {
            if (_names.TryFind(name, out int first))
            {
                _problems.Add(entry.Key.Place, $"there is a part '{name}' already, {NodeReader.Where(_plant.Parts[first].Place, entry.Key.Place)}", "a name of its own for each part");
                return;
            }

            int index = _plant.AddPart(model with { Name = name });
            _names.Add(index);
            _described.Add(type);
        }
    }

    private void BindRuns(YamlMapping root)
    {
        if (root.Find(DocumentKeys.Runs) is not { } node)
            return;
        var stops = new StopReader(_reader, _names, _types, _addresses);
        var runs = new RunBinder(_reader, _plant, stops, _joints, new InlineParts(_plant, _names, _described));
        foreach (YamlNode run in _reader.Items(node, "runs", "runs such as '- SW-1/3, A-to-B cord 2 m, K-1/3'"))
        {
            if (!_reader.Allowance.IsSpent)
                runs.Bind(run);
        }
    }

    private void BindLinks(YamlMapping root)
    {
        if (root.Find(DocumentKeys.Links) is not { } node)
            return;
        var links = new LinkBinder(_reader, _plant, _addresses);
        foreach (YamlNode link in _reader.Items(node, "links", "links such as '- SW-1/3 to SW-2/3'"))
            links.Bind(link);
    }

    private void BindAsBuilt(YamlMapping root)
    {
        if (root.Find(DocumentKeys.AsBuilt) is not { } node || !_problems.IsEmpty
            || _reader.Mapping(node, DocumentKeys.AsBuilt, "sections " + string.Join(", ", DocumentKeys.OfAsBuilt)) is not { } section)
            return;
        new OverlayBinder(_reader, _plant, _names, _types, _attributes, _addresses, _joints, _described).Bind(section);
    }
}
