using System.CommandLine;
using PolarityMap.Cli.Output;
using PolarityMap.Documents.Schema;

namespace PolarityMap.Cli.Commands;

/// <summary><c>schema [NAME]</c>: prints the JSON Schema of plant documents, briefs or observation files, for editors, or of a text that the program writes.</summary>
internal sealed class SchemaCommand : ICommandFile
{
    public Command Build(CommandContext context)
    {
        Option<string?> output = CommonOptions.Output("Write the schema to this file instead of the terminal.");
        var name = new Argument<string?>("NAME") { HelpName = "NAME", Description = $"What the program writes: {string.Join(", ", OutputSchemas.Names)}; '{OutputSchemas.Seen}' for observation files, '{OutputSchemas.Brief}' for briefs; without it plant documents.", Arity = ArgumentArity.ZeroOrOne };
        name.AcceptOnlyFromAmong([.. OutputSchemas.Names, OutputSchemas.Seen, OutputSchemas.Brief]);
        var command = new Command("schema",
            """
            Print the JSON Schema (2020-12) of plant documents, briefs or observation files, so that an editor can help; or of JSON output.

            Examples:
              polaritymap schema -o plant.schema.json
              then begin a document with:  # yaml-language-server: $schema=plant.schema.json
              polaritymap schema brief -o brief.schema.json
              polaritymap schema strands            the shape of 'polaritymap data PLANT strands'
            """) { name, output };
        command.SetAction(parsed =>
        {
            string schema = parsed.GetValue(name) switch
            {
                null => PlantSchema.Text(),
                OutputSchemas.Brief => BriefSchema.Text(),
                var wanted => OutputSchemas.Text(wanted),
            };
            if (parsed.GetValue(output) is { } path)
                WholeFile.Write(context.FullPath(path), schema);
            else
                context.Out.Write(schema);
            return ExitStatus.Clean;
        });
        return command;
    }
}
