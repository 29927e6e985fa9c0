using System.CommandLine;

namespace PolarityMap.Cli.Commands;

/// <summary>The plant document of a call. A command that has it also has the options for reading documents.</summary>
internal sealed class PlantArgument : Argument<string>
{
    public PlantArgument()
        : base("PLANT") => Description = "The plant document (YAML).";
}
