using System.CommandLine;
using PolarityMap.Cli.Output;

namespace PolarityMap.Cli.Commands;

/// <summary><c>new [PATH]</c>: writes a small commented document to start from.</summary>
internal sealed class NewCommand : ICommandFile
{
    private const string StandardPath = "plant.yaml";

    public Command Build(CommandContext context)
    {
        var path = new Argument<string>("PATH") { Description = "Where to write it.", Arity = ArgumentArity.ZeroOrOne, DefaultValueFactory = static _ => StandardPath };
        var force = new Option<bool>("--force") { Description = "Write over a file that is there." };
        var command = new Command("new",
            """
            Write a small commented plant document that checks clean, to start from.

            Examples:
              polaritymap new
              polaritymap new theatre/plant.yaml
            """) { path, force };
        command.SetAction(parsed =>
        {
            string wanted = parsed.GetValue(path)!;
            string full = context.FullPath(wanted);
            if (File.Exists(full) && !parsed.GetValue(force))
                throw new CallException($"'{wanted}' is there already; name another file, or add --force to write over it");
            WholeFile.Write(full, Starter());
            context.Out.WriteLine($"Wrote {wanted}. Next:");
            context.Out.WriteLine($"  polaritymap check {wanted}");
            context.Out.WriteLine($"  polaritymap draw {wanted} -o {Path.ChangeExtension(wanted, ".svg")}");
            return ExitStatus.Clean;
        });
        return command;
    }

    private static string Starter()
    {
        using Stream stream = typeof(NewCommand).Assembly.GetManifestResourceStream("starter.yaml")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
