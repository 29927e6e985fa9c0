using System.CommandLine;
using PolarityMap.Cli.Input;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Cli.Commands;

/// <summary><c>export PLANT -o OUT</c>: writes schedules for spreadsheet programs.</summary>
internal sealed class ExportCommand : ICommandFile
{
    public Command Build(CommandContext context)
    {
        string[] names = [.. ScheduleCatalogue.All.Select(s => s.Name)];
        Argument<string> plant = CommonOptions.Plant();
        Option<string?> output = CommonOptions.Output("Where to write: a .xlsx with a sheet for each schedule, a folder with a .csv for each, or a .csv of one.");
        output.Required = true;
        var schedule = new Option<string?>("--schedule") { Description = $"Only this schedule: {string.Join(", ", names)}.", HelpName = "NAME" };
        var command = new Command("export",
            """
            Write the schedules of a plant as a workbook or as CSV.

            Connections strand by strand, patching, cables, parts, labels, test sheets, field terminations, networks, and what is
            said once for the plant. 'polaritymap import' reads the connections back. docs/tables.md tells every column.

            Exit status: 0 written, also when something was found in the plant; 2 the document or the call is wrong, nothing is written.

            Examples:
              polaritymap export plant.yaml -o schedules.xlsx
              polaritymap export plant.yaml -o tables/
              polaritymap export plant.yaml --schedule patching -o patching.csv
            """) { plant, output, schedule };
        command.SetAction(parsed =>
        {
            string target = parsed.GetValue(output)!;
            string? wanted = parsed.GetValue(schedule);
            _ = DrawChoice.IndexOf(wanted, "schedule", names);
            ScheduleFiles.Check(context, target, wanted);
            if (PlantFile.Trace(parsed.GetValue(plant)!, "text", context) is not { } traced)
                return ExitStatus.Wrong;
            ScheduleInput input = ScheduleInput.Of(traced);
            foreach (string line in ScheduleFiles.Write(context, target, [.. ScheduleCatalogue.All.Where(s => wanted is null || s.Name == wanted)], input))
                context.Out.WriteLine(line);
            int errors = Checker.Check(input.Checks).Count(f => f.Rule.Severity == Severity.Error);
            if (errors > 0)
                context.Out.WriteLine($"The plant has {(errors == 1 ? "1 error" : $"{errors} errors")}; 'polaritymap check {parsed.GetValue(plant)}' tells {(errors == 1 ? "it" : "them")}. Build nothing by these schedules before.");
            return ExitStatus.Clean;
        });
        return command;
    }
}
