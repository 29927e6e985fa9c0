using System.Text;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Observations;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Observations;

/// <summary>The two files on the page about locating say the same, and name every test that there is.</summary>
public sealed class LocatePageTests
{
    private const string Plant = """
        plant: The page's plant
        parts:
          SW-L: { kind: duplex interface, ports: 7 }
          SW-R: { kind: duplex interface, ports: 7 }
          DESK3: duplex interface
          K-L: { kind: straight cassette, keys: opposed }
          K-R: { kind: straight cassette, keys: opposed }
          TRUNK: { kind: Type-A trunk, length: 30 m }
        runs:
          - SW-L/1..6, A-to-B cord 2 m, K-L/1..6
          - K-L/rear, TRUNK, K-R/rear
          - K-R/1..6, A-to-A cord 2 m, SW-R/1..6

        """;

    [Fact]
    public void Both_files_of_the_page_say_the_same()
    {
        TracedPlant traced = TracedPlant.Of(Reading.Plant(Plant));
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "locate.md"));
        string[] Words(string fence, string path)
        {
            int start = page.IndexOf($"```{fence}\n", StringComparison.Ordinal) + fence.Length + 4;
            var problems = new ProblemList();
            SeenNotes? notes = SeenFile.Read(path, Encoding.UTF8.GetBytes(page[start..page.IndexOf("```", start, StringComparison.Ordinal)]), problems)?.Bind(traced, problems);
            Assert.Equal("", problems.ToString());
            return [.. notes!.Observations.Select(o => FieldWords.Saw(traced, o) + o.Note)];
        }

        string[] table = Words("csv", "seen.csv");
        Assert.Equal(table, Words("yaml", "seen.yaml"));
        Assert.All(SeenWords.Tests, t => Assert.Contains($"\n| `{t}` |", page, StringComparison.Ordinal));
        Assert.Equal(7, table.Length);
    }
}
