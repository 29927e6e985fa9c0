namespace PolarityMap.Core.Parts;

/// <summary>A generic part of the trade under the name that the standards give it.</summary>
/// <param name="Name">The name a document may write where a kind is expected.</param>
/// <param name="Kind">The part kind it is built from.</param>
/// <param name="Attribute">The attribute that the name fixes.</param>
/// <param name="Word">The value it fixes.</param>
public sealed record CatalogueType(string Name, string Kind, string Attribute, string Word);

/// <summary>The built-in types. A document's own <c>types</c> come before these.</summary>
public static class Catalogue
{
    public static readonly IReadOnlyList<CatalogueType> All =
    [
        new("A-to-B cord", "duplex cord", "type", "A-to-B"),
        new("A-to-A cord", "duplex cord", "type", "A-to-A"),
        new("Type-A cord", "array cord", "type", "Type-A"),
        new("Type-B cord", "array cord", "type", "Type-B"),
        new("Type-C cord", "array cord", "type", "Type-C"),
        new("Type-A trunk", "trunk", "type", "Type-A"),
        new("Type-B trunk", "trunk", "type", "Type-B"),
        new("Type-C trunk", "trunk", "type", "Type-C"),
        new("straight cassette", "cassette", "wiring", "straight"),
        new("straight-reversed cassette", "cassette", "wiring", "straight-reversed"),
        new("U1 cassette", "cassette", "wiring", "U1"),
        new("U2 cassette", "cassette", "wiring", "U2"),
    ];

    public static CatalogueType? Find(string name)
    {
        foreach (CatalogueType type in All)
        {
            if (type.Name == name)
                return type;
        }

        return null;
    }
}
