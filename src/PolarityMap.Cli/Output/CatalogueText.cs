using PolarityMap.Core.Parts;

namespace PolarityMap.Cli.Output;

/// <summary>The catalogue for people.</summary>
internal static class CatalogueText
{
    public static void WriteList(IReadOnlyList<CataloguePart> parts, CommandContext context)
    {
        var paint = new Paint(context.Colour);
        int widest = parts.Max(p => p.Name.Length);
        PartKind? kind = null;
        foreach (CataloguePart part in parts)
        {
            if (part.Kind != kind)
            {
                kind = part.Kind;
                context.Out.WriteLine();
                context.Out.WriteLine($"{paint.Strong(kind.Name)}: {kind.Summary}");
            }

            context.Out.WriteLine($"  {part.Name.PadRight(widest)}  {ShapeText.Line(part.Shape)}".TrimEnd());
        }

        context.Out.WriteLine();
        context.Out.WriteLine(paint.Faint("'polaritymap catalogue PART' draws a part in full; 'polaritymap schema' has every attribute."));
    }

    public static void Write(CataloguePart part, CommandContext context)
    {
        var paint = new Paint(context.Colour);
        TextWriter output = context.Out;
        output.WriteLine(paint.Strong(part.Name));
        output.WriteLine(part.Kind.Summary);
        if (part.Fixed.Count > 0)
            output.WriteLine($"kind: {part.Kind.Name}, {string.Join(", ", part.Fixed.Select(f => $"{f.Attribute}: {f.Word}"))}");
        if (Meaning(part) is { } meaning)
            output.WriteLine(meaning);
        output.WriteLine();
        foreach (string line in ShapeText.Lines(part.Shape))
            output.WriteLine($"  {line}");
        output.WriteLine();
        output.WriteLine("attributes");
        int widest = part.Kind.AllAttributes.Max(a => a.Name.Length);
        foreach (AttributeSpec spec in part.Kind.AllAttributes)
        {
            string values = spec.Words.Count > 0 ? string.Join(" | ", spec.Words) : spec.Numbers.Count > 0 ? string.Join(" | ", spec.Numbers) : "";
            string standard = spec.Default is { } word ? $" (default {word})" : spec.Required ? " (needed)" : "";
            output.WriteLine($"  {spec.Name.PadRight(widest)}  {spec.Meaning}{standard}");
            if (values.Length > 0)
                output.WriteLine($"  {"".PadRight(widest)}  {values}");
        }
    }

    /// <summary>What is known about the map, wiring or conversion that the name fixes.</summary>
    private static string? Meaning(CataloguePart part)
    {
        foreach ((string attribute, string word) in part.Fixed)
        {
            switch (attribute)
            {
                case "type" when ArrayMap.Names.Contains(word):
                    return $"{word}: {ArrayMap.ByName(word).Meaning}.";
                case "wiring" when Transition.Names.Contains(word):
                    return $"{word}: {Transition.ByName(word).Meaning}.";
                case "conversion":
                    return $"{word}: {Conversion.ByName(word).Meaning}.";
                default:
                    break;
            }
        }

        return null;
    }
}
