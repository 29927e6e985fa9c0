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
    public void Separation_of_three_desks() => Verify("separation", "desks.yaml");

    [Fact]
    public void Trace_of_one_position() => Verify("trace", "plant.yaml", "TRUNK/near:2");

    [Fact]
    public void Explain_P01() => Verify("explain", "P01");

    [Fact]
    public void Mistakes_in_parts() => Verify("check", "broken.yaml");

    [Fact]
    public void Mistakes_in_runs_and_links() => Verify("check", "misnamed.yaml");

    [Fact]
    public void Calls_that_are_refused()
    {
        using Workbench bench = Bench();
        var said = new System.Text.StringBuilder();
        foreach (string call in (string[])["", "chekc plant.yaml", "check", "check plant.yaml --formt json", "check plnt.yaml", "trace plant.yaml SWL/1", "draw plant.yaml --network stge", "explain P99", "new plant.yaml"])
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
        .With("misnamed.yaml", Samples.Misnamed).With("desks.yaml", Samples.Desks)
        .With("D02.yaml", Samples.Fault("D02")).With("D05.yaml", Samples.Fault("D05"));
}
