using System.CommandLine;
using PolarityMap.Cli.Input;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Planning;
using PolarityMap.Documents.Planning;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Commands;

/// <summary><c>plan BRIEF -o PLANT</c>: makes a proven plant document of a brief, or says what cannot be met and what can.</summary>
internal sealed class PlanCommand : ICommandFile
{
    public Command Build(CommandContext context)
    {
        var brief = new BriefArgument();
        Option<string> format = CommonOptions.Format();
        Option<string?> output = CommonOptions.Output("The plant document to write, with --compare a figure ending in .svg, .pdf or .png; without it nothing is written, only told.");
        var parts = new Option<string?>("--parts") { Description = "Write the parts list to this .csv or .xlsx as well.", HelpName = "PATH" };
        var method = new Option<string?>("--method") { Description = "Plan with this method, whatever the brief says.", HelpName = string.Join('|', BriefKeys.Methods) };
        method.AcceptOnlyFromAmong([.. BriefKeys.Methods]);
        var array = new Option<string?>("--base") { Description = "Plan with so many fibres in an array connector, whatever the brief says.", HelpName = string.Join('|', BriefKeys.Bases) };
        array.AcceptOnlyFromAmong([.. BriefKeys.Bases]);
        var compare = new Option<bool>("--compare") { Description = "Set every method and base side by side instead, whatever the brief says; -o is a figure then, and --parts a price list to fill in." };
        var weights = new Option<string?>("--weights") { Description = $"How much each measure counts, before what the brief says: {string.Join(", ", PlanWeights.Names)}.", HelpName = "NAME=NUMBER,…" };
        var bare = new Option<bool>("--without-font") { Description = "Leave the font out of an SVG of the comparison, as in 'draw'." };
        var from = new Option<string?>("--from") { Description = "The plant that is there: plan how it grows to the brief.", HelpName = "PLANT" };
        var to = new Option<string?>("--to") { Description = "The brief that it is to meet; with --from only.", HelpName = "BRIEF" };
        var force = new Option<bool>("--force") { Description = "Write over files that are there." };
        var command = new Command("plan",
            """
            Plan a plant from a brief: choose the method, build every channel, prove it, count the parts.

            A plan is written only when every link is proven and the check finds nothing. Otherwise each requirement that cannot be
            met is told with its reason and the nearest that can; each of those was planned as well. docs/plan.md tells the keys of
            a brief.

            With --compare every method and base is built and proven, and those that serve stand side by side, the best by your
            weights first: kinds and numbers of parts, fibres, matings, margin, what has to be bought later, and prices where the
            brief names a price list. What cannot serve is told with the code of the finding that says so.

            Exit status: 0 planned, 1 the brief cannot be met, 2 the brief or the call is wrong.

            Examples:
              polaritymap new --brief brief.yaml
              polaritymap plan brief.yaml
              polaritymap plan brief.yaml -o plant.yaml --parts parts.csv
              polaritymap plan brief.yaml --method U1 --base 12
              polaritymap plan brief.yaml --format json > plan.json
              polaritymap plan brief.yaml --compare
              polaritymap plan brief.yaml --compare --weights kinds=2,idle=5 -o comparison.pdf
              polaritymap plan brief.yaml --compare --parts prices.csv
              polaritymap plan --from plant.yaml --to brief.yaml -o grown.yaml
            """) { brief, format, output, parts, method, array, compare, weights, bare, from, to, force };
        command.SetAction(parsed =>
        {
            string form = parsed.GetValue(format)!;
            string? existing = parsed.GetValue(from);
            if (existing is not null && parsed.GetValue(compare))
                throw new CallException("--compare plans anew; leave it out with --from");
            string path = GrowthCall.Brief(parsed.GetValue(brief), existing, parsed.GetValue(to));
            string? target = parsed.GetValue(output), list = parsed.GetValue(parts);
            var targets = new PlanTargets(target, list);
            bool comparing = parsed.GetValue(compare);
            targets.Check(context, path, existing, comparing, parsed.GetValue(force));
            var problems = new ProblemList();
            if (BriefDocument.Read(path, new FileSource(context), problems, context.Reading.AllowOutside, p => comparing && targets.IsYetToCome(context, p)) is not { } read)
            {
                if (form == "json")
                    ProblemJson.Write(problems, context.Out);
                else
                    context.Error.Write(problems.ToString());
                return ExitStatus.Wrong;
            }

            if (parsed.GetValue(weights) is { } weighed)
                read = read with { Weights = WeightsOf(weighed, read.Weights) };
            if (comparing)
                return Compare(context, read, parsed.GetValue(method), parsed.GetValue(array), form, target, list, !parsed.GetValue(bare));
            if (parsed.GetValue(method) is { } asked)
                read = read with { Method = PlanMethod.Find(asked) };
            if (parsed.GetValue(array) is { } fibres)
                read = read with { Base = BriefKeys.BaseOf(fibres) };
            if (existing is not null)
                return GrowthCall.Run(context, existing, read, form, (target, list));
            PlanResult result = Planner.Plan(read);
            IReadOnlyList<string> written = result.Chosen is { } chosen ? PlanFiles.Write(context, chosen, target, list) : [];
            if (form == "json")
                PlanJson.Write(result, written, context.Out);
            else
                new PlanResultText(context).Write(result, written);
            return result.Chosen is null ? ExitStatus.Findings : ExitStatus.Clean;
        });
        return command;
    }

    /// <summary>Every method and base side by side, but for those that the call leaves out.</summary>
    private static int Compare(CommandContext context, Brief brief, string? method, string? array, string form, string? figure, string? parts, bool embedFont)
    {
        bool Asked(PlanCandidate candidate) => (brief.Method ?? (object?)brief.Base) is not null
            && (brief.Method is null || brief.Method == candidate.Method) && (brief.Base is null || brief.Base == candidate.Base);
        PlanComparison comparison = PlanComparison.Of(brief with { Method = method is null ? null : PlanMethod.Find(method), Base = array is null ? null : BriefKeys.BaseOf(array) });
        IReadOnlyList<string> written = ComparisonFiles.Write(context, comparison, Asked, figure, parts, embedFont);
        if (form == "json")
            ComparisonJson.Write(comparison, Asked, written, context.Out);
        else
            new ComparisonText(context).Write(comparison, written);
        return comparison.Plans.Count == 0 ? ExitStatus.Findings : ExitStatus.Clean;
    }

    /// <summary>Weights as a call writes them, over those that are there.</summary>
    /// <exception cref="CallException">They are written otherwise.</exception>
    private static PlanWeights WeightsOf(string text, PlanWeights weights)
    {
        foreach (string one in text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            string[] sides = one.Split('=', StringSplitOptions.TrimEntries);
            if (!PlanWeights.Names.Contains(sides[0]))
                throw new CallException($"there is no weight '{sides[0]}'; expected one of {string.Join(", ", PlanWeights.Names)}{(NearestWord.Find(sides[0], PlanWeights.Names) is { } near ? $"; did you mean {near}?" : "")}");
            if (sides.Length != 2 || !PlanWeightWords.TryParse(sides[1], out decimal weight))
                throw new CallException($"'{one}' is no weight; expected {sides[0]}= and {PlanWeightWords.Expected}, such as {sides[0]}=3");
            weights = weights.With(sides[0], weight);
        }

        return weights;
    }
}
