using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Documents.Binding;

/// <summary>A part, a port of it or a position, as an address writes them.</summary>
/// <param name="Part">Index of the part.</param>
/// <param name="Port">The text after the stroke, or null.</param>
/// <param name="Position">The text after the colon, or null.</param>
internal readonly record struct Address(int Part, string? Port, string? Position);

/// <summary>One stop of a run.</summary>
/// <param name="Place">Where it is written.</param>
/// <param name="Text">As it is written.</param>
internal abstract record Stop(SourcePlace Place, string Text)
{
    /// <summary>Its number among the stops that take ports, from 1; 0 until it takes one.</summary>
    public int Number { get; set; }
}

/// <summary>The word <c>opposed</c> or <c>aligned</c> between two stops.</summary>
internal sealed record KeyingStop(SourcePlace Place, string Text, Keying Keys) : Stop(Place, Text);

/// <summary>Named parts, one for each chain of the run or the same for all.</summary>
internal sealed record AddressStop(SourcePlace Place, string Text, AddressList Addresses) : Stop(Place, Text);

/// <summary>A cord that needs no name: every chain gets its own.</summary>
internal sealed record InlineStop(SourcePlace Place, string Text, PartType Type, Shape Shape) : Stop(Place, Text)
{
    /// <summary>The cord of the first chain; those of the others share all but their names with it.</summary>
    public Part? First { get; set; }
}
