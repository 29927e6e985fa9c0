using PolarityMap.Core.Deviations;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Locate;

/// <summary>What was found of what was seen.</summary>
/// <param name="Observations">What was seen, in the order of the file.</param>
/// <param name="Contradictions">Observations that cannot both be true of any plant built from these parts.</param>
/// <param name="Explanations">The smallest sets of deviations with which all observations agree, the most likely first.</param>
/// <param name="Searched">What was searched, and what bound was hit.</param>
/// <param name="Next">The test to make next, or null when none would tell the explanations apart or there is nothing to tell.</param>
public sealed record LocateResult(
    IReadOnlyList<Observation> Observations,
    IReadOnlyList<Contradiction> Contradictions,
    IReadOnlyList<Explanation> Explanations,
    SearchReport Searched,
    NextTest? Next)
{
    /// <summary>Which observations refute the plant as described, by their places among <see cref="Observations"/>.</summary>
    public IReadOnlyList<int> Refuting { get; init; } = [];

    /// <summary>
    /// Where nothing explains everything: those observations without one of which a single deviation would. One of them may be a
    /// mistake.
    /// </summary>
    public IReadOnlyList<Observation> Doubtful { get; init; } = [];

    /// <summary>True when the plant as it is described agrees with everything that was seen.</summary>
    public bool IsAsDescribed => Contradictions.Count == 0 && Explanations is [{ Deviations.Count: 0 }];
}

/// <summary>Two observations that exclude each other, and why.</summary>
public sealed record Contradiction(Observation First, Observation Second, string Why);

/// <summary>Deviations that together agree with everything that was seen; without any of them something would not.</summary>
/// <param name="Deviations">The deviations; none when the plant as described agrees.</param>
/// <param name="Share">The share of belief that falls to it by the weights of its deviations, 0 to 1 over all explanations found.</param>
/// <param name="Group">Explanations of one group do the same to all light: no light test tells them apart, only a look.</param>
/// <param name="Evidence">What the observations say that bear on it; of explanations far down the list it is not told.</param>
public sealed record Explanation(IReadOnlyList<Deviation> Deviations, double Share, int Group, IReadOnlyList<Evidence> Evidence);

/// <summary>What an observation says about an explanation.</summary>
/// <param name="Observation">What was seen.</param>
/// <param name="IsTelling">True when the plant as described would show something else.</param>
/// <param name="Words">One sentence: <c>with the cord A-to-A, light from SW-L/1:A comes out at SW-R/1:A, as was seen</c>.</param>
public sealed record Evidence(Observation Observation, bool IsTelling, string Words);

/// <summary>How far was searched.</summary>
/// <param name="Sizes">For each number of deviations at once, the smallest first.</param>
/// <param name="Bound">What ended the search before it was complete, in words, or null.</param>
public sealed record SearchReport(IReadOnlyList<SizeSearched> Sizes, string? Bound);

/// <param name="Size">Number of deviations at once.</param>
/// <param name="Tried">Sets that were tried.</param>
/// <param name="Found">Explanations among them.</param>
/// <param name="IsComplete">True when no set of this size was left out.</param>
public sealed record SizeSearched(int Size, long Tried, int Found, bool IsComplete);

/// <summary>A test that can be made.</summary>
/// <param name="Minutes">The work it makes; common practice.</param>
public abstract record SiteTest(int Minutes);

/// <summary>Put light in here and look there.</summary>
/// <param name="From">The position where light is put in.</param>
/// <param name="Look">Index of the part where one looks.</param>
/// <param name="Minutes">The work it makes.</param>
public sealed record LightTest(int From, int Look, int Minutes) : SiteTest(Minutes);

/// <summary>Look at the link lamp of a port.</summary>
public sealed record LampTest(PortRef Port, int Minutes) : SiteTest(Minutes);

/// <summary>Look at a part and compare it with the description.</summary>
public sealed record LookTest(int Part, int Minutes) : SiteTest(Minutes);

/// <summary>Measure the loss from here to there.</summary>
/// <param name="From">The position where light is put in.</param>
/// <param name="Seen">The position where it is measured.</param>
/// <param name="Minutes">The work it makes.</param>
public sealed record LossTest(int From, int Seen, int Minutes) : SiteTest(Minutes);

/// <summary>The test that tells most for its work.</summary>
/// <param name="Test">What to do.</param>
/// <param name="Bits">The information expected of it.</param>
/// <param name="Outcomes">What can be seen, and what then remains, the most likely first.</param>
public sealed record NextTest(SiteTest Test, double Bits, IReadOnlyList<TestOutcome> Outcomes)
{
    /// <summary>
    /// True when only one cause is left and the test asks the blamed place itself. If it shows anything else than is listed, more
    /// than one thing is wrong and the search goes on with larger sets.
    /// </summary>
    public bool IsToConfirm { get; init; }
}

/// <summary>One outcome of a test.</summary>
/// <param name="Observation">The observation to note down.</param>
/// <param name="Share">How likely it is, 0 to 1.</param>
/// <param name="Explanations">Indices of the explanations that lead one to expect it; one that leaves the outcome open is in several.</param>
public sealed record TestOutcome(Observation Observation, double Share, IReadOnlyList<int> Explanations);

/// <summary>A decision tree: a test and what to do after each outcome, or what remains at the end.</summary>
/// <param name="Next">The test, or null at the end.</param>
/// <param name="Remaining">Explanations that are left before the test.</param>
/// <param name="Branches">For each outcome of the test, in its order, the plan that follows.</param>
public sealed record TestPlan(NextTest? Next, IReadOnlyList<Explanation> Remaining, IReadOnlyList<TestPlan> Branches);

/// <summary>How far to search.</summary>
public sealed record LocateOptions
{
    /// <summary>The most deviations at once.</summary>
    public int MostDeviations { get; init; } = 3;

    /// <summary>The most sets that are tried before the search says that it stopped.</summary>
    public long MostTried { get; init; } = 2_000_000;

    /// <summary>The most explanations that are kept.</summary>
    public int MostExplanations { get; init; } = 50_000;
}
