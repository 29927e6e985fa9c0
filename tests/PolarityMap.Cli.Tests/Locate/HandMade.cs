using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Tests.Locate;

/// <summary>
/// What a search might find in the plant of <see cref="Samples.Clean"/>, put together by hand, so that what is said of it is
/// tested without the search.
/// </summary>
internal sealed class HandMade
{
    public HandMade()
    {
        Traced = TracedPlant.Of(PlantDocument.Read("plant.yaml", new TextSource("plant.yaml", Samples.Clean), new ProblemList())!);
        var context = new DeviationContext(Traced);
        Left = context.At(Part("SW-L/1~K-L/1")).First(d => d.Kind.Name == "other-cord");
        Right = context.At(Part("K-R/1~SW-R/1")).First(d => d.Kind.Name == "other-cord");
        Exchanged = context.At(Part("SW-R")).First(d => d.Kind.Name == "cords-exchanged");
        Lamp = new LampSeen(Port("SW-R", 0), false) { Place = new SourcePlace("seen.yaml", 2, 5), Note = "since Monday" };
        Dark = new LightSeen(At("SW-L/1", 1), -1, -1) { Place = new SourcePlace("seen.yaml", 3, 5) };
        Test = new LightTest(At("SW-L/1", 1), Part("K-L"), 3);
    }

    public TracedPlant Traced { get; }

    public Deviation Left { get; }

    public Deviation Right { get; }

    public Deviation Exchanged { get; }

    public LampSeen Lamp { get; }

    public LightSeen Dark { get; }

    public LightTest Test { get; }

    /// <summary>Three explanations of a lamp that is off, two of them alike to all light, with the test that tells the first apart.</summary>
    public LocateResult ThreeLeft => new(
        [Lamp, Dark], [],
        [Explained(0.62, 0, [Left]), Explained(0.30, 1, [Right]), Explained(0.08, 1, [Right, Exchanged])],
        new SearchReport([new(1, 312, 2, true), new(2, 48_516, 1, false)], "stopped after 48828 sets"),
        new NextTest(Test, 0.96, [Outcome(At("K-L/rear", 1), 0.62, 0), Outcome(-1, 0.38, 1, 2)]));

    public LocateResult OneLeft => new([Lamp, Dark], [], [Explained(1, 0, [Left])], new SearchReport([new(1, 312, 1, true)], null), null);

    public LocateResult OneGroupLeft => new([Lamp, Dark], [], [Explained(0.8, 3, [Right]), Explained(0.2, 3, [Right, Exchanged])], new SearchReport([], null), null);

    public LocateResult NothingFound => new([Lamp], [], [], new SearchReport([new(1, 312, 0, true), new(2, 48_516, 0, true)], null), null);

    public static LocateResult AsDescribed(params Observation[] seen) => new(seen, [], [new Explanation([], 1, 0, [])], new SearchReport([new(0, 1, 1, true)], null), null);

    public LocateResult Contradicting
    {
        get
        {
            var lit = new LightSeen(Dark.From, Part("SW-R"), At("SW-R/1", 2)) { Place = new SourcePlace("seen.yaml", 7, 5) };
            return new([Lamp, Dark, lit], [new Contradiction(Dark, lit, "light that came out of SW-R/1:B came out at an interface")], [], new SearchReport([], null), null);
        }
    }

    /// <summary>The tree of <see cref="ThreeLeft"/>: one test, then a look for the second.</summary>
    public TestPlan Plan
    {
        get
        {
            LocateResult result = ThreeLeft;
            Explanation[] rest = [result.Explanations[1], result.Explanations[2]];
            var look = new NextTest(new LookTest(Part("SW-R"), 4), 0.7, [
                new TestOutcome(new PartLooked(Part("SW-R"), true), 0.8, [0]),
                new TestOutcome(new PartLooked(Part("SW-R"), false), 0.2, [1])]);
            var second = new TestPlan(look, rest, [new TestPlan(null, [rest[0]], []), new TestPlan(null, [rest[1]], [])]);
            return new TestPlan(result.Next, result.Explanations, [new TestPlan(null, [result.Explanations[0]], []), second]);
        }
    }

    public int Part(string name) => Enumerable.Range(0, Traced.Plant.Parts.Count).Single(i => Traced.Plant.Parts[i].Name == name);

    public PortRef Port(string part, int port) => new(Part(part), port);

    /// <summary>The position at an address without its position, such as <c>K-L/rear</c> and 1.</summary>
    public int At(string port, int position)
    {
        int part = Part(port[..port.LastIndexOf('/')]);
        return Traced.Graph.PositionOf(new PortRef(part, Traced.Plant.Parts[part].Shape.FindPort(port[(port.LastIndexOf('/') + 1)..])), position);
    }

    public TestOutcome Outcome(int seen, double share, params int[] explanations) => new(new LightSeen(Test.From, Test.Look, seen), share, explanations);

    private Explanation Explained(double share, int group, Deviation[] deviations) => new(deviations, share, group,
    [
        new Evidence(Lamp, true, "with that cord nothing lights SW-R/1:B: its lamp is off, as was seen"),
        new Evidence(Dark, false, "light from SW-L/1:A comes out at no interface, as was seen"),
    ]);
}
