using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>A strand as a card tells it, from the card's top to its foot.</summary>
internal sealed class Trail
{
    /// <param name="traced">The traced plant.</param>
    /// <param name="strand">The strand.</param>
    /// <param name="backwards">Told from its last position to its first.</param>
    /// <param name="fromLink">False when it is told because it arrives at the far end of a link from somewhere else.</param>
    public Trail(TracedPlant traced, int strand, bool backwards = false, bool fromLink = true)
    {
        Strand = strand;
        FromLink = fromLink;
        Number = traced.NumberOf(strand);
        Colour = StrandColours.Of(traced, strand);
        IsLoop = traced.Strands.IsLoop(strand);
        ReadOnlySpan<int> positions = traced.Strands[strand];
        Hops = Told(traced.Hops(strand), backwards && positions.Length > 1);
        First = Hops[0].In >= 0 ? Hops[0].In : Hops[0].Out;
        Last = Hops[^1].Out >= 0 ? Hops[^1].Out : Hops[^1].In;
        LaneDirection? first = IsLoop ? null : traced.Graph.LaneAt(First)?.Direction;
        LaneDirection? last = IsLoop ? null : traced.Graph.LaneAt(Last)?.Direction;
        LitFromTop = first is LaneDirection.Transmit or LaneDirection.Both;
        LitFromFoot = Last != First && last is LaneDirection.Transmit or LaneDirection.Both;
    }

    public int Strand { get; }

    /// <summary>The number it is shown by.</summary>
    public int Number { get; }

    public FibreColour Colour { get; }

    public bool FromLink { get; }

    public bool IsLoop { get; }

    /// <summary>Its visits to parts, from top to foot.</summary>
    public IReadOnlyList<Hop> Hops { get; }

    /// <summary>The position it begins with.</summary>
    public int First { get; }

    /// <summary>The position it ends with.</summary>
    public int Last { get; }

    /// <summary>True when a transmitter at its top sends into it.</summary>
    public bool LitFromTop { get; }

    /// <summary>True when a transmitter at its foot sends into it.</summary>
    public bool LitFromFoot { get; }

    /// <summary>Its label in gaps, such as <c>7 RD</c>.</summary>
    public string Label => $"{Number} {Colour.Code}";

    private static IReadOnlyList<Hop> Told(IReadOnlyList<Hop> hops, bool backwards)
    {
        if (!backwards)
            return hops;
        var told = new Hop[hops.Count];
        for (int i = 0; i < told.Length; i++)
        {
            Hop hop = hops[hops.Count - 1 - i];
            told[i] = new Hop(hop.Part, hop.Out, hop.In);
        }

        return told;
    }
}
