using System.CommandLine;
using System.CommandLine.Parsing;
using PolarityMap.Cli.Commands;

namespace PolarityMap.Cli;

/// <summary>The command line as a whole. The one list of commands is here.</summary>
public static class Application
{
    private const string Summary =
        "Follows every fibre position of a written plant end to end, proves or refutes each link, and draws it strand by strand.";

    private static readonly ICommandFile[] Commands =
    [
        new CheckCommand(),
        new TraceCommand(),
        new DrawCommand(),
        new ExplainCommand(),
        new SchemaCommand(),
        new NewCommand(),
    ];

    /// <summary>Runs one call. Never throws: whatever goes wrong is one line on the error writer and status 2.</summary>
    public static int Run(string[] args, CommandContext context)
    {
        try
        {
            var root = new RootCommand(Summary);
            foreach (ICommandFile command in Commands)
                root.Subcommands.Add(command.Build(context));
            ParseResult parsed = root.Parse(args);
            if (parsed.Errors.Count > 0)
                return Refuse(parsed, context);
            return parsed.Invoke(new InvocationConfiguration
            {
                Output = context.Out,
                Error = context.Error,
                EnableDefaultExceptionHandler = false,
            });
        }
        catch (CallException wrong)
        {
            context.Error.WriteLine($"polaritymap: {wrong.Message}");
            return ExitStatus.Wrong;
        }
        catch (IOException broken)
        {
            context.Error.WriteLine($"polaritymap: {broken.Message}");
            return ExitStatus.Wrong;
        }
#pragma warning disable CA1031 // A stack trace helps no user: a defect is reported in one line and the status says that nothing was proven.
        catch (Exception defect)
#pragma warning restore CA1031
        {
            context.Error.WriteLine($"polaritymap: this is a defect of the program: {defect.GetType().Name}: {defect.Message}");
            return ExitStatus.Wrong;
        }
        finally
        {
            Flush(context);
        }
    }

    private static int Refuse(ParseResult parsed, CommandContext context)
    {
        foreach (ParseError error in parsed.Errors)
            context.Error.WriteLine($"polaritymap: {error.Message}");
        string command = parsed.CommandResult.Command is RootCommand ? "" : parsed.CommandResult.Command.Name + " ";
        if (command.Length == 0 && parsed.UnmatchedTokens.Count > 0
            && Documents.Text.NearestWord.Find(parsed.UnmatchedTokens[0], parsed.CommandResult.Command.Subcommands.Select(c => c.Name)) is { } near)
            context.Error.WriteLine($"polaritymap: did you mean '{near}'?");
        context.Error.WriteLine($"polaritymap: see 'polaritymap {command}--help'");
        return ExitStatus.Wrong;
    }

    /// <summary>A reader that went away, such as a closed pipe, is no fault of the call.</summary>
    private static void Flush(CommandContext context)
    {
        try
        {
            context.Out.Flush();
        }
        catch (IOException)
        {
            return;
        }
    }
}
