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
        var brief = new Argument<string>("BRIEF") { Description = "What is wanted: a brief in YAML, such as 'polaritymap new --brief' writes." };
        Option<string> format = CommonOptions.Format();
        Option<string?> output = CommonOptions.Output("The plant document to write; without it nothing is written, only told.");
        var parts = new Option<string?>("--parts") { Description = "Write the parts list to this .csv or .xlsx as well.", HelpName = "PATH" };
        var method = new Option<string?>("--method") { Description = "Plan with this method, whatever the brief says.", HelpName = string.Join('|', BriefKeys.Methods) };
        method.AcceptOnlyFromAmong([.. BriefKeys.Methods]);
        var array = new Option<string?>("--base") { Description = "Plan with so many fibres in an array connector, whatever the brief says.", HelpName = string.Join('|', BriefKeys.Bases) };
        array.AcceptOnlyFromAmong([.. BriefKeys.Bases]);
        var force = new Option<bool>("--force") { Description = "Write over files that are there." };
        var command = new Command("plan",
            """
            Plan a plant from a brief: choose the method, build every channel, prove it, count the parts.

            A plan is written only when every link is proven and the check finds nothing. Otherwise each requirement that cannot be
            met is told with its reason and the nearest that can; each of those was planned as well. docs/plan.md tells the keys of
            a brief.

            Exit status: 0 planned, 1 the brief cannot be met, 2 the brief or the call is wrong.

            Examples:
              polaritymap new --brief brief.yaml
              polaritymap plan brief.yaml
              polaritymap plan brief.yaml -o plant.yaml --parts parts.csv
              polaritymap plan brief.yaml --method U1 --base 12
              polaritymap plan brief.yaml --format json > plan.json
            """) { brief, format, output, parts, method, array, force };
        command.SetAction(parsed =>
        {
            string path = parsed.GetValue(brief)!, form = parsed.GetValue(format)!;
            string? target = parsed.GetValue(output), list = parsed.GetValue(parts);
            if (list is not null)
                ScheduleFiles.Check(context, list, "parts");
            if (!parsed.GetValue(force) && new[] { target, list }.FirstOrDefault(p => p is not null && File.Exists(context.FullPath(p))) is { } there)
                throw new CallException($"'{there}' is there already; name another file, or add --force to write over it");
            var problems = new ProblemList();
            if (BriefDocument.Read(path, new FileSource(context), problems) is not { } read)
            {
                if (form == "json")
                    ProblemJson.Write(problems, context.Out);
                else
                    context.Error.Write(problems.ToString());
                return ExitStatus.Wrong;
            }

            if (parsed.GetValue(method) is { } asked)
                read = read with { Method = PlanMethod.Find(asked) };
            if (parsed.GetValue(array) is { } fibres)
                read = read with { Base = BriefKeys.BaseOf(fibres) };
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
}
