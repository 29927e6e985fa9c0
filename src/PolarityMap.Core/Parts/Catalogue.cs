using System.Globalization;

namespace PolarityMap.Core.Parts;

/// <summary>A generic part of the trade under the name that the standards give it, or that says what it does.</summary>
/// <param name="Name">The name a document may write where a kind is expected.</param>
/// <param name="Kind">The part kind it is built from.</param>
/// <param name="Fixed">The attributes that the name fixes, as a document would write them; the document may say otherwise.</param>
public sealed record CatalogueType(string Name, string Kind, IReadOnlyList<(string Attribute, string Word)> Fixed)
{
    /// <summary>The attributes it fixes, ready for the values of a part.</summary>
    public AttributeValues Values(PartDefaults? defaults = null)
    {
        PartKind kind = PartKinds.Find(Kind)!;
        var values = new AttributeValues(kind.AllAttributes, defaults);
        foreach ((string attribute, string word) in Fixed)
        {
            if (int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int number))
                values.Set(attribute, number);
            else
                values.Set(attribute, word);
        }

        return values;
    }
}

/// <summary>The built-in types. A document's own <c>types</c> come before these.</summary>
public static class Catalogue
{
    public static readonly IReadOnlyList<CatalogueType> All = Table();

    public static CatalogueType? Find(string name)
    {
        foreach (CatalogueType type in All)
        {
            if (type.Name == name)
                return type;
        }

        return null;
    }

    private static CatalogueType[] Table() =>
    [
        new("A-to-B cord", "duplex cord", [("type", "A-to-B")]),
        new("A-to-A cord", "duplex cord", [("type", "A-to-A")]),
        new("Type-A cord", "array cord", [("type", "Type-A")]),
        new("Type-B cord", "array cord", [("type", "Type-B")]),
        new("Type-C cord", "array cord", [("type", "Type-C")]),
        new("Type-A trunk", "trunk", [("type", "Type-A")]),
        new("Type-B trunk", "trunk", [("type", "Type-B")]),
        new("Type-C trunk", "trunk", [("type", "Type-C")]),
        new("straight cassette", "cassette", [("wiring", "straight")]),
        new("straight-reversed cassette", "cassette", [("wiring", "straight-reversed")]),
        new("U1 cassette", "cassette", [("wiring", "U1")]),
        new("U2 cassette", "cassette", [("wiring", "U2")]),
        new("4-leg harness", "harness", [("base", "8")]),
        new("6-leg harness", "harness", [("base", "12")]),
        new("8-leg harness", "harness", [("base", "16")]),
        new("12-leg harness", "harness", [("base", "24"), ("wiring", "straight")]),
        .. TwoRow("cord", "array cord"),
        .. TwoRow("trunk", "trunk"),
        .. TwoRowCassettes(),
        .. Conversions("module", "conversion module"),
        .. Conversions("harness", "conversion harness"),
        new("Type-A adapter panel", "array panel", [("keys", "opposed")]),
        new("Type-B adapter panel", "array panel", [("keys", "aligned")]),
        new("consecutive termination", "field termination", [("wiring", "consecutive")]),
        new("reverse-pair termination", "field termination", [("wiring", "reverse-pair")]),
    ];

    // Loops, since chained queries are generic code that is looked up anew at every start.
    private static List<CatalogueType> TwoRow(string noun, string kind)
    {
        var types = new List<CatalogueType>();
        foreach (string name in ArrayMap.NamesFor(2))
            types.Add(new CatalogueType($"{name} {noun}", kind, [("type", name), ("base", "24")]));
        return types;
    }

    private static List<CatalogueType> TwoRowCassettes()
    {
        var types = new List<CatalogueType>();
        foreach (string name in Transition.NamesFor(2))
        {
            if (name != "straight")
                types.Add(new CatalogueType($"{name} cassette", "cassette", [("wiring", name), ("base", "24")]));
        }

        return types;
    }

    private static List<CatalogueType> Conversions(string noun, string kind)
    {
        var types = new List<CatalogueType>();
        foreach (string name in Conversion.Names)
            types.Add(new CatalogueType($"{name} {noun}", kind, [("conversion", name)]));
        return types;
    }
}
