using System.CommandLine;
using PolarityMap.Cli.Input;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Checks;

namespace PolarityMap.Cli.Commands;

/// <summary><c>separation PLANT</c>: shows how the networks of a plant keep apart.</summary>
internal sealed class SeparationCommand : ICommandFile
{
    public Command Build(CommandContext context)
    {
        Argument<string> plant = CommonOptions.Plant();
        Option<string> format = CommonOptions.Format();
        var command = new Command("separation",
            """
            Show what the networks of a plant share and which cords fit where.

            A network says with may-share what it may share with others: sheath, cassette, array, panel. Without it nothing
            is judged.

            Exit status: 0 the networks keep apart as they should, 1 they do not, 2 the document or the call is wrong.

            Examples:
              polaritymap separation plant.yaml
              polaritymap separation as-built.yaml
              polaritymap separation plant.yaml --format json > separation.json
            """) { plant, format };
        command.SetAction(parsed =>
        {
            string form = parsed.GetValue(format)!;
            if (PlantFile.Trace(parsed.GetValue(plant)!, form, context) is not { } traced)
                return ExitStatus.Wrong;
            SeparationReport report = SeparationReport.Of(traced);
            if (form == "json")
                SeparationJson.Write(report, context.Out);
            else
                new SeparationText(context).Write(report);
            return report.Errors > 0 ? ExitStatus.Findings : ExitStatus.Clean;
        });
        return command;
    }
}
