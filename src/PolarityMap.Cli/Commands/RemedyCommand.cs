using System.CommandLine;
using PolarityMap.Cli.Input;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Remedies;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Commands;

/// <summary><c>remedy PLANT</c>: the smallest changes that clear each finding, proved, and the fewest for the whole plant.</summary>
internal sealed class RemedyCommand : ICommandFile
{
    public Command Build(CommandContext context)
    {
        Argument<string> plant = CommonOptions.Plant();
        Option<string> format = CommonOptions.Format();
        var code = new Option<string?>("--code") { Description = "Only findings with this code, such as P01.", HelpName = "CODE" };
        var apply = new Option<bool>("--apply") { Description = "Write the plan into the document as as-built differences." };
        Option<string?> output = CommonOptions.Output("With --apply: write the document here and leave PLANT as it is.");
        var all = new Option<bool>("--all") { Description = "Every finding and every remedy, not only the first few." };
        var command = new Command("remedy",
            """
            Find the smallest changes that clear each finding without raising another.

            First the plan: the fewest changes for the whole plant, so that one trunk comes before twelve cords. Then for each
            finding what else would clear it, with the minutes that it takes (common practice). Each is proved by tracing and
            checking the whole plant again. With --apply the plan goes into the document as an as-built section.

            Exit status: 0 nothing to remedy, 1 something was found, with --apply something is left; 2 the document or the call is
            wrong.

            Examples:
              polaritymap remedy plant.yaml
              polaritymap remedy plant.yaml --code P01 --all
              polaritymap remedy plant.yaml --apply -o repaired.yaml
              polaritymap remedy plant.yaml --format json > remedies.json
            """) { plant, code, apply, output, format, all };
        command.SetAction(parsed =>
        {
            string form = parsed.GetValue(format)!;
            string path = parsed.GetValue(plant)!;
            Rule? rule = parsed.GetValue(code) is { } wanted ? RuleOf(wanted) : null;
            if (parsed.GetValue(output) is not null && !parsed.GetValue(apply))
                throw new CallException("--output says where --apply writes to; add --apply");
            if (PlantFile.Trace(path, form, context) is not { } traced)
                return ExitStatus.Wrong;
            RemedyResult result = Search(traced, rule);
            string? written = null;
            if (parsed.GetValue(apply) && result.Plan is not null)
            {
                written = parsed.GetValue(output) ?? path;
                new RemedyWriter(context).Write(path, written, result);
            }

            if (form == "json")
                RemedyJson.Write(result, written, context.Out);
            else
                new RemedyText(context, parsed.GetValue(all)).Write(result, path, written);
            int left = written is null ? result.Findings.Count : result.Plan!.Remaining.Count;
            return left > 0 ? ExitStatus.Findings : ExitStatus.Clean;
        });
        return command;
    }

    private static RemedyResult Search(TracedPlant traced, Rule? rule)
    {
        CheckReport report = CheckReport.Of(traced);
        return RemedySearch.Of(report, new RemedyOptions { Wanted = rule is null ? null : i => report.Findings[i].Rule == rule });
    }

    private static Rule RuleOf(string code)
    {
        if (RuleCatalogue.Find(code) is { } rule)
            return rule;
        string? near = NearestWord.Find(code, RuleCatalogue.All.Select(r => r.Code));
        throw new CallException($"there is no rule '{code}'; 'polaritymap explain' lists them" + (near is null ? "" : $"; did you mean '{near}'?"));
    }
}
