using PolarityMap.Core.Checks;
using PolarityMap.Core.Remedies;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Editing;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Remedies;

/// <summary>The search over every faulty document of the gallery: what clears it, and for which nothing does.</summary>
public class GalleryRemedyTests
{
    private static readonly string s_folder = Path.Combine(Repository.Root, "gallery", "faults");

    /// <summary>
    /// The documents for which no change of parts and plugs is the answer, and why. A document that drops out of this table, or
    /// into it, is a change of behaviour.
    /// </summary>
    private static readonly Dictionary<string, string> s_none = new()
    {
        ["D06"] = "no port of the sound network is free, and no link says where either end is meant",
        ["L01"] = "the losses of the connectors are not stated; no part can be advised that is known to lose less",
        ["L03"] = "as L01",
        ["L04"] = "as L01",
        ["L06"] = "as L01",
        ["M04"] = "a cable with another ferrule has other ports, which is another design",
        ["P03"] = "nothing is free for the open plug to go into",
        ["S01"] = "three parts belong to another network; whose they are is a decision",
        ["S02"] = "networks in one sheath need a cable more, or another policy",
        ["S03"] = "as S02, a cassette",
        ["S04"] = "as S02, an array connector",
        ["S05"] = "as S02, a panel",
        ["S06"] = "the networks have no keys that ports and cords could carry",
        ["S07"] = "the legend of the plant, no part",
        ["S08"] = "the legend of the plant, no part",
        ["W02"] = "a part that nothing meets is bought or not; no change of it makes a run",
        ["W03"] = "one end of the cord taken out leaves cord and panel met by nothing (W02)",
        ["W04"] = "a cord is missing, and only parts that are there are changed",
    };

