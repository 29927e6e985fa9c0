using PolarityMap.Cli.Output;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Optics;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Commands;

/// <summary>Something that <c>explain</c> can print.</summary>
/// <param name="Name">The word that asks for it; letter case does not matter.</param>
/// <param name="WriteText">Prints it for people.</param>
/// <param name="WriteJson">Prints it for programs.</param>
internal sealed record ExplainTopic(string Name, Action<CommandContext> WriteText, Action<TextWriter> WriteJson);

/// <summary>The one list of what <c>explain</c> can print.</summary>
internal static class ExplainTopics
{
    /// <summary>Rules, then the loss formula, then applications, then classes of fibre, then ways of being built wrong.</summary>
    public static IEnumerable<ExplainTopic> All()
    {
        foreach (Rule rule in RuleCatalogue.All)
            yield return new(rule.Code, c => RuleText.Write(rule, c), o => RuleJson.Write([rule], o));
        yield return new("budget", LimitsText.Write, LimitsJson.Write);
        foreach (Core.Optics.Application application in Core.Optics.Application.All)
            yield return new(application.Name, c => ApplicationText.Write(application, c), o => ApplicationJson.Write(application, o));
        foreach (FibreClass fibre in FibreClass.All)
            yield return new(fibre.Name, c => FibreText.Write(fibre, c), o => FibreJson.Write(fibre, o));
        yield return new("deviations", DeviationText.WriteList, o => DeviationJson.Write(DeviationCatalogue.All, o));
        foreach (DeviationKind kind in DeviationCatalogue.All)
            yield return new(kind.Name, c => DeviationText.Write(kind, c), o => DeviationJson.Write([kind], o));
    }

    /// <exception cref="CallException">There is no such topic.</exception>
    public static ExplainTopic Find(string wanted)
    {
        foreach (ExplainTopic topic in All())
        {
            if (string.Equals(topic.Name, wanted, StringComparison.OrdinalIgnoreCase))
                return topic;
        }

        string[] others = [.. Core.Optics.Application.All.Where(a => a.Note is { } note && note.Contains($"called {wanted},", StringComparison.OrdinalIgnoreCase)).Select(a => a.Name)];
        string? near = others.Length > 0 ? string.Join("' or '", others) : NearestWord.Find(wanted, All().Select(t => t.Name));
        string expected = IsCode(wanted)
            ? $"there is no rule '{wanted}'; expected one of {string.Join(", ", RuleCatalogue.All.Select(r => r.Code))}"
            : $"there is nothing called '{wanted}' to explain; expected a rule's code, 'budget', an application, a class of fibre or a deviation ('polaritymap explain' lists them)";
        throw new CallException(expected + (near is null ? "" : $"; did you mean '{near}'?"));
    }

    /// <summary>Lists what there is besides rules.</summary>
    public static void WriteOthers(CommandContext context)
    {
        var paint = new Paint(context.Colour);
        context.Out.WriteLine(paint.Strong("loss formula and limits"));
        context.Out.WriteLine("  budget");
        context.Out.WriteLine(paint.Strong("applications"));
        Wrapped.Write(context.Out, string.Join(", ", Core.Optics.Application.Names));
        context.Out.WriteLine(paint.Strong("classes of fibre"));
        Wrapped.Write(context.Out, string.Join(", ", FibreClass.Names));
        context.Out.WriteLine(paint.Strong("deviations, ways of being built wrong"));
        Wrapped.Write(context.Out, string.Join(", ", DeviationCatalogue.All.Select(k => k.Name).Prepend("deviations")));
    }

    /// <summary>A letter and two digits, as rules are numbered.</summary>
    private static bool IsCode(string wanted) => wanted.Length == 3 && char.IsAsciiLetter(wanted[0]) && char.IsAsciiDigit(wanted[1]) && char.IsAsciiDigit(wanted[2]);
}
