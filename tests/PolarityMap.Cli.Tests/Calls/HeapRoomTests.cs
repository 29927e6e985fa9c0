using Xunit;

namespace PolarityMap.Cli.Tests.Calls;

/// <summary>Commands that make much ask for room first; the rest do without, for asking takes longer than it saves them.</summary>
public sealed class HeapRoomTests
{
    [Theory]
    [InlineData(1, "draw", "plant.yaml", "-o", "plant.svg")]
    [InlineData(1, "report", "plant.yaml", "-o", "plant.html")]
    [InlineData(0, "check", "plant.yaml")]
    [InlineData(0, "trace", "plant.yaml")]
    [InlineData(0, "explain", "P01")]
    [InlineData(0, "draw", "--help")]
    public void Room_is_taken_once_by_commands_that_make_much(int times, params string[] call)
    {
        using Workbench bench = new Workbench().With("plant.yaml", Samples.Clean);
        using var output = new StringWriter();
        int taken = 0;
        Application.Run(call, new CommandContext(output, output) { Folder = bench.Folder, TakeRoom = () => taken++ });
        Assert.Equal(times, taken);
    }

    [Fact]
    public void Only_a_process_of_its_own_takes_room()
    {
        using var output = new StringWriter();
        Assert.NotEqual(HeapRoom.Take, new CommandContext(output, output).TakeRoom);
        Assert.Equal(HeapRoom.Take, CommandContext.OfProcess().TakeRoom);
    }
}
