using System.Diagnostics;
using Xunit;

namespace PolarityMap.Cli.Tests.Calls;

/// <summary>Colour is for terminals only, and never the only carrier.</summary>
public sealed class ColourTests
{
    private static readonly string[][] Calls =
    [
        ["check", "plant.yaml"],
        ["trace", "plant.yaml", "SW-L/1"],
        ["explain"],
        ["explain", "P01"],
        ["--help"],
    ];

    [Fact]
    public void Without_colour_no_escape_code_is_written()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        foreach (string[] call in Calls)
            Assert.DoesNotContain('\u001b', bench.Run(call).Out);
    }

    // Taking the codes out of the coloured text gives the plain text: no word is told by colour alone.
    [Fact]
    public void With_colour_the_words_are_the_same()
    {
        using var plain = new Workbench().With("plant.yaml", Samples.Fault("D02"));
        using var colour = new Workbench { Colour = true }.With("plant.yaml", Samples.Fault("D02"));
        string painted = colour.Run("check", "plant.yaml").Out;
        Assert.Contains('\u001b', painted);
        Assert.Equal(plain.Run("check", "plant.yaml").Out, System.Text.RegularExpressions.Regex.Replace(painted, "\u001b\\[[0-9;]*m", ""));
    }

    [Fact]
    public void No_escape_code_is_in_json_even_with_colour()
    {
        using var bench = new Workbench { Colour = true }.With("plant.yaml", Samples.Fault("D02"));
        Assert.DoesNotContain('\u001b', bench.Run("check", "plant.yaml", "--format", "json").Out);
    }

    [Fact]
    public void NO_COLOR_takes_the_colour_from_the_process()
    {
        string? before = Environment.GetEnvironmentVariable("NO_COLOR");
        try
        {
            Environment.SetEnvironmentVariable("NO_COLOR", "1");
            Assert.False(CommandContext.OfProcess().Colour);
        }
        finally
        {
            Environment.SetEnvironmentVariable("NO_COLOR", before);
        }
    }

    // The built program in a process of its own, its output going into a pipe.
    [Fact]
    public void A_pipe_gets_no_escape_code_and_the_status_goes_out()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Fault("D02"));
        (int status, string output, string error) = Process(bench, "check", "plant.yaml");
        Assert.Equal(1, status);
        Assert.Equal(bench.Run("check", "plant.yaml").Out, output);
        Assert.Equal("", error);
    }

    // The built program leaves the system's own messages out, so their keys must not show in its sentences.
    [Fact]
    public void A_refusal_of_the_built_program_is_made_of_words()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        (int status, string output, string error) = Process(bench, "draw", "plant.yaml", "-o", "plant.yaml/out.svg");
        Assert.Equal(2, status);
        Assert.Equal("", output);
        Assert.DoesNotMatch("[A-Z][A-Za-z]*_[A-Z]", error);
        Assert.Contains("is a file, not a folder", error, StringComparison.Ordinal);
    }

    private static (int Status, string Out, string Error) Process(Workbench bench, params string[] call)
    {
        var start = new ProcessStartInfo(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet")
        {
            WorkingDirectory = bench.Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.ArgumentList.Add(typeof(Application).Assembly.Location);
        foreach (string word in call)
            start.ArgumentList.Add(word);
        using Process process = System.Diagnostics.Process.Start(start)!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.Result);
    }
}
