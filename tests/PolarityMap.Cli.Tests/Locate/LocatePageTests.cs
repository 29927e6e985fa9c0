using System.Runtime.CompilerServices;
using Xunit;

namespace PolarityMap.Cli.Tests.Locate;

/// <summary>The session on the page about locating is what the program says now. POLARITYMAP_APPROVE=1 writes it anew.</summary>
public sealed class LocatePageTests
{
    private static readonly string s_root = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(ThisFile())!, "..", "..", ".."));

    private static readonly string s_page = Path.Combine(s_root, "docs", "locate.md");

    [Fact]
    public void The_session_of_the_page_is_what_the_program_says()
    {
        string page = File.ReadAllText(s_page);
        int start = page.IndexOf("```text\n", StringComparison.Ordinal) + "```text\n".Length;
        int end = page.IndexOf("```", start, StringComparison.Ordinal);
        string made = Session();
        if (Environment.GetEnvironmentVariable("POLARITYMAP_APPROVE") == "1")
            File.WriteAllText(s_page, page[..start] + made + page[end..]);
        Assert.True(File.ReadAllText(s_page)[start..].StartsWith(made + "```", StringComparison.Ordinal),
            "the session in docs/locate.md is stale. Look at the change; when it is right: POLARITYMAP_APPROVE=1 dotnet test tests/PolarityMap.Cli.Tests --filter LocatePage");
    }

    /// <summary>The plant of the README, one of whose cords is of the wrong type, with somebody who answers as it is built.</summary>
    private static string Session()
    {
        string readme = File.ReadAllText(Path.Combine(s_root, "README.md"));
        int yaml = readme.IndexOf("```yaml\n", StringComparison.Ordinal) + "```yaml\n".Length;
        using Workbench bench = new Workbench().With("plant.yaml", readme[yaml..readme.IndexOf("```", yaml, StringComparison.Ordinal)]);
        using var output = new StringWriter { NewLine = "\n" };
        using var typing = new Typing(output);
        var context = new CommandContext(output, output) { Folder = bench.Folder, In = typing };
        Assert.Equal(1, Application.Run(["locate", "plant.yaml", "--seen", "seen.yaml", "--ask"], context));
        return "$ polaritymap locate plant.yaml --seen seen.yaml --ask\n" + output;
    }

    private static string ThisFile([CallerFilePath] string path = "") => path;

    /// <summary>
    /// Somebody who says that one lamp is off, and then answers what the last question asks: the cord at SW-R/3 is A-to-A, so that
    /// its lamps are off, light into the pair comes out crossed, and the cord alone looks different.
    /// </summary>
    private sealed class Typing(StringWriter output) : TextReader
    {
        private bool _begun;

        public override string? ReadLine()
        {
            string said = _begun ? Answer() : "lamp SW-R/3 off";
            _begun = true;
            output.WriteLine(said);
            return said;
        }

        private string Answer()
        {
            string all = output.ToString();
            string question = string.Join(' ', all[all.LastIndexOf("Next test", StringComparison.Ordinal)..].Split('\n').Select(l => l.Trim()));
            if (question.Contains("link lamp of", StringComparison.Ordinal))
                return question.Contains("/3 ", StringComparison.Ordinal) ? "off" : "on";
            if (question.Contains("put light into SW-R/3:A and look at the plugs in SW-L ", StringComparison.Ordinal))
                return "SW-L/3:A";
            if (question.Contains("look at the cord CAS-R/3~SW-R/3 and", StringComparison.Ordinal))
                return "different";
            return question.Contains(": look at ", StringComparison.Ordinal) ? "as described" : "quit";
        }
    }
}
