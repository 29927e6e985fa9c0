using System.CommandLine;
using PolarityMap.Documents;

namespace PolarityMap.Cli.Commands;

/// <summary>Arguments and options that several commands share, worded once.</summary>
internal static class CommonOptions
{
    public static Argument<string> Plant() => new PlantArgument();

    /// <summary><c>--allow-outside</c>, which every command with a <see cref="PlantArgument"/> has.</summary>
    public static Option<bool> AllowOutside() =>
        new(PlantDocument.AllowOutsideFlag) { Description = "Let documents refer to files outside their folder." };

    /// <summary><c>--format text|json</c>.</summary>
    public static Option<string> Format()
    {
        var option = new Option<string>("--format") { Description = "text for people, json for programs.", HelpName = "text|json", DefaultValueFactory = static _ => "text" };
        option.AcceptOnlyFromAmong("text", "json");
        return option;
    }

    public static Option<string?> Output(string description) => new("--output", "-o") { Description = description, HelpName = "PATH" };
}
