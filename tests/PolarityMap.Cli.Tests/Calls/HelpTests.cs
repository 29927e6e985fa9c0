using Xunit;

namespace PolarityMap.Cli.Tests.Calls;

public sealed class HelpTests
{
    private static readonly string[] Names = ["check", "trace", "budget", "locate", "remedy", "plan", "draw", "report", "separation", "export", "import", "explain", "data", "catalogue", "schema", "new"];

    public static TheoryData<string> Commands => [.. Names];

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_command_s_help_has_examples_that_name_it(string command)
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run(command, "--help");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("Examples:", outcome.Out, StringComparison.Ordinal);
        Assert.Contains($"polaritymap {command}", outcome.Out, StringComparison.Ordinal);
        Assert.Equal("", outcome.Error);
    }

    // An example that the program refuses is worse than none.
    [Theory]
    [MemberData(nameof(Commands))]
    public void The_examples_of_a_command_s_help_are_accepted(string command)
    {
        string plant = Samples.Clean.Replace("stage", "lighting", StringComparison.Ordinal);
        string[] examples;
        using (var bench = new Workbench())
            examples = [.. bench.Run(command, "--help").Out.Split('\n').Select(l => l.Trim()).Where(l => l.StartsWith($"polaritymap {command}", StringComparison.Ordinal) && !l.Contains('[', StringComparison.Ordinal))];
        Assert.NotEmpty(examples);
        Assert.All(examples, example =>
        {
            using var bench = new Workbench().With("as-built.yaml", plant);
            if (command != "new")
                bench.With("plant.yaml", plant);
            if (command is "locate" or "report")
                bench.With("seen.csv", "test,at,seen\nlamp,SW-R/1,on\n").With("seen.yaml", "seen:\n  - { lamp: SW-R/1, is: on }\n");
            if (command == "plan")
            {
                bench.Run("new", "--brief", "brief.yaml");
                File.Delete(bench.Path("plant.yaml"));
                if (example.Contains("--from", StringComparison.Ordinal))
                    bench.Run("plan", "brief.yaml", "-o", "plant.yaml");
            }

            if (command == "import")
            {
                bench.Run("export", "plant.yaml", "-o", "schedules.xlsx");
                bench.Run("export", "plant.yaml", "-o", "connections.csv", "--schedule", "connections");
                File.Delete(bench.Path("plant.yaml"));
            }

            // What follows two blanks is a remark, what follows > belongs to the shell.
            string call = example.Split("  ")[0].Split(" > ")[0];
            Outcome outcome = bench.Run(Words(call)[1..]);
            Assert.True(outcome.Status == 0, $"{call}: {outcome.Error}");
        });
    }

    /// <summary>The words of a call as a shell parts them: what stands in quotes is one.</summary>
    private static string[] Words(string call) =>
        [.. call.Split('"').SelectMany((text, i) => i % 2 == 1 ? [text] : text.Split(' ', StringSplitOptions.RemoveEmptyEntries))];

    [Theory]
    [InlineData("--help")]
    [InlineData("-h")]
    [InlineData("-?")]
    public void The_main_help_lists_every_command_on_one_line(string option)
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run(option);
        Assert.Equal(0, outcome.Status);
        Assert.Contains("Examples:", outcome.Out, StringComparison.Ordinal);
        string list = outcome.Out[outcome.Out.IndexOf("Commands:", StringComparison.Ordinal)..];
        string[] lines = list.Split('\n', StringSplitOptions.RemoveEmptyEntries)[1..];
        Assert.Equal(Names, lines.Select(l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries)[0]));
    }

    [Fact]
    public void The_version_is_a_number_of_three_parts()
    {
        using var bench = new Workbench();
        Assert.Matches(@"^\d+\.\d+\.\d+", bench.Run("--version").Out);
    }

    // The caution has to be where fibres are traced.
    [Fact]
    public void The_help_of_trace_warns_of_live_fibres()
    {
        using var bench = new Workbench();
        Assert.Contains("Assume every fibre is live", bench.Run("trace", "--help").Out, StringComparison.Ordinal);
    }
}
