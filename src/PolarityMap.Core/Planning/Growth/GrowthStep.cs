namespace PolarityMap.Core.Planning.Growth;

/// <summary>What a step of the work is for.</summary>
public enum StepKind
{
    /// <summary>New parts and what can be plugged in beside everything that is live.</summary>
    Add,

    /// <summary>Links are taken from their old parts to their new ones.</summary>
    CutOver,

    /// <summary>What nothing needs any more is taken out.</summary>
    Clear,
}

/// <summary>One step of the work, traced while it is done and checked when it is done.</summary>
/// <param name="Number">Counted from 1.</param>
/// <param name="Kind">What it is for.</param>
public sealed record GrowthStep(int Number, StepKind Kind)
{
    /// <summary>Joints that are opened first, those at interfaces before the others, so that no transmitter shines into an open end.</summary>
    public required IReadOnlyList<Joint> Opened { get; init; }

    /// <summary>Joints that are made then, those at interfaces after the others.</summary>
    public required IReadOnlyList<Joint> Made { get; init; }

    /// <summary>Joints of what carries no light any more, opened when the links are up again.</summary>
    public required IReadOnlyList<Joint> Cleared { get; init; }

    /// <summary>Parts that come, by number.</summary>
    public required IReadOnlyList<int> PartsIn { get; init; }

    /// <summary>Parts that go, by number.</summary>
    public required IReadOnlyList<int> PartsOut { get; init; }

    /// <summary>Joints at interfaces that are pulled before all others and put back after all others, since their link is dark meanwhile.</summary>
    public required IReadOnlyList<Joint> Held { get; init; }

    /// <summary>Links that were up, are dark while the joints are open, and are up again at the end; from the trace of that plant.</summary>
    public required IReadOnlyList<int> Dark { get; init; }

    /// <summary>Links that end for good in this step; from the same trace.</summary>
    public required IReadOnlyList<int> Ended { get; init; }

    /// <summary>Links that are up for the first time.</summary>
    public required IReadOnlyList<int> Up { get; init; }

    /// <summary>Links that are up at the end of the step, all proven.</summary>
    public required IReadOnlyList<int> Live { get; init; }

    /// <summary>How many of <see cref="Live"/> the checker proves at the end of the step.</summary>
    public required int Proven { get; init; }

    /// <summary>Findings of severity error at the end of the step; parts that wait for their turn are told as warnings.</summary>
    public required IReadOnlyList<string> Errors { get; init; }
}
