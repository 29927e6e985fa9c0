using PolarityMap.Cli;

namespace PolarityMap.Acceptance;

/// <summary>What one call of the program gave back.</summary>
internal sealed record Outcome(int Status, string Out, string Error);

/// <summary>The whole program, run in this process.</summary>
internal static class Product
{
    public static Outcome Run(string folder, params string[] call)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        int status = Application.Run(call, new CommandContext(output, error) { Folder = folder });
        return new Outcome(status, output.ToString(), error.ToString());
    }
}
