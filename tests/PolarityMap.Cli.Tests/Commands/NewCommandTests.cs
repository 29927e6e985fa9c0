using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

public sealed class NewCommandTests
{
    [Fact]
    public void It_writes_a_document_that_checks_clean_and_can_be_drawn()
    {
        using var bench = new Workbench();
        Assert.Equal(0, bench.Run("new").Status);
        Assert.Equal(["plant.yaml"], bench.Files());
        Outcome check = bench.Run("check", "plant.yaml");
        Assert.Equal(0, check.Status);
        Assert.Contains("6 of 6 links are proven. Nothing was found.", check.Out, StringComparison.Ordinal);
        Assert.Equal(0, bench.Run("draw", "plant.yaml", "-o", "plant.svg").Status);
    }

    [Fact]
    public void The_calls_it_proposes_work()
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run("new", "theatre/plant.yaml");
        string[] calls = [.. outcome.Out.Split('\n').Where(l => l.StartsWith("  polaritymap ", StringComparison.Ordinal))];
        Assert.Equal(2, calls.Length);
        Assert.All(calls, call => Assert.Equal(0, bench.Run(call.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1..]).Status));
        Assert.Equal(["theatre/plant.svg", "theatre/plant.yaml"], bench.Files());
    }

    [Fact]
    public void It_writes_over_nothing_unless_forced()
    {
        using var bench = new Workbench().With("plant.yaml", "mine");
        Outcome refused = bench.Run("new");
        Assert.Equal(2, refused.Status);
        Assert.Contains("'plant.yaml' is there already", refused.Error, StringComparison.Ordinal);
        Assert.Equal("mine", bench.Read("plant.yaml"));
        Assert.Equal(0, bench.Run("new", "--force").Status);
        Assert.StartsWith("# A plant", bench.Read("plant.yaml"), StringComparison.Ordinal);
    }
}
