using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Core.Tests.Planning;

/// <summary>
/// What the standard says of each method, as summaries of TIA-568.3-D and -E tell it, against what plans of the method take.
/// </summary>
public sealed class MethodStatementTests
{
    public static TheoryData<string, int> Every
    {
        get
        {
            var every = new TheoryData<string, int>();
            foreach (PlanMethod method in PlanMethod.All)
            {
                foreach (int fibres in PlanCandidate.Bases)
                    every.Add(method.Name, fibres);
            }

            return every;
        }
    }

    [Theory]
    [MemberData(nameof(Every))]
    public void Every_method_serves_duplex_links_on_every_base(string method, int fibres) => Assert.True(Proof(method, fibres).Serves);

    // Method B: a second kind of cassette, or the same one inverted, at one end (four public sources); the others take one kind.
    [Theory]
    [InlineData("A", 1)]
    [InlineData("B", 2)]
    [InlineData("C", 1)]
    [InlineData("U1", 1)]
    [InlineData("U2", 1)]
    public void Method_B_alone_takes_two_kinds_of_cassette(string method, int kinds) => Assert.Equal(kinds, PlanMeasures.Of(Proof(method, 12)).Cassettes);

    // Method A: exactly one A-to-A cord in a channel with one trunk (more than six public sources); the others A-to-B throughout.
    [Theory]
    [InlineData("A", 12)]
    [InlineData("B", 0)]
    [InlineData("C", 0)]
    [InlineData("U1", 0)]
    [InlineData("U2", 0)]
    public void Method_A_alone_takes_an_A_to_A_cord_for_each_link(string method, int cords) => Assert.Equal(cords, Count(Proof(method, 12), "A-to-A"));

    // Trunks of the methods: A Type-A, C Type-C, all others Type-B (TIA-568.3-D and -E; three or more public sources each).
    [Theory]
    [InlineData("A", "Type-A")]
    [InlineData("B", "Type-B")]
    [InlineData("C", "Type-C")]
    [InlineData("U1", "Type-B")]
    [InlineData("U2", "Type-B")]
    public void Each_method_has_its_trunk(string method, string trunk) =>
        Assert.All(Proof(method, 12).Report!.Traced.Plant.Parts.Where(p => p.Kind == "trunk"), t => Assert.Contains(trunk, t.Caption));

    // Angled plugs with aligned keys do not fit (geometry; U1 is preferred over U2 and B for single-mode, one public source).
    [Theory]
    [InlineData("A", true)]
    [InlineData("B", false)]
    [InlineData("C", true)]
    [InlineData("U1", true)]
    [InlineData("U2", false)]
    public void Methods_with_aligned_keys_cannot_be_built_with_angled_plugs(string method, bool serves)
    {
        PlanProof proof = PlanProof.Of(Brief("10GBASE-LR", "OS2"), new PlanCandidate(PlanMethod.Find(method)!, 12));
        Assert.Equal(serves, proof.Serves);
        if (!serves)
            Assert.Equal("M06", Assert.Single(proof.Refusals).Finding);
    }

    // Method A in series with three A-to-B cords works: a cross-connect (proved; section on series of the summary).
    [Fact]
    public void Two_segments_of_method_A_take_A_to_B_cords_alone()
    {
        Brief own = Brief("10GBASE-SR", "OM4");
        Brief brief = own with
        {
            Separation = SeparationPolicy.Gathered,
            Outlets = [.. own.Outlets.Select(o => o with { Distance = Length.FromMillimetres(10_000) })],
        };
        PlanProof proof = PlanProof.Of(brief, new PlanCandidate(PlanMethod.Find("A")!, 12));
        Assert.True(proof.Serves);
        Assert.Equal(0, Count(proof, "A-to-A"));
        Assert.Equal(36, Count(proof, "A-to-B"));
    }

    // Parallel: A one Type-A and one Type-B cord, B Type-B at both ends, C one Type-B and one Type-C (TIA-568.3-D; from one public
    // source for A and B, from memory for C, all proved).
    [Theory]
    [InlineData("A", "Type-A,Type-B")]
    [InlineData("B", "Type-B")]
    [InlineData("C", "Type-B,Type-C")]
    [InlineData("U1", "Type-B")]
    [InlineData("U2", "Type-B")]
    public void Parallel_links_take_the_array_cords_of_their_method(string method, string cords)
    {
        PlanProof proof = PlanProof.Of(Brief("40GBASE-SR4", "OM4"), new PlanCandidate(PlanMethod.Find(method)!, 12));
        Assert.True(proof.Serves);
        Assert.Equal(cords, string.Join(',', proof.Report!.Traced.Plant.Parts.Where(p => p.Kind == "array cord").Select(p => p.Caption[1]).Distinct().Order(StringComparer.Ordinal)));
    }

    private static int Count(PlanProof proof, string type) => proof.Report!.Traced.Plant.Parts.Count(p => p.Kind == "duplex cord" && p.Caption.Contains(type));

    private static PlanProof Proof(string method, int fibres) => PlanProof.Of(Brief("10GBASE-SR", "OM4"), new PlanCandidate(PlanMethod.Find(method)!, fibres));

    private static Brief Brief(string application, string fibre)
    {
        var place = new SourcePlace("brief", 0, 0);
        return new Brief
        {
            Title = new PlantTitle("Twelve links"),
            Fibre = FibreClass.Find(fibre)!,
            Networks = [new BriefNetwork(new Network("house", null, place), "H", Application.Find(application)!)],
            Rooms = [new BriefRoom("Main", "M", place), new BriefRoom("Stage", "S", place) { Distance = Length.FromMillimetres(40_000) }],
            Outlets = [new BriefOutlets(new PlannedName("D", 1, 12, ""), 1, [1], place)],
            ArrayLoss = new Decibel(0.25m),
            DuplexLoss = new Decibel(0.15m),
        };
    }
}
