using System.Text.Json;
using Xunit;

namespace PolarityMap.Acceptance.Growth;

/// <summary>
/// Plants written by hand grow to new briefs. What has to be bought was counted by hand on the documents, port by port; the new
/// document is checked by the program anew, and held against what the growth says of it.
/// </summary>
public sealed class HandWrittenGrowthTests
{
    private static readonly string s_folder = Path.Combine(Repository.Root, "tests", "PolarityMap.Acceptance", "Growth", "Documents");

    /// <summary>The plant, the brief, what is bought by kind, and how many links are dark in turn.</summary>
    public static TheoryData<string, string, string, int> Cases { get; } = new()
    {
        // The second leg of the trunk lies idle: two cassettes make its places.
        { "galleries", "galleries-eight", "2 cassette, 8 cord, 4 interface", 0 },

        // Nothing is asked for that is not there, and a finding that the plant had stays.
        { "galleries-undeclared", "galleries-same", "", 0 },
        { "shared", "shared-same", "", 0 },
        { "unnamed", "unnamed-same", "", 0 },

        // Another application over the same fibre: the switch and the devices. The plant's cords tell no jacket.
        { "rehearsal", "rehearsal-faster", "4 interface", 3 },
        { "studios", "studios-faster", "3 interface", 2 },
        { "gatehouse", "gatehouse-faster", "3 interface", 2 },

        // A cable that is too short, between parts that stay.
        { "rehearsal", "rehearsal-farther", "1 trunk", 3 },
        { "control", "control-longer", "3 trunk", 6 },

        // Another method over the same reversed trunk: two cassettes.
        { "rehearsal", "rehearsal-U2", "2 cassette", 3 },

        // An outlet of two networks moves to another room with its devices and cords.
        { "studios", "studios-moved", "4 cassette, 2 trunk", 2 },

        // A third network into zone boxes with free ports, whose fronts are plain.
        { "control", "control-video", "2 cassette, 9 cord, 4 interface, 1 trunk", 0 },

        // Legs that wait in panels, and free ports of terminated fibre.
        { "compute", "compute-four", "4 cord, 2 interface", 0 },
        { "gatehouse", "gatehouse-four", "4 cord, 2 interface", 0 },

        // Two cassettes and a trunk lie in store.
        { "bar", "bar-eight", "4 cord, 2 interface", 0 },

        // Pairs give way to a parallel link, which goes onto the idle trunk of two.
        { "edge", "edge-parallel", "2 cord, 2 interface, 2 panel", 0 },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_growth_buys_what_the_plant_lacks_and_no_more(string plant, string brief, string bought, int dark)
    {
        string grown = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.yaml");
        try
        {
            Outcome outcome = Product.Run(s_folder, "plan", "--from", $"{plant}.yaml", "--to", $"{brief}.brief.yml", "-o", grown, "--format", "json");
            Assert.True(outcome.Status == 0, outcome.Out + outcome.Error);
            JsonElement after = JsonDocument.Parse(outcome.Out).RootElement.GetProperty("after");
            Assert.Equal(bought, Counted(after.GetProperty("added")));
            Assert.Equal(dark, after.GetProperty("steps").EnumerateArray().Sum(s => s.GetProperty("dark").GetArrayLength()));

            // The new document has as many parts as the old one, but for what came and went, and is as clean as the old one was.
            int Parts(string path) => JsonDocument.Parse(Product.Run(s_folder, "data", path, "plant").Out).RootElement.GetProperty("parts").GetArrayLength();
            Assert.Equal(Parts($"{plant}.yaml") + Sum(after, "added") - Sum(after, "takenOut"), Parts(grown));
            Assert.Equal(Product.Run(s_folder, "check", $"{plant}.yaml").Status, Product.Run(s_folder, "check", grown).Status);

            // What has grown is left as it is by the same brief.
            JsonElement again = JsonDocument.Parse(Product.Run(s_folder, "plan", "--from", grown, "--to", $"{brief}.brief.yml", "--format", "json").Out).RootElement.GetProperty("after");
            Assert.Equal("", Counted(again.GetProperty("added")));
            Assert.Equal(0, again.GetProperty("steps").GetArrayLength());
        }
        finally
        {
            File.Delete(grown);
        }
    }

    [Fact]
    public void Keys_of_parts_that_stay_are_not_changed_by_a_brief()
    {
        Outcome outcome = Product.Run(s_folder, "plan", "--from", "control.yaml", "--to", "control-key.brief.yml");
        Assert.Equal(1, outcome.Status);
        Assert.Contains("networks.sound.key", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("write K2", outcome.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    private static int Sum(JsonElement after, string lots) => after.GetProperty(lots).EnumerateArray().Sum(l => l.GetProperty("quantity").GetInt32());

    private static string Counted(JsonElement lots)
    {
        string[] kinds = ["cassette", "cord", "interface", "outlet", "panel", "trunk"];
        return string.Join(", ", kinds.Select(k => (Kind: k, Count: lots.EnumerateArray().Where(l => l.GetProperty("what").GetString()!.Contains(k, StringComparison.Ordinal)).Sum(l => l.GetProperty("quantity").GetInt32())))
            .Where(k => k.Count > 0).Select(k => $"{k.Count} {k.Kind}"));
    }
}
