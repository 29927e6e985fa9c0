using System.CommandLine;
using System.Text;
using PolarityMap.Cli.Input;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Checks;

namespace PolarityMap.Cli.Commands;

/// <summary>
/// <c>data PLANT WHAT</c>: the whole plant, its strands or its findings as JSON. A command of its own, because <c>trace</c>
/// asks for an address and <c>check</c> for a verdict; each of the three has the name of its schema.
/// </summary>
internal sealed class DataCommand : ICommandFile
{
    private static readonly IReadOnlyList<(string What, Func<CheckReport, byte[]> Write)> Texts =
        [("plant", DataFiles.Plant), ("strands", DataFiles.Strands), ("findings", DataFiles.Findings)];

    public Command Build(CommandContext context)
    {
        Argument<string> plant = CommonOptions.Plant();
        var what = new Argument<string>("WHAT") { HelpName = "WHAT", Description = "plant: networks, parts, ports, matings, links. strands: every strand with its hops. findings: verdict, links, findings." };
        what.AcceptOnlyFromAmong([.. Texts.Select(t => t.What)]);
        Option<string?> output = CommonOptions.Output("Write to this file instead of the terminal.");
        var command = new Command("data",
            """
            Hand a plant, all its strands or its findings to other programs as JSON.

            'polaritymap schema WHAT' prints the JSON Schema. Exit status: 0 written, also when something was found; 2 the
            document or the call is wrong.

            Examples:
              polaritymap data plant.yaml strands
              polaritymap data plant.yaml plant -o plant.json
              polaritymap data as-built.yaml findings -o findings.json
            """) { plant, what, output };
        command.SetAction(parsed =>
        {
            if (PlantFile.Trace(parsed.GetValue(plant)!, "json", context) is not { } traced)
                return ExitStatus.Wrong;
            string wanted = parsed.GetValue(what)!;
            string text = Encoding.UTF8.GetString(Texts.First(t => t.What == wanted).Write(CheckReport.Of(traced)));
            if (parsed.GetValue(output) is { } path)
                WholeFile.Write(context.FullPath(path), text);
            else
                context.Out.Write(text);
            return ExitStatus.Clean;
        });
        return command;
    }
}
