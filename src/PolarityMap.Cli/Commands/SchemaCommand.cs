using System.CommandLine;
using PolarityMap.Cli.Output;
using PolarityMap.Documents.Schema;

namespace PolarityMap.Cli.Commands;

/// <summary><c>schema</c>: prints the JSON Schema of plant documents, for editors.</summary>
internal sealed class SchemaCommand : ICommandFile
{
    public Command Build(CommandContext context)
    {
        Option<string?> output = CommonOptions.Output("Write the schema to this file instead of the terminal.");
        var command = new Command("schema",
            """
            Print the JSON Schema (2020-12) of plant documents, so that an editor can help while you write.

            Examples:
              polaritymap schema -o plant.schema.json
              then begin a document with:  # yaml-language-server: $schema=plant.schema.json
            """) { output };
        command.SetAction(parsed =>
        {
            string schema = PlantSchema.Text();
            if (parsed.GetValue(output) is { } path)
                WholeFile.Write(context.FullPath(path), schema);
            else
                context.Out.Write(schema);
            return ExitStatus.Clean;
        });
        return command;
    }
}
