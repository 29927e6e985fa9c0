using PolarityMap.Core.Checks;

namespace PolarityMap.Cli.Output;

/// <summary>Rules for people.</summary>
internal static class RuleText
{
    private const int Width = 100;

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
        int column = 0;
        foreach (string word in text.Split(' '))
        {
            if (column > 0 && column + 1 + word.Length > Width)
            {
                output.WriteLine();
                column = 0;
            }

            output.Write(column == 0 ? "  " : " ");
            output.Write(word);
            column += word.Length + (column == 0 ? 2 : 1);
        }

        output.WriteLine();
    }

    private static void Document(TextWriter output, string head, string yaml, Paint paint)
    {
        output.WriteLine();
        output.WriteLine(paint.Strong(head));
        foreach (string line in yaml.TrimEnd('\n').Split('\n'))
            output.WriteLine($"  {line}");
    }
}
