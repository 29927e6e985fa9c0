using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Planning;

/// <summary>
/// The comparison of plans against what the standard says of each method, typed from summaries of TIA-568.3-D and -E. Sources are
/// counted as public texts that say the same: methods A and C more than five each, B four, U1 and U2 three.
/// </summary>
public sealed class ComparisonStatementTests
{
    private const int Links = 12;

    private static readonly PlanComparison s_compared = PlanComparison.Of(Twelve("10GBASE-SR", "OM4"));

    [Fact]
    public void Every_method_and_base_is_compared_once()
    {
        Assert.Equal(20, s_compared.Plans.Select(p => p.Candidate).Distinct().Count());
        Assert.Empty(s_compared.Excluded);
    }

    [Theory]
    [InlineData("A", "Type-A trunk", "Type-A adapter", 1, 1)]
    [InlineData("B", "Type-B trunk", "Type-B adapter", 2, 0)]
    [InlineData("C", "Type-C trunk", "Type-A adapter", 1, 0)]
    [InlineData("U1", "Type-B trunk", "Type-A adapter", 1, 0)]
    [InlineData("U2", "Type-B trunk", "Type-B adapter", 1, 0)]
    public void Trunks_adapters_and_cassettes_are_those_of_the_method(string method, string trunk, string adapter, int cassettes, int crossing)
    {
        PlanMeasures m = Of(method, 12).Measures;
        Assert.StartsWith(trunk, Assert.Single(m.TrunkKinds).Name, StringComparison.Ordinal);
        Assert.Equal(adapter, Assert.Single(m.AdapterKinds).Name);
        Assert.Equal(cassettes, m.Cassettes);
        Assert.Equal(crossing * Links, m.CordKinds.Where(k => k.Name == "A-to-A cord").Sum(k => k.Count));
        Assert.Equal((2 - crossing) * Links, m.CordKinds.Where(k => k.Name == "A-to-B cord").Sum(k => k.Count));
    }

    // Two cassettes and a trunk: at each end a cord into a cassette and a trunk into its rear; matings at interfaces do not count
    // (the channel of the standard ends at the cords' plugs in the equipment).
    [Theory]
    [InlineData("A")]
    [InlineData("B")]
    [InlineData("C")]
    [InlineData("U1")]
    [InlineData("U2")]
    public void A_channel_of_one_trunk_has_four_matings_with_any_method(string method) =>
        Assert.All(PlanCandidate.Bases, fibres => Assert.Equal(4, Of(method, fibres).Measures.Matings));

    // Which ends are alike follows from the table: A has an A-to-A cord at one end, B a second kind of cassette.
    [Theory]
    [InlineData("A", false)]
    [InlineData("B", false)]
    [InlineData("C", true)]
    [InlineData("U1", true)]
    [InlineData("U2", true)]
    public void Both_ends_take_the_same_parts_but_with_methods_A_and_B(string method, bool same)
    {
        Assert.Equal(same, Of(method, 12).Measures.IsAlikeAtBothEnds);

        // And so it is along every strand of the plant.
        foreach (int fibres in PlanCandidate.Bases)
        {
            ComparedPlan plan = Of(method, fibres);
            TracedPlant traced = plan.Proof.Report!.Traced;
            bool alike = plan.Proof.Report.Context.Outcomes.All.SelectMany(o => o.Strands).All(s =>
            {
                string[] parts = [.. traced.Hops(s).Select(h => traced.Plant.Parts[h.Part]).Where(p => p.Kind is "duplex cord" or "cassette").Select(p => string.Join(' ', p.Caption))];
                return parts.SequenceEqual(parts.Reverse());
            });
            Assert.Equal(plan.Measures.IsAlikeAtBothEnds, alike);
        }
    }

    // The columns "trunk near to far" of the tables of the methods: k to k, k to 13-k, and within each pair.
    [Theory]
    [InlineData("A", "same")]
    [InlineData("B", "reversed")]
    [InlineData("C", "pairs flipped")]
    [InlineData("U1", "reversed")]
    [InlineData("U2", "reversed")]
    public void The_trunk_numbers_its_far_end_as_the_table_of_the_method_does(string method, string order)
    {
        TracedPlant traced = Of(method, 12).Proof.Report!.Traced;
        int seen = 0;
        foreach (int strand in Of(method, 12).Proof.Report!.Context.Outcomes.All.SelectMany(o => o.Strands))
        {
            foreach (Hop hop in traced.Hops(strand))
            {
                if (traced.Plant.Parts[hop.Part].Kind != "trunk")
                    continue;
                (int near, int far) = (Position(traced, hop.In), Position(traced, hop.Out));
                Assert.Equal(order switch { "same" => near, "reversed" => 13 - near, _ => near % 2 == 1 ? near + 1 : near - 1 }, far);
                seen++;
            }
        }

        Assert.Equal(2 * Links, seen);
    }

