using CsCheck;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Core.Tests.Planning;

/// <summary>
/// What is told as the nearest that can be met is true as it is written: the words are read here on their own and written into the
/// brief, which is then planned.
/// </summary>
public sealed class NearestTests
{
    [Fact]
    public void What_is_told_is_true_as_it_is_written_and_all_that_there_is() => RandomBriefs.Any.Sample(
        static brief =>
        {
            PlanResult result = Planner.Plan(brief);
            foreach (Refusal refusal in result.Refusals)
            {
                PlanProof proof = result.Proofs.MinBy(p => p.Refusals.Count)!;
                foreach (NearestBrief nearest in refusal.Nearest)
                    Clears(brief, proof, refusal, nearest.Words);
                IsAll(brief, proof, refusal);
            }
        },
        iter: Soak.Times(20));

    // 10GBASE-SR may lose 2.6 dB on OM3 and 2.9 dB on OM4 (IEEE 802.3, Table 52-10); 250 m of cable at 3.0 dB/km with 5 m of cords
    // take 0.765 dB and the matings at the two cassettes 2 x 0.35 and 2 x 0.15 dB: 0.83 dB are left of 1.00. Only the array
    // matings can be low enough.
    [Fact]
    public void A_loss_that_is_low_already_is_not_told_to_be_lowered_to_more_than_it_is()
    {
        Brief brief = Small(FibreClass.Find("OM3")!, "10GBASE-SR", 250) with { ArrayLoss = new Decibel(0.35m), DuplexLoss = new Decibel(0.15m), Margin = new Decibel(1) };
        string[] told = Told(brief);
        Assert.Contains("array-loss: at most 0.20 dB", told);
        Assert.Contains("fibre: OM4", told);
        Assert.Contains(told, w => w.StartsWith("rooms.Hall.distance: at most ", StringComparison.Ordinal));
        Assert.DoesNotContain(told, w => w.Contains("duplex-loss", StringComparison.Ordinal));
    }

    // 40GBASE-SR4 may lose 1.9 dB on OM3 and 1.5 dB on OM4 (IEEE 802.3, Table 86-2).
    [Fact]
    public void A_lower_class_with_a_larger_budget_is_told() =>
        Assert.Contains("fibre: OM3", Told(Small(FibreClass.Find("OM4")!, "40GBASE-SR4", 30) with { Limits = LimitProfile.Find("TIA-568.3-E")! }));

    // A port of eight lanes has sixteen fibres and a trunk of base 8 twelve positions.
    [Fact]
    public void What_comes_later_may_be_given_up()
    {
        Brief brief = Small(FibreClass.Find("OM4")!, "400GBASE-SR4", 30) with { Method = PlanMethod.Find("U1"), Base = 8, ArrayLoss = new Decibel(0.35m) };
        brief = brief with { Networks = [brief.Networks[0] with { Later = Application.Find("400GBASE-SR8") }] };
        Assert.Contains("no later application", Told(brief));
    }

    [Fact]
    public void Arrays_of_two_sizes_are_one_refusal_with_the_code_of_the_finding()
    {
        PlanResult result = Planner.Plan(Small(FibreClass.Find("OM4")!, "40GBASE-SR4", 30) with { Base = 16, ArrayLoss = new Decibel(0.35m) });
        Refusal refusal = Assert.Single(result.Refusals);
        Assert.Equal((RefusalCode.Array, "M04"), (refusal.Code, refusal.Finding));
        Assert.Equal(["base: 8", "base: 12"], refusal.Nearest.Select(n => n.Words));
    }

    // TIA-568.3, method B: a second kind of cassette, or the same one upside down (four public sources).
    [Fact]
    public void One_kind_of_cassette_with_method_B_is_told_as_what_is_not_planned()
    {
        PlanResult result = Planner.Plan(Small(FibreClass.Find("OM4")!, "10GBASE-SR", 30) with { Method = PlanMethod.Find("B"), OneCassette = true });
        Refusal refusal = result.Refusals.Single(r => r.Code == RefusalCode.Cassettes);
        Assert.Contains("one kind would have to be mounted upside down at one end, which is not planned", refusal.Reason, StringComparison.Ordinal);
        Assert.Equal(["one-cassette: no", "method: A", "method: C", "method: U1", "method: U2"], refusal.Nearest.Select(n => n.Words));
    }

    [Fact]
    public void An_outlet_named_as_a_switch_is_renamed()
    {
        Brief brief = Small(FibreClass.Find("OM4")!, "10GBASE-SR", 30) with { ArrayLoss = new Decibel(0.35m) };
        Refusal refusal = Assert.Single(Planner.Plan(brief with { Outlets = [brief.Outlets[0] with { Name = PlannedName.One("SW") }] }).Refusals);
        Assert.Equal((RefusalCode.Names, "outlets.SW"), (refusal.Code, refusal.Requirement));
        NearestBrief nearest = Assert.Single(refusal.Nearest);
        Assert.Equal("outlets: OUT-SW in place of SW", nearest.Words);
        Assert.True(PlanProof.Of(nearest.Brief, nearest.Candidate).Serves);
    }

