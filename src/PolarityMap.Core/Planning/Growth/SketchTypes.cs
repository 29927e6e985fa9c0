using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>The types of the parts of a plant: what is equal is one type, under a name that tells what it is.</summary>
internal sealed class SketchTypes(Plant plant, PartDefaults defaults)
{
    private static readonly string[] s_ofThePart = ["network", "networks", "room", "note", "spare"];

    private readonly Dictionary<(string Content, bool IsInline), PlannedType> _types = [];
    private readonly List<PlannedType> _inOrder = [];
    private readonly HashSet<string> _names = [];

    public IReadOnlyList<PlannedType> InOrder => _inOrder;

    /// <summary>The type of a part.</summary>
    public PlannedType Of(Part part)
    {
        PartKind kind = PartKinds.Find(part.Kind)!;
        AttributeValues values = part.Values!;
        string[] given = [.. values.Given.Where(n => part.IsInline ? n != "length" : !s_ofThePart.Contains(n))];
        string content = $"{part.Kind}: {AttributeWords.Line(kind, values, part.Shape, n => part.IsInline ? n == "length" : s_ofThePart.Contains(n))}";
        if (_types.TryGetValue((content, part.IsInline), out PlannedType? known))
            return known;
        CatalogueType? of = Closest(kind, values, given);
        var type = new PlannedType(Free(Name(part)), of?.Name ?? part.Kind, own =>
        {
            foreach (string name in given.Where(n => of is null || !Equals(Word(kind, of.Values(defaults), n), Word(kind, values, n))))
                own.Copy(values, name);
            if (kind.Has("fibre") && !values.Has("fibre") && values.Defaults.Fibre is { } fibre && fibre != defaults.Fibre)
                own.Set("fibre", fibre.Name);
            if (kind.PinsBesidePinnedTrunks is { } pins && !values.Has("pins") && values.Defaults.TrunksArePinned != defaults.TrunksArePinned)
                own.Set("pins", values.Defaults.TrunksArePinned ? pins : kind.IsCable ? "none" : "pinned");
        }, defaults);
        if (!type.IsWritten)
        {
            _names.Remove(type.Name);
            type.Name = type.Of;
        }

        _types[(content, part.IsInline)] = type;
        _inOrder.Add(type);
        return type;
    }

    /// <summary>The built-in type that says the most of the same and nothing else.</summary>
    private CatalogueType? Closest(PartKind kind, AttributeValues values, string[] given) => Catalogue.All
        .Where(t => t.Kind == kind.Name && t.Values(defaults) is var of && of.Given.All(n => given.Contains(n) && Word(kind, of, n) == Word(kind, values, n)))
        .MaxBy(t => t.Values(defaults).Given.Count());

    private static string? Word(PartKind kind, AttributeValues values, string name)
    {
        if (values.Raw(name) is null)
            return null;
        var one = new AttributeValues(kind.AllAttributes);
        one.Copy(values, name);
        return AttributeWords.Line(kind, one, new ShapeBuilder().Build());
    }

    private string Name(Part part)
    {
        string network = part.Network >= 0 ? plant.Networks[part.Network].Name + " " : "";
        if (part.Shape.IsInterface)
            return $"{part.Shape.Ports[0].Application?.Name ?? "interface"} {(part.Shape.Ports.Count > 1 ? $"{part.Shape.Ports.Count}-port" : "device")}";
        if (PartFacts.IsCord(part))
            return part.IsInline ? $"{network}{part.Values!.Word("keyed") switch { "far" => "switch cord", "near" => "device cord", _ => "cord" }}" : "patch cord";
        if (part.Kind == "trunk")
            return $"{(part.Shape.Ports.Count > 2 ? $"{part.Shape.Ports.Count / 2}-leg " : "")}trunk {part.Length}";
        return part.Kind switch
        {
            "cassette" => $"cassette of {part.Shape.Ports.Count - 1}",
            "outlet" => $"outlet of {part.Shape.Ports.Count(p => p.Base == 0)}",
            "array panel" => $"panel of {part.Shape.Ports.Count}",
            _ => $"{PartFacts.Type(part)} type",
        };
    }

    private string Free(string name)
    {
        string free = name;
        for (int n = 2; PartKinds.Find(free) is not null || Catalogue.Find(free) is not null || !_names.Add(free); n++)
            free = name.EndsWith("cord", StringComparison.Ordinal) && n <= 26 ? $"{name} {(char)('A' + n - 1)}" : $"{name} {n}";
        return free;
    }
}
