using System.CommandLine;

namespace PolarityMap.Cli.Commands;

/// <summary>The brief of a call. A command that has it also has the options for reading documents.</summary>
internal sealed class BriefArgument : Argument<string?>
{
    public BriefArgument()
        : base("BRIEF")
    {
        Description = "What is wanted: a brief in YAML, such as 'polaritymap new --brief' writes.";
        Arity = ArgumentArity.ZeroOrOne;
    }
}
