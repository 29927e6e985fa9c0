using System.CommandLine;
using PolarityMap.Cli.Input;
using PolarityMap.Cli.Output;
using PolarityMap.Documents.Tables.Import;

namespace PolarityMap.Cli.Commands;

/// <summary><c>import TABLE -o PLANT</c>: makes a plant document of a connection schedule.</summary>
internal sealed class ImportCommand : ICommandFile
{
    public Command Build(CommandContext context)
    {
        var table = new Argument<string>("TABLE") { Description = "A workbook (.xlsx), a table with commas, semicolons or tabs (.csv), or a folder of .csv." };
        Option<string?> output = CommonOptions.Output("The plant document to write; without it the table's name with .yaml.");
        var preview = new Option<bool>("--preview") { Description = "Print how the columns are understood and the first rows, and write nothing." };
        var keep = new Option<bool>("--keep-good") { Description = "Write a document of the rows that are right, also when others are not." };
        var force = new Option<bool>("--force") { Description = "Write over a file that is there." };
        var title = new Option<string?>("--title") { Description = "Title of the plant, where the table says none; without it the table's name.", HelpName = "TEXT" };
        var sheet = new Option<string[]>("--sheet") { Description = "Read only this sheet; may be given several times.", HelpName = "NAME" };
        var command = new Command("import",
            """
            Make a plant document of a connection schedule in a workbook or a CSV.

            Two forms are read: strands hop by hop, as 'export' writes them, and rows of two ports with the cord between them, beside
            a sheet of the parts. Headings are matched without regard to case, blanks and hyphens. docs/tables.md tells both forms
            with examples. Every row that is not taken is told with sheet, row, column and reason.

            Exit status: 0 written; 1 written without the rows that were rejected (--keep-good); 2 nothing is written.

            Examples:
              polaritymap import schedules.xlsx --preview
              polaritymap import schedules.xlsx -o plant.yaml
              polaritymap import connections.csv -o plant.yaml --keep-good
            """) { table, output, preview, keep, force, title, sheet };
        command.SetAction(parsed =>
        {
            string path = parsed.GetValue(table)!;
            string name = Path.GetFileNameWithoutExtension(Path.TrimEndingDirectorySeparator(path));
            string target = parsed.GetValue(output) ?? name + ".yaml";
            bool previewOnly = parsed.GetValue(preview);
            if (!previewOnly && File.Exists(context.FullPath(target)) && !parsed.GetValue(force))
                throw new CallException($"'{target}' is there already; name another file with -o, or add --force to write over it");
            (var sheets, var cells) = TableSource.Read(context, path, parsed.GetValue(sheet) ?? []);
            ImportedTable imported = TablePlant.Import(sheets, cells, parsed.GetValue(title) ?? name, parsed.GetValue(keep));
            if (previewOnly)
            {
                ImportText.Preview(imported, context.Out);
                return ExitStatus.Clean;
            }

            ImportText.Rejected(imported, path, context.Error);
            if (imported.Text is null)
            {
                context.Error.WriteLine($"polaritymap: nothing is written{(imported.Plant is null && parsed.GetValue(keep) ? ": no document can be made of what is left" : "; mend the rows, or add --keep-good to go without them")}");
                return ExitStatus.Wrong;
            }

            WholeFile.Write(context.FullPath(target), imported.Text);
            ImportText.Written(imported, target, context.Out);
            return imported.Count > 0 ? ExitStatus.Findings : ExitStatus.Clean;
        });
        return command;
    }
}
