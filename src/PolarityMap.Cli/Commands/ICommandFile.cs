using System.CommandLine;

namespace PolarityMap.Cli.Commands;

/// <summary>One command: its options, its help, and what it does. One file per command, listed in <see cref="Application"/>.</summary>
public interface ICommandFile
{
    Command Build(CommandContext context);
}