    [Theory]
    [InlineData(SeparationPolicy.Own, null)]
    [InlineData(SeparationPolicy.Own, 0)]
    [InlineData(SeparationPolicy.Gathered, null)]
    [InlineData(SeparationPolicy.Gathered, 20)]
    public void A_cable_without_a_way_is_refused(SeparationPolicy separation, int? metres)
    {
        Brief brief = Small(FibreClass.Find("OM4")!, "10GBASE-SR", 30) with { Separation = separation };
        PlanResult result = Planner.Plan(brief with { Outlets = [brief.Outlets[0] with { Room = 0, Distance = metres is { } m ? Length.FromMillimetres(m * 1_000L) : null }] });
        Refusal refusal = result.Refusals.Single(r => r.Code == RefusalCode.Way);

        // In a room with switches nothing can be gathered, so that a distance alone is not enough then.
        Assert.Equal(separation == SeparationPolicy.Gathered && metres is null, refusal.Nearest.Count == 0);
        Assert.All(refusal.Nearest, n => Assert.DoesNotContain(PlanProof.Of(n.Brief, n.Candidate).Planned!.Sections.SelectMany(s => s.Families).SelectMany(f => f.Lines), l => l.Type.Kind.Name == "trunk" && l.Type.Whole.Length("length") is { Millimetres: 0 }));
    }

    // Ten lanes each way, over two trunks in series: the pairs that method C flips are flipped an even number of times.
    [Theory]
    [InlineData("A")]
    [InlineData("B")]
    [InlineData("C")]
    [InlineData("U1")]
    [InlineData("U2")]
    public void Ten_lanes_over_two_trunks_in_series_go_with_every_method(string method)
    {
        Brief brief = Small(FibreClass.Find("OM4")!, "100GBASE-SR10", 30) with { Method = PlanMethod.Find(method), Base = 24, Separation = SeparationPolicy.Gathered, ArrayLoss = new Decibel(0.2m) };
        Assert.Empty(Planner.Plan(brief with { Outlets = [brief.Outlets[0] with { Distance = Length.FromMillimetres(9_000) }] }).Refusals);
    }

    private static string[] Told(Brief brief) => [.. Planner.Plan(brief).Refusals.SelectMany(r => r.Nearest).Select(n => n.Words)];

    private static Brief Small(FibreClass fibre, string application, int metres)
    {
        var place = new SourcePlace("brief", 0, 0);
        return new Brief
        {
            Title = new PlantTitle("Small"),
            Fibre = fibre,
            Networks = [new BriefNetwork(new Network("d", null, place), "D", Application.Find(application)!)],
            Rooms = [new BriefRoom("ER", "ER", place), new BriefRoom("Hall", "HA", place) { Distance = Length.FromMillimetres(metres * 1_000L) }],
            Outlets = [new BriefOutlets(new PlannedName("H", 1, 9, ""), 1, [1], place)],
        };
    }

    /// <summary>A brief with the words written into it is free of the refusal, nothing is raised, and no larger number does.</summary>
    private static void Clears(Brief brief, PlanProof proof, Refusal refusal, string words)
    {
        (Brief written, PlanCandidate candidate) = WrittenBrief.Of(brief, proof.Candidate, words);
        PlanProof again = PlanProof.Of(written, candidate);
        Assert.False(again.Refusals.Any(r => r.IsLike(refusal)), $"{refusal.Reason}: {words}");
        Assert.True(again.Refusals.All(r => proof.Refusals.Any(r.IsLike)), $"{words} brings {string.Join("; ", again.Refusals)}");
        Decibel most = brief.Limits.MatingMax;
        Assert.True((written.ArrayLoss ?? most) <= (brief.ArrayLoss ?? most), words);
        Assert.True((written.DuplexLoss ?? most) <= (brief.DuplexLoss ?? most), words);
        Assert.True((written.Margin ?? default) <= (brief.Margin ?? default), words);
        Assert.All(written.Rooms.Zip(brief.Rooms), r => Assert.True(r.First == r.Second || r.First.Distance < r.Second.Distance, words));
        if (words.Split(".distance: at most ") is not [var path, var length])
            return;
        Assert.True(Length.TryParse(length, out Length told, out _));
        (Brief longer, candidate) = WrittenBrief.Of(brief, proof.Candidate, $"{path}.distance: at most {Length.FromMillimetres(told.Millimetres + 1_000)}");
        Assert.Contains(PlanProof.Of(longer, candidate).Refusals, r => r.IsLike(refusal) || !proof.Refusals.Any(r.IsLike));
    }

    /// <summary>Every other fibre, method, base and policy that meets the brief is told.</summary>
    private static void IsAll(Brief brief, PlanProof proof, Refusal refusal)
    {
        IEnumerable<string> keys =
        [
            .. FibreClass.Names.Where(f => f != brief.Fibre.Name).Select(f => $"fibre: {f}"),
            .. PlanMethod.Names.Where(m => m != proof.Candidate.Method.Name).Select(m => $"method: {m}"),
            .. PlanCandidate.Bases.Where(b => b != proof.Candidate.Base).Select(b => $"base: {b}"),
            "separation: own", "no later application",
        ];
        foreach (string words in keys.Where(k => !refusal.Nearest.Any(n => n.Words == k)))
        {
            (Brief written, PlanCandidate candidate) = WrittenBrief.Of(brief, proof.Candidate, words);
            Assert.False(PlanProof.Of(written, candidate).Serves, $"{refusal.Reason}: {words} is not told");
        }
    }
}
