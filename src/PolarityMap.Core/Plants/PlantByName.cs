using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Plants;

/// <summary>Puts a plant together by names and addresses, for programs that make one without a document.</summary>
public static class PlantByName
{
    private static readonly SourcePlace s_nowhere = new("program", 0, 0);

    /// <summary>Adds a part of a kind or of a built-in type, such as <c>duplex interface</c> or <c>U1 cassette</c>.</summary>
    /// <param name="builder">Takes it.</param>
    /// <param name="name">Its name, which addresses begin with.</param>
    /// <param name="type">The kind or type.</param>
    /// <param name="set">Sets attributes, such as <c>v => v.Set("ports", 6)</c>; what is not set has its usual value.</param>
    /// <returns>The part's index in the builder.</returns>
    /// <exception cref="ArgumentException">There is no such type, its attributes do not go together, or the name is taken.</exception>
    public static int AddPart(this PlantBuilder builder, string name, string type, Action<AttributeValues>? set = null)
    {
        if (Find(builder, name) >= 0)
            throw new ArgumentException($"there is a part '{name}' already", nameof(name));
        CatalogueType? known = PartKinds.Find(type) is null ? Catalogue.Find(type) : null;
        PartKind kind = PartKinds.Find(known?.Kind ?? type) ?? throw new ArgumentException($"there is no kind or type of part '{type}'", nameof(type));
        var values = new AttributeValues(kind.AllAttributes);
        set?.Invoke(values);
        if (known is not null)
            values.FillFrom(known.Values());
        var faults = new List<AttributeFault>();
        Shape? shape = kind.Build(values, faults);
        return faults.Count == 0 && shape is not null
            ? builder.AddPart(PartMaker.Make(name, kind, values, shape, s_nowhere, builder.Networks))
            : throw new ArgumentException($"{name} cannot be a {type}: {string.Join("; ", faults.Select(f => $"{f.Attribute}: {f.Message}"))}", nameof(set));
    }

    /// <summary>Mates two ports. Array connectors lie as the adapter or receptacle of either has it.</summary>
    /// <param name="builder">Takes the mating.</param>
    /// <param name="a">One port, <c>PART/PORT</c>.</param>
    /// <param name="b">The other.</param>
    /// <param name="keys">How the keys of array connectors lie, where neither port says it or it is to be another way.</param>
    /// <exception cref="ArgumentException">There is no such port, or two plugs of arrays meet and nobody says how.</exception>
    public static void Mate(this PlantBuilder builder, string a, string b, Keying? keys = null)
    {
        PortRef from = builder.PortAt(a), to = builder.PortAt(b);
        keys ??= builder.Port(from).Keys ?? builder.Port(to).Keys;
        if (keys is null && builder.Port(from).Face.Family == ConnectorFamily.Array)
            throw new ArgumentException($"how the keys of {a} and {b} lie is not said", nameof(keys));
        builder.AddMating(from, 0, to, 0, null, keys ?? Keying.Aligned, s_nowhere);
    }

    /// <summary>Says that one interface port is meant to reach another.</summary>
    /// <exception cref="ArgumentException">There is no such port.</exception>
    public static void AddLink(this PlantBuilder builder, string from, string to) =>
        builder.AddLink(new LinkEnd(builder.PortAt(from), 0), new LinkEnd(builder.PortAt(to), 0), s_nowhere);

    /// <summary>The port with an address <c>PART/PORT</c>.</summary>
    /// <exception cref="ArgumentException">There is no such part or port.</exception>
    public static PortRef PortAt(this PlantBuilder builder, string address)
    {
        int stroke = address.LastIndexOf('/');
        int part = stroke < 0 ? -1 : Find(builder, address[..stroke]);
        int port = part < 0 ? -1 : builder.Part(part).Shape.FindPort(address[(stroke + 1)..]);
        if (port >= 0)
            return new PortRef(part, port);
        throw new ArgumentException(
            part < 0
                ? $"there is no part for '{address}'; an address is PART/PORT"
                : $"{builder.Part(part).Name} has no port for '{address}'; it has {string.Join(", ", builder.Part(part).Shape.Ports.Select(p => p.Name))}",
            nameof(address));
    }

    private static int Find(PlantBuilder builder, string name)
    {
        for (int i = 0; i < builder.Parts.Count; i++)
        {
            if (builder.Parts[i].Name == name)
                return i;
        }

        return -1;
    }
}
