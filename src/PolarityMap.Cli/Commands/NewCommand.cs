using System.CommandLine;
using PolarityMap.Cli.Output;

namespace PolarityMap.Cli.Commands;

/// <summary><c>new [PATH]</c>: writes a small commented document or brief to start from.</summary>
internal sealed class NewCommand : ICommandFile
{
    private const string StandardPath = "plant.yaml";

    private const string StandardBrief = "brief.yaml";

    public Command Build(CommandContext context)
    {
        var path = new Argument<string?>("PATH") { Description = $"Where to write it; without it {StandardPath}, or {StandardBrief} for a brief.", HelpName = "PATH", Arity = ArgumentArity.ZeroOrOne };
        var brief = new Option<bool>("--brief") { Description = "A brief, from which 'plan' makes a plant." };
        var force = new Option<bool>("--force") { Description = "Write over a file that is there." };
        var command = new Command("new",
            """
            Write a small commented plant document that checks clean, or a brief that can be planned, to start from.

            Examples:
              polaritymap new
              polaritymap new theatre/plant.yaml
              polaritymap new --brief theatre/brief.yaml
            """) { path, brief, force };
        command.SetAction(parsed =>
        {
            bool asBrief = parsed.GetValue(brief);
            string wanted = parsed.GetValue(path) ?? (asBrief ? StandardBrief : StandardPath);
            string full = context.FullPath(wanted);
            if (File.Exists(full) && !parsed.GetValue(force))
                throw new CallException($"'{wanted}' is there already; name another file, or add --force to write over it");
            WholeFile.Write(full, Starter(asBrief ? "starter-brief.yml" : "starter.yaml"));
            context.Out.WriteLine($"Wrote {wanted}. Next:");
            if (asBrief)
            {
                context.Out.WriteLine($"  polaritymap plan {wanted} -o {Path.Combine(Path.GetDirectoryName(wanted) ?? "", StandardPath)}");
                return ExitStatus.Clean;
            }

            context.Out.WriteLine($"  polaritymap check {wanted}");
            context.Out.WriteLine($"  polaritymap draw {wanted} -o {Path.ChangeExtension(wanted, ".svg")}");
            return ExitStatus.Clean;
        });
        return command;
    }

    private static string Starter(string name)
    {
        using Stream stream = typeof(NewCommand).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
