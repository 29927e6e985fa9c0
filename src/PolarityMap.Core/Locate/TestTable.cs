using PolarityMap.Core.Deviations;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Locate;

/// <summary>What every test would show under every explanation, as numbers; equal numbers look equal on site.</summary>
internal sealed class TestTable
{
    /// <summary>The test may show the one or the other.</summary>
    internal const int Open = int.MinValue;

    /// <summary>A measurement shows too much loss.</summary>
    internal const int TooMuch = -3;

    /// <summary>A measurement shows no more loss than is stated.</summary>
    internal const int AsStated = -2;

    private readonly int[][] _shows;

    public TestTable(DeviationContext context, IReadOnlyList<SiteTest> tests, IReadOnlyList<Deviation[]> explanations)
    {
        Tests = tests;
        _shows = new int[tests.Count][];
        for (int t = 0; t < tests.Count; t++)
            _shows[t] = new int[explanations.Count];
        var trial = new TrialGraph(context.Graph);
        var predictor = new Predictor(context, trial);
        for (int e = 0; e < explanations.Count; e++)
        {
            foreach (Deviation deviation in explanations[e])
                trial.Lay(deviation);
            for (int t = 0; t < tests.Count; t++)
                _shows[t][e] = Show(tests[t], predictor, trial, context.Graph);
            for (int i = 0; i < explanations[e].Length; i++)
                trial.Lift();
        }
    }

    public IReadOnlyList<SiteTest> Tests { get; }

    /// <summary>What a test shows under an explanation.</summary>
    public int Of(int test, int explanation) => _shows[test][explanation];

    private static int Show(SiteTest test, Predictor predictor, TrialGraph trial, StrandGraph graph) => test switch
    {
        LightTest light => predictor.Follow(light.From, light.Look),
        LampTest lamp => predictor.LampAt(lamp.Port) switch { LampState.On => 1, LampState.Off => 0, _ => Open },
        LookTest look => predictor.Differs(look.Part) ? 1 : 0,
        LossTest loss => Loss(loss, predictor.Follow(loss.From, graph.PartOf(loss.Seen)), trial),
        _ => 0,
    };

    /// <summary>Where light does not come there, where it comes out instead.</summary>
    private static int Loss(LossTest test, int seen, TrialGraph trial) => seen != test.Seen ? seen : trial.PassedLoss ? TooMuch : AsStated;

    /// <summary>The numbers that a test can show under some explanations, each with those that lead one to expect it; open ones are in all.</summary>
    public SortedDictionary<int, List<int>> Split(int test, IReadOnlyList<int> explanations)
    {
        var split = new SortedDictionary<int, List<int>>();
        foreach (int e in explanations)
        {
            if (_shows[test][e] != Open)
                List(split, _shows[test][e]).Add(e);
        }

        foreach (int e in explanations)
        {
            if (_shows[test][e] != Open)
                continue;
            List(split, 0).Add(e);
            List(split, 1).Add(e);
        }

        return split;

        static List<int> List(SortedDictionary<int, List<int>> split, int key)
        {
            if (!split.TryGetValue(key, out List<int>? list))
                split[key] = list = [];
            return list;
        }
    }

    /// <summary>
    /// The group of each explanation: those that every test of light, lamps and losses shows alike have the same number, counted
    /// from 1 in the order of the explanations.
    /// </summary>
    public int[] Groups(int explanations)
    {
        var group = new int[explanations];
        var known = new Dictionary<string, int>();
        for (int e = 0; e < explanations; e++)
        {
            var shows = new System.Text.StringBuilder();
            for (int t = 0; t < Tests.Count; t++)
            {
                if (Tests[t] is not LookTest)
                    shows.Append(_shows[t][e]).Append(',');
            }

            string key = shows.ToString();
            if (!known.TryGetValue(key, out int number))
                known[key] = number = known.Count + 1;
            group[e] = number;
        }

        return group;
    }
}
