using System.CommandLine;
using PolarityMap.Documents;

namespace PolarityMap.Cli.Commands;

/// <summary>Arguments and options that several commands share, worded once.</summary>
internal static class CommonOptions
{
    public static Argument<string> Plant() => new PlantArgument();

    /// <summary><c>--allow-outside</c>, which every command with a <see cref="PlantArgument"/> or a <see cref="BriefArgument"/> has.</summary>
    public static Option<bool> AllowOutside() =>
        new(PlantDocument.AllowOutsideFlag) { Description = "Let documents refer to files outside their folder." };

    /// <summary><c>--format text|json</c>, and further forms that a command has.</summary>
    public static Option<string> Format(params string[] further)
    {
        string[] forms = ["text", "json", .. further];
        var option = new Option<string>("--format") { Description = $"text for people, json for programs{(further.Contains("sarif") ? ", sarif for editors and build servers" : "")}.", HelpName = string.Join('|', forms), DefaultValueFactory = static _ => "text" };
        option.AcceptOnlyFromAmong(forms);
        return option;
    }

    public static Option<string?> Output(string description) => new("--output", "-o") { Description = description, HelpName = "PATH" };
}
