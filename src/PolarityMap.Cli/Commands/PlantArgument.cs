using System.CommandLine;

namespace PolarityMap.Cli.Commands;

/// <summary>The plant document of a call. A command that has it also has the options for reading documents.</summary>
internal sealed class PlantArgument : Argument<string>
{
    public PlantArgument(bool isOptional = false)
        : base("PLANT")
    {
        Description = isOptional ? "The plant document (YAML); it may be named in the file instead." : "The plant document (YAML).";
        Arity = isOptional ? ArgumentArity.ZeroOrOne : ArgumentArity.ExactlyOne;
    }
}
