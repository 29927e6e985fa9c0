namespace PolarityMap.Core.Parts;

/// <summary>An attribute value that cannot be built, with the attribute it belongs to.</summary>
public sealed record AttributeFault(string Attribute, string Message);

/// <summary>
/// A kind of part: it turns attributes into a <see cref="Shape"/> and does nothing else. One file per kind, listed in
/// <see cref="PartKinds"/>.
/// </summary>
public abstract class PartKind
{
    /// <summary>Attributes that every part takes.</summary>
    public static readonly IReadOnlyList<AttributeSpec> Common =
    [
        new("network", AttributeSort.Network, "The physically separate network the part belongs to."),
        new("room", AttributeSort.Text, "Where the part is."),
        new("note", AttributeSort.Text, "Free text, printed with the part."),
    ];

    /// <summary>The cable length attribute, common to cords, trunks and harnesses.</summary>
    protected static readonly AttributeSpec LengthOfCable = new("length", AttributeSort.Length, "Length of the cable with its unit, such as '62 m'.");

    private IReadOnlyList<AttributeSpec>? _all;

    /// <summary>The kind's name in documents.</summary>
    public abstract string Name { get; }

    /// <summary>One sentence on what it is.</summary>
    public abstract string Summary { get; }

    /// <summary>The kind's own attributes, without <see cref="Common"/>.</summary>
    public abstract IReadOnlyList<AttributeSpec> Attributes { get; }

    /// <summary>The kind's own attributes and <see cref="Common"/>.</summary>
    public IReadOnlyList<AttributeSpec> AllAttributes => _all ??= [.. Attributes, .. Common];

    /// <summary>True when the kind takes an attribute of this name.</summary>
    public bool Has(string attribute)
    {
        foreach (AttributeSpec spec in AllAttributes)
        {
            if (spec.Name == attribute)
                return true;
        }

        return false;
    }

    /// <summary>True for cords and the like, which a run may mention without naming them.</summary>
    public virtual bool IsCable => false;

    /// <summary>True for patch cords, which hands plug and unplug; other cables stay where they are laid.</summary>
    public virtual bool IsCord => false;

    /// <summary>The word of <c>pins</c> that a plant which pins its trunks has in mind for this kind, or null where it makes no difference.</summary>
    public virtual string? PinsBesidePinnedTrunks => null;

    /// <summary>Builds the shape, or reports faults and returns null.</summary>
    public abstract Shape? Build(AttributeValues values, List<AttributeFault> faults);

    /// <summary>One or two short lines for a drawing: what the part is, such as <c>trunk</c> and <c>Type-B</c>.</summary>
    public abstract IReadOnlyList<string> Caption(AttributeValues values);
}