    private static readonly string[] s_codes =
        [.. Directory.EnumerateFiles(s_folder, "*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)!).Where(n => !n.Contains('.', StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    public static TheoryData<string> Faults => [.. s_codes];

    [Fact]
    public void Every_document_that_has_no_remedy_is_one_of_the_gallery() =>
        Assert.All(s_none.Keys, code => Assert.True(File.Exists(Path.Combine(s_folder, code + ".yaml")), code));

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_faulty_document_is_clean_after_its_plan_or_has_no_remedy_for_a_stated_reason(string code)
    {
        string text = File.ReadAllText(Path.Combine(s_folder, code + ".yaml"));
        CheckReport before = Report(text);
        Assert.NotEmpty(before.Findings);
        RemedyResult result = RemedySearch.Of(before);
        Assert.Null(result.Work.Bound);
        if (s_none.ContainsKey(code))
        {
            Assert.Null(result.Plan);
            Assert.All(result.Findings, f => Assert.Empty(f.Sets));
            return;
        }

        Assert.All(result.Findings, f => Assert.NotEmpty(f.Sets));
        Assert.Empty(result.Plan!.After.Findings);
        Assert.Empty(result.Plan.Remaining);
    }

    [Theory]
    [MemberData(nameof(Faults))]
    public void Every_remedy_of_a_faulty_document_clears_its_finding_when_it_is_written_into_it(string code)
    {
        string text = File.ReadAllText(Path.Combine(s_folder, code + ".yaml"));
        CheckReport before = Report(text);
        RemedyResult result = RemedySearch.Of(before);
        foreach (FindingRemedies finding in result.Findings)
        {
            foreach (RemedySet set in finding.Sets)
            {
                CheckReport after = Written(text, OverlayEntries.Of(before.Traced.Plant, set.Changes));
                Assert.DoesNotContain(after.Findings, f => f.Message == before.Findings[finding.Finding].Message && f.Rule == before.Findings[finding.Finding].Rule);
                Assert.Equal(before.Findings.Count - set.Clears.Count, after.Findings.Count);
                Assert.Equal(set.Proven, after.Proven);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_plan_written_by_plugs_comes_to_the_same(string code)
    {
        string text = File.ReadAllText(Path.Combine(s_folder, code + ".yaml"));
        CheckReport before = Report(text);
        if (RemedySearch.Of(before).Plan is not { } plan)
            return;
        Assert.True(plan.IsReachedBy(Written(text, OverlayEntries.Of(before.Traced.Plant, plan.Changes))));
        Assert.True(plan.IsReachedBy(Written(text, OverlayEntries.ByPlugs(before.Traced.Plant, plan.After.Traced.Plant, plan.Changes))));
        Assert.False(plan.IsReachedBy(before));
    }

    [Fact]
    public void Every_kind_of_change_is_the_remedy_of_something()
    {
        var used = new HashSet<string>();
        foreach (string text in s_codes.Select(c => File.ReadAllText(Path.Combine(s_folder, c + ".yaml"))).Concat(s_further))
        {
            foreach (RemedySet set in RemedySearch.Of(Report(text)).Findings.SelectMany(f => f.Sets))
                used.UnionWith(set.Changes.Select(c => c.Kind.Name));
        }

        Assert.Equal(ChangeCatalogue.All.Select(k => k.Name).Order(StringComparer.Ordinal), used.Order(StringComparer.Ordinal));
    }

    /// <summary>Documents with faults that no example of a rule has.</summary>
    private static readonly string[] s_further =
    [
        // An A-to-A cord that turns by hand.
        "plant: P\nparts:\n  A: duplex interface\n  B: duplex interface\n  C: { kind: A-to-A cord, reversible: yes }\nruns:\n  - A/1, C, B/1\nlinks:\n  - A/1 to B/1\n",

        // A cord of sound on lighting.
        "plant: P\nnetworks:\n  lighting: { colour: red }\n  sound: { colour: blue }\nparts:\n  A: { kind: duplex interface, network: lighting }\n  B: { kind: duplex interface, network: lighting }\n  C: { kind: A-to-B cord, network: sound }\nruns:\n  - A/1, C, B/1\nlinks:\n  - A/1 to B/1\n",

        // A trunk in the neighbour's cassette, at which a cord waits already.
        "plant: P\nparts:\n  A: duplex interface\n  B: { kind: duplex interface }\n  K[1..3]: { kind: U1 cassette, base: 8 }\n  T: { kind: Type-B trunk, base: 8 }\nruns:\n  - A/1, A-to-B cord, K1/1\n  - K1/rear, T, K2/rear\n  - K3/1, A-to-B cord, B/1\n  - K2/2, A-to-B cord\nlinks:\n  - A/1 to B/1\n",

        // Field terminations that cross twice, or not at all.
        "plant: P\nparts:\n  A: duplex interface\n  B: duplex interface\n  F[1..2]: { kind: field termination, fibres: 2 }\n  W: { kind: cable, fibres: 2 }\nruns:\n  - A/1, A-to-B cord, F1/1\n  - F1/bare, W, F2/bare\n  - F2/1, A-to-B cord, B/1\nlinks:\n  - A/1 to B/1\n",

        // Two fibres exchanged in a splice.
        "plant: P\nparts:\n  A: duplex interface\n  B: duplex interface\n  F1: { kind: field termination, fibres: 2 }\n  F2: { kind: field termination, fibres: 2, wiring: reverse-pair }\n  W[1..2]: { kind: cable, fibres: 2 }\n  S: { kind: splice, fibres: 2, wiring: [[1, 2], [2, 1]] }\nruns:\n  - A/1, A-to-B cord, F1/1\n  - F1/bare, W1, S, W2, F2/bare\n  - F2/1, A-to-B cord, B/1\nlinks:\n  - A/1 to B/1\n",

        // A conversion module the wrong way round.
        File.ReadAllText(Path.Combine(Repository.Root, "gallery", "arrays", "conversion-2x12-to-3x8.yaml")).Replace("MOD-R: { kind: 2x12 to 3x8 module,", "MOD-R: { kind: 2x12 to 3x8 module, type: reversed,", StringComparison.Ordinal),
    ];

    private static CheckReport Report(string text) => CheckReport.Of(TracedPlant.Of(Reading.Plant(text)));

    private static CheckReport Written(string text, IReadOnlyList<OverlayEntry> entries)
    {
        var problems = new ProblemList();
        byte[]? edited = OverlayEditor.Apply(System.Text.Encoding.UTF8.GetBytes(text), "p", entries, problems);
        Assert.Equal("", problems.ToString());
        return Report(System.Text.Encoding.UTF8.GetString(edited!));
    }
}
