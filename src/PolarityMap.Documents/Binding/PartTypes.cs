using PolarityMap.Core.Parts;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Binding;

/// <summary>A kind with some of its attributes fixed.</summary>
internal sealed record PartType(string Name, PartKind Kind, AttributeValues Values)
{
    /// <summary>Where the document gives each attribute; empty for built-in types.</summary>
    public Dictionary<string, SourcePlace> Places { get; } = [];
}

/// <summary>What may be named where a part is described: the document's types, the catalogue, and the kinds.</summary>
internal sealed class PartTypes(NodeReader reader, AttributeReader attributes)
{
    private readonly Dictionary<string, PartType> _own = [];
    private readonly Dictionary<string, SourcePlace> _places = [];

    /// <summary>What the plant says for parts that do not say it themselves. Set before the first type is read.</summary>
    public PartDefaults Defaults { get; set; } = PartDefaults.None;

    /// <summary>Every name, the document's own first.</summary>
    public IReadOnlyList<string> Names => [.. _own.Keys, .. Catalogue.All.Select(t => t.Name), .. PartKinds.All.Select(k => k.Name)];

    /// <summary>No values yet for a kind, over the plant's defaults.</summary>
    public AttributeValues NewValues(PartKind kind) => new(kind.AllAttributes, Defaults);

    /// <summary>Adds a type that a document describes at a place.</summary>
    public void Add(PartType type, SourcePlace place)
    {
        _own[type.Name] = type;
        _places[type.Name] = place;
    }

    /// <summary>Where a type is described, or null when no document describes it.</summary>
    public SourcePlace? PlaceOf(string name) => _places.TryGetValue(name, out SourcePlace place) ? place : null;

    /// <summary>The type, catalogue entry or kind of this name, or null.</summary>
    public PartType? Find(string name)
    {
        if (_own.TryGetValue(name, out PartType? own))
            return own;
        if (Catalogue.Find(name) is { } entry)
            return new PartType(name, PartKinds.Find(entry.Kind)!, entry.Values(Defaults));

        return PartKinds.Find(name) is { } kind ? new PartType(name, kind, NewValues(kind)) : null;
    }

    /// <summary>
    /// Reads a description: the name of a type or kind, or a mapping with <c>kind</c> and attributes. Null after a report.
    /// </summary>
    public PartType? Read(string name, YamlNode node)
    {
        YamlNode? kindNode = node is YamlMapping m ? m.Find(DocumentKeys.Kind) : node;
        if (kindNode is null)
        {
            reader.Problems.Add(node.Place, $"{PartNames.Shorten(name)} does not say what kind it is", "kind: followed by a kind or a type");
            return null;
        }

        if (reader.Text(kindNode, "the kind", "a kind or a type") is not { } word)
            return null;
        if (Find(word.Value) is not { } type)
        {
            string message = $"there is no kind or type '{PartNames.Shorten(word.Value)}'";
            if (reader.ExplainsAtLength)
                reader.Unknown(word.Place, message, word.Value, Names);
            else
                reader.Problems.Add(word.Place, message, "a kind or a type");
            return null;
        }

        var result = new PartType(name, type.Kind, NewValues(type.Kind));
        foreach ((string attribute, SourcePlace place) in type.Places)
            result.Places[attribute] = place;
        bool sound = node is not YamlMapping mapping || attributes.Read(mapping, type.Kind, result.Values, result.Places);
        result.Values.FillFrom(type.Values);
        return sound ? result : null;
    }

    /// <summary>Builds the shape of a description, or reports and returns null. <paramref name="place"/> is the description's.</summary>
    public Shape? Build(PartType type, SourcePlace place)
    {
        bool complete = true;
        foreach (AttributeSpec spec in type.Kind.Attributes)
        {
            if (!spec.Required || type.Values.Has(spec.Name))
                continue;
            complete = false;
            reader.Problems.Add(place, $"{NodeReader.A(type.Kind.Name)} needs '{spec.Name}'", AttributeReader.Expected(spec));
        }

        if (!complete)
            return null;
        var faults = new List<AttributeFault>();
        Shape? shape = type.Kind.Build(type.Values, faults);
        foreach (AttributeFault fault in faults)
            reader.Problems.Add(type.Places.GetValueOrDefault(fault.Attribute, place), fault.Message);
        if (shape is not null && faults.Count == 0 && !NetworksFit(type, shape, place))
            return null;
        return faults.Count == 0 && shape is not null && reader.Allowance.Ports(shape, place) ? shape : null;
    }

    /// <summary>Networks are named port by port, so there are no more of them than duplex ports.</summary>
    private bool NetworksFit(PartType type, Shape shape, SourcePlace place)
    {
        const string attribute = "networks";
        int named = type.Values.Words(attribute).Count;
        int ports = shape.Ports.Count(p => p.Face.Family is ConnectorFamily.Duplex or ConnectorFamily.Simplex);
        if (named <= ports)
            return true;
        reader.Problems.Add(type.Places.GetValueOrDefault(attribute, place), $"{named} networks are named for {ports} duplex ports", "one for each port in order, or fewer");
        return false;
    }
}
