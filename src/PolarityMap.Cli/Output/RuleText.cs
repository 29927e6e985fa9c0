using PolarityMap.Core.Checks;

namespace PolarityMap.Cli.Output;

/// <summary>Rules for people.</summary>
internal static class RuleText
{
    public static void WriteList(CommandContext context)
    {
        string family = "";
        foreach (Rule rule in RuleCatalogue.All)
        {
            if (rule.Family != family)
            {
                family = rule.Family;
                context.Out.WriteLine(new Paint(context.Colour).Strong(family));
            }

            context.Out.WriteLine($"  {rule.Code}  {rule.Title}{(rule.Severity == Severity.Warning ? " (warning)" : "")}");
        }
    }

    public static void Write(Rule rule, CommandContext context)
    {
        TextWriter output = context.Out;
        var paint = new Paint(context.Colour);
        output.WriteLine(paint.Strong($"{rule.Code} {rule.Title}"));
        output.WriteLine($"{rule.Family}, {(rule.Severity == Severity.Error ? "error" : "warning")}");
        Paragraph(output, "Why", rule.Why, paint);
        Paragraph(output, "What clears it", rule.Clears, paint);
        Document(output, "A document that raises it", rule.Example, paint);
        Document(output, "The same repaired", rule.Repaired, paint);
        Paragraph(output, "Source", rule.Source, paint);
    }

    private static void Paragraph(TextWriter output, string head, string text, Paint paint)
    {
        output.WriteLine();
        output.WriteLine(paint.Strong(head));
        Wrapped.Write(output, text);
    }

    private static void Document(TextWriter output, string head, string yaml, Paint paint)
    {
        output.WriteLine();
        output.WriteLine(paint.Strong(head));
        foreach (string line in yaml.TrimEnd('\n').Split('\n'))
            output.WriteLine($"  {line}");
    }
}
