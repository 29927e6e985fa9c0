using System.CommandLine;
using PolarityMap.Cli.Input;
using PolarityMap.Cli.Output;

namespace PolarityMap.Cli.Commands;

/// <summary><c>trace PLANT ADDRESS</c>: follows what is at a port or position, hop by hop, both ways.</summary>
internal sealed class TraceCommand : ICommandFile
{
    public Command Build(CommandContext context)
    {
        Argument<string> plant = CommonOptions.Plant();
        var address = new Argument<string>("ADDRESS") { Description = "PART, PART/PORT or PART/PORT:POSITION; A or B is a position of a duplex port." };
        Option<string> format = CommonOptions.Format();
        var command = new Command("trace",
            """
            Follow the strands at a port or position, hop by hop, in both directions.

            Assume every fibre is live: trace on paper before you unplug, and never look into a fibre end.

            Examples:
              polaritymap trace plant.yaml SW-L/1
              polaritymap trace plant.yaml SW-L/1:A
              polaritymap trace plant.yaml TRUNK/near:7 --format json
            """) { plant, address, format };
        command.SetAction(parsed =>
        {
            string form = parsed.GetValue(format)!;
            if (PlantFile.Trace(parsed.GetValue(plant)!, form, context) is not { } traced)
                return ExitStatus.Wrong;
            IReadOnlyList<int> positions = AddressFinder.Find(traced, parsed.GetValue(address)!);
            if (form == "json")
                TraceJson.Write(traced, positions, context.Out);
            else
                TraceText.Write(traced, positions, context);
            return ExitStatus.Clean;
        });
        return command;
    }
}
