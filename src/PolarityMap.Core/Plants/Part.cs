using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Plants;

/// <summary>
/// A part of the plant with the shape that its kind built. All but the name is kept in one record that parts made by
/// <c>with</c> share, since one line of a document makes thousands that differ in nothing else.
/// </summary>
public sealed record Part
{
    private Description _is;

    /// <param name="name">Its name.</param>
    /// <param name="kind">The name of its kind.</param>
    /// <param name="shape">The shape that the kind built.</param>
    /// <param name="place">Where the document describes it.</param>
    public Part(string name, string kind, Shape shape, SourcePlace place)
    {
        Name = name;
        _is = new Description(kind, shape, place);
    }

    public string Name { get; init; }

    public string Kind => _is.Kind;

    public Shape Shape
    {
        get => _is.Shape;
        init => _is = _is with { Shape = value };
    }

    /// <summary>Where the document describes it.</summary>
    public SourcePlace Place
    {
        get => _is.Place;
        init => _is = _is with { Place = value };
    }

    /// <summary>Index into <see cref="Plant.Networks"/>, or -1.</summary>
    public int Network
    {
        get => _is.Network;
        init => _is = _is with { Network = value };
    }

    /// <summary>One or two short lines on what it is.</summary>
    public IReadOnlyList<string> Caption
    {
        get => _is.Caption;
        init => _is = _is with { Caption = value };
    }

    /// <summary>For each duplex port in order its network, or empty when all belong to <see cref="Network"/>.</summary>
    public IReadOnlyList<int> PortNetworks
    {
        get => _is.PortNetworks;
        init => _is = _is with { PortNetworks = value };
    }

    public Length? Length
    {
        get => _is.Length;
        init => _is = _is with { Length = value };
    }

    /// <summary>The fibre class, or null when it is not stated or the part has no fibre.</summary>
    public FibreClass? Fibre
    {
        get => _is.Fibre;
        init => _is = _is with { Fibre = value };
    }

    /// <summary>The largest attenuation that the part states, or null.</summary>
    public Attenuation? Attenuation
    {
        get => _is.Attenuation;
        init => _is = _is with { Attenuation = value };
    }

    /// <summary>The largest loss of a splice in the part that is stated, or null.</summary>
    public Decibel? SpliceLoss
    {
        get => _is.SpliceLoss;
        init => _is = _is with { SpliceLoss = value };
    }

    /// <summary>Colour word of the jacket, or null.</summary>
    public string? Jacket
    {
        get => _is.Jacket;
        init => _is = _is with { Jacket = value };
    }

    /// <summary>Key code of the part's own duplex connectors, or null when they follow the network.</summary>
    public string? Key
    {
        get => _is.Key;
        init => _is = _is with { Key = value };
    }

    /// <summary>True when the two plugs of an end can change places in the field.</summary>
    public bool IsReversible
    {
        get => _is.IsReversible;
        init => _is = _is with { IsReversible = value };
    }

    public string? Room
    {
        get => _is.Room;
        init => _is = _is with { Room = value };
    }

    public string? Note
    {
        get => _is.Note;
        init => _is = _is with { Note = value };
    }

    /// <summary>Legs left over on purpose.</summary>
    public IReadOnlyList<int> SpareLegs
    {
        get => _is.SpareLegs;
        init => _is = _is with { SpareLegs = value };
    }

    /// <summary>True when an as-built difference describes the part; its place is then that of the difference.</summary>
    public bool IsAsBuilt
    {
        get => _is.IsAsBuilt;
        init => _is = _is with { IsAsBuilt = value };
    }

    /// <summary>True for a cord that a run mentions without naming it.</summary>
    public bool IsInline
    {
        get => _is.IsInline;
        init => _is = _is with { IsInline = value };
    }

    /// <summary>What was said of the part, for those who write it out again; null where its shape was built by hand.</summary>
    public AttributeValues? Values
    {
        get => _is.Values;
        init => _is = _is with { Values = value };
    }

    private sealed record Description(string Kind, Shape Shape, SourcePlace Place)
    {
        public int Network { get; init; } = -1;

        public IReadOnlyList<string> Caption { get; init; } = [];

        public IReadOnlyList<int> PortNetworks { get; init; } = [];

        public Length? Length { get; init; }

        public FibreClass? Fibre { get; init; }

        public Attenuation? Attenuation { get; init; }

        public Decibel? SpliceLoss { get; init; }

        public string? Jacket { get; init; }

        public string? Key { get; init; }

        public bool IsReversible { get; init; }

        public string? Room { get; init; }

        public string? Note { get; init; }

        public IReadOnlyList<int> SpareLegs { get; init; } = [];

        public bool IsAsBuilt { get; init; }

        public bool IsInline { get; init; }

        public AttributeValues? Values { get; init; }
    }
}
