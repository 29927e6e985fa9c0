using PolarityMap.Core.Parts;

namespace PolarityMap.Cli.Output;

/// <summary>An entry of the catalogue: a kind, or a type that fixes some of a kind's attributes, with an example of its shape.</summary>
/// <param name="Name">The name a document writes.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Fixed">The attributes that the name fixes.</param>
/// <param name="Shape">The shape with every attribute that is not fixed as it is by default, or the first that there is.</param>
internal sealed record CataloguePart(string Name, PartKind Kind, IReadOnlyList<(string Attribute, string Word)> Fixed, Shape Shape)
{
    /// <summary>Fibres of a cable, splice or termination in its example.</summary>
    private const int ExampleFibres = 4;

    /// <summary>Every kind, each followed by its types.</summary>
    public static IReadOnlyList<CataloguePart> All()
    {
        var parts = new List<CataloguePart>();
        foreach (PartKind kind in PartKinds.All)
        {
            if (ShapeOf(kind, new AttributeValues(kind.AllAttributes)) is { } shape)
                parts.Add(new CataloguePart(kind.Name, kind, [], shape));
            foreach (CatalogueType type in Catalogue.All)
            {
                if (type.Kind == kind.Name && ShapeOf(kind, type.Values()) is { } own)
                    parts.Add(new CataloguePart(type.Name, kind, type.Fixed, own));
            }
        }

        return parts;
    }

    private static Shape? ShapeOf(PartKind kind, AttributeValues values)
    {
        foreach (AttributeSpec spec in kind.Attributes)
        {
            if (values.Has(spec.Name) || (!spec.Required && spec.Name != "type"))
                continue;
            if (spec.Words.Count > 0)
                values.Set(spec.Name, spec.Words[0]);
            else if (spec.Sort == AttributeSort.WholeNumber)
                values.Set(spec.Name, ExampleFibres);
        }

        return kind.Build(values, []);
    }
}
