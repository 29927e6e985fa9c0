using System.CommandLine;
using ApprovalTests;
using ApprovalTests.Namers;
using ApprovalTests.Reporters;
using Xunit;

namespace PolarityMap.Cli.Tests.Wording;

/// <summary>
/// Texts that a person reads, kept word for word so that a change of wording is seen. Each was read before it was approved;
/// what the texts say is proven by the other tests.
/// </summary>
[UseReporter(typeof(QuietReporter))]
[UseApprovalSubdirectory("Approved")]
public sealed class WordingTests
{
    [Fact]
    public void Main_help() => Verify("--help");

    [Fact]
    public void Help_of_draw() => Verify("draw", "--help");

    [Fact]
    public void Check_of_a_crossed_pair() => Verify("check", "D02.yaml");

    [Fact]
    public void Check_of_two_legs_exchanged() => Verify("check", "D05.yaml");

    [Fact]
    public void Remedy_of_a_crossed_pair() => Verify("remedy", "D02.yaml");

    [Fact]
    public void Remedy_of_losses() => Verify("remedy", "losses.yaml");

    [Fact]
    public void Help_of_remedy() => Verify("remedy", "--help");

    [Fact]
    public void Help_of_plan() => Verify("plan", "--help");

    [Fact]
    public void Separation_of_three_desks() => Verify("separation", "desks.yaml");

    [Fact]
    public void Trace_of_one_position() => Verify("trace", "plant.yaml", "TRUNK/near:2");

    [Fact]
    public void Explain_P01() => Verify("explain", "P01");

    [Fact]
    public void Budget_of_every_verdict() => Verify("budget", "losses.yaml");

    [Fact]
    public void Budget_of_every_strand_of_a_link() => Verify("budget", "losses.yaml", "--all", "--link", "BX-U/1");

    [Fact]
    public void Check_of_losses() => Verify("check", "losses.yaml");

    [Fact]
    public void Explain_budget() => Verify("explain", "budget");

    [Fact]
    public void Explain_an_application() => Verify("explain", "400GBASE-SR8");

    [Fact]
    public void Explain_an_application_of_two_standards() => Verify("explain", "10GBASE-SR");

    [Fact]
    public void Explain_a_class_of_fibre() => Verify("explain", "OM1");

    [Fact]
    public void Explain_deviations() => Verify("explain", "deviations");

    [Fact]
    public void Explain_a_deviation() => Verify("explain", "pair-crossed");

    [Fact]
    public void Mistakes_in_parts() => Verify("check", "broken.yaml");

    [Fact]
    public void Mistakes_in_runs_and_links() => Verify("check", "misnamed.yaml");

    [Fact]
    public void Calls_that_are_refused()
    {
        using Workbench bench = Bench();
        var said = new System.Text.StringBuilder();
        foreach (string call in (string[])["", "chekc plant.yaml", "check", "check plant.yaml --formt json", "check plnt.yaml", "trace plant.yaml SWL/1", "draw plant.yaml --network stge", "explain P99", "explain 10GBASE-SX", "explain 400GBASE-LR4", "budget plant.yaml --limits TIA-568.3", "budget plant.yaml --link SW-L/9", "new plant.yaml"])
            said.Append($"$ polaritymap {call}".TrimEnd()).Append('\n').Append(bench.Run(call.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Error).Append('\n');
        Approvals.Verify(said.ToString());
    }

    private static void Verify(params string[] call)
    {
        using Workbench bench = Bench();
        Outcome outcome = bench.Run(call);

        // The library names the running program, which is here the one that runs the tests.
        Approvals.Verify((outcome.Out + outcome.Error).Replace($"  {RootCommand.ExecutableName} ", "  polaritymap ", StringComparison.Ordinal));
    }

    private static Workbench Bench() => new Workbench().With("plant.yaml", Samples.Clean).With("broken.yaml", Samples.Broken)
        .With("misnamed.yaml", Samples.Misnamed).With("losses.yaml", Samples.Losses).With("desks.yaml", Samples.Desks)
        .With("D02.yaml", Samples.Fault("D02")).With("D05.yaml", Samples.Fault("D05"));
}
