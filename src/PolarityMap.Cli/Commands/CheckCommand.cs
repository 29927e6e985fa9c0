using System.CommandLine;
using PolarityMap.Cli.Input;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Checks;

namespace PolarityMap.Cli.Commands;

/// <summary><c>check PLANT</c>: traces a plant and proves or refutes each link.</summary>
internal sealed class CheckCommand : ICommandFile
{
    public Command Build(CommandContext context)
    {
        Argument<string> plant = CommonOptions.Plant();
        Option<string> format = CommonOptions.Format("sarif");
        var every = new Option<bool>("--every") { Description = "Write out every finding, also those that are alike." };
        var command = new Command("check",
            """
            Trace a plant and prove or refute each link.

            Exit status: 0 clean, 1 findings of severity error, 2 the document or the call is wrong.

            Examples:
              polaritymap check plant.yaml
              polaritymap check as-built.yaml --every
              polaritymap check plant.yaml --format json > findings.json
              polaritymap check plant.yaml --format sarif > findings.sarif      for editors and build servers
            """) { plant, format, every };
        command.SetAction(parsed =>
        {
            string form = parsed.GetValue(format)!;
            if (PlantFile.Trace(parsed.GetValue(plant)!, form, context) is not { } traced)
                return ExitStatus.Wrong;
            CheckReport report = CheckReport.Of(traced);
            if (form == "json")
                CheckJson.Write(report, context.Out);
            else if (form == "sarif")
                context.Out.Write(System.Text.Encoding.UTF8.GetString(DataFiles.Sarif(report)));
            else
                new CheckText(context, parsed.GetValue(every)).Write(report);
            return report.Errors > 0 ? ExitStatus.Findings : ExitStatus.Clean;
        });
        return command;
    }
}
