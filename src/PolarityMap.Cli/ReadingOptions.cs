namespace PolarityMap.Cli;

/// <summary>What a call says about reading documents. The command line fills it in before a command runs.</summary>
public sealed class ReadingOptions
{
    /// <summary>Whether documents may refer to files outside their folder.</summary>
    public bool AllowOutside { get; set; }
}
