using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>
/// Two ports joined, told by numbers of parts that stay the same from step to step; or one plug that waits in an adapter.
/// </summary>
/// <param name="A">One port.</param>
/// <param name="B">The other; no part where a plug waits.</param>
/// <param name="Keys">How the keys lie.</param>
public readonly record struct Joint(PortRef A, PortRef B, Keying Keys)
{
    public static readonly PortRef Nothing = new(-1, -1);

    /// <summary>The adapter in which they meet, or none.</summary>
    public PortRef? Through { get; init; }

    public int PositionOfA { get; init; }

    public int PositionOfB { get; init; }

    /// <summary>True for a plug that waits in an adapter.</summary>
    public bool IsOpen => B == Nothing;

    /// <summary>The ports that it takes.</summary>
    public IEnumerable<PortRef> Ports
    {
        get
        {
            yield return A;
            if (!IsOpen)
                yield return B;
            if (Through is { } adapter)
                yield return adapter;
        }
    }

    /// <summary>The same told from the other side.</summary>
    internal Joint Turned() => IsOpen ? this : this with { A = B, B = A, PositionOfA = PositionOfB, PositionOfB = PositionOfA };

    /// <summary>The joint of a mating whose parts have other numbers.</summary>
    internal static Joint Of(Mating mating, Func<PortRef, PortRef> at) => new(at(mating.A), at(mating.B), mating.Keys)
    {
        Through = mating.Through is { } adapter ? at(adapter) : null,
        PositionOfA = mating.PositionOfA,
        PositionOfB = mating.PositionOfB,
    };

    /// <summary>As <see cref="Of(Mating, Func{PortRef, PortRef})"/> for a plug that waits.</summary>
    internal static Joint Of(OpenPlug plug, Func<PortRef, PortRef> at) => new(at(plug.Plug), Nothing, Keying.Aligned) { Through = at(plug.Adapter) };
}
