using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Oracles;
using PolarityMap.Core.Tests.Parts;
using Xunit;

namespace PolarityMap.Core.Tests.Strands;

/// <summary>Channels through trunks of two rows of twelve between cassettes, against the typed tables and the reference model.</summary>
public sealed class TwoRowChannelTests
{
    private static readonly string[] StraightOnes =
        ["straight", "straight, rows exchanged", "straight, ports reversed in each row", "straight, all ports reversed"];

    private static readonly string[] Universals = ["universal in each row", "universal over both rows"];

    public static TheoryData<string> Trunks => [.. PartTables.TwoRowTrunks.Select(t => t.Trunk)];

    // Source: trade facts 5, two-row trunk with cassettes, both adapters alike, either kind. Proved. A straight cassette and
    // an A-to-B cord are at the left.
    [Theory]
    [MemberData(nameof(Trunks))]
    public void A_trunk_works_with_its_typed_second_cassette_and_cord_and_with_no_other(string trunk)
    {
        TwoRowWorksRow typed = PartTables.TwoRowTrunks.Single(t => t.Trunk == trunk);
        foreach (string right in StraightOnes)
        {
            foreach (string cord in (string[])["A-to-B", "A-to-A"])
                AssertChannel("straight", trunk, right, "A-to-B", cord, works: right == typed.RightTransition && cord == typed.RightCord);
        }
    }

    // Source: trade facts 5, the universal transitions of the same table. Proved.
    [Theory]
    [MemberData(nameof(Trunks))]
    public void A_universal_cassette_at_both_ends_works_with_its_typed_trunk_and_with_no_other(string trunk)
    {
        foreach (string universal in Universals)
        {
            TwoRowUniversalRow typed = PartTables.TwoRowUniversals.Single(u => u.Transition == universal);
            AssertChannel(universal, trunk, universal, typed.BothCords, typed.BothCords, works: trunk == typed.Trunk);
            if (trunk == typed.Trunk)
                AssertChannel(universal, trunk, universal, typed.BothCords, "A-to-A", works: false);
        }
    }

    // Source: the reference model; 2.2 and 5 of the trade facts for its parts.
    [Theory]
    [MemberData(nameof(Trunks))]
    public void Every_two_transitions_give_what_the_reference_model_gives(string trunk)
    {
        foreach (string left in StraightOnes.Concat(Universals))
        {
            foreach (string right in StraightOnes.Concat(Universals))
            {
                foreach (bool opposed in (bool[])[false, true])
                    AssertTraced(left, trunk, right, "A-to-B", "A-to-B", opposed, opposed, backwards: false);
            }
        }
    }

    // Source: trade facts 5: opposed exchanges the rows and two opposed matings cancel; one alone does not. Proved.
    [Fact]
    public void One_opposed_and_one_aligned_adapter_break_every_two_row_channel_that_works_with_both_alike()
    {
        foreach (TwoRowWorksRow row in PartTables.TwoRowTrunks)
        {
            TracedPlant traced = AssertTraced("straight", row.Trunk, row.RightTransition, "A-to-B", row.RightCord, leftOpposed: true, rightOpposed: false, backwards: false);
            traced.AssertVerdict(right: false, row.Trunk);
        }
    }

    private static void AssertChannel(string left, string trunk, string right, string leftCord, string rightCord, bool works)
    {
        foreach (bool opposed in (bool[])[false, true])
        {
            foreach (bool backwards in (bool[])[false, true])
            {
                string what = $"{left}, {trunk}, {right}, {leftCord}, {rightCord}, {(opposed ? "opposed" : "aligned")}";
                Assert.True(works == SlowModel.Works([leftCord, rightCord], [Slow(left, trunk, right, opposed, opposed)], 12), what);
                AssertTraced(left, trunk, right, leftCord, rightCord, opposed, opposed, backwards).AssertVerdict(works, what);
            }
        }
    }

    /// <summary>The channel through the product, every answer compared with the reference model's.</summary>
    private static TracedPlant AssertTraced(string left, string trunk, string right, string leftCord, string rightCord, bool leftOpposed, bool rightOpposed, bool backwards)
    {
        SlowLink slow = Slow(left, trunk, right, leftOpposed, rightOpposed);
        Runs runs = new Runs()
            .Part("L", "duplex interface", v => v.Set("ports", 12))
            .Part("R", "duplex interface", v => v.Set("ports", 12))
            .Part("KL", "cassette", v => Cassette(v, left, leftOpposed))
            .Part("KR", "cassette", v => Cassette(v, right, rightOpposed))
            .Part("T", "trunk", v => v.Set("base", 24).Set("type", trunk))
            .Run("KL/rear", "T", "KR/rear");
        for (int port = 1; port <= 12; port++)
        {
            runs.Part($"CL{port}", "duplex cord", v => v.Set("type", leftCord))
                .Part($"CR{port}", "duplex cord", v => v.Set("type", rightCord))
                .Run($"L/{port}", $"CL{port}", $"KL/{port}")
                .Run($"KR/{port}", $"CR{port}", $"R/{port}")
                .Link($"L/{port}", $"R/{port}");
        }

        TracedPlant traced = runs.Write(backwards).Trace();
        for (int port = 1; port <= 12; port++)
        {
            Assert.Equal(SlowModel.Answer(leftCord, slow, rightCord, port, "Tx"), traced.Answer(port, "Tx"));
            Assert.Equal(SlowModel.Answer(leftCord, slow, rightCord, port, "Rx"), traced.Answer(port, "Rx"));
        }

        return traced;
    }

    private static void Cassette(AttributeValues values, string transition, bool opposed) =>
        values.Set("base", 24).Set("wiring", TypedWiringTests.TwoRowName(transition)).Set("keys", opposed ? "opposed" : "aligned");

    private static SlowLink Slow(string left, string trunk, string right, bool leftOpposed, bool rightOpposed) => new(
        Typed(left),
        SlowModel.Mating(2, 12, leftOpposed),
        PartTables.TwoRowCable(trunk).ToDictionary(j => j.Near, j => j.Far),
        SlowModel.Mating(2, 12, rightOpposed),
        Typed(right));

    private static Dictionary<(int Port, char Position), int> Typed(string transition)
    {
        IReadOnlyList<PortWiring> typed = Universals.Contains(transition) ? PartTables.TwoRowUniversal(transition) : PartTables.TwoRowTransition(transition);
        return typed.SelectMany(p => new[] { ((p.Port, 'A'), p.A), ((p.Port, 'B'), p.B) }).ToDictionary(p => p.Item1, p => p.Item2);
    }
}