    // Fault catalogue: B with the same straight cassette at both ends lights up at the wrong port, port order reversed (proved).
    [Fact]
    public void Method_B_with_one_kind_of_cassette_is_excluded_for_its_reversed_port_order()
    {
        PlanMethod one = PlanMethod.Find("B")! with { Far = "straight" };
        Assert.Contains("D04", Findings(one));
        Assert.DoesNotContain(Findings(one), f => f[0] == 'P');
    }

    // Fault catalogue: A with a Type-B trunk, C with a Type-A trunk, U1 with a Type-A trunk: transmitters meet (proved).
    [Theory]
    [InlineData("A", "Type-B")]
    [InlineData("C", "Type-A")]
    [InlineData("U1", "Type-A")]
    public void A_method_with_another_s_trunk_is_excluded_as_transmitters_meet(string method, string trunk) =>
        Assert.Contains(Findings(PlanMethod.Find(method)! with { Trunk = trunk }), f => f[0] == 'P');

    // Angled plugs do not fit with aligned keys: geometry, and one public source on U1 before U2 and B for single-mode.
    [Fact]
    public void Single_mode_excludes_the_methods_with_aligned_keys_by_M06()
    {
        PlanComparison single = PlanComparison.Of(Twelve("10GBASE-LR", "OS2"));
        Assert.Equal(["A", "C", "U1"], single.Plans.Select(p => p.Candidate.Method.Name).Distinct().Order(StringComparer.Ordinal));
        ExcludedPlans excluded = Assert.Single(single.Excluded);
        Assert.Equal(["B", "U2"], excluded.Proofs.Select(p => p.Candidate.Method.Name).Distinct());
        Assert.Equal("M06", Assert.Single(excluded.Reasons).Finding);
        Assert.Equal("methods B and U2", single.Listed(excluded));
    }

    // Two segments of method A in series: three A-to-B cords and no A-to-A cord (proved; two public sources).
    [Fact]
    public void Gathered_no_method_needs_an_A_to_A_cord()
    {
        Brief own = Twelve("10GBASE-SR", "OM4");
        PlanComparison gathered = PlanComparison.Of(own with { Separation = SeparationPolicy.Gathered, Outlets = [.. own.Outlets.Select(o => o with { Distance = Length.FromMillimetres(10_000) })] });
        Assert.Equal(20, gathered.Plans.Count);
        Assert.All(gathered.Plans, p => Assert.Equal(new KindCount("A-to-B cord", 3 * Links), Assert.Single(p.Measures.CordKinds)));
        Assert.All(gathered.Plans, p => Assert.Equal(8, p.Measures.Matings));
    }

    private static int Position(TracedPlant traced, int position) => int.Parse(traced.Address(position).Split(':')[^1], System.Globalization.CultureInfo.InvariantCulture);

    private static string[] Findings(PlanMethod method)
    {
        Brief brief = Twelve("10GBASE-SR", "OM4");
        PlanComparison compared = PlanComparison.Of(brief, [PlanProof.Of(brief, new PlanCandidate(method, 12))]);
        Assert.Empty(compared.Plans);
        return [.. Assert.Single(compared.Excluded).Reasons.Select(r => r.Finding!)];
    }

    private static ComparedPlan Of(string method, int fibres) => s_compared.Plans.Single(p => p.Candidate.Method.Name == method && p.Candidate.Base == fibres);

    internal static Brief Twelve(string application, string fibre)
    {
        var place = new SourcePlace("brief", 0, 0);
        return new Brief
        {
            Title = new PlantTitle("Twelve links"),
            Fibre = FibreClass.Find(fibre)!,
            Networks = [new BriefNetwork(new Network("house", null, place), "H", Application.Find(application)!)],
            Rooms = [new BriefRoom("Main", "M", place), new BriefRoom("Stage", "S", place) { Distance = Length.FromMillimetres(40_000) }],
            Outlets = [new BriefOutlets(new PlannedName("D", 1, Links, ""), 1, [1], place)],
            ArrayLoss = new Decibel(0.25m),
            DuplexLoss = new Decibel(0.15m),
        };
    }
}
