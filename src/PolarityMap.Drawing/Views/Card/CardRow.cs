using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>One strand in one part of a card.</summary>
/// <param name="Trail">The strand.</param>
/// <param name="Index">Index of the hop in the strand.</param>
/// <param name="Enters">The column it enters in, 0 at the left.</param>
/// <param name="Leaves">The column it leaves in.</param>
internal sealed record Visit(Trail Trail, int Index, int Enters, int Leaves)
{
    public Hop Hop => Trail.Hops[Index];

    public bool IsFirst => Index == 0;

    public bool IsLast => Index == Trail.Hops.Count - 1;

    /// <summary>True when the strand comes from a row further up than the one before.</summary>
    public bool ComesFromAfar { get; init; }

    /// <summary>True when the strand goes on in a row further down than the next.</summary>
    public bool GoesAfar { get; init; }
}

/// <summary>A part on a card with the strands that pass it together.</summary>
internal sealed record CardRow(int Part, IReadOnlyList<Visit> Visits)
{
    /// <summary>True when its strands change sides inside the part.</summary>
    public bool Crosses => Visits.Count > 1 && Visits[0].Enters != Visits[0].Leaves && Visits[0].Hop is { In: >= 0, Out: >= 0 } && Visits[1].Hop is { In: >= 0, Out: >= 0 };
}
