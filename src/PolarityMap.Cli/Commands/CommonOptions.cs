using System.CommandLine;

namespace PolarityMap.Cli.Commands;

/// <summary>Arguments and options that several commands share, worded once.</summary>
internal static class CommonOptions
{
    public static Argument<string> Plant() => new("PLANT") { Description = "The plant document (YAML)." };

    /// <summary><c>--format text|json</c>.</summary>
    public static Option<string> Format()
    {
        var option = new Option<string>("--format") { Description = "text for people, json for programs.", HelpName = "text|json", DefaultValueFactory = static _ => "text" };
        option.AcceptOnlyFromAmong("text", "json");
        return option;
    }

    public static Option<string?> Output(string description) => new("--output", "-o") { Description = description, HelpName = "PATH" };
}
