using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Remedies;

/// <summary>An attribute with the value it is to have.</summary>
/// <param name="Attribute">Its name in a document.</param>
/// <param name="Value">The value as a document writes it between braces, without quotes.</param>
internal readonly record struct Setting(string Attribute, string Value)
{
    /// <summary>The numbers, where the value is a list of legs.</summary>
    public IReadOnlyList<int>? Legs { get; init; }

    /// <summary>The pairs, where the value is a list of them.</summary>
    public IReadOnlyList<DuplexPair>? Pairs { get; init; }

    /// <summary>True when the part has this value already, as far as it says one.</summary>
    public bool IsIn(AttributeValues values) => Legs is null && Pairs is null && values.Word(Attribute) == Value;

    public void SetIn(AttributeValues values)
    {
        if (Legs is not null)
            values.Set(Attribute, Legs);
        else if (Pairs is not null)
            values.Set(Attribute, Pairs);
        else
            values.Set(Attribute, Value);
    }
}
