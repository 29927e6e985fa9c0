using System.CommandLine;
using System.CommandLine.Parsing;
using PolarityMap.Cli.Commands;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli;

/// <summary>The command line as a whole. The one list of commands is here.</summary>
public static class Application
{
    private const string Summary =
        """
        Follows every fibre position of a written plant end to end, proves or refutes each link, and draws it strand by strand.

        Examples:
          polaritymap new plant.yaml
          polaritymap check plant.yaml
          polaritymap draw plant.yaml -o plant.svg
        """;

    private static readonly ICommandFile[] Commands =
    [
        new CheckCommand(),
        new TraceCommand(),
        new BudgetCommand(),
        new LocateCommand(),
        new RemedyCommand(),
        new PlanCommand(),
        new DrawCommand(),
        new ReportCommand(),
        new SeparationCommand(),
        new ExportCommand(),
        new ImportCommand(),
        new ExplainCommand(),
        new DataCommand(),
        new CatalogueCommand(),
        new SchemaCommand(),
        new NewCommand(),
    ];

    /// <summary>Runs one call. Never throws: whatever goes wrong is one line on the error writer and status 2.</summary>
    public static int Run(string[] args, CommandContext context)
    {
        try
        {
            var root = new RootCommand(Summary);
            Option<bool> outside = CommonOptions.AllowOutside();
            foreach (ICommandFile file in Commands)
            {
                Command command = file.Build(context);

                // The list of commands says what each is for; its examples are in its own help.
                if (args.Length == 0 || args[0] != command.Name)
                    command.Description = command.Description?.Split('\n')[0];
                if (command.Arguments.Any(a => a is PlantArgument or BriefArgument))
                    command.Options.Add(outside);
                root.Subcommands.Add(command);
            }

            ParseResult parsed = root.Parse(args);
            if (parsed.Errors.Count > 0 || UnknownOption(parsed) is not null)
                return Refuse(parsed, context);
            context.Reading.AllowOutside = parsed.GetValue(outside);
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
        catch (IOException)
        {
            context.Error.WriteLine("polaritymap: the result cannot be written out");
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
        Command command = parsed.CommandResult.Command;
        foreach (string line in Reasons(parsed, command))
            context.Error.WriteLine($"polaritymap: {line}");
        context.Error.WriteLine($"polaritymap: see 'polaritymap {(command is RootCommand ? "" : command.Name + " ")}--help'");
        return ExitStatus.Wrong;
    }

    private static IEnumerable<string> Reasons(ParseResult parsed, Command command)
    {
        IEnumerable<string> commands = command.Subcommands.Select(c => c.Name);
        if (UnknownOption(parsed) is { } option)
            return [$"there is no option '{option}'{Nearest(option, command.Options.SelectMany(o => o.Aliases.Prepend(o.Name)))}"];
        if (command is RootCommand)
        {
            return parsed.UnmatchedTokens.Count == 0
                ? [$"name a command: {string.Join(", ", commands)}"]
                : [$"there is no command '{parsed.UnmatchedTokens[0]}'{Nearest(parsed.UnmatchedTokens[0], commands)}"];
        }

        // The library lists allowed words in lines of their own.
        return parsed.Errors.Select(e => e.Message.ReplaceLineEndings(" ").Replace("\t", "")).Distinct();
    }

    /// <summary>A word that looks like an option and is none, which would else be taken for a document of that name; or null.</summary>
    private static string? UnknownOption(ParseResult parsed)
    {
        foreach (Token token in parsed.Tokens)
        {
            if (token.Type == TokenType.DoubleDash)
                return null;
            if (token.Type == TokenType.Argument && token.Value.Length > 1 && token.Value[0] == '-')
                return token.Value;
        }

        return null;
    }

    private static string Nearest(string word, IEnumerable<string> words) =>
        NearestWord.Find(word, words) is { } near ? $"; did you mean '{near}'?" : "";

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
