using System.Globalization;
using PolarityMap.Core.Deviations;

namespace PolarityMap.Cli.Output;

/// <summary>Kinds of deviations, ways in which plants get built wrong, for people.</summary>
internal static class DeviationText
{
    public static void WriteList(CommandContext context)
    {
        var paint = new Paint(context.Colour);
        context.Out.WriteLine(paint.Strong("deviations: ways in which plants get built wrong"));
        var table = new TextTable("  ", "name", "weight", "look", "mend", "what is wrong");
        foreach (DeviationKind kind in DeviationCatalogue.All)
            table.Add(kind.Name, Number(kind.Weight, 6), Look(kind), Number(kind.MendMinutes, 4), kind.Title);
        table.Write(context.Out, paint);
        context.Out.WriteLine();
        Wrapped.Write(context.Out,
            "Weight: how often it happens beside the others at a place where it can; look and mend: minutes, a dash where looking does not show it. " +
            "All three are common practice: an order, not a measurement. 'polaritymap explain NAME' tells one of them whole.");
    }

    public static void Write(DeviationKind kind, CommandContext context)
    {
        TextWriter output = context.Out;
        var paint = new Paint(context.Colour);
        output.WriteLine(paint.Strong($"{kind.Name}: {kind.Title}"));
        Wrapped.Write(output, kind.Symptom, "  what one sees  ");
        Wrapped.Write(output, $"{Number(kind.Weight)} beside the other deviations at a place where it can happen; common practice", "  weight         ");
        string look = kind.LookMinutes > 0 ? $"{kind.LookMinutes} minutes to see it by looking" : "looking at the part does not show it";
        Wrapped.Write(output, $"{look}, {kind.MendMinutes} {(kind.MendMinutes == 1 ? "minute" : "minutes")} to put it right; common practice", "  work           ");
        Wrapped.Write(output, kind.Source, "  source         ");
        output.WriteLine();
        output.WriteLine(paint.Strong("Take care"));
        Wrapped.Write(output, kind.Caution);
    }

    private static string Look(DeviationKind kind) => kind.LookMinutes > 0 ? Number(kind.LookMinutes, 4) : "   -";

    private static string Number(double value, int width = 0) => value.ToString("0.##", CultureInfo.InvariantCulture).PadLeft(width);
}
